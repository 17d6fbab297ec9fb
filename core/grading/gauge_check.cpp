#include "core/grading/gauge_check.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "core/grading/reason_phrases.h"
#include "core/phrase/plain_figure.h"
#include "core/requirement/gauge.h"

namespace latchround {

namespace {

std::string withUnit(double value, const std::string& unit) {
    return plainFigure(value) + (unit.empty() ? "" : " " + unit);
}

/// One limit as the text has it, in two figures where it prints two.
struct Limit {
    double inner; ///< by the stricter figure it ends here
    double outer; ///< by the other one here

    bool isOneFigure() const { return inner == outer; }
};

Limit limitOf(double printed, const std::optional<double>& also, double outward) {
    const double other = also.value_or(printed);
    return (other - printed) * outward > 0 ? Limit{printed, other} : Limit{other, printed};
}

/// How a figure lies to the limit that it is nearest to, or furthest beyond.
struct Stand {
    Limit limit;
    double beyond_inner; ///< below 0: inside by so much
    double beyond_outer;
};

std::optional<Stand> standOf(const Requirement& row, double value) {
    std::optional<Stand> nearest;
    const auto look = [&](const std::optional<double>& printed, const std::optional<double>& also,
                          double outward) {
        if (!printed)
            return;
        const Limit limit = limitOf(*printed, also, outward);
        const Stand stand{limit, (value - limit.inner) * outward, (value - limit.outer) * outward};
        if (!nearest || stand.beyond_inner > nearest->beyond_inner)
            nearest = stand;
    };
    look(row.low, row.low_also, -1);
    look(row.high, row.high_also, 1);
    return nearest;
}

double stepReadBy(const Requirement& requirement, const MeasuredValue& measured) {
    const bool known = measured.step && *measured.step > 0;
    return known ? std::min(*measured.step, coarsestStep(requirement)) : usualStep(requirement);
}

} // namespace

Reading gaugeReading(const Requirement& requirement, const MeasuredValue& measured) {
    const double step = stepReadBy(requirement, measured);
    return {measured.value,
            {{Influence::Resolution, rectangular(step / 2), 1, known_exactly, true}}};
}

RowCheck checkGauge(const Requirement& requirement, const DoorEvidence& evidence) {
    const auto found = evidence.measured.find(requirement.id);
    if (found == evidence.measured.end())
        return {Verdict::Untested, {ReasonKind::NotYetTested, {}, 0, 0}, {}, {}, false};
    const MeasuredValue& measured = found->second.body;
    const double step = stepReadBy(requirement, measured);
    const Reading reading = gaugeReading(requirement, measured);
    const auto figure = [&](Verdict verdict, ReasonKind kind, Phrase text = {}) {
        return RowCheck{verdict, {kind, std::move(text), 1, 0}, reading, {}, false};
    };
    const auto stand = standOf(requirement, measured.value);
    if (!stand)
        return figure(Verdict::Satisfactory, ReasonKind::InsideLimits);
    // What the last digits of a double make of 1.005 - 1 is no distance.
    const double hair = 1e-9 * std::max(1.0, std::abs(measured.value));
    if (stand->beyond_inner <= hair)
        return figure(Verdict::Satisfactory, stand->beyond_inner + step / 2 >= -hair
                                                 ? ReasonKind::OnTheLimit
                                                 : ReasonKind::InsideLimits);
    if (!stand->limit.isOneFigure() && stand->beyond_outer <= hair)
        return figure(Verdict::Judge, ReasonKind::BetweenTwoFigures,
                      reason::two_figures(withUnit(stand->limit.inner, requirement.unit),
                                          withUnit(stand->limit.outer, requirement.unit)));
    if (stand->beyond_outer < step - hair)
        return figure(Verdict::Judge, ReasonKind::BeyondByLessThanAStep,
                      withUnit(step, requirement.unit));
    return figure(Verdict::Unsatisfactory, ReasonKind::OutsideLimits);
}

} // namespace latchround
