#include "ui/figures/progress_bar.h"

#include <algorithm>

#include <QLocale>
#include <QPainter>

#include "ui/look/look.h"

namespace latchround::ui {

namespace {

constexpr int hundredths = 100;

} // namespace

ProgressBar::ProgressBar(QWidget* parent)
    : QProgressBar(parent) {
    setRange(0, hundredths);
    setValue(0);
    setTextVisible(false);
}

void ProgressBar::setDone(int done, int of) {
    setValue(of > 0 ? int(qint64(hundredths) * std::clamp(done, 0, of) / of) : 0);
    update();
}

QSize ProgressBar::sizeHint() const {
    const Sizes& s = lookOf(this).sizes;
    return {s.main_target, s.target};
}

void ProgressBar::paintEvent(QPaintEvent*) {
    const Appearance& look = lookOf(this);
    const Colours& c = look.colours;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont figures = textFont(TextSize::Lead, look.sizes, true);
    const QString words = tr("%1 %").arg(locale().toString(value()));
    const int words_width = QFontMetrics(figures).horizontalAdvance(tr("%1 %").arg(100));
    const int high = int(5 * look.sizes.px_per_mm);
    const bool from_right = layoutDirection() == Qt::RightToLeft;
    QRectF bar(0, (height() - high) / 2.0, width() - words_width - look.sizes.main_gap, high);
    if (from_right)
        bar.moveRight(width());
    const double line = look.sizes.border;
    bar.adjust(line / 2, line / 2, -line / 2, -line / 2);
    painter.setPen(QPen(c.edge, line));
    painter.setBrush(c.card);
    painter.drawRect(bar);
    QRectF filled = bar.adjusted(line, line, -line, -line);
    const double length = filled.width() * value() / hundredths;
    if (from_right)
        filled.setLeft(filled.right() - length);
    else
        filled.setWidth(length);
    painter.fillRect(filled, c.primary.area);
    painter.setFont(figures);
    painter.setPen(c.ink);
    painter.drawText(rect(), int(Qt::AlignVCenter | (from_right ? Qt::AlignLeft : Qt::AlignRight)),
                     words);
}

} // namespace latchround::ui

#include "moc_progress_bar.cpp"
