#include "ui/screens/practice/scene_view.h"

#include <algorithm>
#include <limits>

#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include "ui/screens/practice/picture_frame.h"
#include "ui/screens/practice/scene_drawing.h"
#include "ui/words/door_words.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {
namespace {

constexpr double below_m = 0.6;  ///< of the deck before the door
constexpr double above_m = 2.56; ///< up to the ceiling

SceneEye eyeOn(const Door& door, bool side_two, const QRectF& area) {
    SceneEye eye;
    const double opening = door.opening_m > 0.3 ? door.opening_m : 0.9;
    const bool sliding = door.kind == DoorKind::Sliding;
    const double needed = sliding ? 2 * opening + 0.9 : opening + 1.5;
    eye.px_per_m = std::min(area.height() / (below_m + above_m), area.width() / needed);
    // A sliding door is looked at with its pocket.
    const double middle = sliding ? (side_two ? 1 : -1) * (opening / 2 - 0.22) : 0;
    const double spare = area.height() - (below_m + above_m) * eye.px_per_m;
    eye.ground = {area.center().x() - middle * eye.px_per_m,
                  area.bottom() - below_m * eye.px_per_m - spare * 0.4};
    return eye;
}

/// Where a spot is on screen; nothing for what is not at the door.
std::optional<QPointF> placeOf(Spot spot, const Scene& scene) {
    const SceneEye& eye = scene.eye;
    const double side = scene.toward();
    const double half = scene.half();
    const LeafOnScreen leaf = leafOnScreen(scene);
    const bool sliding = scene.door.kind == DoorKind::Sliding;
    switch (spot) {
    case Spot::Sill:
        return eye.at(side * half * 0.4, 0.01);
    case Spot::Gap:
        return eye.at(-side * half * 0.35, 0.03);
    case Spot::Path:
        return eye.at(0, 0, -0.55);
    case Spot::Pocket:
        return eye.at(side * (half + 0.12), 0.35);
    case Spot::Rails:
        return eye.at(-side * half * 0.4, leaf_height_m + 0.03);
    case Spot::SafetyEdge:
        return QPointF(
            std::clamp(leaf.edge_foot.x(), scene.opening().left(), scene.opening().right()),
            eye.at(0, 1.4).y());
    case Spot::Seals:
        return eye.at(-side * (half + 0.02), 1.4);
    case Spot::Hinges:
        return eye.at(side * half, 0.35);
    case Spot::Closer:
        return eye.at(side * half * 0.45, leaf_height_m - 0.03);
    case Spot::Latch:
        return sliding ? eye.at(-side * half, 1.03) : leaf.at(1, 1.03);
    case Spot::HoldBack:
        return eye.at(side * (half + 0.17), 1.15);
    case Spot::LeafFace:
        return sliding ? eye.at(side * (half - 0.1), 0.75) : leaf.at(0.5, 0.75);
    case Spot::HosePort: {
        const QPointF port = leaf.at(1 - 0.12 / scene.width(), 0.14);
        const QRectF opening = scene.opening();
        return sliding ? QPointF(std::clamp(port.x(), opening.left(), opening.right()), port.y())
                       : port;
    }
    case Spot::Plate:
        return eye.at(-side * (scene.beside_m() + 0.16), 1.55);
    case Spot::Switch:
        return eye.at(-side * (scene.beside_m() + 0.13), 1.17);
    case Spot::Panel:
    case Spot::Papers:
        break;
    }
    return std::nullopt;
}

} // namespace

SceneView::SceneView(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // the door is as it is, whichever side words begin on
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setObjectName(QStringLiteral("scene"));
    updateSpokenText();
}

void SceneView::setDoor(const Door& door, const practice::DoorTruth& truth) {
    m_door = door;
    m_truth = truth;
    m_view = {};
    m_view.wedge = truth.wedge;
    updateSpokenText();
    update();
}

void SceneView::setSide(Side side) {
    m_side = side == Side::Two ? Side::Two : Side::One;
    updateSpokenText();
    update();
}

void SceneView::setView(const practice::DoorView& view) {
    const bool spoken = view.alarm != m_view.alarm || view.moving != m_view.moving ||
                        view.person.has_value() != m_view.person.has_value() ||
                        view.somebody_waits != m_view.somebody_waits || view.open != m_view.open;
    m_view = view;
    if (spoken)
        updateSpokenText();
    update();
}

void SceneView::setTouchable(bool touchable) {
    m_touchable = touchable;
    update();
}

void SceneView::updateSpokenText() {
    if (!m_door) {
        setAccessibleName(tr("Drawing of a door"));
        return;
    }
    setAccessibleName(tr("Drawing of door %1, %2, from side %3")
                          .arg(plainText(m_door->number), kindWords(m_door->kind),
                               m_side == Side::Two ? tr("two") : tr("one")));
    QStringList seen;
    seen << (m_view.moving         ? tr("The leaf is moving")
             : m_view.open <= 0.0  ? tr("The leaf is shut")
             : m_view.open >= 0.99 ? tr("The leaf is open")
                                   : tr("The leaf is part open"));
    if (m_view.alarm)
        seen << tr("alarm on");
    if (m_view.person || m_view.somebody_waits)
        seen << tr("someone is in the opening");
    const QString words = seen.join(QStringLiteral(", "));
    if (words != accessibleDescription())
        setAccessibleDescription(words);
}

