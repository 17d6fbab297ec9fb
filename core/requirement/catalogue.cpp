#include "core/requirement/catalogue.h"

#include <algorithm>
#include <iterator>
#include <set>

#include <nlohmann/json.hpp>

#include "core/requirement/catalogue_reader.h"

namespace latchround {

namespace {

using nlohmann::json;

void readRow(CatalogueReader& reader, const json& row, const std::string& at, Requirement& into) {
    if (!row.is_object()) {
        reader.complain(at, "a row must be an object", "Write { \"id\": ..., ... }.");
        return;
    }
    reader.onlyKnown(row, at,
                     {"id", "words", "question", "look_for", "check", "source", "low", "high",
                      "unit", "cite", "edition", "status", "step", "regimes", "keel_from",
                      "applies"});
    into.id = reader.text(row, at, "id", true);
    into.words = reader.text(row, at, "words", true);
    into.question = reader.text(row, at, "question", false);
    into.look_for = reader.text(row, at, "look_for", false);
    into.unit = reader.text(row, at, "unit", false);
    into.cite = reader.text(row, at, "cite", true);
    into.edition = reader.text(row, at, "edition", false);
    reader.word<CheckKind>(row, at, "check", checkKindWords, into.check, true);
    reader.word<Source>(row, at, "source", sourceWords, into.source, false);
    reader.word<Status>(row, at, "status", statusWords, into.status, true);
    reader.word<Step>(row, at, "step", stepWords, into.step, true);
    reader.words<Regime>(row, at, "regimes", regimeWords, into.regimes);
    into.low = reader.number(row, at, "low");
    into.high = reader.number(row, at, "high");
    into.keel_from = reader.date(row, at, "keel_from");
    if (row.contains("applies")) {
        const json& applies = row["applies"];
        if (!applies.is_array() || applies.empty())
            reader.complain(at + "/applies", "must be a list of conditions",
                            "Leave it out where every door is meant.");
        else
            for (std::size_t i = 0; i < applies.size(); ++i)
                into.any_of.push_back(
                    reader.condition(applies[i], at + "/applies/" + std::to_string(i)));
    }
}

/// What a row must have for its kind of check, and that the limits make sense.
void checkRow(CatalogueReader& reader, const Requirement& row, const std::string& at) {
    const bool asks = row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides;
    if (asks && row.question.empty())
        reader.complain(at + "/question", "a row that is seen needs a question",
                        "Write the question as it is asked at the door.");
    const bool needs_low = row.check == CheckKind::WithinBand || row.check == CheckKind::AtLeast ||
                           row.check == CheckKind::Order;
    const bool needs_high = row.check == CheckKind::WithinBand || row.check == CheckKind::AtMost;
    if (needs_low && !row.low)
        reader.complain(at + "/low", "this check needs a lower limit", "Add a number.");
    if (needs_high && !row.high)
        reader.complain(at + "/high", "this check needs an upper limit", "Add a number.");
    if (row.low && row.high && !(*row.low < *row.high))
        reader.complain(at + "/low", "the lower limit is not below the upper one",
                        "Check both numbers.");
    if ((needs_low || needs_high) && row.source == Source::None)
        reader.complain(at + "/source", "a number must come from somewhere",
                        "Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.");
}

} // namespace

Checked<Catalogue> catalogueFrom(std::string_view text, std::string_view name) {
    CatalogueReader reader{std::string(name)};
    const json document = json::parse(text, nullptr, false);
    if (document.is_discarded() || !document.is_object()) {
        reader.complain("", "is not a JSON object", "Restore the file from a good copy.");
        return tl::unexpected(reader.complaints());
    }
    Catalogue catalogue;
    reader.onlyKnown(document, "", {"edition", "deference", "rows"});
    catalogue.edition = reader.text(document, "", "edition", true);
    catalogue.deference = reader.text(document, "", "deference", true);
    if (!document.contains("rows") || !document["rows"].is_array() || document["rows"].empty()) {
        reader.complain("/rows", "must be a list with at least one row", "");
        return tl::unexpected(reader.complaints());
    }
    std::set<std::string> ids;
    for (std::size_t i = 0; i < document["rows"].size(); ++i) {
        const std::string at = "/rows/" + std::to_string(i);
        Requirement row;
        readRow(reader, document["rows"][i], at, row);
        if (row.edition.empty())
            row.edition = catalogue.edition;
        if (!ids.insert(row.id).second)
            reader.complain(at + "/id", "'" + row.id + "' stands twice", "Ids must be unique.");
        checkRow(reader, row, at);
        catalogue.rows.push_back(std::move(row));
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
    return one;
}

const Requirement* findRequirement(const Catalogue& catalogue, std::string_view id) {
    const auto found = std::ranges::find(catalogue.rows, id, &Requirement::id);
    return found == catalogue.rows.end() ? nullptr : &*found;
}

} // namespace latchround
