#include "ui/frames/sheet_pages.h"

#include <algorithm>

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWheelEvent>

#include "ui/keys/row_pager.h"
#include "ui/look/label.h"
#include "ui/look/restyle.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

namespace {

int wantedHeight(const QWidget& content, int width) {
    const int wanted =
        content.hasHeightForWidth() ? content.heightForWidth(width) : content.sizeHint().height();
    return std::max(wanted, content.minimumHeight());
}

int leastHeight(const QWidget& content, int width) {
    const int least = content.hasHeightForWidth() && content.layout()
                          ? content.layout()->totalMinimumHeightForWidth(width)
                          : content.minimumSizeHint().height();
    return std::max(least, content.minimumHeight());
}

bool isOfOnePiece(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLabel*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QAbstractScrollArea*>(&widget);
}

/// Lists and panes move by themselves: they get along with a page, whatever they asked for. With
/// `room` 0 they are free again.
void keepPanesWithin(QWidget& content, int room) {
    QList<QWidget*> all = content.findChildren<QWidget*>();
    all << &content;
    for (QWidget* each : all) {
        if (!qobject_cast<QAbstractScrollArea*>(each) && !qobject_cast<RowPager*>(each))
            continue;
        each->setMaximumHeight(room > 0 ? room : QWIDGETSIZE_MAX);
        if (room > 0 && each->minimumHeight() >= room)
            each->setMinimumHeight(0);
    }
}

/// What stays whole: its upper and lower end, and whether it is words that may speak of what
/// follows.
struct Whole {
    int top;
    int bottom;
    bool words;
};

/// Parts that fit on a page, and what is within larger ones; places in `page`.
void collectWhole(const QWidget& widget, const QWidget& page, int room, std::vector<Whole>& whole) {
    for (const QObject* object : widget.children()) {
        const auto* child = qobject_cast<const QWidget*>(object);
        if (!child || child->isHidden() || child->isWindow())
            continue;
        const bool part = qobject_cast<const Part*>(child) && child->height() <= room;
        if (part || isOfOnePiece(*child)) {
            const int top = child->mapTo(&page, QPoint()).y();
            whole.push_back(
                {top, top + child->height(), qobject_cast<const QLabel*>(child) != nullptr});
        } else {
            collectWhole(*child, page, room, whole);
        }
    }
}

} // namespace

