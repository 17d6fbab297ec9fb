#include "app/ashore/derived_rows.h"

#include <algorithm>

#include "core/deficiency/item.h"
#include "core/evidence/moment_text.h"
#include "core/grading/graded_walkdown.h"
#include "core/planning/due.h"
#include "core/requirement/applicability.h"
#include "core/trend/outlook.h"
#include "ui/words/grade_words.h"

namespace latchround {

namespace {

using nlohmann::json;

/// Where a day is asked for that decides nothing of what is kept.
constexpr CalendarDate any_day{std::chrono::year(1970), std::chrono::January, std::chrono::day(1)};

json dayOrNull(const std::optional<CalendarDate>& day) {
    return day ? json(isoText(*day)) : json();
}

template <class T>
json orNull(const std::optional<T>& value) {
    return value ? json(*value) : json();
}

json referenceOrNull(const std::string& text) {
    return text.empty() ? json() : json(text);
}

json doorRows(const Arrangement& arrangement) {
    json rows = json::array();
    for (const Door& door : arrangement.doors) {
        const Boundary* boundary = findBoundary(arrangement, door.boundary);
        rows.push_back(
            {{"door", door.number},
             {"seq", rows.size()},
             {"deck", referenceOrNull(door.deck)},
             {"boundary", referenceOrNull(door.boundary)},
             {"place", boundary ? json(word(boundary->place)) : json()},
             {"zone_aft", boundary ? referenceOrNull(boundary->zone_aft) : json()},
             {"zone_forward", boundary ? referenceOrNull(boundary->zone_forward) : json()},
             {"kind", word(door.kind)},
             {"fire_class", word(door.fire_class)},
             {"installed", dayOrNull(door.installed)},
             {"maker", door.maker}});
    }
    return rows;
}

json rowOf(const Item& item, std::size_t seq) {
    json row{{"id", item.id},
             {"seq", seq},
             {"door", item.door},
             {"requirement", item.requirement},
             {"asked", item.row ? json(item.row->words) : json()},
             {"cite", item.row ? json(item.row->cite) : json()},
             {"found_words", item.text().text},
             {"state", word(item.state)},
             {"open", item.isOpen()},
             {"severity", word(item.severity)},
             {"action", item.action ? json(word(*item.action)) : json()},
             {"ground_for_detention", orNull(item.ground_for_detention)},
             {"due", dayOrNull(item.due)},
             {"interim", item.interim.text},
             {"assigned", item.assigned},
             {"found", isoText(shipsDay(item.findings.front().stamp.when))},
             {"found_last", isoText(shipsDay(item.findings.back().stamp.when))},
             {"times_found", item.findings.size()},
             {"repeat_of", orNull(item.repeat_of)},
             {"rectified", nullptr}};
    if (!item.rectifications.empty())
        row["rectified"] = isoText(shipsDay(item.rectifications.back().stamp.when));
    return row;
}

json itemRows(const Arrangement& arrangement, const Ledger& ledger, const Catalogue& catalogue) {
    json rows = json::array();
    for (const Item& item : itemsOf(arrangement, ledger, catalogue))
        rows.push_back(rowOf(item, rows.size()));
    return rows;
}

struct NewestVerdicts {
    json doors = json::array();
    json rows = json::array();
};

NewestVerdicts newestVerdicts(const Arrangement& arrangement, const Ledger& ledger,
                              const Catalogue& catalogue) {
    NewestVerdicts newest;
    const std::vector<Walkdown> walkdowns = ledger.walkdowns();
    if (walkdowns.empty())
        return newest;
    const Walkdown& walkdown = walkdowns.back();
    for (const GradedDoor& door : gradeWalkdown(arrangement, ledger, walkdown, catalogue)) {
        newest.doors.push_back({{"door", door.door->number},
                                {"walkdown", walkdown.id},
                                {"purpose", word(walkdown.plan.purpose)},
                                {"begun", isoText(shipsDay(walkdown.begun_by.when))},
                                {"verdict", word(door.grade.verdict)}});
        for (const RowGrade& row : door.grade.rows)
            if (isAsked(row))
                newest.rows.push_back(
                    {{"door", door.door->number},
                     {"requirement", row.requirement->id},
                     {"asked", row.requirement->words},
                     {"verdict", word(row.verdict)},
                     {"reason", ui::reasonText(row.reason)},
                     {"value", row.figure ? json(row.figure->value) : json()},
                     {"u", row.figure ? json(row.figure->u()) : json()},
                     {"unit", row.figure ? json(gaugeUnit(*row.requirement)) : json()}});
    }
    return newest;
}

/// The core says for all doors together when the first of them is due; here each is asked alone.
json dueRows(const Arrangement& arrangement, const Ledger& ledger, const Catalogue& catalogue) {
    json rows = json::array();
    const auto add = [&](const DueItem& item, const std::string& door) {
        rows.push_back({{"upkeep", item.upkeep ? item.upkeep->id : "certificate"},
                        {"door", door},
                        {"words", item.upkeep ? item.upkeep->words
                                              : "passenger ship safety certificate expires"},
                        {"last", dayOrNull(item.last)},
                        {"due", dayOrNull(item.due)}});
    };
    Arrangement alone = arrangement;
    alone.doors.clear();
    for (const DueItem& item : whatFallsDue(alone, ledger, catalogue, any_day))
        add(item, {});
    for (const Door& door : arrangement.doors) {
        alone.doors = {door};
        for (const DueItem& item : whatFallsDue(alone, ledger, catalogue, any_day))
            if (item.doors > 0)
                add(item, door.number);
    }
    return rows;
}

/// The row by which this door's closing is timed, as on the sheet of its years: the time before the
/// rate; null where neither is asked.
const Requirement* timedRowOf(const Arrangement& arrangement, const Door& door,
                              const Catalogue& catalogue) {
    const DoorLocation location = locationOf(
        arrangement.particulars, findBoundary(arrangement, door.boundary), catalogue.divisions);
    const Requirement* timed = nullptr;
    for (const Requirement& base : catalogue.rows) {
        const Requirement& row = inForce(base, arrangement.particulars, door, location);
        if (howAsked(row, arrangement.particulars, door, location) == Asked::No)
            continue;
        if (row.source == Source::ClosingTime || (!timed && row.source == Source::ClosingRate))
            timed = &row;
    }
    return timed;
}

json closingRows(const Arrangement& arrangement, const Ledger& ledger, const Catalogue& catalogue) {
    json rows = json::array();
    const std::vector<Walkdown> walkdowns = ledger.walkdowns();
    for (const Door& door : arrangement.doors) {
        const Requirement* row = timedRowOf(arrangement, door, catalogue);
        if (!row)
            continue;
        const Outlook outlook =
            outlookOf(timedDays(ledger, walkdowns, door, *row), row->low, row->high, any_day);
        for (std::size_t i = 0; i < outlook.days.size(); ++i) {
            const TimedDay& day = outlook.days[i];
            rows.push_back({{"door", door.number},
                            {"seq", i},
                            {"requirement", row->id},
                            {"day", isoText(day.day)},
                            {"value", day.value},
                            {"u", day.u},
                            {"unit", row->unit},
                            {"outside", day.outside},
                            {"after_repair", day.after_repair},
                            {"present_line", i >= outlook.line_from}});
        }
    }
    return rows;
}

} // namespace

std::vector<DerivedTable> derivedRows(const Arrangement& arrangement, const Ledger& ledger,
                                      const Catalogue& catalogue) {
    NewestVerdicts newest = newestVerdicts(arrangement, ledger, catalogue);
    return {{"derived", json::array({{{"name", arrangement.particulars.name},
                                      {"catalogue_edition", catalogue.edition},
                                      {"flag", catalogue.flag}}})},
            {"door_in_force", doorRows(arrangement)},
            {"item", itemRows(arrangement, ledger, catalogue)},
            {"newest_door_verdict", std::move(newest.doors)},
            {"newest_row_verdict", std::move(newest.rows)},
            {"due_day", dueRows(arrangement, ledger, catalogue)},
            {"closing", closingRows(arrangement, ledger, catalogue)}};
}

} // namespace latchround
