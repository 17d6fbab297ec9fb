#include "ui/screens/home/open_item_list.h"

#include <algorithm>

#include "ui/lists/two_line_plan.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

/// Nothing stays chosen here: the row that has the keyboard is shaded.
TwoLineStyle openItemStyle(bool roomy) {
    return {.lines = roomy ? 2 : 1,
            .detail_below_title = roomy,
            .hairline = TwoLineStyle::Hairline::Above,
            .chosen = QStyle::State_Sunken | QStyle::State_HasFocus};
}

TwoLineRow openItemRow(const OpenItem& item) {
    TwoLineRow row;
    row.glyph = item.glyph;
    row.name = item.door;
    row.title = item.what;
    row.detail = item.why;
    row.spoken = QStringList{item.door, verdictWords(item.glyph), item.what, item.why}.join(
        QStringLiteral(", "));
    return row;
}

} // namespace

OpenItemList::OpenItemList(QWidget* parent)
    : TwoLineList(openItemStyle(false), parent) {
    setSelectionMode(QAbstractItemView::NoSelection);
    setAccessibleName(tr("Needs attention"));
    connect(this, &QListView::activated, this,
            [this](const QModelIndex& index) { emit chosen(m_items[std::size_t(index.row())]); });
}

void OpenItemList::setItems(std::vector<OpenItem> items) {
    m_items = std::move(items);
    std::vector<TwoLineRow> lines;
    std::ranges::transform(m_items, std::back_inserter(lines), openItemRow);
    rows().setRows(std::move(lines));
}

void OpenItemList::setRoomy(bool roomy) {
    if (m_roomy == roomy)
        return;
    m_roomy = roomy;
    setRowStyle(openItemStyle(roomy));
}

int OpenItemList::rowHeight(bool roomy) const {
    return twoLineHeight(openItemStyle(roomy), lookOf(this).sizes);
}

} // namespace latchround::ui

#include "moc_open_item_list.cpp"
