#include "core/evidence/newest_walkdown.h"

#include <algorithm>

namespace latchround {

std::optional<Walkdown> newestWalkdownOf(const Ledger& ledger, const std::string& door) {
    std::vector<Walkdown> walkdowns = ledger.walkdowns();
    std::optional<Walkdown> planned;
    while (!walkdowns.empty()) {
        Walkdown& newest = walkdowns.back();
        if (!ledger.evidenceOf(newest.id, door).empty())
            return std::move(newest);
        if (!planned && std::ranges::find(newest.plan.doors, door) != newest.plan.doors.end())
            planned = std::move(newest);
        walkdowns.pop_back();
    }
    return planned;
}

} // namespace latchround
