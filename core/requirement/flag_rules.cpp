#include "core/requirement/flag_rules.h"

#include <algorithm>
#include <array>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/reading/written_json.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

enum class FlagChange { Add, Tighten, Replace };
constexpr std::array<Word<FlagChange>, 3> changeWords{
    {{FlagChange::Add, "add"}, {FlagChange::Tighten, "tighten"}, {FlagChange::Replace, "replace"}}};

class FlagFile {
public:
    FlagFile(Catalogue& catalogue, JsonFaults& faults)
        : m_catalogue(catalogue)
        , m_faults(faults) {}

    void read(JsonObject& top) {
        m_edition = top.filledText("edition", Need::Required).value_or("");
        m_issuer = top.filledText("issuer", Need::Required).value_or("");
        const auto deference = top.filledText("deference", Need::Optional);
        for (JsonObject& row :
             top.filledObjects("rows", Need::Required, errors::not_a_list_of_rows()))
            readRow(row);
        top.complainOfTheRest();
        m_catalogue.edition += "; " + m_edition + " (" + m_issuer + ")";
        m_catalogue.flag = m_issuer;
        Profile own;
        own.edition = m_edition;
        own.issuer = m_issuer;
        own.deference = deference.value_or("");
        m_catalogue.profiles.push_back(std::move(own));
        if (deference)
            m_catalogue.deference += " " + *deference;
    }

private:
    /// What else a row must say depends on its change.
    void readRow(JsonObject& row) {
        const auto change = row.word<FlagChange>("change", Need::Required, changeWords);
        if (change == FlagChange::Tighten)
            tighten(row);
        else if (change)
            put(row, *change);
    }

    Requirement* known(const std::string& id) {
        const auto found = std::ranges::find(m_catalogue.rows, id, &Requirement::id);
        return found == m_catalogue.rows.end() ? nullptr : &*found;
    }

    void put(JsonObject& object, FlagChange change) {
        Requirement row = requirementFrom(object);
        object.complainOfTheRest();
        stamp(row, m_issuer, m_edition);
        checkRequirement(row, object.pointer(), m_faults);
        Requirement* there = known(row.id);
        if (change == FlagChange::Add && there)
            object.complain("id", errors::row_there_already(row.id));
        else if (change == FlagChange::Add)
            m_catalogue.rows.push_back(std::move(row));
        else if (there)
            *there = std::move(row);
        else if (!row.id.empty())
            object.complain("id", errors::row_not_in_catalogue(row.id));
    }

    void tighten(JsonObject& row) {
        const auto id = row.filledText("id", Need::Required);
        const auto cite = row.filledText("cite", Need::Required);
        const auto words = row.filledText("words", Need::Optional);
        const auto edition = row.filledText("edition", Need::Optional);
        const auto low = row.number("low", Need::Optional);
        const auto high = row.number("high", Need::Optional);
        const auto approximate = approximateFrom(row);
        row.complainOfTheRest();
        if (!low && !high && !approximate)
            row.complain(errors::tightened_without_limit());
        Requirement* there = id ? known(*id) : nullptr;
        if (id && !there)
            row.complain("id", errors::row_not_in_catalogue(*id));
        if (!there)
            return;
        const auto apply = [&](Requirement& each) {
            limit(each.low, low, row, "low", each.unit, std::less<>());
            limit(each.high, high, row, "high", each.unit, std::greater<>());
            margins(each, low || high, approximate, row);
            each.cite = cite.value_or("");
            each.issuer = m_issuer;
            each.edition = edition.value_or(m_edition);
            if (words)
                each.words = *words;
        };
        apply(*there);
        for (Requirement& variant : there->variants)
            apply(variant);
        checkRequirement(*there, row.pointer(), m_faults);
    }

    /// The flag's own limit is one figure, and approximate only where the flag says so.
    static void margins(Requirement& each, bool limited, const std::optional<Approximate>& wanted,
                        JsonObject& row) {
        const Approximate known = each.approximate.value_or(Approximate{});
        if (wanted && (wanted->slow > known.slow || wanted->fast > known.fast))
            row.complain("approximate", errors::margin_widened());
        if (limited) {
            each.low_also.reset();
            each.high_also.reset();
        }
        if (limited || wanted)
            each.approximate = wanted;
    }

    template <class Wider>
    static void limit(std::optional<double>& known, const std::optional<double>& wanted,
                      JsonObject& row, const char* key, const std::string& unit, Wider wider) {
        if (!wanted)
            return;
        if (!known)
            row.complain(key, errors::limit_not_there());
        else if (wider(*wanted, *known))
            row.complain(key, errors::limit_widened(onOneLine(Json(*wanted)), unit,
                                                    onOneLine(Json(*known))));
        else
            known = wanted;
    }

    Catalogue& m_catalogue;
    JsonFaults& m_faults;
    std::string m_edition;
    std::string m_issuer;
};

} // namespace

Checked<Catalogue> withFlagRules(Catalogue base, std::string_view text, Phrase name) {
    JsonFaults faults{std::move(name)};
    const Json document = jsonIn(text);
    if (!document.is_object()) {
        faults.add("", errors::given_file_no_object());
    } else {
        JsonObject top(document, "", faults);
        FlagFile(base, faults).read(top);
    }
    if (!faults.empty())
        return tl::unexpected(faults.take());
    base.texts.push_back({true, std::make_shared<const std::string>(text)});
    return base;
}

} // namespace latchround
