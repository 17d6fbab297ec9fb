#include "ui/parts/sheet.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/card.h"
#include "ui/parts/lettering.h"

namespace latchround::ui {

Sheet::Sheet(QWidget* over, const QString& title)
    : Part(over->window())
    , m_card(new Card(this)) {
    setObjectName(QStringLiteral("sheet"));
    setAccessibleName(title);
    auto* all = new QHBoxLayout(this);
    all->addStretch(1);
    all->addWidget(m_card, 0, Qt::AlignVCenter);
    all->addStretch(1);
    m_lines = new QVBoxLayout(m_card);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(sizes().gap);
    auto* head = new QHBoxLayout;
    auto* name = new Lettering(title, TextSize::Heading, Ink::Plain, true);
    name->setWordWrap(true);
    head->addWidget(name, 1);
    auto* close_key = new QPushButton(tr("Close"));
    close_key->setObjectName(QStringLiteral("sheet-close"));
    setRole(*close_key, "plain");
    connect(close_key, &QPushButton::clicked, this, &Sheet::close);
    head->addWidget(close_key);
    m_lines->addLayout(head);
    window()->installEventFilter(this);
    setFocusPolicy(Qt::StrongFocus);
}

void Sheet::setContent(QWidget* content) {
    m_content = content;
    m_lines->addWidget(content, 1);
}

void Sheet::setWidthMm(double width_mm) {
    m_width_mm = width_mm;
    cover();
}

void Sheet::open() {
    m_focus_before = QApplication::focusWidget();
    cover();
    raise();
    show();
    if (m_content && m_content->focusPolicy() != Qt::NoFocus)
        m_content->setFocus();
    else
        setFocus();
}

void Sheet::close() {
    hide();
    if (m_focus_before)
        m_focus_before->setFocus();
    emit closed();
    deleteLater();
}

void Sheet::cover() {
    setGeometry(window()->rect());
    const int margin = sizes().main_gap;
    m_card->setFixedWidth(std::min(int(mm(m_width_mm)), width() - 2 * margin));
    m_card->setMaximumHeight(height() - 2 * margin);
}

bool Sheet::eventFilter(QObject* watched, QEvent* event) {
    if (watched == window() && event->type() == QEvent::Resize)
        cover();
    return Part::eventFilter(watched, event);
}

void Sheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        close();
    // Nothing typed here may reach the screen below.
    event->accept();
}

void Sheet::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    cover();
}

void Sheet::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QColor veil = colours().bar;
    veil.setAlpha(170);
    painter.fillRect(rect(), veil);
}

bool Sheet::focusNextPrevChild(bool next) {
    // Tab stays within the sheet.
    QWidget* before = QApplication::focusWidget();
    if (!Part::focusNextPrevChild(next))
        return false;
    QWidget* after = QApplication::focusWidget();
    if (after && !isAncestorOf(after) && after != this) {
        const QList<QPushButton*> keys = findChildren<QPushButton*>();
        if (!keys.isEmpty())
            (next ? keys.first() : keys.last())->setFocus();
        else if (before)
            before->setFocus();
    }
    return true;
}

} // namespace latchround::ui
