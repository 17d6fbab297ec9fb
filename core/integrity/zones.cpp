#include "core/integrity/zones.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/requirement/applicability.h"

namespace latchround {

namespace {

constexpr double foot_m = 0.3048;

constexpr CalendarDate day(int year, unsigned month, unsigned day) {
    return {std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}
constexpr CalendarDate no_end = day(9999, 12, 31);

/// What a text says of ships laid down from a day on and before another.
struct TextOnZones {
    Regime regime;
    CalendarDate from;
    CalendarDate before;
    ZoneLimits limits;
};

constexpr std::array texts_on_zones{
    TextOnZones{Regime::SolasPassenger,
                day(1994, 10, 1),
                day(2002, 7, 1),
                {{}, 48, 1600, false, "SOLAS II-2/24.1.1, 24.2 (MSC.27(61), 1 Oct 1994)"}},
    TextOnZones{Regime::SolasPassenger,
                day(2002, 7, 1),
                no_end,
                {40, 48, 1600, false, "SOLAS II-2/9.2.2.1.2"}},
    TextOnZones{Regime::CanadaConvention,
                day(2002, 7, 1),
                no_end,
                {40, 48, 1600, false, "SOLAS II-2/9.2.2.1.2"}},
    TextOnZones{Regime::Canada,
                day(2017, 2, 3),
                no_end,
                {40, 48, 1600, false, "SOLAS II-2/9.2.2.1.2; SOR/2017-14, s. 102(1)"}},
    TextOnZones{
        Regime::UsH, day(1965, 5, 26), no_end, {131 * foot_m, {}, {}, false, "46 CFR 72.05-10(b)"}},
    TextOnZones{Regime::UsK, day(1996, 3, 11), no_end, {40, 44, {}, false, "46 CFR 116.415(d)(1)"}},
    TextOnZones{Regime::EuInland,
                day(2008, 12, 30),
                day(2018, 10, 7),
                {40, {}, {}, true, "Directive 2006/87/EC, annex II, art. 15.11(10)"}},
};

/// Zone number -> the representative of its group.
class Groups {
public:
    std::string rootOf(const std::string& zone) {
        std::string at = zone;
        while (m_parent.contains(at) && m_parent[at] != at)
            at = m_parent[at];
        return at;
    }
    void join(const std::string& one, const std::string& other) {
        const std::string root = rootOf(one);
        m_parent[rootOf(other)] = root;
    }

private:
    std::map<std::string, std::string> m_parent;
};

const Boundary* joinsTwoZones(const Arrangement& arrangement, const Door& door) {
    const Boundary* boundary = findBoundary(arrangement, door.boundary);
    const bool joins = boundary && boundary->place == Place::ZoneBulkhead &&
                       boundary->zone_aft != boundary->zone_forward;
    return joins ? boundary : nullptr;
}

std::optional<double> areaOf(const Arrangement& arrangement,
                             const std::vector<std::string>& zones) {
    double sum = 0;
    for (const std::string& number : zones) {
        const Zone* zone = findZone(arrangement, number);
        if (!zone || !zone->area_m2)
            return std::nullopt;
        sum += *zone->area_m2;
    }
    return sum;
}

void addOnce(std::vector<std::string>& list, const std::string& entry) {
    if (std::ranges::find(list, entry) == list.end())
        list.push_back(entry);
}

} // namespace

ZoneLimits zoneLimits(const Particulars& vessel) {
    if (!vessel.keel_laid || isOutsideReach(vessel))
        return {};
    for (const TextOnZones& text : texts_on_zones)
        if (text.regime == vessel.regime && *vessel.keel_laid >= text.from &&
            *vessel.keel_laid < text.before)
            return text.limits;
    return {};
}

std::vector<ActingZone> actingZones(const Arrangement& arrangement, const IsOpen& is_open) {
    Groups groups;
    std::vector<std::pair<const Door*, const Boundary*>> open;
    for (const Door& door : arrangement.doors) {
        const Boundary* boundary = joinsTwoZones(arrangement, door);
        if (!boundary || !is_open(door))
            continue;
        open.emplace_back(&door, boundary);
        groups.join(boundary->zone_aft, boundary->zone_forward);
    }
    std::vector<const Zone*> from_aft;
    for (const Zone& zone : arrangement.zones)
        from_aft.push_back(&zone);
    std::ranges::stable_sort(from_aft, {}, [](const Zone* zone) { return zone->aft_m; });
    std::map<std::string, ActingZone> by_root;
    std::vector<std::string> order;
    for (const Zone* zone : from_aft) {
        const std::string root = groups.rootOf(zone->number);
        if (!by_root.contains(root))
            order.push_back(root);
        by_root[root].zones.push_back(zone->number);
    }
    for (const auto& [door, boundary] : open) {
        ActingZone& group = by_root[groups.rootOf(boundary->zone_aft)];
        group.doors.push_back(door->number);
        addOnce(group.boundaries, boundary->id);
    }
    std::vector<ActingZone> acting;
    for (const std::string& root : order) {
        ActingZone& group = by_root[root];
        if (group.zones.size() < 2)
            continue;
        double forward = 0;
        for (const std::string& number : group.zones)
            forward = std::max(forward, findZone(arrangement, number)->forward_m);
        group.area_m2 = areaOf(arrangement, group.zones);
        group.limits = zoneLimits(arrangement.particulars);
        group.length_m = forward - findZone(arrangement, group.zones.front())->aft_m;
        acting.push_back(std::move(group));
    }
    return acting;
}

ActingZone ifItStaysOpen(const Arrangement& arrangement, const IsOpen& is_open, const Door& door) {
    const auto with_door = [&](const Door& other) {
        return other.number == door.number || is_open(other);
    };
    for (ActingZone& group : actingZones(arrangement, with_door))
        if (std::ranges::find(group.doors, door.number) != group.doors.end())
            return std::move(group);
    return {};
}

} // namespace latchround
