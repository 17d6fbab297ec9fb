#include "ui/lists/door_list.h"

#include <algorithm>

#include <QPainter>

#include "ui/frames/list_touch.h"
#include "ui/ink/glyph_drawing.h"
#include "ui/look/button_drawing.h"
#include "ui/look/look.h"
#include "ui/look/mirrored.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

void DoorListModel::setEntries(std::vector<DoorListEntry> entries) {
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
}

int DoorListModel::rowOf(const QString& number) const {
    const auto found =
        std::find_if(m_entries.begin(), m_entries.end(),
                     [&](const DoorListEntry& entry) { return entry.number == number; });
    return found == m_entries.end() ? -1 : int(found - m_entries.begin());
}

void DoorListModel::setVerdict(const QString& number, Verdict verdict) {
    const int row = rowOf(number);
    if (row < 0 || at(row).verdict == verdict)
        return;
    m_entries[std::size_t(row)].verdict = verdict;
    emit dataChanged(index(row), index(row));
}

int DoorListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(m_entries.size());
}

QVariant DoorListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const DoorListEntry& entry = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return entry.number;
    case Qt::AccessibleTextRole:
        return QString(entry.number + QStringLiteral(", ") + entry.words + QStringLiteral(", ") +
                       verdictWords(entry.verdict));
    default:
        return {};
    }
}

void DoorListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* model = qobject_cast<const DoorListModel*>(index.model());
    if (model == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const DoorListEntry& entry = model->at(index.row());
    const double mm = look.sizes.px_per_mm;
    const QRectF area(option.rect);
    const auto at = [&](const QRectF& piece) { return mirrored(piece, area, option.direction); };
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state & QStyle::State_Selected) {
        painter->fillRect(area, look.colours.selected);
        painter->fillRect(at(QRectF(area.left(), area.top(), 1.2 * mm, area.height())),
                          look.colours.accent);
    } else if (index.row() > 0) {
        painter->setPen(QPen(look.colours.hairline, 1));
        painter->drawLine(QPointF(area.left() + 3.6 * mm, area.top() + 0.5),
                          QPointF(area.right(), area.top() + 0.5));
    }
    const QRectF glyph(area.left() + 3.6 * mm, area.center().y() - 3.7 * mm, 6.6 * mm, 7.4 * mm);
    drawDoorGlyph(*painter, at(glyph), entry.verdict, look.colours);
    const QFont number_font = textFont(TextSize::Lead, look.sizes, true);
    const QFont words_font = textFont(TextSize::Small, look.sizes);
    const double number_height = QFontMetricsF(number_font).height();
    const double words_height = QFontMetricsF(words_font).height();
    const double left = glyph.right() + 3 * mm;
    const double room = area.right() - left - mm;
    const double top = area.center().y() - (number_height + words_height) / 2;
    painter->setFont(number_font);
    painter->setPen(look.colours.ink);
    painter->drawText(at(QRectF(left, top, room, number_height)), Qt::AlignLeft | Qt::AlignVCenter,
                      entry.number);
    painter->setFont(words_font);
    painter->setPen(look.colours.muted);
    painter->drawText(at(QRectF(left, top + number_height, room, words_height)),
                      Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetricsF(words_font).elidedText(entry.words, Qt::ElideRight, room));
    painter->restore();
    if (option.state & QStyle::State_HasFocus)
        drawFocusRing(*painter, area, look);
}

QSize DoorListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const Sizes& s = lookOf(option.widget).sizes;
    return {int(40 * s.px_per_mm), s.row};
}

DoorListView::DoorListView(QWidget* parent)
    : QListView(parent)
    , m_model(new DoorListModel(this)) {
    setModel(m_model);
    setItemDelegate(new DoorListDelegate(this));
    setUniformItemSizes(true);
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setAccessibleName(tr("Doors"));
    scrollByTouch(*this);
    connect(this, &QListView::activated, this,
            [this](const QModelIndex& index) { emit doorChosen(m_model->at(index.row()).number); });
}

void DoorListView::setEntries(std::vector<DoorListEntry> entries) {
    m_model->setEntries(std::move(entries));
    updateGeometry();
}

void DoorListView::setVerdict(const QString& number, Verdict verdict) {
    m_model->setVerdict(number, verdict);
}

void DoorListView::setCurrentDoor(const QString& number) {
    const int row = m_model->rowOf(number);
    if (row < 0)
        return;
    setCurrentIndex(m_model->index(row));
    scrollTo(currentIndex());
}

QString DoorListView::currentDoor() const {
    return currentIndex().isValid() ? m_model->at(currentIndex().row()).number : QString();
}

QSize DoorListView::sizeHint() const {
    const Sizes& s = lookOf(this).sizes;
    return {int(50 * s.px_per_mm), s.row * std::clamp(m_model->rowCount(), 2, 6)};
}

} // namespace latchround::ui

#include "moc_door_list.cpp"
