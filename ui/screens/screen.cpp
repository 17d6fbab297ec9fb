#include "ui/screens/screen.h"

#include <QPainter>
#include <QVBoxLayout>

#include "ui/parts/top_bar.h"

namespace latchround::ui {

Screen::Screen(Round& round, QWidget* parent)
    : Part(parent)
    , m_round(round)
    , m_bar(new TopBar(this))
    , m_page(new QWidget(this))
    , m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(0);
    m_lines->addWidget(m_bar);
    m_lines->addWidget(m_page, 1);
    lookChanged();
    // A wide page must not widen the window.
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void Screen::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    if (const int upright = isUpright() ? 1 : 0; upright != m_upright) {
        m_upright = upright;
        arrange(isUpright());
    }
}

void Screen::lookChanged() {
    Part::lookChanged();
    const int margin = sizes().main_gap;
    m_page->setContentsMargins(margin, margin, margin, margin);
}

void Screen::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().paper);
}

} // namespace latchround::ui
