#include "core/measure/closing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/measure/interval.h"

namespace latchround {

namespace {

constexpr double opening_u_m = 0.005;

MarkKind homeMark(DoorKind kind) {
    return kind == DoorKind::DoubleLeaf ? MarkKind::SecondLeafHome : MarkKind::Shut;
}

std::optional<Reading> timedBetween(const RunRecord& run, MarkKind from, MarkKind to,
                                    const ThumbError& thumb) {
    const auto interval = intervalBetween(run, from, to);
    return interval ? std::optional(timed(*interval, thumb)) : std::nullopt;
}

} // namespace

std::optional<Reading> closingTime(const RunRecord& run, DoorKind kind, const ThumbError& thumb) {
    return timedBetween(run, MarkKind::LeafMoves, homeMark(kind), thumb);
}

std::optional<Reading> rateOf(const Reading& length_m, const Reading& time_s) {
    if (!(time_s.value > 0))
        return std::nullopt;
    const double rate = length_m.value / time_s.value;
    const auto part = [&](double u_length, double u_time) {
        return std::hypot(u_length / time_s.value, rate * u_time / time_s.value);
    };
    return Reading{rate, part(length_m.u_random, time_s.u_random),
                   part(length_m.u_common, time_s.u_common)};
}

std::optional<Reading> closingRate(const RunRecord& run, const Door& door,
                                   const ThumbError& thumb) {
    const auto time = closingTime(run, door.kind, thumb);
    if (!time || !(door.opening_m > 0))
        return std::nullopt;
    return rateOf({door.opening_m, 0, opening_u_m}, *time);
}

std::vector<Reading> halfRates(const RunRecord& run, const Door& door, const ThumbError& thumb) {
    std::vector<Reading> halves;
    const auto first = timedBetween(run, MarkKind::LeafMoves, MarkKind::HalfWay, thumb);
    const auto second = timedBetween(run, MarkKind::HalfWay, homeMark(door.kind), thumb);
    if (!first || !second || !(door.opening_m > 0))
        return halves;
    // Where the half-way point is judged by eye, so its place is uncertain by some 5 % of the
    // opening (our choice, no source).
    const Reading half{door.opening_m / 2, door.opening_m * 0.05, opening_u_m};
    for (const Reading& time : {*first, *second})
        if (const auto rate = rateOf(half, time))
            halves.push_back(*rate);
    return halves;
}

std::optional<Reading> alarmLead(const RunRecord& run, const ThumbError& thumb) {
    return timedBetween(run, MarkKind::AlarmOn, MarkKind::LeafMoves, thumb);
}

std::optional<Reading> alarmAfterShut(const RunRecord& run, DoorKind kind,
                                      const ThumbError& thumb) {
    return timedBetween(run, homeMark(kind), MarkKind::AlarmOff, thumb);
}

Together together(const std::vector<Reading>& readings) {
    Together result;
    result.count = static_cast<int>(readings.size());
    if (readings.empty())
        return result;
    double sum = 0;
    double squares = 0;
    double widest = 0;
    for (const Reading& reading : readings) {
        sum += reading.value;
        squares += reading.u_random * reading.u_random;
        widest = std::max(widest, reading.u_random);
        result.mean.u_common = std::max(result.mean.u_common, reading.u_common);
    }
    const double n = static_cast<double>(readings.size());
    result.mean.value = sum / n;
    result.mean.u_random = std::sqrt(squares) / n;
    const auto [lowest, highest] = std::ranges::minmax(readings, {}, &Reading::value);
    result.agree = highest.value - lowest.value <= 2 * std::numbers::sqrt2 * widest;
    return result;
}

} // namespace latchround
