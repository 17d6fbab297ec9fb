#include "core/grading/changed_verdicts.h"

#include <algorithm>

#include "core/evidence/newest_walkdown.h"
#include "core/grading/graded_walkdown.h"

namespace latchround {

namespace {

/// Nothing where the other catalogue has no such row.
Verdict worthOf(const RowGrade* row) {
    return row ? countsAs(*row) : Verdict::NotApplicable;
}

std::optional<RowGrade> sideOf(const RowGrade* row) {
    return row ? std::optional(*row) : std::nullopt;
}

/// Rows of `worse` that have its verdict and had another on the other side.
std::vector<const RowGrade*> rowsThatMakeIt(const DoorGrade& worse, const DoorGrade& better) {
    std::vector<const RowGrade*> rows;
    for (const RowGrade& row : worse.rows)
        if (worthOf(&row) == worse.verdict &&
            worthOf(findRow(better, row.requirement->id)) != worse.verdict)
            rows.push_back(&row);
    return rows;
}

ChangedVerdict changeOf(const Door& door, const FactId& walkdown, const DoorGrade& before,
                        const DoorGrade& now) {
    ChangedVerdict change{&door, walkdown, before.verdict, now.verdict, {}};
    const bool is_worse = isWorse(now.verdict, before.verdict);
    for (const RowGrade* row :
         is_worse ? rowsThatMakeIt(now, before) : rowsThatMakeIt(before, now)) {
        const std::string& id = row->requirement->id;
        change.rows.push_back({id, sideOf(findRow(before, id)), sideOf(findRow(now, id))});
    }
    return change;
}

} // namespace

std::vector<ChangedVerdict> changedVerdicts(const Arrangement& arrangement, const Ledger& ledger,
                                            const Catalogue& before, const Catalogue& now) {
    std::vector<ChangedVerdict> changes;
    for (const Door& door : arrangement.doors) {
        const auto walkdown = newestWalkdownOf(ledger, door.number);
        if (!walkdown)
            continue;
        const GradedDoor by_before = gradeDoor(arrangement, ledger, *walkdown, door, before);
        const GradedDoor by_now = gradeDoor(arrangement, ledger, *walkdown, door, now);
        if (by_before.grade.verdict != by_now.grade.verdict)
            changes.push_back(changeOf(door, walkdown->id, by_before.grade, by_now.grade));
    }
    std::ranges::stable_sort(changes, {}, &ChangedVerdict::now);
    return changes;
}

} // namespace latchround
