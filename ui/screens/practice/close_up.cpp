#include "ui/screens/practice/close_up.h"

#include <algorithm>

#include <QPainter>
#include <QPainterPath>

#include "ui/drawings/close_up_drawings.h"
#include "ui/screens/practice/close_up_words.h"

namespace latchround::ui {
namespace {

constexpr double held_s = 0.8;    ///< a hand holds the cover up
constexpr double falls_s = 0.5;   ///< then it falls
constexpr double stays_at = 0.55; ///< where a stuck one stays

double portOpenAfter(double seconds, bool stuck) {
    if (seconds < held_s)
        return 1;
    const double rest = stuck ? stays_at : 0;
    const double gone = std::clamp((seconds - held_s) / falls_s, 0.0, 1.0);
    return 1 + (rest - 1) * gone * gone;
}

void drawSpot(Spot spot, Sketch& sketch, const Seen& seen) {
    switch (spot) {
    case Spot::Sill:
        return drawSill(sketch, seen);
    case Spot::Gap:
        return drawGap(sketch, seen);
    case Spot::Path:
        return drawPath(sketch, seen);
    case Spot::Pocket:
        return drawPocket(sketch, seen);
    case Spot::Rails:
        return drawRails(sketch, seen);
    case Spot::SafetyEdge:
        return drawSafetyEdge(sketch, seen);
    case Spot::Seals:
        return drawSeals(sketch, seen);
    case Spot::Hinges:
        return drawHinges(sketch, seen);
    case Spot::Closer:
        return drawCloserClose(sketch, seen);
    case Spot::Latch:
        return drawLatch(sketch, seen);
    case Spot::HoldBack:
        return drawHoldBackClose(sketch, seen);
    case Spot::LeafFace:
        return drawLeafFace(sketch, seen);
    case Spot::HosePort:
        return drawHosePortClose(sketch, seen);
    case Spot::Plate:
        return drawPlate(sketch, seen);
    case Spot::Switch:
        return drawSwitch(sketch, seen);
    case Spot::Panel:
        return drawPanel(sketch, seen);
    case Spot::Papers:
        break;
    }
}

} // namespace

CloseUp::CloseUp(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // the door is as it is, whichever side words begin on
    setObjectName(QStringLiteral("close-up"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void CloseUp::setDoor(const Door& door, const practice::DoorTruth& truth) {
    if (!m_door || m_door->number != door.number) {
        m_panel_shut.reset();
        m_reopened_m.reset();
        m_lifted_ns.reset();
        m_port_open = 0;
    }
    m_door = door;
    m_truth = truth;
    updateSpokenText();
}

void CloseUp::setSpot(Spot spot) {
    m_spot = spot;
    updateSpokenText();
}

void CloseUp::setView(const practice::DoorView& view, std::int64_t now_ns) {
    m_view = view;
    if (view.voice == practice::Voice::PanelShut || view.voice == practice::Voice::PanelOpen)
        m_panel_shut = view.voice == practice::Voice::PanelShut;
    else
        m_panel_shut.reset(); // what was told holds for that moment only
    if (m_lifted_ns)
        m_port_open = portOpenAfter(double(now_ns - *m_lifted_ns) / 1e9, m_truth.hose_port_stuck);
    updateSpokenText();
}

void CloseUp::setReopened(std::optional<double> metres) {
    m_reopened_m = metres;
    updateSpokenText();
}

void CloseUp::liftPort(std::int64_t now_ns) {
    m_lifted_ns = now_ns;
    m_port_open = 1;
    updateSpokenText();
}

void CloseUp::updateSpokenText() {
    update();
    if (!m_door)
        return;
    const Seen seen{*m_door, m_truth, m_view, m_port_open, m_panel_shut, m_reopened_m};
    setAccessibleName(tr("Close-up: %1").arg(spotWords(m_spot)));
    if (const QString words = seenWords(m_spot, seen); words != accessibleDescription())
        setAccessibleDescription(words);
}

QSize CloseUp::sizeHint() const {
    return {int(mm(150)), int(mm(94))};
}

void CloseUp::mousePressEvent(QMouseEvent*) {
    if (m_spot == Spot::HosePort && m_door && m_door->hose_port)
        emit portTouched();
}

void CloseUp::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    // The sheet as large as it fits; nothing is drawn beside it.
    const double scale = std::min((width() - 2) / Sketch::wide, (height() - 2) / Sketch::high);
    QRectF inside(0, 0, Sketch::wide * scale, Sketch::high * scale);
    inside.moveCenter(QRectF(rect()).center());
    QPainterPath session;
    session.addRoundedRect(inside, sizes().corner, sizes().corner);
    painter.setClipPath(session);
    if (!m_door)
        return;
    {
        Sketch sketch(painter, inside, look());
        drawSpot(m_spot, sketch,
                 {*m_door, m_truth, m_view, m_port_open, m_panel_shut, m_reopened_m});
    }
    painter.setClipping(false);
    painter.setPen(QPen(colours().edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(inside, sizes().corner, sizes().corner);
}

} // namespace latchround::ui

#include "moc_close_up.cpp"
