#include "ui/parts/reading_pane.h"

#include <QVBoxLayout>

#include "ui/parts/list_touch.h"

namespace latchround::ui {

ReadingPane::ReadingPane(const QString& name, QWidget* parent)
    : QScrollArea(parent)
    , m_page(new QWidget)
    , m_lines(new QVBoxLayout(m_page)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setAlignment(Qt::AlignTop);
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

} // namespace latchround::ui
