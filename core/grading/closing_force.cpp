#include "core/grading/closing_force.h"

#include <cmath>

#include "core/grading/gauge_check.h"
#include "core/grading/reason_phrases.h"
#include "core/measure/inclination.h"
#include "core/phrase/plain_figure.h"

namespace latchround {

namespace {

std::string inNewtons(double force_N) {
    return plainFigure(std::round(force_N * 10) / 10) + " N";
}

} // namespace

RowCheck weighed(RowCheck check, const Requirement& requirement, const Door& door,
                 const DoorEvidence& evidence) {
    const auto measured = evidence.measured.find(requirement.id);
    if (!requirement.incline_deg || measured == evidence.measured.end())
        return check;
    const Reading force = gaugeReading(requirement, measured->second.body);
    check.figure = force;
    const InclinationAnswer answer = couldCloseInclined(door, *requirement.incline_deg, force);
    if (answer.could == CloserCould::Falls && check.verdict != Verdict::Unsatisfactory) {
        check.verdict = Verdict::Judge;
        check.reason = {ReasonKind::ForceTooLow,
                        reason::force_below(inNewtons(force.value), inNewtons(answer.needed_N),
                                            plainFigure(*requirement.incline_deg)),
                        1, 0};
    }
    return check;
}

} // namespace latchround
