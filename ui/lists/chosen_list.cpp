#include "ui/lists/chosen_list.h"

#include "ui/frames/list_touch.h"

namespace latchround::ui {

namespace {

constexpr TwoLineStyle chosen_style{.before = 1.5,
                                    .after = 1.5,
                                    .above = 1.5,
                                    .name_gap = 1,
                                    .lines = 0,
                                    .hairline = TwoLineStyle::Hairline::Below};

} // namespace

ChosenList::ChosenList(QWidget* parent)
    : TwoLineList(chosen_style, parent) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    scrollByTouch(*this);
}

void ChosenList::setLines(std::vector<TwoLineRow> lines) {
    const QString before = chosenKey();
    rows().setRows(std::move(lines));
    const int kept = rows().rowOf(before);
    const int row = kept >= 0 ? kept : rows().firstItem();
    if (row < 0)
        emit chosenChanged({});
    else
        setCurrentIndex(rows().index(row));
}

QString ChosenList::keyOf(const QModelIndex& index) const {
    return index.isValid() ? rows().at(index.row()).key : QString();
}

QString ChosenList::chosenKey() const {
    return keyOf(currentIndex());
}

void ChosenList::choose(const QString& key) {
    if (const int row = rows().rowOf(key); row >= 0)
        setCurrentIndex(rows().index(row));
}

void ChosenList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    TwoLineList::currentChanged(current, previous);
    emit chosenChanged(keyOf(current));
}

} // namespace latchround::ui

#include "moc_chosen_list.cpp"
