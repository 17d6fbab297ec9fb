#include "core/requirement/catalogue.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/reading/written_json.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

Upkeep upkeepFrom(JsonObject& row) {
    Upkeep into;
    into.id = row.filledText("id", Need::Required).value_or("");
    into.words = row.filledText("words", Need::Required).value_or("");
    into.cite = row.filledText("cite", Need::Required).value_or("");
    into.edition = row.filledText("edition", Need::Optional).value_or("");
    into.every = row.word<Period>("every", Need::Required, periodWords).value_or(into.every);
    into.status = row.word<Status>("status", Need::Required, statusWords).value_or(into.status);
    into.any_of = conditionsFrom(row, "applies");
    into.covers = row.texts("covers", Need::Optional).value_or(into.covers);
    into.shown_by = row.texts("shown_by", Need::Optional).value_or(into.shown_by);
    row.complainOfTheRest();
    return into;
}

class CatalogueFile {
public:
    CatalogueFile(JsonObject& top, JsonFaults& faults)
        : m_top(top)
        , m_faults(faults) {}

    Catalogue read() {
        m_catalogue.edition = m_top.filledText("edition", Need::Required).value_or("");
        m_catalogue.deference = m_top.filledText("deference", Need::Required).value_or("");
        m_issuer = m_top.filledText("issuer", Need::Required).value_or("");
        for (JsonObject& row : m_top.objects("rows", Need::Optional, errors::not_a_list_of_rows()))
            readRow(row);
        for (JsonObject& row : m_top.objects("upkeep", Need::Optional))
            readUpkeep(row);
        m_top.complainOfTheRest();
        const Json* rows = m_top.field("rows", Need::Optional);
        if (m_catalogue.rows.empty() && m_catalogue.upkeep.empty() && (!rows || rows->empty()))
            m_top.complain("rows", errors::not_a_list_of_rows());
        return std::move(m_catalogue);
    }

private:
    void readRow(JsonObject& object) {
        Requirement row = requirementFrom(object);
        object.complainOfTheRest();
        stamp(row, m_issuer, m_catalogue.edition);
        mustBeNew(row.id, object);
        checkRequirement(row, object.pointer(), m_faults);
        m_catalogue.rows.push_back(std::move(row));
    }

    void readUpkeep(JsonObject& object) {
        Upkeep row = upkeepFrom(object);
        row.issuer = m_issuer;
        if (row.edition.empty())
            row.edition = m_catalogue.edition;
        mustBeNew(row.id, object);
        m_catalogue.upkeep.push_back(std::move(row));
    }

    void mustBeNew(const std::string& id, JsonObject& row) {
        if (!id.empty() && !m_ids.insert(id).second)
            row.complain("id", errors::row_id_twice(id));
    }

    JsonObject& m_top;
    JsonFaults& m_faults;
    Catalogue m_catalogue;
    std::string m_issuer;
    std::set<std::string> m_ids;
};

} // namespace

Checked<Catalogue> catalogueFrom(std::string_view text, Phrase name) {
    JsonFaults faults{std::move(name)};
    const Json document = jsonIn(text);
    if (!document.is_object()) {
        faults.add("", errors::shipped_file_no_object());
        return tl::unexpected(faults.take());
    }
    JsonObject top(document, "", faults);
    Catalogue catalogue = CatalogueFile(top, faults).read();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return catalogue;
}

Checked<Catalogue> joined(Catalogue one, Catalogue other) {
    Errors errors;
    for (const Requirement& row : other.rows)
        if (findRequirement(one, row.id))
            errors.emplace_back(other.edition, errors::row_in_both_catalogues(row.id));
    if (!errors.empty())
        return tl::unexpected(errors);
    one.edition += "; " + other.edition;
    one.deference += " " + other.deference;
    one.rows.insert(one.rows.end(), std::make_move_iterator(other.rows.begin()),
                    std::make_move_iterator(other.rows.end()));
    one.upkeep.insert(one.upkeep.end(), std::make_move_iterator(other.upkeep.begin()),
                      std::make_move_iterator(other.upkeep.end()));
    return one;
}

const Requirement* findRequirement(const Catalogue& catalogue, std::string_view id) {
    const auto found = std::ranges::find(catalogue.rows, id, &Requirement::id);
    return found == catalogue.rows.end() ? nullptr : &*found;
}

} // namespace latchround
