// What the closing times of one door through the years say about the years to come.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/requirement/requirement.h"
#include "core/trend/line.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/door.h"

namespace latchround {

/// The figure of one walkdown: the mean of its upright runs, or the worst of runs that disagree.
struct TimedDay {
    CalendarDate day{};
    double value = 0; ///< in the requirement's unit
    double u = 0;     ///< standard uncertainty
    bool outside = false;
    bool after_repair = false; ///< a walkdown after a repair
};

/// In the order of the walkdowns; those without an upright run of this door are left out. `row`:
/// the row in force that asks for its closing time or rate.
std::vector<TimedDay> timedDays(const Ledger& ledger, std::span<const Walkdown> walkdowns,
                                const Door& door, const Requirement& row);

enum class Prospect {
    TooFew,      ///< fewer points than say anything
    InSight,     ///< the interval crosses a limit on `crosses`
    AlreadyOver, ///< it lies over a limit already today
    NotInSight   ///< not before `looked_until`
};

/// Least number of points and least time from the first to the last that an outlook is given for
/// (our choice, no source).
inline constexpr int least_points = 5;
inline constexpr int least_span_days = 365;

/// Nobody should look further ahead than the points reach back, nor than this.
inline constexpr int furthest_look_years = 10;

inline constexpr double outlook_confidence = 0.95;

struct Outlook {
    std::vector<TimedDay> days; ///< all, oldest first
    std::size_t line_from = 0;  ///< first of `days` on the present line
    std::optional<Line> line;   ///< x in years since days[line_from]
    Prospect prospect = Prospect::TooFew;
    std::optional<CalendarDate> crosses;
    std::optional<CalendarDate> looked_until;
    bool over_high = false; ///< it is the upper limit that is crossed
};

double yearsBetween(CalendarDate from, CalendarDate to);

/// A new line begins at a walkdown after a repair, and at the first figure inside the limits after
/// one outside: something was mended in between. The scatter about the line is never taken as less
/// than the uncertainty of the timing.
Outlook outlookOf(std::vector<TimedDay> days, std::optional<double> low, std::optional<double> high,
                  CalendarDate today);

} // namespace latchround
