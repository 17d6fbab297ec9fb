// What the reason for a verdict speaks of: the classes that were compared, and who names them.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::reason {

inline constexpr PhraseCode<1> plate{"reason-plate"};             ///< class on it
inline constexpr PhraseCode<1> in_register{"reason-in-register"}; ///< class of the door
inline constexpr PhraseCode<0> no_plate{"reason-no-plate"};
inline constexpr PhraseCode<0> plate_illegible{"reason-plate-illegible"};
inline constexpr PhraseCode<1> boundary{"reason-boundary"};       ///< class by the approved plan
inline constexpr PhraseCode<2> boundary_by{"reason-boundary-by"}; ///< class, citation
/// Class by the approved plan; the stronger one that the rule asks for, citation.
inline constexpr PhraseCode<3> boundary_by_plan{"reason-boundary-by-plan"};
/// Class by the approved plan; citation of the rule that asks for an A class.
inline constexpr PhraseCode<2> boundary_below_a{"reason-boundary-below-a"};
inline constexpr PhraseCode<2> two_figures{"reason-two-figures"}; ///< the stricter, the other
/// Of a closing force: what was read off, what the weight of the leaf takes, degrees.
inline constexpr PhraseCode<3> force_below{"reason-force-below"};
inline constexpr PhraseCode<1> faster_by{"reason-faster-by"};               ///< margin, per cent
inline constexpr PhraseCode<1> slower_by{"reason-slower-by"};               ///< margin, per cent
inline constexpr PhraseCode<2> whose_door_needs{"reason-whose-door-needs"}; ///< boundary, class

} // namespace latchround::reason
