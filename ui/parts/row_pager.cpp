#include "ui/parts/row_pager.h"

#include <algorithm>

#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/lettering.h"

namespace latchround::ui {

RowPager::RowPager(QWidget* parent)
    : Part(parent)
    , m_lines(new QVBoxLayout(this))
    , m_place(new QVBoxLayout)
    , m_turner(new QWidget)
    , m_before(new QPushButton(tr("‹ Before")))
    , m_after(new QPushButton(tr("More ›")))
    , m_where(new Lettering({}, TextSize::Small, Ink::Muted)) {
    m_lines->setSpacing(0);
    m_place->setSpacing(0);
    m_lines->addLayout(m_place);
    m_lines->addStretch(1);
    auto* turner = new QHBoxLayout(m_turner);
    turner->addWidget(m_before);
    turner->addWidget(m_where, 1);
    turner->addWidget(m_after);
    m_where->setAlignment(Qt::AlignCenter);
    m_lines->addWidget(m_turner);
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
    }
    m_page = 0;
    divide();
}

int RowPager::heightOf(QWidget* row) const {
    const int room = width() - 2 * sizes().border;
    row->resize(room, row->height()); // rows fit their keys to their width before they can tell
    const int asked =
        row->hasHeightForWidth() ? row->heightForWidth(room) : row->sizeHint().height();
    return std::max({asked, row->minimumSizeHint().height(), sizes().target + 2 * sizes().gap});
}

void RowPager::divide() {
    m_first.clear();
    const int whole = height() - 2 * sizes().border;
    int all = 0;
    for (QWidget* row : m_rows)
        all += heightOf(row);
    const int turner = sizes().target + 2 * sizes().gap;
    const int room = all <= whole ? whole : whole - turner;
    int used = 0;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const int needed = heightOf(m_rows[i]);
        if (m_first.empty() || used + needed > room) {
            m_first.push_back(i);
            used = 0;
        }
        used += needed;
    }
    showPage();
}

void RowPager::turnTo(int page) {
    m_page = page;
    showPage();
}

void RowPager::showPage() {
    m_page = std::clamp(m_page, 0, std::max(0, pages() - 1));
    const std::size_t first = m_first.empty() ? 0 : m_first[std::size_t(m_page)];
    const std::size_t past =
        m_page + 1 < pages() ? m_first[std::size_t(m_page) + 1] : m_rows.size();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const bool here = i >= first && i < past;
        if (here)
            m_rows[i]->setFixedHeight(heightOf(m_rows[i]));
        m_rows[i]->setVisible(here);
    }
    m_turner->setVisible(pages() > 1);
    m_before->setEnabled(m_page > 0);
    m_after->setEnabled(m_page + 1 < pages());
    m_where->setText(tr("%1 to %2 of %3").arg(first + 1).arg(past).arg(m_rows.size()));
}

void RowPager::lookChanged() {
    const int border = sizes().border;
    m_lines->setContentsMargins(border, border, border, border);
    m_turner->layout()->setContentsMargins(sizes().pad, sizes().gap, sizes().pad, sizes().gap);
    divide();
    Part::lookChanged();
}

void RowPager::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    divide();
}

void RowPager::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui
