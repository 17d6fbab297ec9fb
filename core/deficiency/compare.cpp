#include "core/deficiency/compare.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace latchround {

namespace {

bool tells(const RowGrade* row) {
    return row && isAsked(*row) && row->verdict != Verdict::Untested &&
           row->verdict != Verdict::Advice;
}

/// How far inside its nearest limit a figure lies, in the unit of the row; negative outside.
double room(const RowGrade& row) {
    double room = std::numeric_limits<double>::infinity();
    if (row.requirement->low)
        room = std::min(room, row.figure->value - *row.requirement->low);
    if (row.requirement->high)
        room = std::min(room, *row.requirement->high - row.figure->value);
    return room;
}

std::optional<Change> moved(const RowGrade& before, const RowGrade& after) {
    if (!before.figure || !after.figure || before.requirement != after.requirement)
        return std::nullopt;
    const double gained = room(after) - room(before);
    const double explained = 2 * std::hypot(before.figure->u(), after.figure->u());
    if (!(std::abs(gained) > explained))
        return std::nullopt;
    return gained < 0 ? Change::Worse : Change::Better;
}

std::optional<Change> changeOf(const RowGrade* before, const RowGrade& after) {
    if (!tells(&after))
        return std::nullopt;
    const bool failed = tells(before) && before->verdict == Verdict::Unsatisfactory;
    if (after.verdict == Verdict::Unsatisfactory && !failed)
        return Change::New;
    if (!tells(before))
        return std::nullopt;
    if (failed && after.verdict == Verdict::Satisfactory)
        return Change::Gone;
    if (after.verdict != before->verdict)
        return isWorse(after.verdict, before->verdict) ? Change::Worse : Change::Better;
    return moved(*before, after);
}

} // namespace

std::vector<RowChange> compare(const std::vector<GradedDoor>& before,
                               const std::vector<GradedDoor>& after) {
    std::vector<RowChange> changes;
    for (const GradedDoor& door : after) {
        const auto same = std::ranges::find_if(before, [&](const GradedDoor& other) {
            return other.door->number == door.door->number;
        });
        const GradedDoor* earlier = same == before.end() ? nullptr : &*same;
        for (const RowGrade* row : askedWorstFirst(door.grade)) {
            const RowGrade* was = earlier ? findRow(earlier->grade, row->requirement->id) : nullptr;
            if (const auto change = changeOf(was, *row))
                changes.push_back({*change, &door, was, row});
        }
    }
    std::ranges::stable_sort(changes, {}, &RowChange::change);
    return changes;
}

} // namespace latchround
