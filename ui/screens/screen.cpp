#include "ui/screens/screen.h"

#include <algorithm>

#include <QPainter>
#include <QVBoxLayout>

#include "ui/frames/top_bar.h"

namespace latchround::ui {
namespace {

void keepMargin(QWidget& page, bool small) {
    const Sizes& sizes = lookOf(&page).sizes;
    const int margin = small ? sizes.gap : sizes.main_gap;
    page.setContentsMargins(margin, margin, margin, margin);
}

} // namespace

Screen::Screen(VesselSession& session, QWidget* parent)
    : Part(parent)
    , m_session(session)
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
    arrangeAnew();
}

void Screen::arrangeAnew() {
    const int wanted = (isUpright() ? 1 : 0) + (isSmall() ? 2 : 0);
    if (wanted == m_arranged)
        return;
    m_arranged = wanted;
    keepMargin(*m_page, isSmall());
    arrange(isUpright());
}

bool Screen::isSmall() const {
    constexpr double small_mm = 130;
    return std::min(width(), height()) < mm(small_mm) ||
           (!isUpright() && height() < leastHeight() * sizes().main_target);
}

void Screen::lookChanged() {
    Part::lookChanged();
    keepMargin(*m_page, isSmall());
    if (m_arranged >= 0)
        arrangeAnew();
}

void Screen::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().paper);
}

} // namespace latchround::ui

#include "moc_screen.cpp"
