// Whether a register speaks of a vessel or of the vessel that is practised on. Both have one schema
// and differ in the SQLite application id (register_format.h), so that neither is ever taken for
// the other: a practice register is never handed over or signed, takes in nothing, and holds no
// vessel but the practice one, which no vessel's register holds.
#pragma once

#include <string>
#include <string_view>

#include "core/evidence/same_name.h"
#include "core/store/register.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class RegisterKind { Vessel, Practice };

/// The identification number that marks the practice vessel.
inline constexpr std::string_view practice_vessel_number = "PRACTICE";

inline constexpr const char* practice_register_words =
    "this is a practice register: nothing in it is a record of a vessel";
inline constexpr const char* vessel_register_words =
    "this is the register of a vessel: nobody practises in it";

inline bool isPracticeVessel(std::string_view number) {
    return isSameName(number, practice_vessel_number);
}

/// Refuses a vessel, by its number, that a register of this kind may not hold.
inline Done refuseForeignVessel(RegisterKind kind, std::string_view number,
                                const std::string& where) {
    if (isPracticeVessel(number) == (kind == RegisterKind::Practice))
        return {};
    if (kind == RegisterKind::Practice)
        return tl::unexpected(Complaint{where,
                                        "a practice register holds the practice vessel alone",
                                        "Import it into a register of its own."});
    return tl::unexpected(
        Complaint{where,
                  "the number " + std::string(practice_vessel_number) +
                      " marks the practice vessel, whose doors are not there",
                  "Give the vessel's own number, or practise with it under Practice."});
}

} // namespace latchround
