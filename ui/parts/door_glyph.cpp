#include "ui/parts/door_glyph.h"

#include <algorithm>
#include <cmath>

#include <QPainter>
#include <QPainterPath>

#include "ui/parts/verdict_look.h"

namespace latchround::ui {
namespace {

/// The glyph's own measures, worked out once for a box.
struct Frame {
    QRectF outer; ///< the frame's outline; open at the foot
    QRectF leaf;  ///< a shut leaf inside it
    double line = 1;
};

Frame frameIn(const QRectF& box) {
    const double height = std::min(box.height(), box.width() / 0.82);
    const double width = height * 0.82;
    Frame f;
    f.line = std::max(1.25, height * 0.075);
    f.outer = QRectF(box.center().x() - width / 2, box.center().y() - height / 2, width, height)
                  .adjusted(f.line / 2, f.line / 2, -f.line / 2, 0);
    const double gap = std::max(1.0, height * 0.06) + f.line / 2;
    f.leaf = f.outer.adjusted(gap, gap, -gap, -height * 0.05);
    return f;
}

void drawFrame(QPainter& painter, const Frame& f, const QColor& colour) {
    QPen pen(colour, f.line);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF(
        {f.outer.bottomLeft(), f.outer.topLeft(), f.outer.topRight(), f.outer.bottomRight()}));
}

void outlineLeaf(QPainter& painter, const Frame& f, const QColor& colour, Qt::PenStyle style) {
    const double line = f.line * 0.85;
    QPen pen(colour, line);
    pen.setJoinStyle(Qt::MiterJoin);
    pen.setCapStyle(Qt::FlatCap);
    if (style == Qt::DotLine)
        pen.setDashPattern({1.6, 1.3});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(f.leaf.adjusted(line / 2, line / 2, -line / 2, -line / 2));
}

void drawAjarLeaf(QPainter& painter, const Frame& f, const QColor& colour) {
    // Seen from the front, hung on the left: the free edge stands towards us, larger than the
    // frame's.
    const QRectF& leaf = f.leaf;
    const double reach = leaf.width() * 0.58;
    const double drop = leaf.height() * 0.13;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({leaf.topLeft(), QPointF(leaf.left() + reach, leaf.top() + drop),
                                   QPointF(leaf.left() + reach, leaf.bottom() + drop * 0.35),
                                   QPointF(leaf.left(), leaf.bottom() - drop * 0.35)}));
}

void drawClock(QPainter& painter, const Frame& f, const QColor& colour) {
    const double side = std::min(f.leaf.width(), f.leaf.height()) * 0.72;
    const QPointF c = f.leaf.center();
    painter.setPen(QPen(colour, f.line * 0.85));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(c, side / 2, side / 2);
    painter.drawPolyline(
        QPolygonF({c - QPointF(0, side * 0.3), c, c + QPointF(side * 0.22, side * 0.08)}));
}

/// A question mark drawn as strokes, so that it is the same in every typeface and at 16 px.
void drawQuestion(QPainter& painter, const Frame& f, const QColor& colour) {
    const QPointF c = f.leaf.center();
    const double h = f.leaf.height() * 0.56;
    const double r = h * 0.27;
    QPen pen(colour, f.line * 1.05);
    pen.setCapStyle(Qt::RoundCap);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const QPointF top(c.x(), c.y() - h / 2 + r);
    QPainterPath hook;
    hook.arcMoveTo(QRectF(top.x() - r, top.y() - r, 2 * r, 2 * r), 180);
    hook.arcTo(QRectF(top.x() - r, top.y() - r, 2 * r, 2 * r), 180, -230);
    hook.lineTo(c.x(), c.y() + h * 0.2);
    painter.drawPath(hook);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double dot = f.line * 0.7;
    painter.drawEllipse(QPointF(c.x(), c.y() + h / 2), dot, dot);
}

void drawLetterI(QPainter& painter, const Frame& f, const QColor& colour) {
    const QPointF c = f.leaf.center();
    const double h = f.leaf.height() * 0.52;
    QPen pen(colour, f.line * 1.2);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(QPointF(c.x(), c.y() - h * 0.12), QPointF(c.x(), c.y() + h / 2));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double dot = f.line * 0.8;
    painter.drawEllipse(QPointF(c.x(), c.y() - h * 0.44), dot, dot);
}

} // namespace

void drawDoorGlyph(QPainter& painter, const QRectF& box, Verdict verdict, const Colours& colours) {
    const Frame f = frameIn(box);
    const QColor colour = colourOf(verdict, colours);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawFrame(painter, f, verdict == Verdict::NotApplicable ? colours.muted : colours.ink);
    switch (verdict) {
    case Verdict::Satisfactory:
        painter.fillRect(f.leaf, colour);
        break;
    case Verdict::Unsatisfactory:
        drawAjarLeaf(painter, f, colour);
        break;
    case Verdict::TimeAgain:
        outlineLeaf(painter, f, colour, Qt::SolidLine);
        drawClock(painter, f, colour);
        break;
    case Verdict::Judge:
        outlineLeaf(painter, f, colour, Qt::SolidLine);
        drawQuestion(painter, f, colour);
        break;
    case Verdict::Untested:
        outlineLeaf(painter, f, colour, Qt::DotLine);
        break;
    case Verdict::Advice:
        outlineLeaf(painter, f, colour, Qt::SolidLine);
        drawLetterI(painter, f, colour);
        break;
    case Verdict::NotApplicable:
        painter.setPen(QPen(colour, f.line * 1.3));
        painter.drawLine(f.leaf.bottomLeft(), f.leaf.topRight());
        break;
    }
    painter.restore();
}

DoorGlyph::DoorGlyph(Verdict verdict, double height_mm, QWidget* parent)
    : Part(parent)
    , m_verdict(verdict)
    , m_height_mm(height_mm) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setVerdict(verdict);
}

void DoorGlyph::setVerdict(Verdict verdict) {
    m_verdict = verdict;
    setAccessibleName(verdictWords(verdict));
    update();
}

QSize DoorGlyph::sizeHint() const {
    const double height = mm(m_height_mm);
    return {int(std::lround(height * 0.86)), int(std::lround(height))};
}

void DoorGlyph::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    drawDoorGlyph(painter, QRectF(rect()), m_verdict, colours());
}

} // namespace latchround::ui
