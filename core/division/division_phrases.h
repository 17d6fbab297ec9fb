// What is to be known of an answer of the fire tables.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::division {

inline constexpr PhraseCode<0> no_value_printed{"division-no-value-printed"};
inline constexpr PhraseCode<0> zone_over_36{"division-zone-over-36"};
inline constexpr PhraseCode<0> zone_36_or_fewer{"division-zone-36-or-fewer"};
inline constexpr PhraseCode<0> special_category{"division-special-category"};
inline constexpr PhraseCode<0> special_category_renumbered{"division-special-category-renumbered"};
inline constexpr PhraseCode<0> zone_subchapter_k{"division-zone-subchapter-k"};
inline constexpr PhraseCode<0> zone_step_subchapter_k{"division-zone-step-subchapter-k"};
inline constexpr PhraseCode<0> zone_step_size_subchapter_k{"division-zone-step-size-subchapter-k"};
inline constexpr PhraseCode<0> zone_size_subchapter_h{"division-zone-size-subchapter-h"};
inline constexpr PhraseCode<0> zone_size_subchapter_k{"division-zone-size-subchapter-k"};
inline constexpr PhraseCode<0> vehicle_deck_subchapter_k{"division-vehicle-deck-subchapter-k"};
inline constexpr PhraseCode<0> stricter_of_two{"division-stricter-of-two"};
inline constexpr PhraseCode<0> value_since_2014{"division-value-since-2014"};
inline constexpr PhraseCode<0> over_tanks{"division-over-tanks"};
inline constexpr PhraseCode<0> older_tables{"division-older-tables"};
inline constexpr PhraseCode<0> tables_not_shown{"division-tables-not-shown"};

} // namespace latchround::division
