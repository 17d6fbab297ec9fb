#include "ui/screens/door/door_head.h"

#include <cmath>

#include <QFontMetricsF>
#include <QPainter>

#include "ui/words/grade_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

QString classWords(std::optional<FireClass> fire_class) {
    return fire_class ? plainText(word(*fire_class)) : QString();
}

bool tooWeak(const std::optional<FireClass>& has, const std::optional<FireClass>& asked) {
    return has && asked && !suits(*has, *asked);
}

QString plateWords(const GradedDoor& door) {
    if (!door.evidence.plate)
        return DoorHead::tr("not read");
    const PlateRead& plate = door.evidence.plate->body;
    if (plate.fire_class)
        return classWords(plate.fire_class);
    return plate.state == PlateState::None ? DoorHead::tr("none") : DoorHead::tr("illegible");
}

} // namespace

DoorHead::DoorHead(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // numbers and classes, read as they stand on the plate
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void DoorHead::setDoor(const GradedDoor& door) {
    m_number = QString::fromStdString(door.door->number);
    const DoorClass& boundary = door.grade.asked_class;
    const std::optional<FireClass> asked = boundary.door;
    const bool plate_weak =
        door.evidence.plate && tooWeak(door.evidence.plate->body.fire_class, asked);
    m_chips = {
        {tr("plate"), plateWords(door), plate_weak},
        {tr("register"), classWords(door.door->fire_class), tooWeak(door.door->fire_class, asked)},
        {tr("boundary"), boundaryClassWords(boundary), false}};
    if (door.door->opening_m > 0)
        m_chips.push_back({tr("opening"), lengthWords(door.door->opening_m, 2), false});
    if (door.door->watertight)
        m_chips.push_back({tr("not examined as"), tr("a watertight door"), false});
    setAccessibleName(tr("Door %1").arg(m_number) + QStringLiteral(": ") +
                      chips().join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

QStringList DoorHead::chips() const {
    QStringList words;
    for (const Chip& chip : m_chips)
        words << chip.name + QLatin1Char(' ') + chip.value;
    return words;
}

DoorHead::Place DoorHead::lay(double width) const {
    const QFontMetricsF title(font(TextSize::Title, true));
    const QFontMetricsF name(font(TextSize::Small));
    const QFontMetricsF value(font(TextSize::Small, true));
    const double gap = sizes().gap;
    const double chip_height = std::ceil(value.height() + gap);
    const double line = std::max(title.height(), chip_height);
    Place place;
    place.number = QRectF(0, 0, title.horizontalAdvance(m_number), line);
    double x = place.number.right() + 1.5 * gap;
    double y = 0;
    for (const Chip& chip : m_chips) {
        const double wide = name.horizontalAdvance(chip.name + QLatin1Char(' ')) +
                            value.horizontalAdvance(chip.value) + 1.2 * gap;
        if (x + wide > width && x > 0) {
            x = 0;
            y += line + gap / 2;
        }
        place.chips.emplace_back(x, y + (line - chip_height) / 2, wide, chip_height);
        x += wide + gap / 2;
    }
    place.height = y + line;
    return place;
}

int DoorHead::heightForWidth(int width) const {
    return int(std::ceil(lay(width).height));
}

QSize DoorHead::sizeHint() const {
    return {int(mm(60)), heightForWidth(width() > 0 ? width() : int(mm(110)))};
}

void DoorHead::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    const Place place = lay(width());
    painter.setPen(colours().ink);
    painter.setFont(font(TextSize::Title, true));
    painter.drawText(place.number, Qt::AlignLeft | Qt::AlignVCenter, m_number);
    for (std::size_t i = 0; i < m_chips.size(); ++i) {
        const QRectF box = place.chips[i].adjusted(0.5, 0.5, -0.5, -0.5);
        const Chip& chip = m_chips[i];
        painter.setPen(QPen(chip.bad ? colours().bad : colours().hairline, chip.bad ? 2 : 1));
        painter.setBrush(colours().card);
        painter.drawRoundedRect(box, sizes().corner * 0.8, sizes().corner * 0.8);
        const QRectF words = box.adjusted(sizes().gap * 0.6, 0, 0, 0);
        painter.setFont(font(TextSize::Small));
        painter.setPen(colours().muted);
        const QString name = chip.name + QLatin1Char(' ');
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, name);
        const double name_width = QFontMetricsF(font(TextSize::Small)).horizontalAdvance(name);
        painter.setFont(font(TextSize::Small, true));
        painter.setPen(chip.bad ? colours().bad : colours().ink);
        painter.drawText(words.adjusted(name_width, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         chip.value);
    }
}

} // namespace latchround::ui

#include "moc_door_head.cpp"
