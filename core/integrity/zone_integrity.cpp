#include "core/integrity/zone_integrity.h"

#include <algorithm>
#include <tuple>

namespace latchround {

namespace {

double longest(const std::vector<ActingZone>& acting) {
    double length = 0;
    for (const ActingZone& group : acting)
        length = std::max(length, group.length_m);
    return length;
}

std::vector<ActingZone> actingWithout(const Arrangement& arrangement, const HoldingOf& holding,
                                      const std::string& mended) {
    return actingZones(arrangement, [&](const Door& door) {
        return door.boundary != mended && holding(door) == Holding::Fails;
    });
}

Repair repairOf(const Arrangement& arrangement, const HoldingOf& holding,
                const std::vector<ActingZone>& failing, const std::string& boundary) {
    Repair repair;
    repair.boundary = boundary;
    for (const Door& door : arrangement.doors)
        if (door.boundary == boundary && holding(door) == Holding::Fails)
            repair.doors.push_back(door.number);
    repair.longest_before_m = longest(failing);
    repair.longest_after_m = longest(actingWithout(arrangement, holding, boundary));
    return repair;
}

std::optional<Repair> bestRepair(const Arrangement& arrangement, const HoldingOf& holding,
                                 const std::vector<ActingZone>& failing) {
    std::optional<Repair> best;
    const auto cost = [](const Repair& repair) {
        return std::tuple(repair.doors.size(), repair.longest_after_m);
    };
    for (const ActingZone& group : failing)
        for (const std::string& boundary : group.boundaries) {
            Repair repair = repairOf(arrangement, holding, failing, boundary);
            if (!best || cost(repair) < cost(*best))
                best = std::move(repair);
        }
    return best;
}

} // namespace

ZoneIntegrity zoneIntegrity(const Arrangement& arrangement, const HoldingOf& holding) {
    ZoneIntegrity integrity;
    integrity.failing =
        actingZones(arrangement, [&](const Door& door) { return holding(door) == Holding::Fails; });
    for (ActingZone& group : actingZones(
             arrangement, [&](const Door& door) { return holding(door) != Holding::Holds; })) {
        const bool known = std::ranges::any_of(integrity.failing, [&](const ActingZone& failing) {
            return failing.zones == group.zones;
        });
        if (!known)
            integrity.not_shown.push_back(std::move(group));
    }
    integrity.best_repair = bestRepair(arrangement, holding, integrity.failing);
    return integrity;
}

} // namespace latchround
