#include "core/requirement/applicability.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/requirement/applicability_phrases.h"

namespace latchround {

namespace {

PhraseCode<0> said(Place place) {
    switch (place) {
    case Place::ZoneBulkhead:
        return applies::zone_bulkhead;
    case Place::Stairway:
        return applies::stairway_enclosure;
    case Place::Galley:
        return applies::galley_boundary;
    case Place::Machinery:
        return applies::machinery_boundary;
    case Place::SpecialCategory:
        return applies::special_category_boundary;
    case Place::Cabin:
        return applies::cabin;
    case Place::Exterior:
        return applies::exterior;
    case Place::Other:
        break;
    }
    return applies::other_boundary;
}

PhraseCode<0> said(DoorKind kind) {
    switch (kind) {
    case DoorKind::SingleLeaf:
        return applies::single_leaf;
    case DoorKind::DoubleLeaf:
        return applies::double_leaf;
    case DoorKind::Sliding:
        return applies::sliding;
    case DoorKind::DoubleSwing:
        break;
    }
    return applies::double_swing;
}

/// Outcome of one condition. Phrases are made only where somebody asks why.
struct Fit {
    bool wants_reason = false;
    bool holds = true;
    bool date_unknown = false;
    std::vector<Phrase> held{}; ///< what held
    Phrase failed{};            ///< the first that did not

