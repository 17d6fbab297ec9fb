#include "app/headless/items_command.h"

#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "app/headless/text_table.h"
#include "app/report/data/item_json.h"
#include "core/evidence/moment_text.h"

namespace latchround::headless {

namespace {

std::string foundWords(const Item& item) {
    if (!item.text().empty())
        return item.text().text;
    return item.row ? item.row->words : item.requirement;
}

std::string itemsTable(const std::vector<Item>& items, CalendarDate today, bool all) {
    TextTable table({"no", "door", "severity", "state", "action", "detention", "due", "assigned",
                     "found", "deficiency"});
    int shown = 0;
    for (const Item& item : items) {
        if (!all && !item.isOpen())
            continue;
        ++shown;
        const bool overdue = item.isOpen() && item.due && *item.due < today;
        table.add({std::to_string(&item - items.data() + 1), item.door,
                   std::string(word(item.severity)), std::string(word(item.state)),
                   std::string(item.action ? word(*item.action) : "-"),
                   !item.ground_for_detention   ? "-"
                   : *item.ground_for_detention ? "yes"
                                                : "no",
                   item.due ? isoText(*item.due) + (overdue ? " overdue" : "") : "-",
                   item.assigned.empty() ? "-" : item.assigned,
                   isoText(shipsDay(item.findings.back().stamp.when)), foundWords(item)});
    }
    if (shown == 0)
        return all ? "No deficiency has been written up.\n" : "No open items.\n";
    return table.text();
}

} // namespace

Answer showItems(const ItemsAsked& asked, const Catalogue& catalogue) {
    const auto opened = openedRegister(asked.path);
    if (!opened)
        return refused(opened.error());
    const std::vector<Item> items = itemsOf(opened->arrangement, opened->ledger, catalogue);
    const CalendarDate today = shipsDay(now());
    const Particulars& vessel = opened->arrangement.particulars;
    const std::string edition = editionFor(catalogue, vessel);
    const std::string deference = deferenceFor(catalogue, vessel);
    if (!asked.json)
        return vessel.name + "\n\n" + itemsTable(items, today, asked.all) +
               "\nCatalogue: " + edition + "\n" + deference + "\n";
    OrderedJson json;
    json["vessel"] = {{"name", vessel.name}, {"number", vessel.number}};
    json["catalogue"] = {{"edition", edition}, {"deference", deference}};
    json["items"] =
        report::itemsAsJson(opened->arrangement, opened->ledger, items, today, asked.all);
    return inLines(json);
}

} // namespace latchround::headless
