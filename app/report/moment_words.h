// Moments as a report prints them: in ship's time, with UTC beside it where it matters.
#pragma once

#include <QString>

#include "core/evidence/fact.h"

namespace latchround::report {

/// "25 Nov 2026 10:42": ship's time.
QString dayAndTime(const Moment& moment);

/// "10:42:13": ship's time.
QString timeOfDay(const Moment& moment);

/// "25 Nov 2026 10:42 ship's time (UTC+01:00), 09:42 UTC"; the UTC day too where it is another.
QString shipsTimeAndUtc(const Moment& moment);

} // namespace latchround::report
