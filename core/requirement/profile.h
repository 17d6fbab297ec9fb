// A text as it was read: whose it is, which ships it speaks to, of which dates, in what edition,
// where it was read and what of it was not. Each file of rows (resources/requirements/*.json)
// brings one or more.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/vessel/arrangement.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/said.h"

namespace latchround {

struct Profile {
    std::string edition;         ///< the rows of the text carry the same
    std::string issuer;          ///< whose text: "SOLAS", "46 CFR"; "no text" where none binds
    std::vector<Regime> regimes; ///< whose ships it binds; empty: everybody's
    std::vector<Regime> advises; ///< whose ships rows of it advise, as the rows say
    std::string ships;           ///< the ships it speaks to, in our plain words
    std::optional<CalendarDate> built_from;   ///< laid down on this day or later
    std::optional<CalendarDate> built_before; ///< and before this day
    std::string read_in;   ///< where it was read; empty: there is nothing to read
    std::string not_read;  ///< what of it was not read; empty: nothing that we know of
    std::string deference; ///< whose rules stand above it
};

/// Binds or advises ships of this flag.
bool speaksTo(const Profile& profile, Regime regime);

/// Whether a ship laid down then is of its dates; nothing is said of an undated ship where the
/// profile has a date.
Said isOfDates(const Profile& profile, const std::optional<CalendarDate>& keel_laid);

} // namespace latchround
