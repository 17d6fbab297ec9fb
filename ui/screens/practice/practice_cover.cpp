#include "ui/screens/practice/practice_cover.h"

#include <QChildEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QPainterPath>

#include "ui/drawings/places.h"
#include "ui/look/practice_colours.h"

namespace latchround::ui {

namespace {

constexpr double tile_width_mm = 62;
constexpr double tile_height_mm = 34;
constexpr double word_opacity = 0.28;
constexpr double low_mm = 130;
constexpr double border_mm = 3;
constexpr double thin_border_mm = 1.2;

} // namespace

bool isLow(const QWidget& window) {
    return window.width() > window.height() &&
           window.height() < low_mm * lookOf(&window).sizes.px_per_mm;
}

double practiceBorderMm(const QWidget& window) {
    return isLow(window) ? thin_border_mm : border_mm;
}

PracticeCover::PracticeCover(QWidget* window)
    : Part(window) {
    setObjectName(QStringLiteral("practice-cover"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    setGeometry(window->rect());
    window->installEventFilter(this);
    for (QObject* child : window->children())
        if (child != this && child->isWidgetType())
            child->installEventFilter(this);
    makeWord();
    raise();
}

/// Sheets are laid over the window later; the cover goes above them.
bool PracticeCover::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget()) {
        if (event->type() == QEvent::Resize)
            setGeometry(parentWidget()->rect());
        else if (event->type() == QEvent::ChildAdded) {
            QObject* child = static_cast<QChildEvent*>(event)->child();
            if (child != this && child->isWidgetType())
                child->installEventFilter(this);
        }
    } else if (event->type() == QEvent::Show || event->type() == QEvent::ZOrderChange) {
        raise();
    }
    return Part::eventFilter(watched, event);
}

void PracticeCover::makeWord() {
    const double ratio = devicePixelRatioF();
    const QSizeF tile(mm(tile_width_mm), mm(tile_height_mm));
    m_word = QPixmap((tile * ratio).toSize());
    m_word.setDevicePixelRatio(ratio);
    m_word.fill(Qt::transparent);
    QPainter painter(&m_word);
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath path;
    path.addText(0, 0, font(TextSize::Title, true), tr("PRACTICE"));
    path.translate(-path.boundingRect().center());
    painter.translate(tile.width() / 2, tile.height() / 2);
    painter.rotate(-20);
    painter.setOpacity(word_opacity);
    // Outlines alone: what lies below stays readable.
    painter.setPen(QPen(practiceColoursOf(look().light).word, mm(0.2)));
    painter.drawPath(path);
}

void PracticeCover::lookChanged() {
    makeWord();
    Part::lookChanged();
}

void PracticeCover::paintBorder(QPainter& painter) const {
    const PracticeColours& c = practiceColoursOf(look().light);
    const double border = mm(practiceBorderMm(*this));
    QPainterPath ring;
    ring.addRect(rect());
    QPainterPath inside;
    inside.addRect(QRectF(rect()).adjusted(border, 0, -border, -border));
    painter.setClipPath(ring - inside);
    painter.fillRect(rect(), c.area);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(c.stripe, border * 0.6));
    for (const double x : places(-height(), width() + border, border * 2))
        painter.drawLine(QPointF(x, height()), QPointF(x + height(), 0));
}

void PracticeCover::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.drawTiledPixmap(rect(), m_word);
    const int border = int(mm(practiceBorderMm(*this)));
    if (!rect().adjusted(border, 0, -border, -border).contains(event->rect()))
        paintBorder(painter); // not for each picture of a moving leaf
}

} // namespace latchround::ui

#include "moc_practice_cover.cpp"
