#include "core/requirement/applicability.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/requirement/applicability_phrases.h"
#include "core/requirement/category_a.h"
#include "core/requirement/row_dates.h"
#include "core/requirement/said_of_door.h"

namespace latchround {

namespace {

/// Outcome of one condition. Phrases are made only where somebody asks why.
struct Fit {
    bool wants_reason = false;
    bool holds = true;
    bool is_known = true;                     ///< the register says all that it hangs on
    std::optional<PhraseCode<0>> not_shown{}; ///< what the register would have to say to bind
    std::vector<Phrase> held{};               ///< what held
    Phrase failed{};                          ///< the first that did not

    /// `yes` and `no` make a phrase when called, as a code does.
    template <class Yes, class No>
    void need(bool met, const Yes& yes, const No& no) {
        if (wants_reason && met)
            held.push_back(yes());
        if (wants_reason && holds && !met)
            failed = no();
        holds = holds && met;
    }
    /// What is not said counts as met.
    void need(const std::optional<bool>& wanted, const Said& actual, const PhraseCode<0>& yes,
              const PhraseCode<0>& no) {
        if (!wanted)
            return;
        is_known = is_known && actual.isKnown();
        const auto of_door = [&] {
            return actual.isKnown() ? (actual ? yes() : no())
                                    : applies::not_on_record((*wanted ? yes : no)());
        };
        need(!actual.isKnown() || *wanted == actual.word, of_door, of_door);
    }
    /// As far as the register goes it may be so: asked, and a failure is the inspector's.
    void leaveToInspector(const PhraseCode<0>& because) {
        is_known = false;
        if (holds)
            not_shown = because;
    }
    bool exempts() const { return holds && is_known; }
};

template <class T>
bool holdsOneOf(const std::vector<T>& wanted, T actual) {
    return wanted.empty() || std::ranges::find(wanted, actual) != wanted.end();
}

struct Standing {
    const Door& door;
    const DoorLocation& location;
    const Particulars* vessel; ///< null: nothing is known of it
};

PhraseCode<0> whyNotListed(const Door& door) {
    return door.normally == NormalPosition::Locked  ? applies::normally_locked
           : door.watertight && door.power_operated ? applies::power_watertight
                                                    : applies::not_in_listed_place;
}

/// A lower door in an A-class boundary is asked what the boundary asks, and freed of nothing by it.
enum class For { Asking, Exempting };

Fit fit(const DoorCondition& condition, const Standing& standing, bool wants_reason,
        For use = For::Asking) {
    const Door& door = standing.door;
    const DoorLocation& location = standing.location;
    const Place place = location.place;
    Fit result{wants_reason};
    const Said listed = isListed(door, place);
    if (condition.listed && !listed.isKnown())
        result.leaveToInspector(applies::special_category_not_known);
    else
        result.need(condition.listed, listed, said(place),
                    condition.listed.value_or(true) ? whyNotListed(door) : applies::not_listed);
    if (!condition.regimes.empty() && standing.vessel)
        result.need(holdsOneOf(condition.regimes, standing.vessel->regime),
                    said(standing.vessel->regime), said(standing.vessel->regime));
    if (!condition.places.empty())
        result.need(holdsOneOf(condition.places, place), said(place), said(place));
    if (!condition.kinds.empty())
        result.need(holdsOneOf(condition.kinds, door.kind), said(door.kind), said(door.kind));
    if (condition.family == ClassFamily::A) {
        const bool by_boundary = use == For::Asking && location.family == BoundaryFamily::A;
        const bool of_door = isAClass(door.fire_class);
        result.need(of_door || by_boundary, of_door ? applies::a_class : applies::a_class_boundary,
                    applies::not_a_class);
    }
    if (condition.family == ClassFamily::B)
        result.need(isBClass(door.fire_class), applies::b_class, applies::not_b_class);
    if (condition.boundary_class != BoundaryFamily::Any) {
        const bool by_door =
            !location.family && condition.boundary_class != BoundaryFamily::NotKnown;
        const BoundaryFamily family = location.family.value_or(by_door ? familyOf(door.fire_class)
                                                                       : BoundaryFamily::NotKnown);
        const PhraseCode<0> of_family = by_door ? applies::by_own_class : said(family);
        result.need(condition.boundary_class == family, of_family, of_family);
        result.is_known = result.is_known && location.family.has_value();
        if (location.division == Division::Deck && standing.vessel &&
            standing.vessel->regime == Regime::UsH)
            result.leaveToInspector(applies::text_of_bulkheads);
    }
    result.need(condition.plan_below_tables, Said(location.plan_below_tables),
                applies::plan_below_tables, applies::plan_not_below_tables);
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
    const Said special = place == Place::SpecialCategory ? Said(true) : door.special_category;
    if (condition.special_category == true && !special.isKnown())
        result.leaveToInspector(applies::special_category_not_known);
    else
        result.need(condition.special_category, special, applies::special_category_space,
                    applies::no_special_category_space);
    result.need(condition.faces_embarkation, door.faces_embarkation, applies::faces_embarkation,
                applies::faces_no_embarkation);
    if (condition.category_a) {
        const CategoryA category = boundsCategoryA(place, location.spaces, standing.vessel);
        if (category == CategoryA::MayBe)
            result.leaveToInspector(applies::category_a_not_known);
        else
            result.need(condition.category_a,
                        category == CategoryA::NotSaid ? Said() : Said(category == CategoryA::Yes),
                        applies::category_a, applies::not_category_a);
    }
    if (condition.over_36 && standing.vessel)
        result.need(condition.over_36, isOver36(*standing.vessel), applies::over_36,
                    applies::not_over_36);
    if (condition.over_600 && standing.vessel)
        result.need(condition.over_600, standing.vessel->passengers > 600, applies::over_600,
                    applies::not_over_600);
    if (condition.division)
        result.need(*condition.division == location.division,
                    location.division == Division::Deck ? applies::deck : applies::bulkhead,
                    location.division == Division::Deck ? applies::in_deck : applies::not_in_deck);
    if (!condition.normally.empty()) {
        const PhraseCode<0> kept = said(door.normally);
        result.need(holdsOneOf(condition.normally, door.normally), kept, kept);
        // Open is also what a door counts as of which neither is said.
        result.is_known =
            result.is_known && (door.normally != NormalPosition::Open || door.hold_back.isKnown());
    }
    result.need(condition.locked, door.normally == NormalPosition::Locked, applies::normally_locked,
                applies::not_normally_locked);
    if (condition.installed_from) {
        const bool of_new_ship = standing.vessel && standing.vessel->keel_laid &&
                                 *standing.vessel->keel_laid >= *condition.installed_from;
        if (door.installed)
            result.need(
                *door.installed >= *condition.installed_from,
                [&] { return applies::installed(isoText(*door.installed)); },
                [&] { return applies::installed_before(isoText(*condition.installed_from)); });
        else if (of_new_ship) // no door is older than its ship
            result.need(true, applies::fitted_with_ship, applies::fitted_with_ship);
        else
            result.leaveToInspector(applies::installation_unknown);
    }
    return result;
}

} // namespace

BoundaryFamily familyOf(FireClass fire_class) {
    return isAClass(fire_class)   ? BoundaryFamily::A
           : isBClass(fire_class) ? BoundaryFamily::B
                                  : BoundaryFamily::C;
}

bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                const DoorLocation& location) {
    return conditions.empty() ||
           std::ranges::any_of(conditions, [&](const DoorCondition& condition) {
               return fit(condition, {door, location, nullptr}, false).holds;
           });
}

