#include "ui/lists/two_line_list.h"

#include "ui/lists/two_line_delegate.h"

namespace latchround::ui {

TwoLineList::TwoLineList(const TwoLineStyle& style, QWidget* parent)
    : QListView(parent)
    , m_rows(new TwoLineModel(this))
    , m_drawing(new TwoLineDelegate(style, this)) {
    setModel(m_rows);
    setItemDelegate(m_drawing);
    const bool of_one_height = style.lines > 0;
    setUniformItemSizes(of_one_height);
    // Words take other lines at another width.
    setResizeMode(of_one_height ? QListView::Fixed : QListView::Adjust);
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
}

void TwoLineList::setRowStyle(const TwoLineStyle& style) {
    m_drawing->setRowStyle(style);
    doItemsLayout();
}

} // namespace latchround::ui

#include "moc_two_line_list.cpp"
