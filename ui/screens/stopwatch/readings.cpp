#include "ui/screens/stopwatch/readings.h"

#include <QBoxLayout>
#include <QLocale>

#include "ui/figures/band_gauge.h"
#include "ui/figures/figure_label.h"
#include "ui/look/label.h"

namespace latchround::ui {

Readings::Readings(QWidget* parent)
    : Part(parent)
    , m_figure(new FigureLabel(TextSize::Clock, tr("s")))
    , m_gauge(new BandGauge)
    , m_marks(new Label({}, TextSize::Body))
    , m_line(new QBoxLayout(QBoxLayout::LeftToRight, this)) {
    m_line->setContentsMargins(0, 0, 0, 0);
    m_figure->setObjectName(QStringLiteral("elapsed"));
    m_figure->setRoomFor(QStringLiteral("00.00"));
    m_marks->setObjectName(QStringLiteral("marks"));
    auto* right = new QVBoxLayout;
    right->addStretch(1);
    right->addWidget(m_gauge);
    right->addWidget(m_marks);
    right->addStretch(1);
    m_line->addWidget(m_figure, 1);
    m_line->addLayout(right, 1);
    Readings::lookChanged();
}

void Readings::lookChanged() {
    m_marks->setContentsMargins(int(mm(2)), 0, 0, 0); // below the scale, which has room at its ends
    Part::lookChanged();
}

void Readings::setSeconds(std::optional<double> seconds) {
    m_figure->setFigure(QLocale().toString(seconds.value_or(0), 'f', 2));
    m_gauge->setValue(seconds);
}

void Readings::setMarks(const QString& marks) {
    m_marks->setText(marks);
}

void Readings::arrange(bool stacked, bool brief, bool bare) {
    m_line->setSpacing(stacked ? sizes().gap / 2 : sizes().main_gap);
    m_line->setDirection(stacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_line->setStretch(1, stacked && brief ? 0 : 1);
    // Beside the figure the marks may take two lines: room is kept, so that nothing moves in a run.
    m_marks->setMinimumHeight(stacked || sizes().gloves ? 0
                                                        : 2 * m_marks->fontMetrics().lineSpacing());
    m_brief = brief;
    m_bare = bare;
    m_gauge->setCompact(brief);
    showParts();
}

void Readings::setBandShown(bool shown) {
    m_band = shown;
    showParts();
}

void Readings::showParts() {
    m_gauge->setVisible(m_band && !m_bare);
    m_marks->setVisible(!m_brief);
}

} // namespace latchround::ui

#include "moc_readings.cpp"
