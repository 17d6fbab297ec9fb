// A moment as text: RFC 3339 with the ship's offset, e.g. 2026-11-25T10:42:13.120+01:00.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/evidence/fact.h"

namespace latchround {

/// Ship's time with three decimals and the offset as ±hh:mm, never Z. For years 0000 to 9999.
std::string rfc3339Text(const Moment& moment);

/// The day of the moment by ship's time.
CalendarDate shipsDay(const Moment& moment);

/// Any RFC 3339 date-time that a Moment can hold: Z or an offset of -12:00 to +14:00, whole seconds
/// or a fraction. Refused: a day or time that does not exist, a leap second (UTC milliseconds have
/// no place for it), a fraction finer than a millisecond.
std::optional<Moment> momentFrom(std::string_view rfc3339);

} // namespace latchround
