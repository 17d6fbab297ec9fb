#include "core/requirement/flag_rules.h"

#include <algorithm>
#include <array>

#include "core/reading/written_json.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

using nlohmann::json;

enum class Change { Add, Tighten, Replace };
constexpr std::array<Word<Change>, 3> changeWords{
    {{Change::Add, "add"}, {Change::Tighten, "tighten"}, {Change::Replace, "replace"}}};

class FlagFile {
public:
    FlagFile(Catalogue& catalogue, JsonReader& reader)
        : m_catalogue(catalogue)
        , m_reader(reader) {}

    void read(const json& document) {
        m_reader.onlyKnown(document, "", {"edition", "deference", "issuer", "rows"});
        m_edition = m_reader.text(document, "", "edition", true);
        m_issuer = m_reader.text(document, "", "issuer", true);
        const std::string deference = m_reader.text(document, "", "deference", false);
        if (!document.contains("rows") || !document["rows"].is_array() ||
            document["rows"].empty()) {
            m_reader.complain("/rows", "must be a list with at least one row", "");
            return;
        }
        for (std::size_t i = 0; i < document["rows"].size(); ++i)
            readRow(document["rows"][i], "/rows/" + std::to_string(i));
        m_catalogue.edition += "; " + m_edition + " (" + m_issuer + ")";
        m_catalogue.flag = m_issuer;
        if (!deference.empty())
            m_catalogue.deference += " " + deference;
    }

private:
    void readRow(const json& row, const std::string& at) {
        if (!row.is_object()) {
            m_reader.complain(at, "a row must be an object", "Write { \"id\": ..., ... }.");
            return;
        }
        Change change = Change::Add;
        m_reader.word<Change>(row, at, "change", changeWords, change, true);
        const std::string id = m_reader.text(row, at, "id", true);
        const auto known = std::ranges::find(m_catalogue.rows, id, &Requirement::id);
        const bool is_known = known != m_catalogue.rows.end();
        if (change == Change::Add && is_known)
            m_reader.complain(at + "/id", "'" + id + "' is in the catalogue already",
                              "Write \"change\": \"tighten\" or \"replace\".");
        else if (change != Change::Add && !is_known)
            m_reader.complain(at + "/id", "'" + id + "' is not in the catalogue",
                              "Check its spelling, or write \"change\": \"add\".");
        else if (change == Change::Tighten)
            tighten(row, at, *known);
        else
            put(wholeRow(row, at), is_known ? &*known : nullptr);
    }

    Requirement wholeRow(const json& row, const std::string& at) {
        Requirement whole = requirementFrom(m_reader, row, at, "change");
        stamp(whole, m_issuer, m_edition);
        checkRequirement(m_reader, whole, at);
        return whole;
    }

    void put(Requirement row, Requirement* in_place_of) {
        if (in_place_of)
            *in_place_of = std::move(row);
        else
            m_catalogue.rows.push_back(std::move(row));
    }

    void tighten(const json& row, const std::string& at, Requirement& known) {
        m_reader.onlyKnown(row, at, {"id", "change", "low", "high", "cite", "edition", "words"});
        const std::string cite = m_reader.text(row, at, "cite", true);
        const std::string words = m_reader.text(row, at, "words", false);
        const std::string edition = m_reader.text(row, at, "edition", false);
        const auto low = m_reader.number(row, at, "low");
        const auto high = m_reader.number(row, at, "high");
        if (!low && !high)
            m_reader.complain(at, "a tightened row needs a limit", "Give low or high.");
        const auto apply = [&](Requirement& each) {
            limit(each.low, low, at + "/low", each.unit, std::less<>());
            limit(each.high, high, at + "/high", each.unit, std::greater<>());
            each.cite = cite;
            each.issuer = m_issuer;
            each.edition = edition.empty() ? m_edition : edition;
            if (!words.empty())
                each.words = words;
        };
        apply(known);
        for (Requirement& variant : known.variants)
            apply(variant);
        checkRequirement(m_reader, known, at);
    }

    template <class Wider>
    void limit(std::optional<double>& known, const std::optional<double>& wanted,
               const std::string& at, const std::string& unit, Wider wider) {
        if (!wanted)
            return;
        if (!known)
            m_reader.complain(at, "the row has no such limit", "Replace the whole row instead.");
        else if (wider(*wanted, *known))
            m_reader.complain(at,
                              onOneLine(json(*wanted)) + " " + unit + " is wider than the " +
                                  onOneLine(json(*known)) + " " + unit + " of the catalogue",
                              "A row is tightened, or replaced as a whole.");
        else
            known = wanted;
    }

    Catalogue& m_catalogue;
    JsonReader& m_reader;
    std::string m_edition;
    std::string m_issuer;
};

} // namespace

Checked<Catalogue> withFlagRules(Catalogue base, std::string_view text, std::string_view name) {
    JsonReader reader{std::string(name)};
    const json document = jsonIn(text);
    if (!document.is_object())
        reader.complain("", "is not a JSON object",
                        "Ask whoever gave you the file for a good one.");
    else
        FlagFile(base, reader).read(document);
    if (!reader.complaints().empty())
        return tl::unexpected(reader.complaints());
    return base;
}

} // namespace latchround
