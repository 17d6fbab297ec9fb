#include "ui/parts/zone_profile.h"

#include <algorithm>
#include <cmath>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include "ui/look/button_drawing.h"
#include "ui/parts/door_glyph.h"
#include "ui/parts/verdict_look.h"

namespace latchround::ui {
namespace {

constexpr int most_sentences = 3;

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

} // namespace

ZoneProfile::ZoneProfile(QWidget* parent)
    : Part(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    speak();
}

void ZoneProfile::setArrangement(Arrangement arrangement) {
    m_arrangement = std::move(arrangement);
    plan();
}

void ZoneProfile::setVerdicts(DoorVerdicts verdicts) {
    m_verdicts = std::move(verdicts);
    plan();
}

void ZoneProfile::setBulkheads(BulkheadsShown shown) {
    m_bulkheads = std::move(shown);
    updateGeometry();
    plan();
}

void ZoneProfile::setCurrentDoor(const QString& number) {
    m_current = number;
    speak();
    update();
}

std::optional<QRectF> ZoneProfile::placeOf(const QString& door) const {
    for (const ProfileDoor& drawn : m_plan.doors)
        if (drawn.number == door)
            return drawn.place;
    return std::nullopt;
}

QStringList ZoneProfile::asList() const {
    QStringList lines = m_bulkheads.sentences;
    lines << m_bulkheads.remarks;
    for (const Boundary& boundary : m_arrangement.boundaries) {
        if (boundary.place != Place::ZoneBulkhead)
            continue;
        QStringList doors;
        for (const Door& door : m_arrangement.doors) {
            if (door.boundary != boundary.id)
                continue;
            const auto found = m_verdicts.find(door.number);
            const Verdict verdict = found == m_verdicts.end() ? Verdict::Untested : found->second;
            doors << tr("door %1 deck %2 %3")
                         .arg(QString::fromStdString(door.number),
                              QString::fromStdString(door.deck), verdictWords(verdict));
        }
        lines << (m_bulkheads.broken.contains(boundary.id) ? tr("bulkhead %1 does not hold: %2")
                                                           : tr("bulkhead %1: %2"))
                     .arg(QString::fromStdString(boundary.id),
                          doors.isEmpty() ? tr("no doors") : doors.join(QStringLiteral(", ")));
    }
    return lines;
}

QSize ZoneProfile::sizeHint() const {
    const double decks = double(std::max<std::size_t>(m_arrangement.decks.size(), 4));
    return {int(mm(240)), int(mm(12) + sentenceHeight() + decks * mm(9))};
}

QSize ZoneProfile::minimumSizeHint() const {
    const double decks = double(std::max<std::size_t>(m_arrangement.decks.size(), 4));
    return {int(mm(90)), int(mm(12) + sentenceHeight() + decks * mm(3.4))};
}

double ZoneProfile::sentenceHeight() const {
    const auto lines = std::clamp<qsizetype>(m_bulkheads.sentences.size(), 0, most_sentences) +
                       m_bulkheads.remarks.size();
    return lines == 0 ? mm(2) : double(lines) * mm(5) + mm(2);
}

void ZoneProfile::plan() {
    m_plan = planOf(m_arrangement, m_verdicts, QSizeF(size()),
                    {sizes().px_per_mm, mm(8), sentenceHeight() + mm(1)});
    speak();
    update();
}

void ZoneProfile::speak() {
    QString name = tr("Zone profile");
    for (const ProfileDoor& door : m_plan.doors)
        if (door.number == m_current)
            name += tr(", door %1, %2").arg(door.number, verdictWords(door.verdict));
    setAccessibleName(name);
    setAccessibleDescription(asList().join(QStringLiteral("\n")));
}

void ZoneProfile::lookChanged() {
    Part::lookChanged();
    plan();
}

void ZoneProfile::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    plan();
}

void ZoneProfile::mousePressEvent(QMouseEvent* event) {
    event->accept(); // else the release goes elsewhere
}

