// Why a row is asked of a door, or is not.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::applies {

// What the door is, how it is fitted and where it stands.
inline constexpr PhraseCode<0> zone_bulkhead{"applies-zone-bulkhead"};
inline constexpr PhraseCode<0> stairway_enclosure{"applies-stairway-enclosure"};
inline constexpr PhraseCode<0> galley_boundary{"applies-galley-boundary"};
inline constexpr PhraseCode<0> machinery_boundary{"applies-machinery-boundary"};
inline constexpr PhraseCode<0> special_category_boundary{"applies-special-category-boundary"};
inline constexpr PhraseCode<0> cabin{"applies-cabin"};
inline constexpr PhraseCode<0> exterior{"applies-exterior"};
inline constexpr PhraseCode<0> other_boundary{"applies-other-boundary"};
inline constexpr PhraseCode<0> single_leaf{"applies-single-leaf"};
inline constexpr PhraseCode<0> double_leaf{"applies-double-leaf"};
inline constexpr PhraseCode<0> sliding{"applies-sliding"};
inline constexpr PhraseCode<0> double_swing{"applies-double-swing"};
inline constexpr PhraseCode<0> not_listed{"applies-not-listed"};
inline constexpr PhraseCode<0> normally_locked{"applies-normally-locked"};
inline constexpr PhraseCode<0> power_watertight{"applies-power-watertight"};
inline constexpr PhraseCode<0> not_in_listed_place{"applies-not-in-listed-place"};
inline constexpr PhraseCode<0> a_class{"applies-a-class"};
inline constexpr PhraseCode<0> not_a_class{"applies-not-a-class"};
inline constexpr PhraseCode<0> b_class{"applies-b-class"};
inline constexpr PhraseCode<0> not_b_class{"applies-not-b-class"};
inline constexpr PhraseCode<0> a_class_boundary{"applies-a-class-boundary"};
inline constexpr PhraseCode<0> b_class_boundary{"applies-b-class-boundary"};
inline constexpr PhraseCode<0> plan_below_tables{"applies-plan-below-tables"};
inline constexpr PhraseCode<0> plan_not_below_tables{"applies-plan-not-below-tables"};
inline constexpr PhraseCode<0> special_category_not_known{"applies-special-category-not-known"};
inline constexpr PhraseCode<0> fitted_with_ship{"applies-fitted-with-ship"};
inline constexpr PhraseCode<0> outside_reach{"applies-outside-reach"};
inline constexpr PhraseCode<0> text_of_bulkheads{"applies-text-of-bulkheads"};
inline constexpr PhraseCode<0> c_class_boundary{"applies-c-class-boundary"};
inline constexpr PhraseCode<0> c_prime_boundary{"applies-c-prime-boundary"};
inline constexpr PhraseCode<0> boundary_class_not_known{"applies-boundary-class-not-known"};
/// Instead of the class of the boundary.
inline constexpr PhraseCode<0> by_own_class{"applies-by-own-class"};
inline constexpr PhraseCode<0> over_600{"applies-over-600"};
inline constexpr PhraseCode<0> not_over_600{"applies-not-over-600"};
inline constexpr PhraseCode<0> power_operated{"applies-power-operated"};
inline constexpr PhraseCode<0> not_power_operated{"applies-not-power-operated"};
inline constexpr PhraseCode<0> released_remotely{"applies-released-remotely"};
inline constexpr PhraseCode<0> no_remote_release{"applies-no-remote-release"};
inline constexpr PhraseCode<0> held_open{"applies-held-open"};
inline constexpr PhraseCode<0> not_held_open{"applies-not-held-open"};
inline constexpr PhraseCode<0> designed_to_reopen{"applies-designed-to-reopen"};
inline constexpr PhraseCode<0> not_designed_to_reopen{"applies-not-designed-to-reopen"};
inline constexpr PhraseCode<0> hose_port{"applies-hose-port"};
inline constexpr PhraseCode<0> no_hose_port{"applies-no-hose-port"};
inline constexpr PhraseCode<0> in_escape_route{"applies-in-escape-route"};
inline constexpr PhraseCode<0> not_in_escape_route{"applies-not-in-escape-route"};
inline constexpr PhraseCode<0> sill_in_frame{"applies-sill-in-frame"};
inline constexpr PhraseCode<0> no_sill_in_frame{"applies-no-sill-in-frame"};
inline constexpr PhraseCode<0> needs_latch{"applies-needs-latch"};
inline constexpr PhraseCode<0> needs_no_latch{"applies-needs-no-latch"};
inline constexpr PhraseCode<0> watertight{"applies-watertight"};
inline constexpr PhraseCode<0> not_watertight{"applies-not-watertight"};
inline constexpr PhraseCode<0> weathertight{"applies-weathertight"};
inline constexpr PhraseCode<0> not_weathertight{"applies-not-weathertight"};
inline constexpr PhraseCode<0> escape_trunk{"applies-escape-trunk"};
inline constexpr PhraseCode<0> not_of_escape_trunk{"applies-not-of-escape-trunk"};
inline constexpr PhraseCode<0> special_category_space{"applies-special-category-space"};
inline constexpr PhraseCode<0> no_special_category_space{"applies-no-special-category-space"};
inline constexpr PhraseCode<0> faces_embarkation{"applies-faces-embarkation"};
inline constexpr PhraseCode<0> faces_no_embarkation{"applies-faces-no-embarkation"};
inline constexpr PhraseCode<0> category_a{"applies-category-a"};
inline constexpr PhraseCode<0> not_category_a{"applies-not-category-a"};
inline constexpr PhraseCode<0> category_a_not_known{"applies-category-a-not-known"};
inline constexpr PhraseCode<0> over_36{"applies-over-36"};
inline constexpr PhraseCode<0> not_over_36{"applies-not-over-36"};
inline constexpr PhraseCode<0> bulkhead{"applies-bulkhead"};
inline constexpr PhraseCode<0> deck{"applies-deck"};
inline constexpr PhraseCode<0> in_deck{"applies-in-deck"};
inline constexpr PhraseCode<0> not_in_deck{"applies-not-in-deck"};
inline constexpr PhraseCode<0> normally_open{"applies-normally-open"};
inline constexpr PhraseCode<0> normally_closed{"applies-normally-closed"};
inline constexpr PhraseCode<0> not_normally_locked{"applies-not-normally-locked"};

