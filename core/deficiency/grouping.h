// Items in the groups in which they are worked: by zone, age, severity, day due, or person.
#pragma once

#include <string>
#include <vector>

#include "core/deficiency/item.h"

namespace latchround {

enum class GroupBy { Zone, Age, Severity, Due, Person };

/// Days since the first finding: more than 90, more than 30, more than 7, or fewer.
enum class AgeBand { OverQuarter, OverMonth, OverWeek, ThisWeek };
/// Overdue: the day due lies before today. Within 7 days, within 30, later, or no day was set.
enum class DueBand { Overdue, ThisWeek, ThisMonth, Later, NoDay };

/// Days from the first finding to `today`, ship's days.
int daysOpen(const Item& item, CalendarDate today);
AgeBand ageBand(const Item& item, CalendarDate today);
DueBand dueBand(const Item& item, CalendarDate today);

struct ItemGroup {
    /// Of a zone: its number, or both as "3/4" where the door stands between two; empty where it is
    /// not known. Of a person: the name, empty where nobody was named. Else empty.
    std::string name;
    int band = 0; ///< AgeBand, Severity or DueBand as a number; else 0
    std::vector<const Item*> items;
};

/// Groups in their order (zones from aft, worst band first, nobody last); in each what is
/// open first, then the most severe, then what is due first, then the oldest. Into the items given.
std::vector<ItemGroup> grouped(const std::vector<Item>& items, GroupBy by,
                               const Arrangement& arrangement, CalendarDate today);

} // namespace latchround
