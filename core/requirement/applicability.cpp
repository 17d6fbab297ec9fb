#include "core/requirement/applicability.h"

#include <algorithm>
#include <optional>

namespace latchround {

namespace {

std::string_view said(Place place) {
    switch (place) {
    case Place::ZoneBulkhead:
        return "zone bulkhead";
    case Place::Stairway:
        return "stairway enclosure";
    case Place::Galley:
        return "galley boundary";
    case Place::Machinery:
        return "machinery space boundary";
    case Place::SpecialCategory:
        return "special category boundary";
    case Place::Cabin:
        return "cabin";
    case Place::Exterior:
        return "exterior";
    case Place::Other:
        break;
    }
    return "other boundary";
}

std::string_view said(DoorKind kind) {
    switch (kind) {
    case DoorKind::SingleLeaf:
        return "single leaf";
    case DoorKind::DoubleLeaf:
        return "double leaf";
    case DoorKind::Sliding:
        return "sliding";
    case DoorKind::DoubleSwing:
        break;
    }
    return "double swing";
}

/// Outcome of one condition. Words are gathered only where somebody asks why.
struct Fit {
    bool speak = false;
    bool holds = true;
    bool date_unknown = false;
    std::string held{};   ///< what held
    std::string failed{}; ///< the first that did not

    void need(bool met, std::string_view yes, std::string_view no) {
        if (speak && met)
            held += (held.empty() ? "" : ", ") + std::string(yes);
        if (speak && holds && !met)
            failed = no;
        holds = holds && met;
    }
    void need(const std::optional<bool>& wanted, bool actual, std::string_view yes,
              std::string_view no) {
        if (wanted)
            need(*wanted == actual, actual ? yes : no, actual ? yes : no);
    }
};

template <class T>
bool holdsOneOf(const std::vector<T>& wanted, T actual) {
    return wanted.empty() || std::ranges::find(wanted, actual) != wanted.end();
}

Fit fit(const DoorCondition& condition, const Door& door, Stand stand, bool speak) {
    const Place place = stand.place;
    Fit result{speak};
    if (condition.listed)
        result.need(*condition.listed == isListed(door, place),
                    *condition.listed ? said(place) : "not listed by II-2/9.4.1.1.5",
                    door.normally == NormalPosition::Locked ? "normally locked"
                    : door.watertight && door.power_operated
                        ? "power-operated watertight door"
                        : "not in a zone bulkhead, galley or stairway boundary");
    if (!condition.places.empty())
        result.need(holdsOneOf(condition.places, place), said(place), said(place));
    if (!condition.kinds.empty())
        result.need(holdsOneOf(condition.kinds, door.kind), said(door.kind), said(door.kind));
    if (condition.family == ClassFamily::A)
        result.need(isAClass(door.fire_class), "A class", "not an A-class door");
    if (condition.family == ClassFamily::B)
        result.need(isBClass(door.fire_class), "B class", "not a B-class door");
    result.need(condition.power_operated, door.power_operated, "power-operated",
                "not power-operated");
    result.need(condition.remote_release, isRemotelyReleased(door), "released remotely",
                "no remote release");
    result.need(condition.hold_back, door.hold_back, "held open", "not held open");
    result.need(condition.designed_to_reopen, door.designed_to_reopen, "designed to re-open",
                "not designed to re-open");
    result.need(condition.hose_port, door.hose_port, "hose port fitted", "no hose port");
    result.need(condition.escape_route, door.escape_route, "in an escape route",
                "not in an escape route");
    result.need(condition.sill_in_frame, door.sill_in_frame, "sill in its frame",
                "no sill in its frame");
    result.need(condition.latch, door.latch, "needs a latch", "needs no latch");
    result.need(condition.watertight, door.watertight, "watertight", "not watertight");
    result.need(condition.weathertight, door.weathertight, "weathertight", "not weathertight");
    result.need(condition.escape_trunk, door.escape_trunk, "emergency escape trunk",
                "not of an escape trunk");
    result.need(condition.special_category,
                door.special_category || place == Place::SpecialCategory, "special category space",
                "no special category space");
    result.need(condition.faces_embarkation, door.faces_embarkation,
                "faces embarkation or an escape deck", "faces no embarkation or escape deck");
    if (condition.division)
        result.need(*condition.division == stand.division, word(stand.division),
                    stand.division == Division::Deck ? "in a deck" : "not in a deck");
    if (!condition.normally.empty()) {
        const std::string_view kept = door.normally == NormalPosition::Open     ? "normally open"
                                      : door.normally == NormalPosition::Closed ? "normally closed"
                                                                                : "normally locked";
        result.need(holdsOneOf(condition.normally, door.normally), kept, kept);
    }
    result.need(condition.locked, door.normally == NormalPosition::Locked, "normally locked",
                "not normally locked");
    if (condition.installed_from) {
        if (door.installed)
            result.need(*door.installed >= *condition.installed_from,
                        speak ? "installed " + isoText(*door.installed) : "",
                        speak ? "installed before " + isoText(*condition.installed_from) : "");
        else if (result.holds)
            result.date_unknown = true;
    }
    return result;
}

} // namespace

bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door, Stand stand) {
    return conditions.empty() ||
           std::ranges::any_of(conditions, [&](const DoorCondition& condition) {
               return fit(condition, door, stand, false).holds;
           });
}