    /// `yes` and `no` make a phrase when called, as a code does.
    template <class Yes, class No>
    void need(bool met, const Yes& yes, const No& no) {
        if (wants_reason && met)
            held.push_back(yes());
        if (wants_reason && holds && !met)
            failed = no();
        holds = holds && met;
    }
    void need(const std::optional<bool>& wanted, bool actual, const PhraseCode<0>& yes,
              const PhraseCode<0>& no) {
        if (wanted)
            need(*wanted == actual, actual ? yes : no, actual ? yes : no);
    }
};

template <class T>
bool holdsOneOf(const std::vector<T>& wanted, T actual) {
    return wanted.empty() || std::ranges::find(wanted, actual) != wanted.end();
}

Fit fit(const DoorCondition& condition, const Door& door, DoorLocation location,
        bool wants_reason) {
    const Place place = location.place;
    Fit result{wants_reason};
    if (condition.listed)
        result.need(*condition.listed == isListed(door, place),
                    *condition.listed ? said(place) : applies::not_listed,
                    door.normally == NormalPosition::Locked  ? applies::normally_locked
                    : door.watertight && door.power_operated ? applies::power_watertight
                                                             : applies::not_in_listed_place);
    if (!condition.places.empty())
        result.need(holdsOneOf(condition.places, place), said(place), said(place));
    if (!condition.kinds.empty())
        result.need(holdsOneOf(condition.kinds, door.kind), said(door.kind), said(door.kind));
    if (condition.family == ClassFamily::A)
        result.need(isAClass(door.fire_class), applies::a_class, applies::not_a_class);
    if (condition.family == ClassFamily::B)
        result.need(isBClass(door.fire_class), applies::b_class, applies::not_b_class);
    result.need(condition.power_operated, door.power_operated, applies::power_operated,
                applies::not_power_operated);
    result.need(condition.remote_release, isRemotelyReleased(door), applies::released_remotely,
                applies::no_remote_release);
    result.need(condition.hold_back, door.hold_back, applies::held_open, applies::not_held_open);
    result.need(condition.designed_to_reopen, door.designed_to_reopen, applies::designed_to_reopen,
                applies::not_designed_to_reopen);
    result.need(condition.hose_port, door.hose_port, applies::hose_port, applies::no_hose_port);
    result.need(condition.escape_route, door.escape_route, applies::in_escape_route,
                applies::not_in_escape_route);
    result.need(condition.sill_in_frame, door.sill_in_frame, applies::sill_in_frame,
                applies::no_sill_in_frame);
    result.need(condition.latch, door.latch, applies::needs_latch, applies::needs_no_latch);
    result.need(condition.watertight, door.watertight, applies::watertight,
                applies::not_watertight);
    result.need(condition.weathertight, door.weathertight, applies::weathertight,
                applies::not_weathertight);
    result.need(condition.escape_trunk, door.escape_trunk, applies::escape_trunk,
                applies::not_of_escape_trunk);
    result.need(condition.special_category,
                door.special_category || place == Place::SpecialCategory,
                applies::special_category_space, applies::no_special_category_space);
    result.need(condition.faces_embarkation, door.faces_embarkation, applies::faces_embarkation,
                applies::faces_no_embarkation);
    if (condition.division)
        result.need(*condition.division == location.division,
                    location.division == Division::Deck ? applies::deck : applies::bulkhead,
                    location.division == Division::Deck ? applies::in_deck : applies::not_in_deck);
    if (!condition.normally.empty()) {
        const PhraseCode<0> kept = door.normally == NormalPosition::Open ? applies::normally_open
                                   : door.normally == NormalPosition::Closed
                                       ? applies::normally_closed
                                       : applies::normally_locked;
        result.need(holdsOneOf(condition.normally, door.normally), kept, kept);
    }
    result.need(condition.locked, door.normally == NormalPosition::Locked, applies::normally_locked,
                applies::not_normally_locked);
    if (condition.installed_from) {
        if (door.installed)
            result.need(
                *door.installed >= *condition.installed_from,
                [&] { return applies::installed(isoText(*door.installed)); },
                [&] { return applies::installed_before(isoText(*condition.installed_from)); });
        else if (result.holds)
            result.date_unknown = true;
    }
    return result;
}

} // namespace

bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                DoorLocation location) {
    return conditions.empty() ||
           std::ranges::any_of(conditions, [&](const DoorCondition& condition) {
               return fit(condition, door, location, false).holds;
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
Fit bestFit(const Requirement& requirement, const Door& door, DoorLocation location,
            bool wants_reason) {
    Fit best{wants_reason};
    if (!requirement.any_of.empty()) {
        best = fit(requirement.any_of.front(), door, location, wants_reason);
        for (std::size_t i = 1; !best.holds && i < requirement.any_of.size(); ++i)
            if (Fit found = fit(requirement.any_of[i], door, location, wants_reason); found.holds)
                best = std::move(found);
    }
    for (const DoorCondition& exempt : requirement.none_of)
        if (const Fit found = fit(exempt, door, location, wants_reason); best.holds && found.holds)
            best.need(
                false, [] { return Phrase(); },
                [&] { return applies::exempt(joined(phrase::with_commas, found.held)); });
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
                           const Door& door, DoorLocation location) {
    for (const Requirement& variant : requirement.variants)
        if (bindsFlag(variant, vessel) && bestFit(variant, door, location, false).holds)
            return variant;
    return requirement;
}

bool speaksTo(const Requirement& requirement, const Particulars& vessel) {
    return bindsFlag(requirement, vessel) || advisesFlag(requirement, vessel);
}

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               DoorLocation location) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel))
        return Asked::No;
    const Fit best = bestFit(requirement, door, location, false);
    if (!best.holds)
        return Asked::No;
    return binds && bindsAge(requirement, vessel) && !best.date_unknown ? Asked::Yes
                                                                        : Asked::Advice;
}

Phrase askedBecause(const Requirement& requirement, const Particulars& vessel, const Door& door,
                    DoorLocation location) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel))
        return applies::text_of_other_ships(requirement.issuer);
    const Fit best = bestFit(requirement, door, location, true);
    if (!best.holds)
        return best.failed;
    const Phrase held =
        best.held.empty() ? applies::every_door() : joined(phrase::with_commas, best.held);
    const auto but = [&](Phrase why_advice) {
        return joined(phrase::with_semicolons, {held, std::move(why_advice)});
    };
    if (!binds)
        return but(applies::flag_has_own_text());
    if (!bindsAge(requirement, vessel))
        return but(vessel.keel_laid ? applies::keel_before(isoText(*requirement.keel_from))
                                    : applies::keel_unknown());
    if (best.date_unknown)
        return but(applies::installation_unknown());
    return requirement.keel_from
               ? joined(phrase::with_commas, {held, applies::keel_laid(isoText(*vessel.keel_laid))})
               : held;
}

} // namespace latchround
