#include "core/trend/outlook.h"

#include <algorithm>
#include <cmath>

#include "core/evidence/moment_text.h"
#include "core/grading/figure_check.h"

namespace latchround {

namespace {

constexpr double days_a_year = 365.25;

std::size_t presentLine(const std::vector<TimedDay>& days) {
    std::size_t from = 0;
    for (std::size_t i = 1; i < days.size(); ++i)
        if (days[i].after_repair || (days[i - 1].outside && !days[i].outside))
            from = i;
    return from;
}

/// Thumbs are not finer because a few points happen to lie well.
void widen(Line& line, double least_sd) {
    if (line.residual_sd >= least_sd)
        return;
    line.residual_sd = least_sd;
    line.sd_slope = least_sd / std::sqrt(line.sum_xx);
    line.sd_intercept = uncertaintyAt(line, 0);
}

struct Limits {
    std::optional<double> low;
    std::optional<double> high;

    bool under(const Band& band) const { return low && band.low < *low; }
    bool over(const Band& band) const { return high && band.high > *high; }
};

} // namespace

double yearsBetween(CalendarDate from, CalendarDate to) {
    const auto days = std::chrono::sys_days(to) - std::chrono::sys_days(from);
    return static_cast<double>(days.count()) / days_a_year;
}

std::vector<TimedDay> timedDays(const Ledger& ledger, std::span<const Walkdown> walkdowns,
                                const Door& door, const Requirement& row) {
    std::vector<TimedDay> days;
    for (const Walkdown& walkdown : walkdowns) {
        const DoorEvidence evidence = ledger.evidenceOf(walkdown.id, door);
        if (evidence.runs.empty())
            continue;
        const RowCheck check = checkFigure(row, door, evidence);
        if (!check.figure || check.indicative)
            continue;
        days.push_back({shipsDay(evidence.runs.back().started), check.figure->value,
                        check.figure->u(), check.verdict == Verdict::Unsatisfactory,
                        walkdown.plan.purpose == Purpose::AfterRepair});
    }
    return days;
}

Outlook outlookOf(std::vector<TimedDay> days, std::optional<double> low, std::optional<double> high,
                  CalendarDate today) {
    Outlook outlook;
    outlook.days = std::move(days);
    outlook.line_from = presentLine(outlook.days);
    std::vector<Point> points;
    double squares = 0;
    for (std::size_t i = outlook.line_from; i < outlook.days.size(); ++i) {
        const TimedDay& day = outlook.days[i];
        points.push_back({yearsBetween(outlook.days[outlook.line_from].day, day.day), day.value});
        squares += day.u * day.u;
    }
    outlook.line = lineThrough(points);
    if (!outlook.line)
        return outlook;
    widen(*outlook.line, std::sqrt(squares / outlook.line->count));
    const double span = points.back().x - points.front().x;
    if (outlook.line->count < least_points || span * days_a_year < least_span_days)
        return outlook;

    const Limits limits{low, high};
    const Prediction prediction(*outlook.line, outlook_confidence);
    const std::chrono::sys_days first = outlook.days[outlook.line_from].day;
    const auto bandOn = [&](std::chrono::sys_days day) {
        return prediction.at(yearsBetween(first, day));
    };
    const auto crossed = [&](std::chrono::sys_days day) {
        return limits.under(bandOn(day)) || limits.over(bandOn(day));
    };
    std::chrono::sys_days before =
        std::max(std::chrono::sys_days(outlook.days.back().day), std::chrono::sys_days(today));
    std::chrono::sys_days after =
        before +
        std::chrono::days(std::lround(std::min<double>(furthest_look_years, span) * days_a_year));
    outlook.looked_until = after;
    if (crossed(before)) {
        outlook.prospect = Prospect::AlreadyOver;
        after = before;
    } else if (!crossed(after)) {
        outlook.prospect = Prospect::NotInSight;
        return outlook;
    } else {
        // The lower edge bends down and the upper one up: inside today, each is left once.
        outlook.prospect = Prospect::InSight;
        while (after - before > std::chrono::days(1)) {
            const std::chrono::sys_days middle = before + (after - before) / 2;
            (crossed(middle) ? after : before) = middle;
        }
    }
    outlook.crosses = after;
    outlook.over_high = limits.over(bandOn(after));
    return outlook;
}

} // namespace latchround
