#include "ui/screens/home/open_item_list.h"

#include <algorithm>
#include <cmath>

#include <QPainter>
#include <QTextLayout>

#include "ui/ink/glyph_drawing.h"
#include "ui/look/button_drawing.h"
#include "ui/look/look.h"
#include "ui/look/mirrored.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

/// Words in at most this many lines; the last one ends in an ellipsis where they do not fit.
QStringList linesOf(const QString& words, const QFont& font, double width, int most) {
    QTextLayout layout(words, font);
    layout.beginLayout();
    QStringList lines;
    while (lines.size() < most) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(width);
        const bool last = lines.size() + 1 == most;
        lines << (last ? QFontMetricsF(font).elidedText(words.mid(line.textStart()), Qt::ElideRight,
                                                        width)
                       : words.mid(line.textStart(), line.textLength()));
    }
    layout.endLayout();
    return lines;
}

} // namespace

void OpenItemModel::setItems(std::vector<OpenItem> items) {
    beginResetModel();
    m_items = std::move(items);
    endResetModel();
}

int OpenItemModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(m_items.size());
}

QVariant OpenItemModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const OpenItem& item = at(index.row());
    if (role == Qt::DisplayRole)
        return item.door;
    if (role == Qt::AccessibleTextRole)
        return QStringList{item.door, verdictWords(item.glyph), item.what, item.why}.join(
            QStringLiteral(", "));
    return {};
}

int OpenItemDelegate::heightOf(const QWidget* widget, bool roomy) {
    const Sizes& s = lookOf(widget).sizes;
    const double body = QFontMetricsF(textFont(TextSize::Body, s)).height();
    const double small = QFontMetricsF(textFont(TextSize::Small, s)).height();
    const double words = (roomy ? 2 : 1) * body + small + 2 * s.px_per_mm;
    return std::max(s.row, int(std::ceil(words)));
}

void OpenItemDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* model = qobject_cast<const OpenItemModel*>(index.model());
    if (model == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const OpenItem& item = model->at(index.row());
    const double mm = look.sizes.px_per_mm;
    const QRectF area(option.rect);
    const QFont bold = textFont(TextSize::Body, look.sizes, true);
    const QFont body = textFont(TextSize::Body, look.sizes);
    const QFont small = textFont(TextSize::Small, look.sizes);
    const double line = QFontMetricsF(body).height();
    const auto at = [&](const QRectF& piece) { return mirrored(piece, area, option.direction); };
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state & (QStyle::State_Sunken | QStyle::State_HasFocus))
        painter->fillRect(area, look.colours.selected);
    painter->setPen(QPen(look.colours.hairline, 1));
    painter->drawLine(area.topLeft() + QPointF(0, 0.5), area.topRight() + QPointF(0, 0.5));
    const QRectF glyph(area.left(), area.center().y() - 3.5 * mm, 6.2 * mm, 7 * mm);
    drawDoorGlyph(*painter, at(glyph), item.glyph, look.colours);

    const double left = glyph.right() + 2.2 * mm;
    const double number = QFontMetricsF(bold).horizontalAdvance(item.door) + 1.6 * mm;
    const double room = area.right() - left - mm / 2;
    const QStringList what = linesOf(item.what, body, room - number, roomy ? 2 : 1);
    const double height = line * double(what.size()) + QFontMetricsF(small).height();
    double top = area.center().y() - height / 2;
    painter->setPen(look.colours.ink);
    painter->setFont(bold);
    painter->drawText(at(QRectF(left, top, number, line)), Qt::AlignLeft | Qt::AlignVCenter,
                      item.door);
    painter->setFont(body);
    for (const QString& words : what) {
        painter->drawText(at(QRectF(left + number, top, room - number, line)),
                          Qt::AlignLeft | Qt::AlignVCenter, words.trimmed());
        top += line;
    }
    painter->setFont(small);
    painter->setPen(look.colours.muted);
    const double inset = roomy ? number : 0;
    painter->drawText(at(QRectF(left + inset, top, room - inset, QFontMetricsF(small).height())),
                      Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetricsF(small).elidedText(item.why, Qt::ElideRight, room - inset));
    painter->restore();
    if (option.state & QStyle::State_HasFocus)
        drawFocusRing(*painter, area, look);
}

QSize OpenItemDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {int(40 * lookOf(option.widget).sizes.px_per_mm), heightOf(option.widget, roomy)};
}

OpenItemList::OpenItemList(QWidget* parent)
    : QListView(parent)
    , m_model(new OpenItemModel(this))
    , m_drawing(new OpenItemDelegate(this)) {
    setModel(m_model);
    setItemDelegate(m_drawing);
    setUniformItemSizes(true);
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::NoSelection);
    setAccessibleName(tr("Open items"));
    connect(this, &QListView::activated, this,
            [this](const QModelIndex& index) { emit chosen(m_model->at(index.row())); });
}

void OpenItemList::setItems(std::vector<OpenItem> items) {
    m_model->setItems(std::move(items));
}

void OpenItemList::setRoomy(bool roomy) {
    if (m_drawing->roomy == roomy)
        return;
    m_drawing->roomy = roomy;
    doItemsLayout();
}

} // namespace latchround::ui

#include "moc_open_item_list.cpp"
