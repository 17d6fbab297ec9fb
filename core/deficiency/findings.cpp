#include "core/deficiency/findings.h"

#include <algorithm>

namespace latchround {

namespace {

bool isWrittenUp(const GradedDoor& door, const RowGrade& row) {
    return std::ranges::any_of(door.evidence.deficiencies, [&](const auto& written) {
        return written.body.requirement == row.requirement->id;
    });
}

} // namespace

std::optional<FactId> newestFinding(const std::vector<Item>& items, const std::string& door,
                                    const std::string& requirement) {
    std::optional<FactId> newest;
    for (const Item& item : items)
        if (item.door == door && item.requirement == requirement)
            for (const auto& finding : item.findings)
                newest = std::max(newest, std::optional(finding.stamp.id));
    return newest;
}

std::vector<ToWriteUp> toWriteUp(const std::vector<GradedDoor>& doors,
                                 const std::vector<Item>& items) {
    std::vector<ToWriteUp> rows;
    for (const GradedDoor& door : doors)
        for (const RowGrade* row : askedWorstFirst(door.grade))
            if (row->verdict == Verdict::Unsatisfactory && !isWrittenUp(door, *row))
                rows.push_back(
                    {&door, row, newestFinding(items, door.door->number, row->requirement->id)});
    return rows;
}

} // namespace latchround
