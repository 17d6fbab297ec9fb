// What the sections of the report speak of, worked out once: the walkdown, its doors graded, who
// they were. Outlives none of what the WalkdownReport refers to.
#pragma once

#include "app/report/walkdown_report.h"
#include "core/grading/graded_walkdown.h"

#include <QString>

namespace latchround::report {

struct Matter {
    const WalkdownReport& asked;
    Walkdown walkdown;
    std::vector<GradedDoor> doors; ///< in the order of the walk
    Tally tally;
    ZoneIntegrity zones;
};

Result<Matter> matterOf(const WalkdownReport& report);

/// "Isbel Thornquay (surveyor)"; the id where nobody is known by it.
QString personWords(const Matter& matter, const std::string& person);

/// Name alone, for narrow columns.
QString personName(const Matter& matter, const std::string& person);

/// Unsatisfactory, to be judged or to be timed again.
bool needsAttention(Verdict verdict);

/// Whether a door has a block of its own in the report: it needs attention, or somebody wrote or
/// photographed something at it, or could not test it.
bool hasDetails(const GradedDoor& door);

} // namespace latchround::report
