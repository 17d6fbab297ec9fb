#include "core/grading/paper_items.h"

#include <algorithm>
#include <array>

#include "core/evidence/run_sequence.h"

namespace latchround {

namespace {

constexpr std::array<Step, 3> steps{Step::Look, Step::Release, Step::Function};

bool isSeen(const Requirement& row) {
    return row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides;
}

/// Of every step, in its order.
template <class Which>
void addRows(std::vector<PaperItem>& items, const DoorGrade& grade, PaperKind kind, Which which) {
    for (const Step step : steps)
        for (const Requirement* row : askedInOrder(grade, step))
            if (which(*row))
                items.push_back({0, kind, row});
}

} // namespace

std::vector<const Requirement*> askedInOrder(const DoorGrade& grade, Step step) {
    std::vector<const Requirement*> asked;
    for (const RowGrade& row : grade.rows)
        if (isAsked(row) && row.requirement->step == step)
            asked.push_back(row.requirement);
    std::stable_partition(asked.begin(), asked.end(),
                          [](const Requirement* row) { return row->status == Status::Usage; });
    return asked;
}

std::vector<PaperItem> paperItems(const Arrangement& arrangement, const Door& door,
                                  const Catalogue& catalogue, Purpose purpose) {
    const DoorGrade blank =
        grade(arrangement.particulars, door, findBoundary(arrangement, door.boundary), {},
              catalogue, upkeepOf(catalogue, purpose));
    std::vector<PaperItem> items;
    addRows(items, blank, PaperKind::Plate,
            [](const Requirement& row) { return row.check == CheckKind::PlateAgrees; });
    addRows(items, blank, PaperKind::Question, isSeen);
    addRows(items, blank, PaperKind::Figure,
            [](const Requirement& row) { return !isSeen(row) && row.source == Source::Gauge; });
    addRows(items, blank, PaperKind::SpringGauge,
            [](const Requirement& row) { return isSeen(row) && row.incline_deg; });
    items.push_back({0, PaperKind::Heel});
    for (const Release release : releasesOf(door))
        items.push_back({0, PaperKind::Run, nullptr, release});
    if (door.designed_to_reopen)
        items.push_back({0, PaperKind::Contact});
    for (std::size_t i = 0; i < items.size(); ++i)
        items[i].number = int(i) + 1;
    return items;
}

} // namespace latchround
