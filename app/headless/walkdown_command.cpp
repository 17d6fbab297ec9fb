#include "app/headless/walkdown_command.h"

#include <array>
#include <cstdio>

#include "app/exchange/grade_json.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "app/headless/text_table.h"
#include "core/evidence/moment_text.h"
#include "core/grading/graded_walkdown.h"
#include "core/reading/written_json.h"
#include "ui/words/grade_words.h"

namespace latchround::headless {

namespace {

struct Shown {
    const Walkdown& walkdown;
    const std::vector<GradedDoor>& doors;
    ZoneIntegrity zones;
    Tally tally;
};

std::string joinedBy(const std::vector<std::string>& words, const char* between) {
    std::string all;
    for (const std::string& each : words)
        all += (all.empty() ? "" : between) + each;
    return all;
}

std::string worstRow(const GradedDoor& door) {
    const auto rows = askedWorstFirst(door.grade);
    if (rows.empty() || isWorse(Verdict::Untested, rows.front()->verdict))
        return {};
    return rows.front()->requirement->words + ": " + ui::reasonText(rows.front()->reason);
}

std::string doorTable(const std::vector<GradedDoor>& doors) {
    TextTable table(
        {"door", "deck", "place", "boundary", "kind", "verdict", "done", "worst check"});
    for (const GradedDoor& door : doors)
        table.add({door.door->number, door.door->deck,
                   std::string(door.boundary ? word(door.boundary->place) : "-"),
                   door.door->boundary, std::string(word(door.door->kind)),
                   std::string(word(door.grade.verdict)), isDone(door) ? "yes" : "no",
                   worstRow(door)});
    return table.text();
}

/// Doors of one verdict that somebody still has to do something about.
std::string openLine(const std::vector<GradedDoor>& doors, Verdict verdict) {
    std::vector<std::string> numbers;
    for (const GradedDoor& door : doors)
        if (door.grade.verdict == verdict)
            numbers.push_back(door.door->number);
    if (numbers.empty())
        return {};
    return "  " + std::string(word(verdict)) + " (" + std::to_string(numbers.size()) +
           "): " + joinedBy(numbers, ", ") + "\n";
}

std::string openDoors(const std::vector<GradedDoor>& doors) {
    std::string lines;
    for (const Verdict verdict :
         {Verdict::Unsatisfactory, Verdict::Judge, Verdict::TimeAgain, Verdict::Untested})
        lines += openLine(doors, verdict);
    return lines.empty() ? "No door needs attention.\n" : "Doors that need attention:\n" + lines;
}

std::string metresText(double length_m) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f m", length_m);
    return text.data();
}

/// ", limit 40.0 m, 48.0 m maximum; SOLAS II-2/9.2.2.1.2"; empty where none was read for the ship.
std::string limitsText(const ZoneLimits& limits) {
    if (limits.cite.empty())
        return {};
    return (limits.rule_m ? ", limit " + metresText(*limits.rule_m) : "") +
           (limits.most_m ? ", " + metresText(*limits.most_m) + " maximum" : "") +
           (limits.in_cabin_areas ? " in cabin areas" : "") + "; " + std::string(limits.cite);
}

std::string zoneLines(const ZoneIntegrity& zones) {
    std::string lines;
    for (const ActingZone& zone : zones.failing) {
        lines += "Zones " + joinedBy(zone.zones, ", ") + " act as one through " +
                 joinedBy(zone.doors, ", ") + ": " + metresText(zone.length_m) + " long" +
                 limitsText(zone.limits) + ".\n";
    }
    if (zones.best_repair)
        lines += "Repairing " + joinedBy(zones.best_repair->doors, ", ") + " in bulkhead " +
                 zones.best_repair->boundary + " restores most separation.\n";
    for (const ActingZone& zone : zones.not_shown)
        lines += "Separation of zones " + joinedBy(zone.zones, ", ") +
                 " is not yet proven: doors are untested or undecided.\n";
    return lines;
}

std::string readable(const OpenedRegister& from, const Shown& shown, const Catalogue& catalogue) {
    const Walkdown& walkdown = shown.walkdown;
    std::string text = from.arrangement.particulars.name + ", " +
                       std::string(word(walkdown.plan.purpose)) + " walkdown " + walkdown.id +
                       "\nBegun " + rfc3339Text(walkdown.begun_by.when) + ", ";
    text += walkdown.end ? "ended " + rfc3339Text(walkdown.end->stamp.when) : "under way";
    text += "; " + std::to_string(shown.tally.done) + " of " + std::to_string(shown.tally.doors) +
            " doors done\n\n" + doorTable(shown.doors) + "\n" + openDoors(shown.doors) +
            zoneLines(shown.zones) +
            "\nCatalogue: " + editionFor(catalogue, from.arrangement.particulars) + "\n" +
            deferenceFor(catalogue, from.arrangement.particulars) + "\n";
    return text;
}

std::string asJson(const OpenedRegister& from, const Shown& shown, const Catalogue& catalogue) {
    OrderedJson answer;
    answer["vessel"] = from.arrangement.particulars.name;
    OrderedJson& walkdown = answer["walkdown"];
    walkdown["id"] = shown.walkdown.id;
    walkdown["purpose"] = word(shown.walkdown.plan.purpose);
    walkdown["begun"] = rfc3339Text(shown.walkdown.begun_by.when);
    if (shown.walkdown.end)
        walkdown["ended"] = rfc3339Text(shown.walkdown.end->stamp.when);
    walkdown["doors"] = shown.tally.doors;
    walkdown["done"] = shown.tally.done;
    answer.update(orderedJsonIn(
        gradeOutputJson(catalogue, from.arrangement.particulars, shown.doors, shown.zones)));
    return inLines(answer);
}

} // namespace

Answer showWalkdown(const Show& show, const Catalogue& catalogue) {
    const auto opened = openedRegister(show.path);
    if (!opened)
        return refused(opened.error());
    const auto walkdown = chosenWalkdown(*opened, show.walkdown, show.path);
    if (!walkdown)
        return refused(walkdown.error());
    const auto doors = gradeWalkdown(opened->arrangement, opened->ledger, *walkdown, catalogue);
    const Shown shown{*walkdown, doors, zoneIntegrity(opened->arrangement, doors), tallyOf(doors)};
    return show.json ? asJson(*opened, shown, catalogue) : readable(*opened, shown, catalogue);
}

} // namespace latchround::headless
