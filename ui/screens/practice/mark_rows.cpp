#include "ui/screens/practice/mark_rows.h"

#include <algorithm>

#include <QPainter>

#include "ui/words/cue_words.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

namespace {

constexpr double farthest_s = 1;
constexpr double narrow_mm = 80;

} // namespace

LateScale scaleOf(const std::vector<practice::MarkCompared>& marks) {
    LateScale scale;
    for (const practice::MarkCompared& mark : marks)
        if (mark.late_s) {
            scale.from_s = std::clamp(*mark.late_s, -farthest_s, scale.from_s);
            scale.to_s = std::clamp(*mark.late_s, scale.to_s, farthest_s);
        }
    return scale;
}

MarkRow::MarkRow(const practice::MarkCompared& mark, LateScale scale)
    : m_door(QString::fromStdString(mark.door))
    , m_event(markWords(mark.mark))
    , m_late(mark.late_s ? lateWords(*mark.late_s) : tr("no such event"))
    , m_late_s(mark.late_s)
    , m_scale(scale) {
    setObjectName(QStringLiteral("debrief-mark"));
    setAccessibleName(tr("Door %1, %2: %3").arg(m_door, m_event, m_late));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

/// No room for how late it was beside what it is: that stands below, and is not drawn.
bool MarkRow::isNarrow() const {
    return width() < mm(narrow_mm);
}

QSize MarkRow::sizeHint() const {
    const int lines = isNarrow() ? 2 : 1;
    return {int(mm(90)), lines * QFontMetrics(font(TextSize::Body)).height() + sizes().gap};
}

void MarkRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    updateGeometry();
}

void MarkRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    painter.setPen(QPen(c.hairline, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));

    const QFontMetricsF body(font(TextSize::Body));
    const bool narrow = isNarrow();
    const double door = std::max(mm(15), body.horizontalAdvance(m_door) + mm(2));
    const double late = std::max(body.horizontalAdvance(m_late), mm(27)) + mm(2);
    const double event = narrow ? width() - door : std::min(mm(38), (width() - door - late) * 0.55);
    const double high = narrow ? (height() - 1) / 2.0 : height() - 1;
    const auto cell = [high](double left, double wide) { return QRectF(left, 0, wide, high); };
    painter.setFont(font(TextSize::Body, true));
    painter.setPen(c.ink);
    painter.drawText(cell(0, door), Qt::AlignVCenter, m_door);
    painter.setFont(font(TextSize::Body));
    painter.drawText(cell(door, event - mm(1)), Qt::AlignVCenter,
                     body.elidedText(m_event, Qt::ElideRight, event - mm(1)));
    painter.setPen(m_late_s ? c.ink : c.muted);
    if (narrow) {
        painter.drawText(cell(door, event - mm(1)).translated(0, high), Qt::AlignVCenter, m_late);
        return;
    }
    painter.drawText(cell(width() - late, late - mm(1)), Qt::AlignVCenter | Qt::AlignRight, m_late);

    const QRectF area = cell(door + event, width() - late - door - event).adjusted(0, 0, -mm(2), 0);
    if (area.width() < mm(12))
        return;
    const auto x = [&](double seconds) {
        return area.left() + (std::clamp(seconds, m_scale.from_s, m_scale.to_s) - m_scale.from_s) /
                                 (m_scale.to_s - m_scale.from_s) * area.width();
    };
    if (m_late_s) {
        painter.setPen(QPen(c.accent, mm(1.6), Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x(0), area.center().y()),
                         QPointF(x(*m_late_s), area.center().y()));
    }
    painter.setPen(QPen(c.edge, mm(0.4)));
    painter.drawLine(QPointF(x(0), area.top()), QPointF(x(0), area.bottom()));
}

} // namespace latchround::ui

#include "moc_mark_rows.cpp"
