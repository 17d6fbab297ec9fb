#include "core/grading/graded_walkdown.h"

#include <algorithm>
#include <set>

namespace latchround {

GradedDoor gradeDoor(const Arrangement& arrangement, const Ledger& ledger,
                     std::string_view walkdown, const Door& door, const Catalogue& catalogue) {
    GradedDoor graded;
    graded.door = &door;
    graded.boundary = findBoundary(arrangement, door.boundary);
    graded.evidence = ledger.evidenceOf(walkdown, door.number);
    graded.grade =
        grade(arrangement.particulars, door, graded.boundary, graded.evidence, catalogue);
    return graded;
}

std::vector<GradedDoor> gradeWalkdown(const Arrangement& arrangement, const Ledger& ledger,
                                      const Walkdown& walkdown, const Catalogue& catalogue) {
    std::vector<GradedDoor> doors;
    doors.reserve(walkdown.plan.doors.size());
    for (const std::string& number : walkdown.plan.doors)
        if (const Door* door = findDoor(arrangement, number))
            doors.push_back(gradeDoor(arrangement, ledger, walkdown.id, *door, catalogue));
    return doors;
}

bool isDone(const GradedDoor& door) {
    return std::ranges::none_of(door.grade.rows, [](const RowGrade& row) {
        const bool untested = row.verdict == Verdict::Untested || row.indicative;
        return untested && row.reason.kind != ReasonKind::CouldNotTest;
    });
}

Tally tallyOf(const std::vector<GradedDoor>& doors) {
    Tally tally;
    tally.doors = static_cast<int>(doors.size());
    for (const GradedDoor& door : doors) {
        ++tally.by_verdict[door.grade.verdict];
        if (isDone(door))
            ++tally.done;
    }
    return tally;
}

std::vector<ActingZone> actingZones(const Arrangement& arrangement,
                                    const std::vector<GradedDoor>& doors) {
    std::set<std::string> failing;
    for (const GradedDoor& door : doors)
        if (door.grade.verdict == Verdict::Unsatisfactory)
            failing.insert(door.door->number);
    return actingZones(arrangement,
                       [&](const Door& door) { return failing.contains(door.number); });
}

} // namespace latchround
