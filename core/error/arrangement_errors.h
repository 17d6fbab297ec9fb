// What is wrong with an arrangement: decks, zones, boundaries and doors that do not go together.
// `what to do`: one of the phrases given for it beside the code, or what didYouMean asks. Figures
// are in metres, kilograms and square metres, with a point.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

inline constexpr PhraseCode<0> vessel_without_name{"vessel-without-name"};
inline constexpr PhraseCode<1> passengers_negative{"passengers-negative"}; ///< how many
inline constexpr PhraseCode<0> length_negative{"length-negative"};
inline constexpr PhraseCode<0> day_does_not_exist{"day-does-not-exist"};
inline constexpr PhraseCode<1> date_before_1900{"date-before-1900"};
inline constexpr PhraseCode<0> figure_missing{"figure-missing"};
inline constexpr PhraseCode<3> metres_out_of_range{"metres-out-of-range"}; ///< given, low, high

// A row without the name by which others refer to it, or with another row's.
inline constexpr PhraseCode<0> deck_without_number{"deck-without-number"};
inline constexpr PhraseCode<0> zone_without_number{"zone-without-number"};
inline constexpr PhraseCode<0> boundary_without_id{"boundary-without-id"};
inline constexpr PhraseCode<0> door_without_number{"door-without-number"};
inline constexpr PhraseCode<1> blanks_around_deck{"blanks-around-deck"};
inline constexpr PhraseCode<1> blanks_around_zone{"blanks-around-zone"};
inline constexpr PhraseCode<1> blanks_around_boundary{"blanks-around-boundary"};
inline constexpr PhraseCode<1> blanks_around_door{"blanks-around-door"};
inline constexpr PhraseCode<1> deck_twice{"deck-twice"};
inline constexpr PhraseCode<1> zone_twice{"zone-twice"};
inline constexpr PhraseCode<1> boundary_twice{"boundary-twice"};
inline constexpr PhraseCode<1> door_twice{"door-twice"};

// A row that refers to another.
inline constexpr PhraseCode<0> names_no_deck{"names-no-deck"};
inline constexpr PhraseCode<0> names_no_zone{"names-no-zone"};
inline constexpr PhraseCode<0> names_no_boundary{"names-no-boundary"};
inline constexpr PhraseCode<2> unknown_deck{"unknown-deck"};         ///< its number, what to do
inline constexpr PhraseCode<2> unknown_zone{"unknown-zone"};         ///< its number, what to do
inline constexpr PhraseCode<2> unknown_boundary{"unknown-boundary"}; ///< its id, what to do
inline constexpr PhraseCode<0> correct_or_add_deck{"correct-or-add-deck"};         ///< what to do
inline constexpr PhraseCode<0> correct_or_add_zone{"correct-or-add-zone"};         ///< what to do
inline constexpr PhraseCode<0> correct_or_add_boundary{"correct-or-add-boundary"}; ///< what to do

inline constexpr PhraseCode<0> zone_without_area{"zone-without-area"};
inline constexpr PhraseCode<2> zone_limits_reversed{"zone-limits-reversed"}; ///< forward, after
inline constexpr PhraseCode<4> zones_overlap{
    "zones-overlap"}; ///< zone, its after limit, the zone aft of it, its forward limit

inline constexpr PhraseCode<1> no_such_spaces{"no-such-spaces"};           ///< how many there are
inline constexpr PhraseCode<1> both_zones_the_same{"both-zones-the-same"}; ///< number
inline constexpr PhraseCode<2> zones_exchanged{"zones-exchanged"};     ///< named forward, named aft
inline constexpr PhraseCode<3> outside_its_zones{"outside-its-zones"}; ///< at, low, high

inline constexpr PhraseCode<1> opening_impossible{"opening-impossible"};
inline constexpr PhraseCode<1> leaf_mass_impossible{"leaf-mass-impossible"};
inline constexpr PhraseCode<1> release_group_blank{"release-group-blank"}; ///< its name

} // namespace latchround::errors