std::vector<SceneView::SpotArea> SceneView::spotAreas() const {
    std::vector<SpotArea> areas;
    if (!m_door)
        return areas;
    const QRectF inside = QRectF(rect()).adjusted(1, 1, -1, -1);
    const Scene scene{
        *m_door, m_truth, m_view, m_side == Side::Two, eyeOn(*m_door, m_side == Side::Two, inside),
        look()};
    const double size = sizes().target;
    for (const Spot spot : spotsOf(*m_door)) {
        const auto place = placeOf(spot, scene);
        if (!place)
            continue;
        QRectF area(place->x() - size / 2, place->y() - size / 2, size, size);
        area.moveLeft(std::clamp(area.left(), 0.0, std::max(0.0, width() - size)));
        area.moveTop(std::clamp(area.top(), 0.0, std::max(0.0, height() - size)));
        areas.push_back({spot, area});
    }
    return areas;
}

QSize SceneView::sizeHint() const {
    return {int(mm(160)), int(mm(110))};
}

QSize SceneView::minimumSizeHint() const {
    return {int(mm(40)), int(mm(30))};
}

void SceneView::mousePressEvent(QMouseEvent* event) {
    if (!m_touchable) {
        Part::mousePressEvent(event);
        return;
    }
    // Areas lie over one another where things are close; the nearest middle is meant.
    std::optional<Spot> meant;
    double nearest = std::numeric_limits<double>::max();
    for (const auto& [spot, area] : spotAreas()) {
        const QPointF away = event->position() - area.center();
        const double distance = away.x() * away.x() + away.y() * away.y();
        if (area.contains(event->position()) && distance < nearest) {
            nearest = distance;
            meant = spot;
        }
    }
    if (meant)
        emit spotTouched(*meant);
}

void SceneView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    const PictureFrame frame(painter, rect(), look());
    const QRectF& inside = frame.inside();
    if (!m_door)
        return;
    const Scene scene{
        *m_door, m_truth, m_view, m_side == Side::Two, eyeOn(*m_door, m_side == Side::Two, inside),
        look()};
    painter.save();
    drawBulkhead(painter, scene, inside);
    drawFarRoom(painter, scene);
    drawPerson(painter, scene, true);
    const bool before = scene.swing() < 0 && isHinged(m_door->kind);
    if (!before) {
        painter.save();
        painter.setClipRect(scene.opening(), Qt::IntersectClip);
        if (isHinged(m_door->kind))
            drawHoldBack(painter, scene);
        painter.restore();
        drawLeaves(painter, scene);
    }
    painter.restore();
    drawFrame(painter, scene);
    drawFittings(painter, scene);
    drawAlarm(painter, scene);
    if (before)
        drawLeaves(painter, scene);
    if (before || !isHinged(m_door->kind))
        drawHoldBack(painter, scene);
    drawLyingAbout(painter, scene);
    drawPerson(painter, scene, false);
    if (m_view.alarm) {
        const QPointF lamp = scene.eye.at(0, leaf_height_m + 0.22);
        const double beside = std::max(mm(3.2), scene.eye.px(0.12));
        const double right = inside.right() - mm(1) - lamp.x() - beside;
        const double left = lamp.x() - beside - inside.left() - mm(1);
        const double wide =
            QFontMetricsF(font(TextSize::Body, true)).horizontalAdvance(tr("alarm on"));
        // Where neither side has room, smaller letters.
        const bool fits = wide < right;
        painter.setFont(font(fits || wide < left ? TextSize::Body : TextSize::Small, true));
        const QRectF words(lamp.x() + (fits ? beside : -beside - mm(40)),
                           std::max(lamp.y() - mm(4), inside.top()), mm(40), mm(8));
        const Qt::Alignment side = fits ? Qt::AlignLeft : Qt::AlignRight;
        const int how = int(side | Qt::AlignVCenter);
        const QRectF letters = painter.boundingRect(words, how, tr("alarm on"));
        painter.fillRect(letters.adjusted(-mm(1), -mm(0.4), mm(1), mm(0.4)).toAlignedRect(),
                         colours().card);
        painter.setPen(colours().ink); // the lamp has the alarm's red, words need more contrast
        painter.drawText(words, how, tr("alarm on"));
    }
    if (m_touchable) {
        // A ring where a touch shows more, the same everywhere, so that it tells nothing.
        for (const auto& [spot, area] : spotAreas()) {
            painter.setPen(QPen(colours().accent, mm(0.35)));
            painter.setBrush(colours().card);
            painter.drawEllipse(area.center(), mm(1.1), mm(1.1));
        }
    }
}

} // namespace latchround::ui

#include "moc_scene_view.cpp"
