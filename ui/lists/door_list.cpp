#include "ui/lists/door_list.h"

#include <algorithm>

#include "ui/frames/list_touch.h"
#include "ui/look/look.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

constexpr TwoLineStyle door_style{.glyph = {6.6, 7.4},
                                  .before = 3.6,
                                  .beside = 3,
                                  .after = 1,
                                  .name_size = TextSize::Lead,
                                  .bar = true};

TwoLineRow doorRow(DoorListEntry entry) {
    TwoLineRow row;
    row.key = entry.number;
    row.glyph = entry.verdict;
    row.spoken = QStringList{entry.number, entry.words, verdictWords(entry.verdict)}.join(
        QStringLiteral(", "));
    row.name = std::move(entry.number);
    row.detail = std::move(entry.words);
    return row;
}

} // namespace

DoorListView::DoorListView(QWidget* parent)
    : TwoLineList(door_style, parent) {
    setAccessibleName(tr("Doors"));
    scrollByTouch(*this);
    connect(this, &QListView::activated, this,
            [this](const QModelIndex& index) { emit doorChosen(rows().at(index.row()).key); });
}

void DoorListView::setEntries(std::vector<DoorListEntry> entries) {
    std::vector<TwoLineRow> doors;
    for (DoorListEntry& entry : entries)
        doors.push_back(doorRow(std::move(entry)));
    rows().setRows(std::move(doors));
    updateGeometry();
}

void DoorListView::setVerdict(const QString& number, Verdict verdict) {
    if (const int row = rows().rowOf(number); row >= 0)
        rows().setRow(row, doorRow({number, rows().at(row).detail, verdict}));
}

void DoorListView::setCurrentDoor(const QString& number) {
    const int row = rows().rowOf(number);
    if (row < 0)
        return;
    setCurrentIndex(rows().index(row));
    scrollTo(currentIndex());
}

QString DoorListView::currentDoor() const {
    return currentIndex().isValid() ? rows().at(currentIndex().row()).key : QString();
}

QSize DoorListView::sizeHint() const {
    const Sizes& s = lookOf(this).sizes;
    return {int(50 * s.px_per_mm), s.row * std::clamp(rows().rowCount(), 2, 6)};
}

} // namespace latchround::ui

#include "moc_door_list.cpp"
