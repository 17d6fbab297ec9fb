// A day in the Gregorian calendar, written YYYY-MM-DD (ISO 8601).
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace latchround {

using CalendarDate = std::chrono::year_month_day;

/// A day that exists, or nothing: 2026-02-30, 26-1-1 and 01/02/2026 are all refused.
std::optional<CalendarDate> calendarDateFrom(std::string_view text);

/// The same day so many months later, or earlier where negative. The last day of a shorter month
/// stands for a day that it does not have.
CalendarDate monthsLater(CalendarDate from, int months);

std::string isoText(CalendarDate date);

} // namespace latchround
