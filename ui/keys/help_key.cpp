#include "ui/keys/help_key.h"

#include <QBoxLayout>
#include <QEvent>
#include <QPainter>

#include "ui/look/button_drawing.h"

namespace latchround::ui {

HelpKey::HelpKey(QBoxLayout& line, QBoxLayout& words, const QString& asked)
    : m_line(new QHBoxLayout(this)) {
    line.removeItem(&words);
    words.setParent(nullptr);
    m_line->addLayout(&words, 1);
    line.insertWidget(0, this, 1);
    setBackgroundRole(QPalette::Window); // else the labels would take the ink of buttons
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    setAccessibleName(tr("What to look at: %1").arg(asked));
    for (QWidget* label : findChildren<QWidget*>())
        label->setAttribute(Qt::WA_TransparentForMouseEvents);
    dress();
}

QSize HelpKey::minimumSizeHint() const {
    const int target = lookOf(this).sizes.target;
    return {target, target};
}

double HelpKey::across() const {
    constexpr double ring_mm = 5.6;
    return ring_mm * lookOf(this).sizes.px_per_mm;
}

void HelpKey::dress() {
    const Sizes& sizes = lookOf(this).sizes;
    const int before = int(across()) + sizes.gap + sizes.border;
    // The ring stands where reading begins.
    const bool from_right = layoutDirection() == Qt::RightToLeft;
    m_line->setContentsMargins(from_right ? sizes.border : before, sizes.border,
                               from_right ? before : sizes.border, sizes.border);
    setMinimumHeight(sizes.target);
    updateGeometry();
    update();
}

void HelpKey::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::LayoutDirectionChange)
        dress();
}

void HelpKey::paintEvent(QPaintEvent*) {
    const Appearance& look = lookOf(this);
    const Colours& c = look.colours;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isDown()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.selected);
        painter.drawRoundedRect(rect(), look.sizes.corner, look.sizes.corner);
    }
    const double side = across();
    const double border = look.sizes.border;
    const double left = layoutDirection() == Qt::RightToLeft ? width() - side - border : border;
    const QRectF ring(left, (height() - side) / 2, side, side);
    painter.setPen(QPen(c.accent, border));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(ring.adjusted(border / 2, border / 2, -border / 2, -border / 2));
    QFont font = textFont(TextSize::Body, look.sizes, true);
    painter.setFont(font);
    painter.drawText(ring, Qt::AlignCenter, QStringLiteral("?"));
    if (hasFocus())
        drawFocusRing(painter, rect(), look);
}

} // namespace latchround::ui

#include "moc_help_key.cpp"
