#include "ui/figures/figure_label.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "ui/figures/spoken_figures.h"
#include "ui/look/figure_text.h"

namespace latchround::ui {
namespace {

constexpr double unit_share = 0.36; ///< the unit's height against the figure's

QFont scaled(QFont font, double share) {
    font.setPixelSize(std::max(8, int(std::lround(font.pixelSize() * share))));
    return font;
}

} // namespace

FigureLabel::FigureLabel(TextSize size, const QString& unit, QWidget* parent)
    : Part(parent)
    , m_size(size)
    , m_unit(unit) {
    // A figure stands before its unit, whichever side words begin on.
    setLayoutDirection(Qt::LeftToRight);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    readFiguresWhenAsked();
}

void FigureLabel::setFigure(const QString& figure) {
    if (figure == m_figure)
        return;
    const bool wider = figure.size() > std::max(m_figure.size(), m_room.size());
    m_figure = figure;
    if (wider)
        updateGeometry();
    update();
}

QString FigureLabel::spoken() const {
    if (m_figure.isEmpty())
        return tr("no figure yet");
    return m_unit.isEmpty() ? m_figure : m_figure + QLatin1Char(' ') + m_unit;
}

void FigureLabel::setUnit(const QString& unit) {
    m_unit = unit;
    updateGeometry();
    update();
}

void FigureLabel::setRoomFor(const QString& figure) {
    m_room = figure;
    updateGeometry();
}

QSize FigureLabel::sizeHint() const {
    const FigureText figures(font(m_size));
    const FigureText units(scaled(font(m_size), unit_share));
    double width = std::max(figures.widthOf(m_figure), figures.widthOf(m_room));
    if (!m_unit.isEmpty())
        width += units.widthOf(QLatin1Char(' ') + m_unit) + figures.height() * 0.06;
    return {int(std::ceil(width)) + 2, int(std::ceil(figures.height()))};
}

QSize FigureLabel::minimumSizeHint() const {
    return sizeHint() / 3;
}

/// Shrinks rather than cuts: a figure with a digit missing would be a wrong figure.
double FigureLabel::scaleToFit() const {
    const QSize wanted = sizeHint();
    return std::min({1.0, double(width()) / wanted.width(), double(height()) / wanted.height()});
}

void FigureLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::TextAntialiasing);
    const double scale = scaleToFit();
    const FigureText figures(scaled(font(m_size), scale));
    const double base = (height() - figures.height()) / 2 + figures.ascent();
    painter.setPen(palette().color(QPalette::WindowText));
    double end = figures.draw(painter, {0, base}, m_figure);
    if (!m_unit.isEmpty()) {
        const FigureText units(scaled(font(m_size), scale * unit_share));
        painter.setPen(colours().muted);
        end += figures.height() * 0.06;
        units.draw(painter, {end, base}, m_unit);
    }
}

} // namespace latchround::ui

#include "moc_figure_label.cpp"