inline constexpr PhraseCode<0> every_door{"applies-every-door"};
/// What would make it asked; the register does not say.
inline constexpr PhraseCode<1> not_on_record{"applies-not-on-record"};
inline constexpr PhraseCode<1> exempt{"applies-exempt"}; ///< what the door is, which exempts it
inline constexpr PhraseCode<1> installed{"applies-installed"};               ///< date
inline constexpr PhraseCode<1> installed_before{"applies-installed-before"}; ///< date
inline constexpr PhraseCode<1> keel_laid{"applies-keel-laid"};               ///< date
inline constexpr PhraseCode<1> keel_before{"applies-keel-before"};           ///< date
inline constexpr PhraseCode<0> keel_unknown{"applies-keel-unknown"};
inline constexpr PhraseCode<1> text_of_other_dates{"applies-text-of-other-dates"}; ///< keel laid
inline constexpr PhraseCode<0> installation_unknown{"applies-installation-unknown"};
inline constexpr PhraseCode<0> flag_has_own_text{"applies-flag-has-own-text"};
inline constexpr PhraseCode<0> no_text_binds{"applies-no-text-binds"};
inline constexpr PhraseCode<1> text_of_other_ships{"applies-text-of-other-ships"}; ///< its issuer
inline constexpr PhraseCode<0> no_door_aboard{"applies-no-door-aboard"};

// Ships by the rules they are under.
inline constexpr PhraseCode<0> solas_passenger_ship{"applies-solas-passenger-ship"};
inline constexpr PhraseCode<0> us_h{"applies-us-h"};
inline constexpr PhraseCode<0> us_k{"applies-us-k"};
inline constexpr PhraseCode<0> canada_convention{"applies-canada-convention"};
inline constexpr PhraseCode<0> canada{"applies-canada"};
inline constexpr PhraseCode<0> canada_day{"applies-canada-day"};
inline constexpr PhraseCode<0> eu_inland{"applies-eu-inland"};
inline constexpr PhraseCode<0> large_yacht{"applies-large-yacht"};
inline constexpr PhraseCode<0> other_rules{"applies-other-rules"};

// What a row asks for, as the rule book says it.
inline constexpr PhraseCode<2> either{"applies-either"}; ///< two that are both enough
inline constexpr PhraseCode<0> listed{"applies-listed"};
inline constexpr PhraseCode<1> installed_from{"applies-installed-from"}; ///< date
inline constexpr PhraseCode<1> laid_from{"applies-laid-from"};           ///< date
inline constexpr PhraseCode<1> laid_before{"applies-laid-before"};       ///< date
inline constexpr PhraseCode<2> laid_between{"applies-laid-between"};     ///< from, before
inline constexpr PhraseCode<1> or_no_date{"applies-or-no-date"};         ///< of which dates
/// What it is for a ship of another date, and for one without a date.
inline constexpr PhraseCode<2> for_other_dates{"applies-for-other-dates"};
inline constexpr PhraseCode<0> binds{"applies-binds"};
inline constexpr PhraseCode<0> left_to_inspector{"applies-left-to-inspector"};
inline constexpr PhraseCode<0> advises{"applies-advises"};
inline constexpr PhraseCode<0> asked_of_none{"applies-asked-of-none"};

} // namespace latchround::applies
