#include "ui/ship/profile_drawing.h"

#include <algorithm>

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include "ui/ink/glyph_drawing.h"
#include "ui/ink/verdict_colour.h"
#include "ui/look/button_drawing.h"

namespace latchround::ui {
namespace {

/// A ship from the side, stern left: a rounded stern, a raking bow. Decks and doors lie inside the
/// box.
QPainterPath hullPath(const QRectF& box, double mm) {
    QPainterPath path;
    const double stern = 1.6 * mm;
    const double run = std::min(9 * mm, box.width() * 0.05);
    const double bow = 3.2 * mm;
    path.moveTo(box.left() - stern, box.top());
    path.lineTo(box.right() - 5 * mm, box.top());
    path.lineTo(box.right() + bow, box.top() + box.height() * 0.34);
    path.lineTo(box.right() - 2.4 * mm, box.bottom());
    path.lineTo(box.left() + run, box.bottom());
    path.cubicTo(box.left() + run * 0.3, box.bottom() - box.height() * 0.06, box.left() - stern,
                 box.top() + box.height() * 0.6, box.left() - stern, box.top());
    path.closeSubpath();
    return path;
}

QPen bulkheadPen(bool proven, const Appearance& look) {
    QPen pen(look.colours.ink, 0.8 * look.sizes.px_per_mm);
    pen.setCapStyle(Qt::FlatCap);
    if (!proven)
        pen.setDashPattern({0.9, 0.9});
    return pen;
}

QPen openBulkheadPen(const Appearance& look) {
    QPen pen(look.colours.bad, 1.2 * look.sizes.px_per_mm);
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

QColor shadeOf(const Colours& colours, float share) {
    QColor shade = colours.bad;
    shade.setAlphaF(share);
    return shade;
}

/// The torn end of a bulkhead: it points into the gap, down where `deep` is above 0, else up.
void drawTornEnd(QPainter& painter, const QPointF& end, double half, double deep,
                 const Appearance& look) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.colours.bad);
    painter.drawPolygon(
        QPolygonF({end - QPointF(half, 0), end + QPointF(half, 0), end + QPointF(half * 0.5, deep),
                   end + QPointF(0, deep / 3), end + QPointF(-half * 0.5, deep)}));
}

class ProfilePainting {
public:
    ProfilePainting(QPainter& painter, const ProfilePlan& plan, const Appearance& look)
        : m_painter(painter)
        , m_plan(plan)
        , m_look(look)
        , m_colours(look.colours)
        , m_mm(look.sizes.px_per_mm) {}

    void hull() {
        const QPainterPath path = hullPath(m_plan.hull, m_mm);
        m_painter.fillPath(path, m_colours.hull);
        m_painter.save();
        m_painter.setClipPath(path, Qt::IntersectClip);
        m_painter.setPen(QPen(m_colours.edge, 1));
        for (const double y : m_plan.deck_lines)
            if (y < m_plan.hull.bottom() - 1)
                m_painter.drawLine(QPointF(m_plan.viewport.left() - 3 * m_mm, y),
                                   QPointF(m_plan.viewport.right() + 4 * m_mm, y));
        m_painter.restore();
        m_painter.setPen(QPen(m_colours.ink, 0.4 * m_mm));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(path);
    }

    void names() {
        m_painter.setPen(m_colours.muted);
        m_painter.setFont(textFont(TextSize::Small, m_look.sizes));
        const double line = QFontMetricsF(m_painter.font()).height();
        if (m_plan.row_height < line * 0.95) {
            QFont smaller = m_painter.font();
            smaller.setPixelSize(std::max(9, int(smaller.pixelSize() * m_plan.row_height / line)));
            m_painter.setFont(smaller);
        }
        for (const ProfileLabel& deck : m_plan.decks)
            m_painter.drawText(deck.place, Qt::AlignRight | Qt::AlignVCenter, deck.text);
        m_painter.setPen(m_colours.ink);
        m_painter.setFont(textFont(TextSize::Body, m_look.sizes));
        const QFontMetricsF metrics(m_painter.font());
        for (const ProfileLabel& zone : m_plan.zones) {
            const QString full =
                QCoreApplication::translate("ZoneProfile", "zone %1").arg(zone.text);
            const bool fits = metrics.horizontalAdvance(full) < zone.place.width() - m_mm;
            m_painter.drawText(zone.place, Qt::AlignCenter | Qt::TextDontClip,
                               fits ? full : zone.text);
        }
    }

    void bulkheads(const BulkheadsShown& shown) {
        for (const ProfileBulkhead& bulkhead : m_plan.bulkheads) {
            if (shown.broken.contains(bulkhead.id)) {
                brokenBulkhead(bulkhead);
                continue;
            }
            m_painter.setPen(bulkheadPen(!shown.not_shown.contains(bulkhead.id), m_look));
            m_painter.drawLine(bulkhead.top, bulkhead.foot);
        }
    }

