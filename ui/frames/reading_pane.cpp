#include "ui/frames/reading_pane.h"

#include <algorithm>

#include <QPainter>
#include <QVBoxLayout>

#include "ui/frames/list_touch.h"
#include "ui/look/button_drawing.h"
#include "ui/look/low_window.h"
#include "ui/look/read_as.h"

namespace latchround::ui {

ReadingPane::ReadingPane(const QString& name, QWidget* parent)
    : QScrollArea(parent)
    , m_page(new QWidget)
    , m_lines(new QVBoxLayout) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    // At the top by what follows, not by alignment: that would hold words that wrap to the height
    // they have unwrapped.
    auto* page = new QVBoxLayout(m_page);
    page->setContentsMargins(0, 0, 0, 0);
    page->addLayout(m_lines);
    page->addStretch(1);
    setWidget(m_page);
    setWidgetResizable(true);
    viewport()->setAutoFillBackground(false); // what it lies on shows through
    m_page->setAutoFillBackground(false);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    readAs<ReadingPane, QAccessible::Document>();
    setAccessibleName(name);
    scrollByTouch(*this);
}

void ReadingPane::paintEvent(QPaintEvent* event) {
    QScrollArea::paintEvent(event);
    if (!hasFocus())
        return;
    QPainter painter(viewport());
    drawFocusRing(painter, viewport()->rect(), lookOf(this));
}

void ReadingPane::focusInEvent(QFocusEvent* event) {
    QScrollArea::focusInEvent(event);
    viewport()->update();
}

void ReadingPane::focusOutEvent(QFocusEvent* event) {
    QScrollArea::focusOutEvent(event);
    viewport()->update();
}

void ReadingPane::clear() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void ReadingPane::add(const QString& words, TextSize size, Ink ink, bool bold) {
    auto* line = new Label(words, size, ink, bold);
    line->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_lines->addWidget(line);
}

void ReadingPane::add(QWidget* row) {
    m_lines->addWidget(row);
}

void ReadingPane::setAsHighAsWords() {
    m_as_high_as_words = true;
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

bool ReadingPane::event(QEvent* event) {
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::Show) {
        const int gap = lookOf(this).sizes.gap; // where the ring is drawn
        m_lines->setContentsMargins(gap, gap, gap, gap);
    }
    return QScrollArea::event(event);
}

QSize ReadingPane::sizeHint() const {
    constexpr double little_mm = 15;
    QSize hint = QScrollArea::sizeHint();
    if (isLowWindow(*window()))
        hint.setHeight(std::min(hint.height(), int(little_mm * lookOf(this).sizes.px_per_mm)));
    return hint;
}

int ReadingPane::heightForWidth(int width) const {
    return m_lines->hasHeightForWidth() ? m_lines->totalHeightForWidth(width)
                                        : m_lines->totalSizeHint().height();
}

} // namespace latchround::ui

#include "moc_reading_pane.cpp"
