#include "ui/screens/review/item_list.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "ui/frames/list_touch.h"
#include "ui/ink/glyph_drawing.h"
#include "ui/look/button_drawing.h"
#include "ui/look/look.h"
#include "ui/look/mirrored.h"

namespace latchround::ui {

namespace {

constexpr int words_wrapped = int(Qt::AlignLeft) | int(Qt::AlignTop) | int(Qt::TextWordWrap);

/// Where the pieces of a line stand, from its upper left corner, and how high it is.
struct Places {
    QRectF glyph;
    QRectF number;
    QRectF words;
    QRectF detail;
    QRectF weight;
    double height = 0;
};

/// So wide, with all its words, over as many lines as they take.
Places placesOf(const ItemLine& line, double wide, const Appearance& look) {
    const double mm = look.sizes.px_per_mm;
    const auto rect = [&](const QString& words, TextSize size, double left, double top,
                          double room) {
        const QFontMetricsF metrics(textFont(size, look.sizes));
        const double high =
            metrics.boundingRect(QRectF(0, 0, room, 1e5), words_wrapped, words).height();
        return QRectF(left, top, room, std::max(high, metrics.height()));
    };
    const auto widthOf = [&](const QString& words, TextSize size, bool bold) {
        return std::ceil(QFontMetricsF(textFont(size, look.sizes, bold)).horizontalAdvance(words) +
                         mm);
    };
    Places places;
    const double right = wide - 1.5 * mm;
    if (line.id.empty()) {
        const QFontMetricsF metrics(textFont(TextSize::Small, look.sizes, true));
        const double room = right - 1.5 * mm;
        const double high =
            metrics.boundingRect(QRectF(0, 0, room, 1e5), words_wrapped, line.title).height();
        places.words = {1.5 * mm, 2 * mm, room, high};
        places.height = high + 3 * mm;
        return places;
    }
    const double left = 9.9 * mm;
    const double number = widthOf(line.title, TextSize::Body, true);
    const double weight = widthOf(line.weight, TextSize::Small, false);
    places.words = rect(line.words, TextSize::Body, left + number, 1.5 * mm, right - left - number);
    const double second = places.words.bottom();
    places.detail = rect(line.detail, TextSize::Small, left, second, right - weight - left - mm);
    places.height = std::max(double(look.sizes.row), places.detail.bottom() + 1.5 * mm);
    const double down = (places.height - places.detail.bottom() - 1.5 * mm) / 2;
    places.words.translate(0, down);
    places.detail.translate(0, down);
    places.number = {left, places.words.top(), number, places.words.height()};
    places.weight = {right - weight, places.detail.top(), weight, places.detail.height()};
    places.glyph = {1.5 * mm, places.height / 2 - 3.5 * mm, 6.2 * mm, 7 * mm};
    return places;
}

} // namespace

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
    const auto* lines = qobject_cast<const ItemLines*>(index.model());
    const auto* view = qobject_cast<const QListView*>(option.widget);
    if (lines == nullptr || view == nullptr)
        return {};
    const Appearance& look = lookOf(view);
    const double wide = view->viewport()->width();
    return {int(40 * look.sizes.px_per_mm),
            int(std::ceil(placesOf(lines->at(index.row()), wide, look).height))};
}

void ItemLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* lines = qobject_cast<const ItemLines*>(index.model());
    if (lines == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const ItemLine& line = lines->at(index.row());
    const QRectF area(option.rect);
    const Places places = placesOf(line, area.width(), look);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const auto at = [&](const QRectF& piece) {
        return mirrored(piece.translated(area.topLeft()), area, option.direction);
    };
    const auto write = [&](const QRectF& place, TextSize size, bool bold, const QColor& ink,
                           const QString& words) {
        painter->setFont(textFont(size, look.sizes, bold));
        painter->setPen(ink);
        painter->drawText(at(place), words_wrapped, words);
    };
    if (line.id.empty()) {
        write(places.words, TextSize::Small, true, look.colours.muted, line.title);
        painter->restore();
        return;
    }
    const bool current = option.state & QStyle::State_Selected;
    if (current)
        painter->fillRect(area, look.colours.selected);
    painter->setPen(QPen(look.colours.hairline, 1));
    painter->drawLine(area.bottomLeft() - QPointF(0, 0.5), area.bottomRight() - QPointF(0, 0.5));
    drawDoorGlyph(*painter, at(places.glyph), line.glyph, look.colours);
    write(places.number, TextSize::Body, true, look.colours.ink, line.title);
    write(places.words, TextSize::Body, false, look.colours.ink, line.words);
    write(places.weight, TextSize::Small, false, look.colours.muted, line.weight);
    write(places.detail, TextSize::Small, false,
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
    setResizeMode(QListView::Adjust); // words take other lines at another width
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

#include "moc_item_list.cpp"