bool isShownToMeetOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                        const DoorLocation& location) {
    return std::ranges::any_of(conditions, [&](const DoorCondition& condition) {
        return fit(condition, {door, location, nullptr}, false, For::Exempting).exempts();
    });
}

Said isListed(const Door& door, Place place) {
    const bool power_watertight = door.watertight && door.power_operated;
    if (power_watertight || door.normally == NormalPosition::Locked)
        return false;
    const bool in_listed_place = place == Place::ZoneBulkhead || place == Place::Galley ||
                                 place == Place::Stairway || place == Place::SpecialCategory;
    return in_listed_place ? Said(true) : door.special_category;
}

bool isOutsideReach(const Particulars& vessel) {
    switch (vessel.regime) {
    case Regime::UsK:
        return vessel.passengers < 50;
    case Regime::CanadaDay:
        return vessel.passengers >= 100 || (vessel.length_m > 0 && vessel.length_m < 24);
    default:
        return false;
    }
}

namespace {

/// The first alternative that is shown to hold; else the first that may; else the first of all. An
/// exemption undoes it.
Fit bestFit(const Requirement& requirement, const Standing& standing, bool wants_reason) {
    Fit best{wants_reason};
    if (!requirement.any_of.empty()) {
        best = fit(requirement.any_of.front(), standing, wants_reason);
        const auto isShown = [](const Fit& found) { return found.holds && !found.not_shown; };
        for (std::size_t i = 1; !isShown(best) && i < requirement.any_of.size(); ++i)
            if (Fit found = fit(requirement.any_of[i], standing, wants_reason);
                isShown(found) || (found.holds && !best.holds))
                best = std::move(found);
    }
    for (const DoorCondition& exempt : requirement.none_of)
        if (const Fit found = fit(exempt, standing, wants_reason, For::Exempting);
            best.holds && found.exempts())
            best.need(
                false, [] { return Phrase(); },
                [&] { return applies::exempt(joined(phrase::with_commas, found.held)); });
    return best;
}

bool bindsFlag(const Requirement& requirement, const Particulars& vessel) {
    return holdsOneOf(requirement.regimes, vessel.regime);
}

bool advisesFlag(const Requirement& requirement, const Particulars& vessel) {
    return std::ranges::find(requirement.advises, vessel.regime) != requirement.advises.end();
}

/// The first variant for ships of this flag; null where it has none.
const Requirement* variantOfFlag(const Requirement& requirement, const Particulars& vessel) {
    const auto found = std::ranges::find_if(requirement.variants, [&](const Requirement& variant) {
        return bindsFlag(variant, vessel);
    });
    return found == requirement.variants.end() ? nullptr : &*found;
}

} // namespace

