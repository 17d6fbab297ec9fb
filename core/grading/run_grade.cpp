#include "core/grading/run_grade.h"

#include <algorithm>
#include <iterator>

namespace latchround {

std::vector<RowGrade> rowsOfRun(const Particulars& vessel, const GradedDoor& door,
                                const RunRecord& run, const Catalogue& catalogue) {
    DoorEvidence alone;
    alone.door = door.evidence.door;
    alone.limits = door.evidence.limits;
    alone.runs = {run};
    const DoorGrade all = grade(vessel, *door.door, door.boundary, alone, catalogue);
    std::vector<RowGrade> rows;
    std::ranges::copy_if(all.rows, std::back_inserter(rows), [](const RowGrade& row) {
        return (row.figure && isOfMarks(row.requirement->source)) ||
               (row.requirement->source == Source::AlarmMark &&
                row.reason.kind == ReasonKind::AlarmNotMarked);
    });
    return rows;
}

} // namespace latchround
