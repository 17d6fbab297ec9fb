#include "core/planning/due.h"

#include <algorithm>
#include <tuple>

#include "core/evidence/moment_text.h"
#include "core/grading/grade.h"
#include "core/requirement/applicability.h"

namespace latchround {

namespace {

bool shows(const Upkeep& upkeep, const std::string& row) {
    const std::vector<std::string>& rows =
        upkeep.shown_by.empty() ? upkeep.covers : upkeep.shown_by;
    return std::ranges::find(rows, row) != rows.end();
}

/// Every row that shows it was tried: none of them is left untested.
bool wasDone(const Upkeep& upkeep, const DoorGrade& grade) {
    bool any = false;
    for (const RowGrade& row : grade.rows) {
        if (!isAsked(row) || !shows(upkeep, row.requirement->id))
            continue;
        if (row.verdict == Verdict::Untested)
            return false;
        any = true;
    }
    return any;
}

struct Look {
    const Arrangement& arrangement;
    const Ledger& ledger;
    const Catalogue& catalogue;
    std::vector<Walkdown> walkdowns; ///< newest first

    std::optional<CalendarDate> lastDone(const Upkeep& upkeep, const Door& door) const {
        for (const Walkdown& walkdown : walkdowns) {
            const DoorEvidence evidence = ledger.evidenceOf(walkdown.id, door.number);
            if (evidence.empty())
                continue;
            const Boundary* boundary = findBoundary(arrangement, door.boundary);
            const DoorGrade graded =
                grade(arrangement.particulars, door, boundary, evidence, catalogue);
            if (wasDone(upkeep, graded))
                return shipsDay(walkdown.begun_by.when);
        }
        return std::nullopt;
    }
};

DueItem ofDoors(const Upkeep& upkeep, const Look& look, CalendarDate today) {
    DueItem item;
    item.upkeep = &upkeep;
    bool never = false;
    for (const Door& door : look.arrangement.doors) {
        const Stand stand(findBoundary(look.arrangement, door.boundary));
        if (!meetsOneOf(upkeep.any_of, door, stand))
            continue;
        ++item.doors;
        const auto last = look.lastDone(upkeep, door);
        never = never || !last;
        if (!last || dueAfter(*last, upkeep.every) < today)
            item.overdue.push_back(door.number);
        if (last && (!item.last || *last < *item.last))
            item.last = last;
    }
    if (never)
        item.last.reset();
    return item;
}

DueItem ofShip(const Upkeep& upkeep, const Ledger& ledger) {
    DueItem item;
    item.upkeep = &upkeep;
    if (const auto done = ledger.upkeepDone(upkeep.id))
        item.last = shipsDay(*done);
    return item;
}

std::optional<DueItem> ofCertificate(const Ledger& ledger) {
    const auto until = ledger.certificateUntil();
    if (!until)
        return std::nullopt;
    DueItem item;
    item.due = until;
    const CalendarDate opens = *until - std::chrono::months(renewal_window_months);
    item.opens =
        opens.ok() ? opens : CalendarDate(opens.year() / opens.month() / std::chrono::last);
    return item;
}

} // namespace

std::vector<DueItem> whatFallsDue(const Arrangement& arrangement, const Ledger& ledger,
                                  const Catalogue& catalogue, CalendarDate today) {
    Look look{arrangement, ledger, catalogue, ledger.walkdowns()};
    std::ranges::reverse(look.walkdowns);
    std::vector<DueItem> items;
    for (const Upkeep& upkeep : catalogue.upkeep) {
        DueItem item =
            upkeep.any_of.empty() ? ofShip(upkeep, ledger) : ofDoors(upkeep, look, today);
        if (item.last)
            item.due = dueAfter(*item.last, upkeep.every);
        if (upkeep.any_of.empty() || item.doors > 0)
            items.push_back(std::move(item));
    }
    if (auto certificate = ofCertificate(ledger))
        items.push_back(std::move(*certificate));
    for (DueItem& item : items)
        item.is_overdue = !item.due || *item.due < today;
    std::ranges::stable_sort(items, {}, [](const DueItem& item) {
        return std::tuple(!item.is_overdue, item.due.value_or(CalendarDate{}));
    });
    return items;
}

} // namespace latchround