void ZoneProfile::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !rect().contains(event->position().toPoint()))
        return;
    // Glyphs are smaller than a fingertip: the nearest within half a target's diagonal is meant.
    if (const ProfileDoor* door = m_plan.nearest(event->position(), sizes().target * 0.7)) {
        const QString number = door->number;
        setCurrentDoor(number);
        emit doorChosen(number);
    }
}

void ZoneProfile::focusInEvent(QFocusEvent* event) {
    Part::focusInEvent(event);
    if (m_current.isEmpty() && event->reason() != Qt::MouseFocusReason)
        step(0, 0);
}

/// Moves to the nearest drawn door in a direction; straight ahead counts more than near.
void ZoneProfile::step(int along, int down) {
    const ProfileDoor* from = nullptr;
    for (const ProfileDoor& door : m_plan.doors)
        if (door.number == m_current)
            from = &door;
    const ProfileDoor* best = nullptr;
    double best_cost = 0;
    for (const ProfileDoor& door : m_plan.doors) {
        double cost = 0;
        if (from == nullptr) {
            cost = door.dot ? 1e6 : door.place.center().x() + door.place.center().y();
        } else {
            const QPointF away = door.place.center() - from->place.center();
            const double ahead =
                along != 0 ? away.x() * along : (door.deck_row - from->deck_row) * down;
            if (&door == from || ahead <= 0.5 || (along != 0 && door.deck_row != from->deck_row))
                continue;
            cost = along != 0 ? ahead : ahead * 1e4 + std::abs(away.x());
        }
        if (best == nullptr || cost < best_cost) {
            best = &door;
            best_cost = cost;
        }
    }
    if (best != nullptr)
        setCurrentDoor(best->number);
}

void ZoneProfile::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        return step(-1, 0);
    case Qt::Key_Right:
        return step(1, 0);
    case Qt::Key_Up:
        return step(0, -1);
    case Qt::Key_Down:
        return step(0, 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (!event->isAutoRepeat() && placeOf(m_current))
            emit doorChosen(m_current);
        return;
    default:
        Part::keyPressEvent(event);
    }
}

void ZoneProfile::paintEvent(QPaintEvent*) {
    if (height() < minimumSizeHint().height() / 2)
        return; // squeezed to less than can be read
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintHull(painter);
    paintBulkheads(painter);
    paintDoors(painter);
    paintSentences(painter);
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()), look());
}

void ZoneProfile::paintHull(QPainter& painter) const {
    const QPainterPath path = hullPath(m_plan.hull, mm(1));
    painter.fillPath(path, colours().hull);
    painter.save();
    painter.setClipPath(path);
    painter.setPen(QPen(colours().edge, 1));
    for (const double y : m_plan.deck_lines)
        if (y < m_plan.hull.bottom() - 1)
            painter.drawLine(QPointF(0, y), QPointF(width(), y));
    painter.restore();
    painter.setPen(QPen(colours().ink, mm(0.4)));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
    painter.setPen(colours().muted);
    painter.setFont(font(TextSize::Small));
    const double line = QFontMetricsF(painter.font()).height();
    if (!m_plan.decks.empty() && m_plan.decks.front().place.height() < line * 0.95) {
        QFont smaller = painter.font();
        smaller.setPixelSize(
            std::max(9, int(smaller.pixelSize() * m_plan.decks.front().place.height() / line)));
        painter.setFont(smaller);
    }
    for (const ProfileLabel& deck : m_plan.decks)
        painter.drawText(deck.place, Qt::AlignRight | Qt::AlignVCenter, deck.text);
    painter.setPen(colours().ink);
    painter.setFont(font(TextSize::Body));
    const QFontMetricsF metrics(painter.font());
    for (const ProfileLabel& zone : m_plan.zones) {
        const QString full = tr("zone %1").arg(zone.text);
        const bool fits = metrics.horizontalAdvance(full) < zone.place.width() - mm(1);
        painter.drawText(zone.place, Qt::AlignCenter | Qt::TextDontClip, fits ? full : zone.text);
    }
}