SheetPages::SheetPages(QWidget* parent)
    : Part(parent)
    , m_window(new QWidget(this)) {
    connect(qApp, &QApplication::focusChanged, this,
            [this](QWidget*, QWidget* now) { showFocused(now); });
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

// Children that are destroyed give up the focus; by then this must no longer hear of it.
SheetPages::~SheetPages() {
    disconnect(qApp, nullptr, this, nullptr);
}

void SheetPages::setContent(QWidget* content) {
    m_content = content;
    content->setParent(m_window);
    restyle(*content);
    content->show();
    makeTurner(); // after the content: so Tab comes to its keys after those of the content
    divide();
    updateGeometry();
}

void SheetPages::makeTurner() {
    m_turner = new QWidget(this);
    m_before = keyOf(tr("‹ Previous"), "sheet-before");
    m_after = keyOf(tr("Next ›"), "sheet-after");
    m_where = new Label({}, TextSize::Small, Ink::Muted);
    m_where->setAlignment(Qt::AlignCenter);
    auto* turner = new QHBoxLayout(m_turner);
    turner->setContentsMargins(0, 0, 0, 0);
    turner->addWidget(m_before);
    turner->addWidget(m_where, 1);
    turner->addWidget(m_after);
    connect(m_before, &QPushButton::clicked, this, [this] { turnTo(m_page - 1); });
    connect(m_after, &QPushButton::clicked, this, [this] { turnTo(m_page + 1); });
}

QSize SheetPages::sizeHint() const {
    return {int(mm(100)), heightForWidth(std::max(width(), int(mm(40))))};
}

QSize SheetPages::minimumSizeHint() const {
    return {0, sizes().target + turnerHeight()};
}

int SheetPages::heightForWidth(int width) const {
    return m_content ? wantedHeight(*m_content, width) : 0;
}

int SheetPages::turnerHeight() const {
    return sizes().target + sizes().gap;
}

void SheetPages::divide() {
    if (!m_content)
        return;
    // Parts arrange themselves by their width before they can tell how high they are.
    m_content->resize(width(), m_content->height());
    const bool fits = leastHeight(*m_content, width()) <= height();
    const int room = std::max(1, fits ? height() : height() - turnerHeight());
    if (fits == m_divided) {
        m_divided = !fits;
        keepPanesWithin(*m_content, fits ? 0 : room);
    }
    m_content->resize(width(), fits ? height()
                                    : std::max({leastHeight(*m_content, width()),
                                                wantedHeight(*m_content, width()), room}));
    if (QLayout* layout = m_content->layout())
        layout->activate();
    m_tops = {0};
    while (!fits) {
        const int end = endOfPage(m_tops.back(), room);
        if (end >= m_content->height())
            break;
        m_tops.push_back(end);
    }
    m_turner->setGeometry(0, height() - sizes().target, width(), sizes().target);
    m_turner->setVisible(!fits);
    showPage();
}

int SheetPages::endOfPage(int top, int room) const {
    std::vector<Whole> whole;
    collectWhole(*m_content, *m_content, room, whole);
    int end = top + room;
    for (bool cut = true; cut;) {
        cut = false;
        for (const Whole& each : whole)
            if (each.top > top && each.top < end && each.bottom > end) {
                end = each.top;
                cut = true;
            }
    }
    // Words at the foot speak of what follows, and go with it.
    const Whole* last = nullptr;
    bool follows = false;
    for (const Whole& each : whole) {
        if (each.top >= end)
            follows = follows || !each.words;
        else if (!last || each.bottom >= last->bottom)
            last = &each;
    }
    if (last && last->words && follows && last->top > top + room / 3)
        return last->top;
    // What lies between rows goes with the page before it.
    int next = m_content->height();
    for (const Whole& each : whole)
        if (each.top >= end)
            next = std::min(next, each.top);
        else if (each.bottom > end)
            next = end; // higher than a page: it is cut where it must be
    return std::max(end, next);
}

void SheetPages::showPage() {
    m_page = std::clamp(m_page, 0, pages() - 1);
    const int top = m_tops[std::size_t(m_page)];
    const int room = pages() > 1 ? height() - turnerHeight() : height();
    const int past = m_page + 1 < pages() ? m_tops[std::size_t(m_page) + 1] : m_content->height();
    m_window->setGeometry(0, 0, width(), std::min(room, past - top));
    m_content->move(0, -top);
    m_before->setEnabled(m_page > 0);
    m_after->setEnabled(m_page + 1 < pages());
    m_where->setText(tr("%1 of %2").arg(m_page + 1).arg(pages()));
}

void SheetPages::turnTo(int page) {
    m_page = page;
    showPage();
}

void SheetPages::showFocused(QWidget* now) {
    if (!now || pages() < 2 || !m_content->isAncestorOf(now))
        return;
    const int y = now->mapTo(m_content, QPoint()).y();
    const auto past = std::ranges::upper_bound(m_tops, y);
    turnTo(int(past - m_tops.begin()) - 1);
}

bool SheetPages::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) {
        divide();
        updateGeometry();
    }
    return Part::event(event);
}

void SheetPages::lookChanged() {
    Part::lookChanged();
    if (m_content)
        divide();
}

void SheetPages::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    divide();
}

void SheetPages::wheelEvent(QWheelEvent* event) {
    constexpr int notch = 120;
    m_turned_by += event->angleDelta().y();
    if (std::abs(m_turned_by) >= notch) {
        turnTo(m_page - m_turned_by / notch);
        m_turned_by %= notch;
    }
    event->accept();
}

} // namespace latchround::ui

#include "moc_sheet_pages.cpp"
