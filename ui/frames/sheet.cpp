#include "ui/frames/sheet.h"

#include <algorithm>

#include <QAccessible>
#include <QAccessibleWidget>
#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/card.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet_pages.h"
#include "ui/keys/tab_stops.h"
#include "ui/look/label.h"
#include "ui/look/low_window.h"
#include "ui/look/read_as.h"
#include "ui/look/restyle.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

namespace {

void announce(Sheet* sheet, QAccessible::Event what) {
    QAccessibleEvent event(sheet, what);
    QAccessible::updateAccessibility(&event);
}

} // namespace

Sheet::Sheet(QWidget* over, const QString& title)
    : Part(over->window())
    , m_card(new Card(this))
    , m_pages(new SheetPages)
    , m_close_key(keyOf(tr("Close"), "sheet-close")) {
    readAs<Sheet, QAccessible::Dialog>();
    setObjectName(QStringLiteral("sheet"));
    setAccessibleName(title);
    m_lines = new QVBoxLayout(m_card);
    m_lines->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    auto* name = new Label(title, TextSize::Heading, Ink::Plain, true);
    name->setObjectName(QStringLiteral("sheet-title"));
    head->addWidget(name, 1);
    head->addWidget(m_close_key, 0, Qt::AlignTop);
    connect(m_close_key, &QPushButton::clicked, this, [this] { leave(); });
    m_lines->addLayout(head);
    m_lines->addWidget(m_pages, 1);
    window()->installEventFilter(this);
    m_card->installEventFilter(this);
    setFocusPolicy(Qt::StrongFocus);
    lookChanged();
}

void Sheet::setContent(QWidget* content) {
    m_content = content;
    m_pages->setContent(content);
}

void Sheet::setFoot(QWidget* foot) {
    m_lines->addWidget(foot);
    restyle(*foot);
}

void Sheet::setWidthMm(double width_mm) {
    m_width_mm = width_mm;
    cover();
}

void Sheet::setTall() {
    m_tall = true;
    cover();
}

void Sheet::setWithoutCloseKey() {
    m_close_key->hide();
}

void Sheet::open() {
    m_focus_before = QApplication::focusWidget();
    cover();
    raise();
    show();
    cover(); // parts arrange themselves once they know their width
    if (m_content && m_content->focusPolicy() != Qt::NoFocus)
        m_content->setFocus();
    else
        setFocus();
    announce(this, QAccessible::DialogStart);
}

void Sheet::close() {
    announce(this, QAccessible::DialogEnd);
    hide();
    if (m_focus_before)
        m_focus_before->setFocus();
    emit closed();
    deleteLater();
}

void Sheet::cover() {
    setGeometry(window()->rect());
    const int margin = std::min(width(), height()) < mm(100) ? sizes().gap : sizes().main_gap;
    const int most = height() - 2 * margin;
    const bool low = isLowWindow(*this);
    const int wide = std::min(low ? width() : int(mm(m_width_mm)), width() - 2 * margin);
    const bool moves = low && m_card->findChild<ReadingPane*>(); // takes all there is
    const int wanted = m_tall || moves || !m_lines->hasHeightForWidth()
                           ? most
                           : std::max(m_lines->totalHeightForWidth(wide),
                                      m_lines->totalMinimumHeightForWidth(wide));
    const int high = std::min(wanted, most);
    m_card->setGeometry((width() - wide) / 2, (height() - high) / 2, wide, high);
}

bool Sheet::eventFilter(QObject* watched, QEvent* event) {
    if ((watched == window() && event->type() == QEvent::Resize) ||
        (watched == m_card && event->type() == QEvent::LayoutRequest))
        cover();
    return Part::eventFilter(watched, event);
}

void Sheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else if (event->key() == Qt::Key_PageDown)
        m_pages->turnTo(m_pages->page() + 1);
    else if (event->key() == Qt::Key_PageUp)
        m_pages->turnTo(m_pages->page() - 1);
    // Nothing typed here may reach the screen below.
    event->accept();
}

void Sheet::lookChanged() {
    Part::lookChanged();
    m_lines->setSpacing(sizes().gap);
    cover();
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

/// What Tab stops at, in its order.
std::vector<QWidget*> Sheet::stops() const {
    std::vector<QWidget*> stops = tabStops(*this);
    // The key in the corner comes last: what the sheet is about comes first.
    const auto corner = std::ranges::find(stops, static_cast<QWidget*>(m_close_key));
    if (corner != stops.end())
        std::rotate(corner, corner + 1, stops.end());
    return stops;
}

/// Tab stays within the sheet, and goes round.
bool Sheet::focusNextPrevChild(bool next) {
    tabOn(stops(), next);
    return true;
}

} // namespace latchround::ui

#include "moc_sheet.cpp"
