#include "core/deficiency/grouping.h"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

#include "core/evidence/moment_text.h"

namespace latchround {

namespace {

int daysBetween(CalendarDate from, CalendarDate to) {
    return int((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

/// Days to the day due; beyond every day where none was set.
int daysLeft(const Item& item, CalendarDate today) {
    return item.due ? daysBetween(today, *item.due) : std::numeric_limits<int>::max();
}

/// How groups stand: by this number, then by name.
using Rank = std::tuple<double, std::string>;

struct Placed {
    Rank place;
    ItemGroup group;
};

Placed placeByZone(const Item& item, const Arrangement& arrangement) {
    const Door* door = findDoor(arrangement, item.door);
    const Boundary* boundary = door ? findBoundary(arrangement, door->boundary) : nullptr;
    Placed placed;
    if (!boundary || boundary->zone_aft.empty()) {
        placed.place = {std::numeric_limits<double>::max(), ""};
        return placed;
    }
    placed.group.name = boundary->zone_aft;
    const Zone* aft = findZone(arrangement, boundary->zone_aft);
    double at = aft ? aft->aft_m : 0;
    if (!boundary->zone_forward.empty() && boundary->zone_forward != boundary->zone_aft) {
        placed.group.name += '/' + boundary->zone_forward;
        at = aft ? aft->forward_m - 0.001 : at; // after the zone itself, before the next
    }
    placed.place = {at, placed.group.name};
    return placed;
}

Placed placeOf(const Item& item, GroupBy by, const Arrangement& arrangement, CalendarDate today) {
    Placed placed;
    switch (by) {
    case GroupBy::Zone:
        return placeByZone(item, arrangement);
    case GroupBy::Age:
        placed.group.band = int(ageBand(item, today));
        break;
    case GroupBy::Severity:
        placed.group.band = int(item.severity);
        break;
    case GroupBy::Due:
        placed.group.band = int(dueBand(item, today));
        break;
    case GroupBy::Person:
        placed.group.name = item.assigned;
        placed.place = {item.assigned.empty() ? 1 : 0, item.assigned};
        return placed;
    }
    placed.place = {placed.group.band, ""};
    return placed;
}

} // namespace

int daysOpen(const Item& item, CalendarDate today) {
    return daysBetween(shipsDay(item.findings.front().stamp.when), today);
}

AgeBand ageBand(const Item& item, CalendarDate today) {
    const int days = daysOpen(item, today);
    if (days > 90)
        return AgeBand::OverQuarter;
    if (days > 30)
        return AgeBand::OverMonth;
    return days > 7 ? AgeBand::OverWeek : AgeBand::ThisWeek;
}

DueBand dueBand(const Item& item, CalendarDate today) {
    if (!item.due)
        return DueBand::NoDay;
    const int days = daysLeft(item, today);
    if (days < 0)
        return DueBand::Overdue;
    if (days <= 7)
        return DueBand::ThisWeek;
    return days <= 30 ? DueBand::ThisMonth : DueBand::Later;
}

std::vector<ItemGroup> grouped(const std::vector<Item>& items, GroupBy by,
                               const Arrangement& arrangement, CalendarDate today) {
    std::map<Rank, ItemGroup> by_place;
    for (const Item& item : items) {
        Placed placed = placeOf(item, by, arrangement, today);
        by_place.try_emplace(std::move(placed.place), std::move(placed.group))
            .first->second.items.push_back(&item);
    }
    std::vector<ItemGroup> groups;
    for (auto& [place, group] : by_place) {
        std::ranges::stable_sort(group.items, {}, [&](const Item* item) {
            return std::tuple(!item->isOpen(), item->severity, daysLeft(*item, today), item->id);
        });
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace latchround
