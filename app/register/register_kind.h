// Whether a register speaks of a vessel or of the vessel that is practised on. Both have one schema
// and differ in the SQLite application id (register_format.h), so that neither is ever taken for
// the other: a practice register is never handed over or signed, takes in nothing, and holds no
// vessel but the practice one, which no vessel's register holds.
#pragma once

#include <string_view>
#include <utility>

#include "core/error/register_errors.h"
#include "core/evidence/same_name.h"
#include "core/store/register.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class RegisterKind { Vessel, Practice };

/// The identification number that marks the practice vessel.
inline constexpr std::string_view practice_vessel_number = "PRACTICE";

inline bool isPracticeVessel(std::string_view number) {
    return isSameName(number, practice_vessel_number);
}

/// Refuses a vessel, by its number, that a register of this kind may not hold.
inline Result<> refuseForeignVessel(RegisterKind kind, std::string_view number, Phrase where) {
    if (isPracticeVessel(number) == (kind == RegisterKind::Practice))
        return {};
    if (kind == RegisterKind::Practice)
        return tl::unexpected(Error{std::move(where), errors::practice_vessel_alone()});
    return tl::unexpected(
        Error{std::move(where), errors::number_of_practice(practice_vessel_number)});
}

} // namespace latchround
