#include "ui/parts/reading_pane.h"

#include <QVBoxLayout>

#include "ui/parts/list_touch.h"

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
    setAccessibleName(name);
    scrollByTouch(*this);
}

void ReadingPane::clear() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void ReadingPane::add(const QString& words, TextSize size, Ink ink, bool bold) {
    auto* line = new Lettering(words, size, ink, bold);
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

void ReadingPane::setMargin(int margin) {
    m_lines->setContentsMargins(margin, margin, margin, margin);
}

int ReadingPane::heightForWidth(int width) const {
    return m_lines->hasHeightForWidth() ? m_lines->totalHeightForWidth(width)
                                        : m_lines->totalSizeHint().height();
}

} // namespace latchround::ui
