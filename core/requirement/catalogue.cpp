#include "core/requirement/catalogue.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "core/reading/written_json.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

using nlohmann::json;

std::vector<std::string> rowIdsFrom(JsonReader& reader, const json& row, const std::string& at,
                                    const std::string& key) {
    std::vector<std::string> ids;
    if (!row.contains(key))
        return ids;
    if (!row[key].is_array()) {
        reader.complain(at + "/" + key, "must be a list of row ids", "");
        return ids;
    }
    for (const json& id : row[key])
        ids.push_back(id.is_string() ? id.get<std::string>() : onOneLine(id));
    return ids;
}

Upkeep upkeepFrom(JsonReader& reader, const json& row, const std::string& at) {
    Upkeep into;
    if (!row.is_object()) {
        reader.complain(at, "an upkeep row must be an object", "");
        return into;
    }
    reader.onlyKnown(
        row, at,
        {"id", "words", "every", "applies", "shown_by", "covers", "cite", "edition", "status"});
    into.id = reader.text(row, at, "id", true);
    into.words = reader.text(row, at, "words", true);
    into.cite = reader.text(row, at, "cite", true);
    into.edition = reader.text(row, at, "edition", false);
    reader.word<Period>(row, at, "every", periodWords, into.every, true);
    reader.word<Status>(row, at, "status", statusWords, into.status, true);
    into.any_of = conditionsFrom(reader, row, at, "applies");
    into.covers = rowIdsFrom(reader, row, at, "covers");
    into.shown_by = rowIdsFrom(reader, row, at, "shown_by");
    return into;
}

const json& listOf(const json& document, const char* key) {
    static const json none = json::array();
    return document.contains(key) ? document[key] : none;
}

} // namespace

Checked<Catalogue> catalogueFrom(std::string_view text, std::string_view name) {
    JsonReader reader{std::string(name)};
    const json document = jsonIn(text);
    if (document.is_discarded() || !document.is_object()) {
        reader.complain("", "is not a JSON object", "Restore the file from a good copy.");
        return tl::unexpected(reader.complaints());
    }
    Catalogue catalogue;
    reader.onlyKnown(document, "", {"edition", "deference", "issuer", "rows", "upkeep"});
    catalogue.edition = reader.text(document, "", "edition", true);
    catalogue.deference = reader.text(document, "", "deference", true);
    const std::string issuer = reader.text(document, "", "issuer", true);
    const json& rows = listOf(document, "rows");
    const json& upkeep = listOf(document, "upkeep");
    if (!rows.is_array() || !upkeep.is_array() || rows.size() + upkeep.size() == 0) {
        reader.complain("/rows", "must be a list with at least one row", "");
        return tl::unexpected(reader.complaints());
    }
    std::set<std::string> ids;
    const auto once = [&](const std::string& id, const std::string& at) {
        if (!ids.insert(id).second)
            reader.complain(at + "/id", "'" + id + "' stands twice", "Ids must be unique.");
    };
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::string at = "/rows/" + std::to_string(i);
        Requirement row = requirementFrom(reader, rows[i], at);
        stamp(row, issuer, catalogue.edition);
        once(row.id, at);
        checkRequirement(reader, row, at);
        catalogue.rows.push_back(std::move(row));
    }
    for (std::size_t i = 0; i < upkeep.size(); ++i) {
        const std::string at = "/upkeep/" + std::to_string(i);
        Upkeep row = upkeepFrom(reader, upkeep[i], at);
        row.issuer = issuer;
        if (row.edition.empty())
            row.edition = catalogue.edition;
        once(row.id, at);
        catalogue.upkeep.push_back(std::move(row));
    }
    if (!reader.complaints().empty())
        return tl::unexpected(reader.complaints());
    return catalogue;
}

Checked<Catalogue> joined(Catalogue one, Catalogue other) {
    Complaints complaints;
    for (const Requirement& row : other.rows)
        if (findRequirement(one, row.id))
            complaints.push_back({other.edition, "row '" + row.id + "' stands in both catalogues",
                                  "Keep it in one of them."});
    if (!complaints.empty())
        return tl::unexpected(complaints);
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
