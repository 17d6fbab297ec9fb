#include "core/planning/due.h"

#include <algorithm>
#include <tuple>

#include "core/evidence/moment_text.h"
#include "core/grading/row_check.h"
#include "core/requirement/applicability.h"

namespace latchround {

namespace {

/// Of this door: every row that shows it was tried has an answer, and there is one.
bool wasDone(const std::vector<const Requirement*>& shown_by, const Door& door,
             const DoorEvidence& evidence) {
    return !shown_by.empty() && std::ranges::all_of(shown_by, [&](const Requirement* row) {
        return checkRow(*row, door, {}, evidence).verdict != Verdict::Untested;
    });
}

struct Look {
    const Arrangement& arrangement;
    const Ledger& ledger;
    const Catalogue& catalogue;
    std::vector<Walkdown> walkdowns; ///< newest first

    DoorLocation locationOf(const Door& door) const {
        return latchround::locationOf(
            arrangement.particulars, findBoundary(arrangement, door.boundary), catalogue.divisions);
    }

    /// Rows in force that are asked of this door and show that the upkeep was done.
    std::vector<const Requirement*> shownBy(const Upkeep& upkeep, const Door& door,
                                            const DoorLocation& location) const {
        std::vector<const Requirement*> rows;
        for (const std::string& id : upkeep.shown_by.empty() ? upkeep.covers : upkeep.shown_by) {
            const Requirement* base = findRequirement(catalogue, id);
            if (!base)
                continue;
            const Requirement& row = inForce(*base, arrangement.particulars, door, location);
            if (howAsked(row, arrangement.particulars, door, location) != Asked::No)
                rows.push_back(&row);
        }
        return rows;
    }

    std::optional<CalendarDate> lastDone(const Upkeep& upkeep, const Door& door,
                                         const DoorLocation& location) const {
        const std::vector<const Requirement*> rows = shownBy(upkeep, door, location);
        for (const Walkdown& walkdown : walkdowns)
            if (wasDone(rows, door, ledger.evidenceOf(walkdown.id, door)))
                return shipsDay(walkdown.begun_by.when);
        return std::nullopt;
    }
};

DueItem ofDoors(const Upkeep& upkeep, const Look& look, CalendarDate today) {
    DueItem item;
    item.upkeep = &upkeep;
    bool never = false;
    for (const Door& door : look.arrangement.doors) {
        const DoorLocation location = look.locationOf(door);
        if (!meetsOneOf(upkeep.any_of, door, location))
            continue;
        ++item.doors;
        const auto last = look.lastDone(upkeep, door, location);
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
    item.opens = monthsLater(*until, -renewal_window_months);
    return item;
}

} // namespace

std::vector<DueItem> whatFallsDue(const Arrangement& arrangement, const Ledger& ledger,
                                  const Catalogue& catalogue, CalendarDate today) {
    Look look{arrangement, ledger, catalogue, ledger.walkdowns()};
    std::ranges::reverse(look.walkdowns);
    std::vector<DueItem> items;
    for (const Upkeep& upkeep : catalogue.upkeep) {
        if (upkeep.every == Period::WhenAsked)
            continue;
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
