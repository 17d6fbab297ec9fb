#include "ui/screens/review/item_list.h"

#include "ui/frames/list_touch.h"

namespace latchround::ui {

namespace {

constexpr TwoLineStyle item_style{.before = 1.5,
                                  .after = 1.5,
                                  .above = 1.5,
                                  .name_gap = 1,
                                  .lines = 0,
                                  .hairline = TwoLineStyle::Hairline::Below};

} // namespace

ItemList::ItemList(QWidget* parent)
    : TwoLineList(item_style, parent) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    setAccessibleName(tr("Open items"));
    scrollByTouch(*this);
}

void ItemList::setLines(std::vector<TwoLineRow> lines) {
    const QString before = QString::fromStdString(current());
    rows().setRows(std::move(lines));
    const int kept = rows().rowOf(before);
    const int row = kept >= 0 ? kept : rows().firstItem();
    if (row < 0)
        emit currentItemChanged({});
    else
        setCurrentIndex(rows().index(row));
}

FactId ItemList::idOf(const QModelIndex& index) const {
    return index.isValid() ? rows().at(index.row()).key.toStdString() : FactId();
}

FactId ItemList::current() const {
    return idOf(currentIndex());
}

void ItemList::setCurrent(const FactId& id) {
    if (const int row = rows().rowOf(QString::fromStdString(id)); row >= 0)
        setCurrentIndex(rows().index(row));
}

void ItemList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    TwoLineList::currentChanged(current, previous);
    emit currentItemChanged(idOf(current));
}

} // namespace latchround::ui

#include "moc_item_list.cpp"
