#include "core/evidence/moment_text.h"

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "core/digit.h"
#include "core/vessel/calendar_date.h"

namespace latchround {

namespace {

using std::chrono::days;
using std::chrono::floor;
using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using std::chrono::sys_days;

/// Two digits at `at`, at most `high`.
std::optional<int> twoDigits(std::string_view text, std::size_t at, int high) {
    if (at + 2 > text.size() || !isDigit(text[at]) || !isDigit(text[at + 1]))
        return std::nullopt;
    const int value = (text[at] - '0') * 10 + (text[at + 1] - '0');
    return value <= high ? std::optional(value) : std::nullopt;
}

bool isAt(std::string_view text, std::size_t at, char wanted) {
    return at < text.size() && text[at] == wanted;
}

/// Takes ".12" off the front; zeros after the third decimal say nothing and are allowed.
std::optional<milliseconds> takeFraction(std::string_view& rest) {
    if (!isAt(rest, 0, '.'))
        return milliseconds{0};
    std::size_t at = 1;
    int value = 0;
    int worth = 100;
    for (; at < rest.size() && isDigit(rest[at]); ++at) {
        if (worth == 0 && rest[at] != '0')
            return std::nullopt;
        value += (rest[at] - '0') * worth;
        worth /= 10;
    }
    if (at == 1)
        return std::nullopt;
    rest.remove_prefix(at);
    return milliseconds{value};
}

std::optional<int> offsetMinutes(std::string_view text) {
    if (text == "Z" || text == "z")
        return 0;
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const auto hour = twoDigits(text, 1, 23);
    const auto minute = twoDigits(text, 4, 59);
    if (!hour || !minute)
        return std::nullopt;
    const int offset = (*hour * 60 + *minute) * (text[0] == '-' ? -1 : 1);
    return offset >= -720 && offset <= 840 ? std::optional(offset) : std::nullopt;
}

} // namespace

std::string rfc3339Text(const Moment& moment) {
    const milliseconds local = milliseconds{moment.utc_ms} + minutes{moment.ship_offset_minutes};
    const days day = floor<days>(local);
    const milliseconds in_day = local - day;
    const auto hour = floor<hours>(in_day);
    const auto minute = floor<minutes>(in_day - hour);
    const auto second = floor<seconds>(in_day - hour - minute);
    const auto fraction = in_day - hour - minute - second;
    const int offset = std::abs(moment.ship_offset_minutes);
    std::array<char, 48> time{};
    std::snprintf(time.data(), time.size(), "T%02d:%02d:%02d.%03d%c%02d:%02d",
                  static_cast<int>(hour.count()), static_cast<int>(minute.count()),
                  static_cast<int>(second.count()), static_cast<int>(fraction.count()),
                  moment.ship_offset_minutes < 0 ? '-' : '+', offset / 60, offset % 60);
    return isoText(CalendarDate{sys_days{day}}) + time.data();
}

std::optional<Moment> momentFrom(std::string_view text) {
    const auto date = calendarDateFrom(text.substr(0, 10));
    if (!date || !(isAt(text, 10, 'T') || isAt(text, 10, 't')) || !isAt(text, 13, ':') ||
        !isAt(text, 16, ':'))
        return std::nullopt;
    const auto hour = twoDigits(text, 11, 23);
    const auto minute = twoDigits(text, 14, 59);
    const auto second = twoDigits(text, 17, 59);
    if (!hour || !minute || !second)
        return std::nullopt;
    std::string_view rest = text.substr(19);
    const auto fraction = takeFraction(rest);
    const auto offset = offsetMinutes(rest);
    if (!fraction || !offset)
        return std::nullopt;
    const milliseconds utc = sys_days{*date}.time_since_epoch() + hours{*hour} + minutes{*minute} +
                             seconds{*second} + *fraction - minutes{*offset};
    return Moment{utc.count(), *offset};
}

CalendarDate shipsDay(const Moment& moment) {
    const std::chrono::sys_time<std::chrono::milliseconds> ship(
        std::chrono::milliseconds(moment.utc_ms) +
        std::chrono::minutes(moment.ship_offset_minutes));
    return std::chrono::floor<std::chrono::days>(ship);
}

} // namespace latchround
