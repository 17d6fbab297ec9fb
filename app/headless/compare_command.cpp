#include "app/headless/compare_command.h"

#include <vector>

#include "app/catalogue/named_catalogue.h"
#include "app/exchange/catalogue_file.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "app/headless/text_table.h"
#include "core/grading/changed_verdicts.h"
#include "core/requirement/catalogue_difference.h"
#include "ui/words/grade_words.h"

namespace latchround::headless {

namespace {

struct Compared {
    Catalogue before;
    Catalogue now;
    CatalogueDifference difference{};
    std::optional<OpenedRegister> vessel{};
    std::vector<ChangedVerdict> doors{}; ///< into the three above
};

void addErrors(Errors& to, const Errors& more) {
    to.insert(to.end(), more.begin(), more.end());
}

Checked<Catalogue> underFlag(Checked<Catalogue> base, const std::optional<std::string>& rules) {
    return base && rules ? withFlagRulesOf(std::move(*base), *rules) : std::move(base);
}

/// Every fault of both.
Checked<std::pair<Catalogue, Catalogue>> bothOf(const CompareAsked& asked) {
    const bool of_flag = isFlagRules(asked.now);
    const auto over = of_flag ? std::nullopt : asked.flag_rules;
    Checked<Catalogue> before =
        underFlag(catalogueNamed(asked.before, asked.executable_folder), over);
    Checked<Catalogue> now =
        of_flag ? underFlag(before, asked.now)
                : underFlag(catalogueNamed(asked.now, asked.executable_folder), over);
    Errors errors;
    if (!before)
        addErrors(errors, before.error());
    if (!now && !(of_flag && !before))
        addErrors(errors, now.error());
    if (!errors.empty())
        return tl::unexpected(errors);
    return std::pair(std::move(*before), std::move(*now));
}

OrderedJson headJson(const Catalogue& catalogue) {
    OrderedJson json{{"edition", catalogue.edition}};
    if (!catalogue.flag.empty())
        json["flag"] = catalogue.flag;
    return json;
}

OrderedJson differencesJson(const std::vector<RowDifference>& rows) {
    OrderedJson list = OrderedJson::array();
    for (const RowDifference& row : rows) {
        OrderedJson json{
            {"id", row.id}, {"change", std::string(word(row.change))}, {"words", row.words}};
        json["fields"] = OrderedJson::array();
        for (const FieldDifference& field : row.fields) {
            OrderedJson each{{"field", field.field}};
            if (!field.variant.empty())
                each["variant"] = field.variant;
            each["before"] = field.before;
            each["now"] = field.now;
            json["fields"].push_back(std::move(each));
        }
        list.push_back(std::move(json));
    }
    return list;
}

/// One side of a row at a door; null where that catalogue does not have it.
OrderedJson sideJson(const std::optional<RowGrade>& side) {
    if (!side)
        return nullptr;
    const Requirement& row = *side->requirement;
    OrderedJson json;
    json["verdict"] = word(side->verdict);
    json["asked"] = isAsked(*side);
    json["why"] = ui::reasonText(side->reason);
    json["words"] = row.words;
    json["limit"] = ui::limitWords(row).toStdString();
    json["cite"] = row.cite;
    json["edition"] = row.edition;
    json["issuer"] = row.issuer;
    json["status"] = word(row.status);
    return json;
}

OrderedJson doorsJson(const std::vector<ChangedVerdict>& doors) {
    OrderedJson list = OrderedJson::array();
    for (const ChangedVerdict& change : doors) {
        OrderedJson json{{"door", change.door->number},
                         {"walkdown", change.walkdown},
                         {"before", std::string(word(change.before))},
                         {"now", std::string(word(change.now))}};
        json["rows"] = OrderedJson::array();
        for (const ChangedRow& row : change.rows)
            json["rows"].push_back(
                {{"id", row.id}, {"before", sideJson(row.before)}, {"now", sideJson(row.now)}});
        list.push_back(std::move(json));
    }
    return list;
}

std::string inJson(const Compared& compared) {
    const CatalogueDifference& difference = compared.difference;
    OrderedJson json;
    json["before"] = headJson(compared.before);
    json["now"] = headJson(compared.now);
    json["texts"] = differencesJson(difference.profiles);
    json["rows"] = differencesJson(difference.rows);
    json["upkeep"] = differencesJson(difference.upkeep);
    json["cells"] = OrderedJson::array();
    for (const CellDifference& cell : difference.cells)
        json["cells"].push_back({{"table", cell.table},
                                 {"cell", cell.cell},
                                 {"before", cell.before},
                                 {"now", cell.now}});
    if (compared.vessel) {
        const Particulars& vessel = compared.vessel->arrangement.particulars;
        json["vessel"] = {{"name", vessel.name}, {"number", vessel.number}};
        json["doors"] = doorsJson(compared.doors);
    }
    return inLines(json);
}

std::string dashed(const std::string& words) {
    return words.empty() ? "-" : words;
}

/// What is added or gone has a line; what changed has one a field.
std::string differencesText(const char* what, const std::vector<RowDifference>& rows) {
    TextTable table({what, "change", "field", "for", "before", "now"});
    std::string of_edition;
    bool is_filled = false;
    for (const RowDifference& row : rows) {
        if (isOnlyEdition(row)) {
            of_edition += (of_edition.empty() ? "" : ", ") + row.id;
            continue;
        }
        is_filled = true;
        const std::string change(word(row.change));
        if (row.change == TextChange::Added)
            table.add({row.id, change, "words", "-", "-", row.words});
        else if (row.change == TextChange::Gone)
            table.add({row.id, change, "words", "-", row.words, "-"});
        else
            for (const FieldDifference& field : row.fields)
                table.add({row.id, change, field.field, dashed(field.variant), dashed(field.before),
                           dashed(field.now)});
    }
    std::string text = is_filled ? table.text() + "\n" : std::string();
    if (!of_edition.empty())
        text += "Same except for the edition: " + of_edition + "\n\n";
    return text;
}

std::string cellsText(const std::vector<CellDifference>& cells) {
    if (cells.empty())
        return {};
    TextTable table({"fire table", "cell", "before", "now"});
    for (const CellDifference& cell : cells)
        table.add({cell.table, cell.cell, dashed(cell.before), dashed(cell.now)});
    return table.text() + "\n";
}

/// "at most 12 mm, SOLAS II-2/9.4.1.1.3: unsatisfactory".
std::string sideText(const std::optional<RowGrade>& side) {
    if (!side)
        return "no such requirement";
    const Requirement& row = *side->requirement;
    const std::string limit = ui::limitWords(row).toStdString();
    return (limit.empty() ? "" : limit + ", ") + ui::citeWords(row).toStdString() + ": " +
           (isAsked(*side) ? std::string(word(side->verdict)) : ui::reasonText(side->reason));
}

std::string doorsText(const Compared& compared) {
    const std::string& vessel = compared.vessel->arrangement.particulars.name;
    if (compared.doors.empty())
        return vessel + ": no door would be graded differently.\n";
    TextTable table({"door", "before", "now", "requirement", "text before", "text now"});
    for (const ChangedVerdict& change : compared.doors)
        for (const ChangedRow& row : change.rows)
            table.add({change.door->number, std::string(word(change.before)),
                       std::string(word(change.now)), row.id, sideText(row.before),
                       sideText(row.now)});
    return vessel +
           ": doors that would be graded differently: " + std::to_string(compared.doors.size()) +
           "\n\n" + table.text();
}

/// Of a vessel only the texts that speak to it.
std::string editionOf(const Catalogue& catalogue, const Compared& compared) {
    return compared.vessel ? editionFor(catalogue, compared.vessel->arrangement.particulars)
                           : catalogue.edition;
}

std::string inText(const Compared& compared) {
    const CatalogueDifference& difference = compared.difference;
    std::string text = "Before: " + editionOf(compared.before, compared) +
                       "\nNow: " + editionOf(compared.now, compared) + "\n\n";
    if (difference.empty())
        text += "No differences.\n\n";
    text += differencesText("text", difference.profiles) +
            differencesText("requirement", difference.rows) +
            differencesText("maintenance", difference.upkeep) + cellsText(difference.cells);
    if (compared.vessel)
        text += doorsText(compared);
    else
        text.pop_back();
    return text;
}

} // namespace

Answer compareRules(const CompareAsked& asked) {
    auto both = bothOf(asked);
    if (!both)
        return tl::unexpected(both.error());
    Compared compared{std::move(both->first), std::move(both->second)};
    compared.difference = differenceBetween(compared.before, compared.now);
    if (!asked.register_path.empty()) {
        auto opened = openedRegister(asked.register_path);
        if (!opened)
            return refused(opened.error());
        compared.vessel = std::move(*opened);
        compared.doors = changedVerdicts(compared.vessel->arrangement, compared.vessel->ledger,
                                         compared.before, compared.now);
    }
    return asked.json ? inJson(compared) : inText(compared);
}

} // namespace latchround::headless
