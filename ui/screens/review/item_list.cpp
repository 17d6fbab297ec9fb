#include "ui/screens/review/item_list.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "ui/look/button_drawing.h"
#include "ui/look/look.h"
#include "ui/parts/door_glyph.h"
#include "ui/parts/list_touch.h"
#include "ui/parts/mirrored.h"

namespace latchround::ui {

void ItemLines::setLines(std::vector<ItemLine> lines) {
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int ItemLines::rowOf(const FactId& id) const {
    const auto found = std::ranges::find(m_lines, id, &ItemLine::id);
    return id.empty() || found == m_lines.end() ? -1 : int(found - m_lines.begin());
}

int ItemLines::firstItem() const {
    const auto found =
        std::ranges::find_if(m_lines, [](const ItemLine& line) { return !line.id.empty(); });
    return found == m_lines.end() ? -1 : int(found - m_lines.begin());
}

int ItemLines::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(m_lines.size());
}

QVariant ItemLines::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const ItemLine& line = at(index.row());
    if (role == Qt::DisplayRole)
        return line.title;
    if (role == Qt::AccessibleTextRole)
        return line.id.empty() ? line.title
                               : QStringList{line.title, line.words, line.weight, line.detail}.join(
                                     QStringLiteral(", "));
    return {};
}

Qt::ItemFlags ItemLines::flags(const QModelIndex& index) const {
    if (!index.isValid() || at(index.row()).id.empty())
        return Qt::NoItemFlags; // a heading is passed over by the arrow keys
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

QSize ItemLineDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    const Sizes& s = lookOf(option.widget).sizes;
    const double body = QFontMetricsF(textFont(TextSize::Body, s)).height();
    const double small = QFontMetricsF(textFont(TextSize::Small, s)).height();
    const auto* lines = qobject_cast<const ItemLines*>(index.model());
    const bool heading = lines && lines->at(index.row()).id.empty();
    const int height = heading ? int(std::ceil(small + 3 * s.px_per_mm))
                               : std::max(s.row, int(std::ceil(body + small + 3 * s.px_per_mm)));
    return {int(40 * s.px_per_mm), height};
}

void ItemLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* lines = qobject_cast<const ItemLines*>(index.model());
    if (lines == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const ItemLine& line = lines->at(index.row());
    const double mm = look.sizes.px_per_mm;
    const QRectF area(option.rect);
    const QFont body = textFont(TextSize::Body, look.sizes);
    const QFont bold = textFont(TextSize::Body, look.sizes, true);
    const QFont small = textFont(TextSize::Small, look.sizes);
    const QFont small_bold = textFont(TextSize::Small, look.sizes, true);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const auto at = [&](const QRectF& piece) { return mirrored(piece, area, option.direction); };
    const auto write = [&](const QRectF& place, const QFont& font, const QColor& ink,
                           const QString& words, Qt::Alignment side = Qt::AlignLeft) {
        painter->setFont(font);
        painter->setPen(ink);
        painter->drawText(at(place), int(side | Qt::AlignVCenter),
                          QFontMetricsF(font).elidedText(words, Qt::ElideRight, place.width()));
    };
    if (line.id.empty()) {
        write(area.adjusted(1.5 * mm, mm, -1.5 * mm, 0), small_bold, look.colours.muted,
              line.title);
        painter->restore();
        return;
    }
    const bool current = option.state & QStyle::State_Selected;
    if (current)
        painter->fillRect(area, look.colours.selected);
    painter->setPen(QPen(look.colours.hairline, 1));
    painter->drawLine(area.bottomLeft() - QPointF(0, 0.5), area.bottomRight() - QPointF(0, 0.5));
    const QRectF glyph(area.left() + 1.5 * mm, area.center().y() - 3.5 * mm, 6.2 * mm, 7 * mm);
    drawDoorGlyph(*painter, at(glyph), line.glyph, look.colours);
    const double left = glyph.right() + 2.2 * mm;
    const double right = area.right() - 1.5 * mm;
    const double first = QFontMetricsF(body).height();
    const double second = QFontMetricsF(small).height();
    const double top = area.center().y() - (first + second) / 2;
    const double number = QFontMetricsF(bold).horizontalAdvance(line.title) + 1.6 * mm;
    write({left, top, number, first}, bold, look.colours.ink, line.title);
    write({left + number, top, right - left - number, first}, body, look.colours.ink, line.words);
    const double weight = QFontMetricsF(small).horizontalAdvance(line.weight) + mm;
    write({right - weight, top + first, weight, second}, small, look.colours.muted, line.weight,
          Qt::AlignRight);
    write({left, top + first, right - weight - left - mm, second}, small,
          line.overdue ? look.colours.bad : look.colours.muted, line.detail);
    painter->restore();
    if (current && option.state & QStyle::State_HasFocus)
        drawFocusRing(*painter, area, look);
}

ItemList::ItemList(QWidget* parent)
    : QListView(parent)
    , m_lines(new ItemLines(this)) {
    setModel(m_lines);
    setItemDelegate(new ItemLineDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    setAccessibleName(tr("Open items"));
    scrollByTouch(*this);
}

void ItemList::setLines(std::vector<ItemLine> lines) {
    const FactId before = current();
    m_lines->setLines(std::move(lines));
    const int kept = m_lines->rowOf(before);
    const int row = kept >= 0 ? kept : m_lines->firstItem();
    if (row < 0)
        emit currentItemChanged({});
    else
        setCurrentIndex(m_lines->index(row));
}

FactId ItemList::current() const {
    const QModelIndex index = currentIndex();
    return index.isValid() ? m_lines->at(index.row()).id : FactId();
}

void ItemList::setCurrent(const FactId& id) {
    if (const int row = m_lines->rowOf(id); row >= 0)
        setCurrentIndex(m_lines->index(row));
}

void ItemList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    emit currentItemChanged(current.isValid() ? m_lines->at(current.row()).id : FactId());
}

} // namespace latchround::ui