void ZoneProfile::paintBulkheads(QPainter& painter) const {
    for (const ProfileBulkhead& bulkhead : m_plan.bulkheads) {
        const bool broken = m_bulkheads.broken.contains(bulkhead.id);
        const QPointF beyond(0, broken ? mm(1.8) : 0);
        if (broken) {
            // Glyphs may cover most of the line: a shade and ends that stand out keep it in sight.
            QColor shade = colours().bad;
            shade.setAlphaF(0.16F);
            const double aside = bulkhead.half_width + mm(2.4);
            painter.fillRect(QRectF(bulkhead.top, bulkhead.foot).adjusted(-aside, 0, aside, 0),
                             shade);
        }
        QPen pen(broken ? colours().bad : colours().ink, mm(broken ? 1.2 : 0.8));
        pen.setCapStyle(Qt::FlatCap);
        if (broken)
            pen.setDashPattern({1.8, 1.4});
        else if (m_bulkheads.not_shown.contains(bulkhead.id))
            pen.setDashPattern({0.9, 0.9});
        painter.setPen(pen);
        painter.drawLine(bulkhead.top - beyond, bulkhead.foot);
    }
}

void ZoneProfile::paintDoors(QPainter& painter) const {
    for (const ProfileDoor& door : m_plan.doors) {
        const QColor colour = colourOf(door.verdict, colours());
        if (door.dot) {
            // Shape as well as colour: a cross fails, a ring is untested, a disc is settled.
            painter.setPen(QPen(colour, 1.4));
            painter.setBrush(Qt::NoBrush);
            if (door.verdict == Verdict::Unsatisfactory)
                drawMarkShape(painter, door.place.adjusted(-1, -1, 1, 1), MarkShape::Cross, colour);
            else if (door.verdict == Verdict::Satisfactory) {
                painter.setBrush(colour);
                painter.drawEllipse(door.place);
            } else
                painter.drawEllipse(door.place);
        } else {
            painter.fillRect(door.place.adjusted(-1.5, -1, 1.5, 0), colours().hull);
            drawDoorGlyph(painter, door.place, door.verdict, colours());
            if (door.together > 1) {
                painter.setPen(colours().ink);
                painter.setFont(font(TextSize::Small));
                painter.drawText(
                    QRectF(door.place.right() + 2, door.place.top(), mm(8), door.place.height()),
                    Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip,
                    QStringLiteral("×%1").arg(door.together));
            }
        }
        if (door.number == m_current) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(colours().focus, mm(0.6)));
            const QRectF ring = door.place.adjusted(-mm(1), -mm(1), mm(1), mm(1));
            painter.drawRoundedRect(ring, mm(1), mm(1));
        }
    }
}

void ZoneProfile::paintSentences(QPainter& painter) const {
    painter.setFont(font(TextSize::Body));
    painter.setPen(colours().bad);
    const QFontMetricsF metrics(painter.font());
    double top = m_plan.hull.bottom() + mm(1.6);
    const double room = width() - m_plan.hull.left() - mm(2);
    const auto write = [&](const QString& sentence) {
        painter.drawText(QRectF(m_plan.hull.left() + mm(4), top, room, mm(5)),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(sentence, Qt::ElideRight, room));
        top += mm(5);
    };
    for (qsizetype i = 0; i < std::min<qsizetype>(m_bulkheads.sentences.size(), most_sentences);
         ++i) {
        QString sentence = m_bulkheads.sentences[i];
        if (i == most_sentences - 1 && m_bulkheads.sentences.size() > most_sentences)
            sentence =
                tr("and %n more", nullptr, int(m_bulkheads.sentences.size()) - most_sentences + 1);
        write(sentence);
    }
    painter.setPen(colours().muted);
    for (const QString& remark : m_bulkheads.remarks)
        write(remark);
}

} // namespace latchround::ui