const Requirement& inForce(const Requirement& requirement, const Particulars& vessel,
                           const Door& door, const DoorLocation& location) {
    const Standing standing{door, location, &vessel};
    for (const Requirement& variant : requirement.variants)
        if (bindsFlag(variant, vessel) && isOfDate(variant, requirement, vessel) &&
            bestFit(variant, standing, false).holds)
            return variant;
    return requirement;
}

bool speaksTo(const Requirement& requirement, const Particulars& vessel) {
    return bindsFlag(requirement, vessel) || advisesFlag(requirement, vessel) ||
           variantOfFlag(requirement, vessel);
}

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               const DoorLocation& location) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel))
        return Asked::No;
    const Fit best = bestFit(requirement, {door, location, &vessel}, false);
    if (!best.holds)
        return Asked::No;
    const Asked by_date = askedByDate(requirement, vessel);
    if (by_date == Asked::No)
        return Asked::No;
    if (!binds)
        return Asked::Advice;
    return by_date == Asked::Yes && (best.not_shown || isOutsideReach(vessel)) ? Asked::Judge
                                                                               : by_date;
}

bool isShownToBeAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
                      const DoorLocation& location) {
    const Standing standing{door, location, &vessel};
    const auto asks = [&](const DoorCondition& condition) {
        const Fit found = fit(condition, standing, false);
        return found.holds && found.is_known;
    };
    const auto may_exempt = [&](const DoorCondition& condition) {
        return fit(condition, standing, false, For::Exempting).holds;
    };
    return (requirement.any_of.empty() || std::ranges::any_of(requirement.any_of, asks)) &&
           std::ranges::none_of(requirement.none_of, may_exempt);
}

Phrase askedBecause(const Requirement& requirement, const Particulars& vessel, const Door& door,
                    const DoorLocation& location) {
    const bool binds = bindsFlag(requirement, vessel);
    if (!binds && !advisesFlag(requirement, vessel)) {
        const Requirement* own = variantOfFlag(requirement, vessel);
        const Fit fit_of_own =
            own ? bestFit(*own, {door, location, &vessel}, true) : Fit{.wants_reason = true};
        return fit_of_own.holds ? applies::text_of_other_ships(requirement.issuer)
                                : fit_of_own.failed;
    }
    const Fit best = bestFit(requirement, {door, location, &vessel}, true);
    if (!best.holds)
        return best.failed;
    const Asked by_date = askedByDate(requirement, vessel);
    if (by_date == Asked::No)
        return applies::text_of_other_dates(isoText(*vessel.keel_laid));
    const bool by_nothing_shown = best.held.empty() && best.not_shown;
    const Phrase held = by_nothing_shown    ? (*best.not_shown)()
                        : best.held.empty() ? applies::every_door()
                                            : joined(phrase::with_commas, best.held);
    const auto but = [&](Phrase why_advice) {
        return joined(phrase::with_semicolons, {held, std::move(why_advice)});
    };
    if (!binds)
        return but(vessel.regime == Regime::Other ? applies::no_text_binds()
                                                  : applies::flag_has_own_text());
    if (by_date != Asked::Yes)
        return but(whyOfDate(requirement, vessel));
    if (best.not_shown)
        return by_nothing_shown ? held : but((*best.not_shown)());
    if (isOutsideReach(vessel))
        return but(applies::outside_reach());
    return (requirement.keel_from || requirement.keel_before) && vessel.keel_laid
               ? joined(phrase::with_commas, {held, applies::keel_laid(isoText(*vessel.keel_laid))})
               : held;
}

} // namespace latchround