bool isListed(const Door& door, Place place) {
    const bool place_listed =
        place == Place::ZoneBulkhead || place == Place::Galley || place == Place::Stairway;
    const bool power_watertight = door.watertight && door.power_operated;
    return place_listed && !power_watertight && door.normally != NormalPosition::Locked;
}

namespace {

/// The first alternative that holds; else the first of all. An exemption undoes it.
Fit bestFit(const Requirement& requirement, const Door& door, Stand stand, bool speak) {
    Fit best{speak};
    if (!requirement.any_of.empty()) {
        best = fit(requirement.any_of.front(), door, stand, speak);
        for (std::size_t i = 1; !best.holds && i < requirement.any_of.size(); ++i)
            if (Fit found = fit(requirement.any_of[i], door, stand, speak); found.holds)
                best = std::move(found);
    }
    for (const DoorCondition& exempt : requirement.none_of)
        if (const Fit found = fit(exempt, door, stand, speak); best.holds && found.holds)
            best.need(false, {}, speak ? "exempt: " + found.held : std::string());
    return best;
}

bool bindsAge(const Requirement& requirement, const Particulars& vessel) {
    return !requirement.keel_from ||
           (vessel.keel_laid && *vessel.keel_laid >= *requirement.keel_from);
}

bool bindsFlag(const Requirement& requirement, const Particulars& vessel) {
    return holdsOneOf(requirement.regimes, vessel.regime);
}

bool advisesFlag(const Requirement& requirement, const Particulars& vessel) {
    return std::ranges::find(requirement.advises, vessel.regime) != requirement.advises.end();
}

} // namespace

const Requirement& inForce(const Requirement& requirement, const Particulars& vessel,
                           const Door& door, Stand stand) {
    for (const Requirement& variant : requirement.variants)
        if (bindsFlag(variant, vessel) && bestFit(variant, door, stand, false).holds)
            return variant;
    return requirement;
}

bool speaksTo(const Requirement& requirement, const Particulars& vessel) {
    return bindsFlag(requirement, vessel) || advisesFlag(requirement, vessel);
}

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               Stand stand) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel))
        return Asked::No;
    const Fit best = bestFit(requirement, door, stand, false);
    if (!best.holds)
        return Asked::No;
    return binds && bindsAge(requirement, vessel) && !best.date_unknown ? Asked::Yes
                                                                        : Asked::Advice;
}

std::string askedBecause(const Requirement& requirement, const Particulars& vessel,
                         const Door& door, Stand stand) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel))
        return "a text of other ships: " + requirement.issuer;
    const Fit best = bestFit(requirement, door, stand, true);
    if (!best.holds)
        return best.failed;
    const std::string held = best.held.empty() ? "every door" : best.held;
    if (!binds)
        return held + "; the vessel's own flag has its own text";
    if (!bindsAge(requirement, vessel))
        return held + (vessel.keel_laid ? "; keel laid before " + isoText(*requirement.keel_from) +
                                              ": compare with the approved drawing"
                                        : "; keel date unknown: compare with the approved drawing");
    if (best.date_unknown)
        return held + "; date of installation unknown";
    return requirement.keel_from ? held + ", keel laid " + isoText(*vessel.keel_laid) : held;
}

} // namespace latchround