    void doors(const QString& current) {
        for (const ProfileDoor& door : m_plan.doors) {
            if (door.dot)
                drawDoorDot(m_painter, door.place, door.verdict, colourOf(door.verdict, m_colours));
            else
                glyph(door);
            if (!current.isEmpty() && door.standsFor(current)) {
                m_painter.setBrush(Qt::NoBrush);
                m_painter.setPen(QPen(m_colours.focus, 0.6 * m_mm));
                m_painter.drawRoundedRect(door.place.adjusted(-m_mm, -m_mm, m_mm, m_mm), m_mm,
                                          m_mm);
            }
        }
    }

private:
    /// Whole but for the decks where a door fails: there it is torn open, and what it let through
    /// is shaded.
    void brokenBulkhead(const ProfileBulkhead& bulkhead) {
        const double x = bulkhead.top.x();
        const double aside = bulkhead.half_width + 2 * m_mm;
        m_painter.fillRect(QRectF(bulkhead.top, bulkhead.foot).adjusted(-aside, 0, aside, 0),
                           shadeOf(m_colours, 0.13F));
        const QPen line = openBulkheadPen(m_look);
        const double half = 1.5 * m_mm;
        const double deep = std::min(1.6 * m_mm, m_plan.row_height * 0.16);
        double from = bulkhead.top.y() - 1.8 * m_mm; // an end that stands out above the ship
        for (const int row : bulkhead.failing_rows) {
            const double top = m_plan.deck_lines[std::size_t(row)] - m_plan.row_height;
            const double foot = m_plan.deck_lines[std::size_t(row)];
            m_painter.fillRect(
                QRectF(x - aside - 4 * m_mm, top, 2 * (aside + 4 * m_mm), m_plan.row_height),
                shadeOf(m_colours, 0.3F));
            m_painter.setPen(line);
            if (top > from)
                m_painter.drawLine(QPointF(x, from), QPointF(x, top));
            drawTornEnd(m_painter, {x, top}, half, deep, m_look);
            drawTornEnd(m_painter, {x, foot}, half, -deep, m_look);
            from = foot;
        }
        m_painter.setPen(line);
        if (bulkhead.foot.y() > from)
            m_painter.drawLine(QPointF(x, from), bulkhead.foot);
    }

    void glyph(const ProfileDoor& door) {
        m_painter.fillRect(door.place.adjusted(-1.5, -1, 1.5, 0), m_colours.hull);
        drawDoorGlyph(m_painter, door.place, door.verdict, m_colours);
        if (door.together() == 1)
            return;
        m_painter.setPen(m_colours.ink);
        m_painter.setFont(textFont(TextSize::Small, m_look.sizes));
        m_painter.drawText(
            QRectF(door.place.right() + 2, door.place.top(), 8 * m_mm, door.place.height()),
            Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip,
            QStringLiteral("×%1").arg(door.together()));
    }

    QPainter& m_painter;
    const ProfilePlan& m_plan;
    const Appearance& m_look;
    const Colours& m_colours;
    double m_mm;
};

} // namespace

ProfileMarks marksOf(const ProfilePlan& plan, const DoorVerdicts& verdicts,
                     const BulkheadsShown& bulkheads) {
    ProfileMarks marks;
    marks.neighbours = plan.has_neighbours;
    for (const ProfileDoor& drawn : plan.doors) {
        marks.dots = marks.dots || drawn.dot;
        marks.counts = marks.counts || (!drawn.dot && drawn.together() > 1);
        for (const QString& number : QStringList{drawn.number} + drawn.behind) {
            const Verdict verdict = verdictOf(verdicts, number.toStdString());
            marks.verdicts.insert(verdict);
            if (!drawn.in_zone_bulkhead)
                marks.others.insert(verdict);
        }
    }
    for (const ProfileBulkhead& bulkhead : plan.bulkheads) {
        if (bulkheads.broken.contains(bulkhead.id))
            marks.open_bulkhead = true;
        else if (bulkheads.not_shown.contains(bulkhead.id))
            marks.unproven_bulkhead = true;
    }
    return marks;
}

void drawDoorDot(QPainter& painter, const QRectF& place, Verdict verdict, const QColor& colour) {
    if (verdict == Verdict::Unsatisfactory) {
        drawMarkShape(painter, place.adjusted(-1, -1, 1, 1), MarkShape::Cross, colour);
        return;
    }
    painter.setPen(QPen(colour, 1.4));
    painter.setBrush(verdict == Verdict::Satisfactory ? QBrush(colour) : QBrush(Qt::NoBrush));
    painter.drawEllipse(place);
}

void drawOpenBulkhead(QPainter& painter, const QRectF& box, const Appearance& look) {
    const double x = box.center().x();
    const double gap = box.height() * 0.56;
    const double half = box.width() * 0.22;
    const double deep = gap * 0.24;
    const double top = box.center().y() - gap / 2;
    const double foot = box.center().y() + gap / 2;
    painter.fillRect(box.adjusted(box.width() * 0.25, 0, -box.width() * 0.25, 0),
                     shadeOf(look.colours, 0.13F));
    painter.fillRect(QRectF(box.left(), top, box.width(), gap), shadeOf(look.colours, 0.3F));
    painter.setPen(openBulkheadPen(look));
    painter.drawLine(QPointF(x, box.top()), QPointF(x, top));
    painter.drawLine(QPointF(x, foot), QPointF(x, box.bottom()));
    drawTornEnd(painter, {x, top}, half, deep, look);
    drawTornEnd(painter, {x, foot}, half, -deep, look);
}

void drawUnprovenBulkhead(QPainter& painter, const QRectF& box, const Appearance& look) {
    const double x = box.center().x();
    painter.setPen(bulkheadPen(false, look));
    painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
}

void drawProfile(QPainter& painter, const ProfilePlan& plan, const BulkheadsShown& bulkheads,
                 const QString& current, const Appearance& look) {
    painter.setRenderHint(QPainter::Antialiasing);
    ProfilePainting painting(painter, plan, look);
    painting.names();
    painter.save();
    // Of a ship that is looked at closely only what is in view; bow and stern reach a little out.
    const double mm = look.sizes.px_per_mm;
    painter.setClipRect(plan.viewport.adjusted(-2.2 * mm, -2 * mm, 3.8 * mm, 0.4 * mm));
    painting.hull();
    painting.bulkheads(bulkheads);
    painting.doors(current);
    painter.restore();
}

} // namespace latchround::ui
