// Whether the key that signed a handover file is one to believe on this device.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "app/handover/cover_sheet.h"
#include "app/register/sqlite_register.h"

namespace latchround {

enum class KeyStanding {
    Own,      ///< this device's own file
    Accepted, ///< somebody on this device accepted the key for that device
    Asks      ///< nobody here knows that device: a person has to compare fingerprints
};

/// Refuses, by name, a device that comes with another key than the one accepted for it, and one
/// that calls itself this device without having its key.
Result<KeyStanding> standingOf(const CoverSheet& sheet, SqliteRegister& here);

/// Trust is not handed on: a file may bring facts of this device back to it, after a backup was put
/// in its place, but a key that they accept in its name must be accepted here, or by `acceptance`.
Result<> acceptsNothingInOurName(std::span<const Fact> brought, SqliteRegister& here,
                                 std::span<const Fact> acceptance);

/// An error unless the facts hold a KeyAccepted of this device for the sheet's key and device.
Result<> acceptedBy(std::span<const Fact> facts, const CoverSheet& sheet,
                    const std::string& device);

} // namespace latchround
