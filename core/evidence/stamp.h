// Who recorded something, when, and on which device.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace latchround {

/// UUIDv7 (RFC 9562), lower-case hyphenated text; sorts by the time it was made.
using FactId = std::string;

/// Wall-clock moment: UTC, and the ship's offset from it at that moment. Dates a record; never
/// times a door.
struct Moment {
    std::int64_t utc_ms = 0;     ///< milliseconds since 1970-01-01T00:00:00Z
    int ship_offset_minutes = 0; ///< ship's time minus UTC, -720 to 840

    bool operator==(const Moment&) const = default;
};

/// Who, when, on which device; the same for every fact.
struct Stamp {
    FactId id;
    Moment when;
    std::string person;               ///< id of the PersonJoined fact of the one who recorded it
    std::string device;               ///< the tablet's own id, made once and kept
    std::optional<FactId> supersedes; ///< the fact that no longer counts because of this one

    bool operator==(const Stamp&) const = default;
};

} // namespace latchround
