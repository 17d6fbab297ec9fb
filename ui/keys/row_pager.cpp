#include "ui/keys/row_pager.h"

#include <algorithm>

#include <QBoxLayout>
#include <QPushButton>
#include <QResizeEvent>

#include "ui/look/label.h"
#include "ui/look/restyle.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

namespace {

constexpr const char* follows_property = "follows";

bool followsAnother(const QWidget* row) {
    return row->property(follows_property).toBool();
}

} // namespace

void RowPager::makeFollow(QWidget& row) {
    row.setProperty(follows_property, true);
}

RowPager::RowPager(QWidget* parent)
    : Part(parent)
    , m_lines(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_place(new QVBoxLayout)
    , m_turner(new QWidget)
    , m_turner_line(new QBoxLayout(QBoxLayout::LeftToRight, m_turner))
    , m_before(new QPushButton)
    , m_after(new QPushButton)
    , m_where(new Label({}, TextSize::Small, Ink::Muted)) {
    m_lines->setSpacing(0);
    m_place->setSpacing(0);
    auto* rows = new QVBoxLayout;
    rows->addLayout(m_place);
    rows->addStretch(1);
    m_lines->addLayout(rows, 1);
    m_turner_line->addWidget(m_before);
    m_turner_line->addWidget(m_where, 1);
    m_turner_line->addWidget(m_after);
    m_where->setAlignment(Qt::AlignCenter);
    m_lines->addWidget(m_turner);
    m_before->setAccessibleName(tr("Previous page"));
    m_after->setAccessibleName(tr("Next page"));
    m_before->setObjectName(QStringLiteral("rows-before"));
    m_after->setObjectName(QStringLiteral("rows-after"));
    setRole(*m_before, "plain");
    setRole(*m_after, "plain");
    connect(m_before, &QPushButton::clicked, this, [this] { turnTo(m_page - 1); });
    connect(m_after, &QPushButton::clicked, this, [this] { turnTo(m_page + 1); });
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    lookChanged();
}

void RowPager::setRows(std::vector<QWidget*> rows) {
    for (QWidget* row : m_rows) {
        m_place->removeWidget(row);
        row->hide();
        row->deleteLater();
    }
    m_rows = std::move(rows);
    for (QWidget* row : m_rows) {
        row->setParent(this);
        m_place->addWidget(row);
        restyle(*row);
    }
    m_page = 0;
    divide();
}

int RowPager::rowWidth() const {
    const int beside = m_turned && m_beside ? sizes().target + 2 * sizes().gap : 0;
    return width() - 2 * sizes().border - beside;
}

int RowPager::heightOf(QWidget* row) const {
    const int room = rowWidth();
    row->resize(room, row->height()); // rows fit their keys to their width before they can tell
    const int asked =
        row->hasHeightForWidth() ? row->heightForWidth(room) : row->sizeHint().height();
    return std::max({asked, row->minimumSizeHint().height(), sizes().target + 2 * sizes().gap});
}

int RowPager::heightFrom(std::size_t row) const {
    int height = heightOf(m_rows[row]);
    for (std::size_t i = row + 1; i < m_rows.size() && followsAnother(m_rows[i]); ++i) {
        const int more = heightOf(m_rows[i]);
        if (height + more > m_room)
            break;
        height += more;
    }
    return height;
}

int RowPager::countBefore(std::size_t row) const {
    return int(row - std::size_t(std::ranges::count_if(
                         m_rows.begin(), m_rows.begin() + std::ptrdiff_t(row), followsAnother)));
}

void RowPager::placeTurner() {
    constexpr double short_mm = 60;
    constexpr double wide_mm = 90;
    m_beside = height() < mm(short_mm) && width() > mm(wide_mm);
    m_lines->setDirection(m_beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_turner_line->setDirection(m_beside ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_before->setText(m_beside ? QStringLiteral("‹") : tr("‹ Previous"));
    m_after->setText(m_beside ? QStringLiteral("›") : tr("Next ›"));
    const int keys = 2 * sizes().target + 2 * sizes().gap;
    m_where->setHidden(m_beside && height() < keys + 2 * m_where->fontMetrics().height());
    m_turner->setMaximumWidth(m_beside ? sizes().target + 2 * sizes().gap : QWIDGETSIZE_MAX);
    const int side = m_beside ? sizes().gap : sizes().pad;
    constexpr int least_apart_px = 8;
    m_turner_line->setSpacing(m_beside ? least_apart_px : sizes().gap);
    const int above = m_beside ? 0 : sizes().gap;
    m_turner_line->setContentsMargins(side, above, side, above);
}

QSize RowPager::minimumSizeHint() const {
    return {0, 2 * (sizes().target + 2 * sizes().gap)};
}

void RowPager::divide() {
    placeTurner();
    m_first.clear();
    const int whole = height() - 2 * sizes().border;
    m_turned = false;
    int all = 0;
    for (QWidget* row : m_rows)
        all += heightOf(row);
    m_turned = all > whole;
    m_room = m_turned && !m_beside ? whole - sizes().target - 2 * sizes().gap : whole;
    int used = 0;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (m_first.empty() || used + heightFrom(i) > m_room) {
            m_first.push_back(i);
            used = 0;
        }
        used += heightOf(m_rows[i]);
    }
    showPage();
}

/// A row now needs more than it was given: its key says something longer.
bool RowPager::isCramped() const {
    return std::ranges::any_of(m_rows, [this](QWidget* row) {
        return row->isVisible() && row->height() < m_room && heightOf(row) > row->height();
    });
}

bool RowPager::event(QEvent* event) {
    const bool done = Part::event(event);
    if (event->type() == QEvent::LayoutRequest && !m_showing && isCramped())
        QMetaObject::invokeMethod(this, &RowPager::divide, Qt::QueuedConnection);
    return done;
}

void RowPager::turnTo(int page) {
    m_page = page;
    showPage();
}

void RowPager::turnToRow(const QWidget* row) {
    const auto at = std::size_t(std::ranges::find(m_rows, row) - m_rows.begin());
    const auto after = std::ranges::upper_bound(m_first, at);
    if (at < m_rows.size() && after != m_first.begin())
        turnTo(int(after - m_first.begin()) - 1);
}

void RowPager::showPage() {
    m_showing = true;
    m_page = std::clamp(m_page, 0, std::max(0, pages() - 1));
    const std::size_t first = m_first.empty() ? 0 : m_first[std::size_t(m_page)];
    const std::size_t past =
        m_page + 1 < pages() ? m_first[std::size_t(m_page) + 1] : m_rows.size();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const bool here = i >= first && i < past;
        if (here)
            m_rows[i]->setFixedHeight(std::min(heightOf(m_rows[i]), std::max(m_room, 1)));
        m_rows[i]->setVisible(here);
    }
    m_turner->setVisible(pages() > 1);
    m_before->setEnabled(m_page > 0);
    m_after->setEnabled(m_page + 1 < pages());
    const QString place = m_beside ? tr("%1–%2 of %3") : tr("%1 to %2 of %3");
    const int last = countBefore(past);
    m_where->setText(place.arg(std::min(countBefore(first) + 1, last))
                         .arg(last)
                         .arg(countBefore(m_rows.size())));
    m_showing = false;
}

void RowPager::lookChanged() {
    const int border = sizes().border;
    m_lines->setContentsMargins(border, border, border, border);
    divide();
    Part::lookChanged();
}

void RowPager::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    if (m_showing)
        QMetaObject::invokeMethod(this, &RowPager::divide, Qt::QueuedConnection);
    else
        divide();
}

void RowPager::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui

#include "moc_row_pager.cpp"
