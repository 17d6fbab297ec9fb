#include "ui/screens/home/open_items_card.h"

#include <algorithm>

#include <QBoxLayout>
#include <QPushButton>

#include "core/deficiency/grouping.h"
#include "core/evidence/moment_text.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/home/open_item_list.h"
#include "ui/words/item_words.h"

namespace latchround::ui {

namespace {

/// Two doors with the whole sentence say more than three cut short.
constexpr int least_roomy_rows = 2;

} // namespace

OpenItemsCard::OpenItemsCard(VesselSession& session, QWidget* parent)
    : Card(parent)
    , m_session(session)
    , m_lines(new QVBoxLayout(this))
    , m_head(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_title(new Label({}, TextSize::Heading, Ink::Plain, true))
    , m_count(new Label({}, TextSize::Small, Ink::Muted))
    , m_nothing(new Label({}, TextSize::Body, Ink::Muted))
    , m_list(new OpenItemList)
    , m_all(new QPushButton) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_head->addWidget(m_title);
    m_head->addWidget(m_count, 1);
    m_title->setWordWrap(false);
    m_lines->addLayout(m_head);
    m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_lines->addWidget(m_nothing, 1);
    m_lines->addWidget(m_list, 1);
    m_lines->addWidget(m_all);
    m_title->setObjectName(QStringLiteral("open-items-title"));
    m_nothing->setObjectName(QStringLiteral("open-items-none"));
    m_list->setObjectName(QStringLiteral("open-items"));
    m_all->setObjectName(QStringLiteral("open-items-all"));
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setRole(*m_all, "plain");
    m_all->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(m_list, &OpenItemList::chosen, this, [this](const OpenItem& item) {
        if (item.item.empty())
            emit doorChosen(item.door);
        else
            emit reviewAsked(item.item);
    });
    connect(m_all, &QPushButton::clicked, this, [this] { emit reviewAsked({}); });
    lookChanged();
}

void OpenItemsCard::refresh() {
    m_items = openItems(m_session);
    const CalendarDate today = shipsDay(m_session.clock().now());
    int oldest = 0;
    int overdue = 0;
    m_open = 0;
    for (const Item& item : m_session.items())
        if (item.isOpen()) {
            ++m_open;
            oldest = std::max(oldest, daysOpen(item, today));
            overdue += isOverdue(item, today) ? 1 : 0;
        }
    QStringList words;
    if (oldest > 1)
        words << tr("oldest %1 days").arg(oldest);
    if (overdue > 0)
        words << tr("%1 overdue").arg(overdue);
    m_count->setText(words.join(QStringLiteral(", ")));
    m_count->setInk(overdue > 0 ? Ink::Bad : Ink::Muted);
    m_nothing->setText(!m_session.walkdown() ? tr("None yet: no door has been tested.")
                                             : tr("None: no door is unsatisfactory or undecided."));
    fill();
}

/// Beside the title, or below it where that would leave it only narrow lines.
void OpenItemsCard::placeCount() {
    const int beside = contentsRect().width() - m_title->sizeHint().width() - m_head->spacing();
    const int in_one_line = m_count->fontMetrics().horizontalAdvance(m_count->text());
    const bool is_below = 2 * beside < in_one_line;
    m_head->setDirection(is_below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_count->setAlignment(is_below ? Qt::AlignLeft | Qt::AlignTop
                                   : Qt::AlignRight | Qt::AlignVCenter);
}

/// As many rows as fit whole above the key, roomy ones where there is room. The title counts all
/// rows, doors that nobody has written up among them; the key counts what it opens.
void OpenItemsCard::fill() {
    const int gap = m_lines->spacing();
    const int count = int(m_items.size());
    m_title->setText(count == 0   ? tr("Open items")
                     : count == 1 ? tr("1 needs attention")
                                  : tr("%1 need attention").arg(count));
    placeCount();
    const int head = std::max(m_title->sizeHint().height(),
                              m_lines->itemAt(0)->heightForWidth(contentsRect().width()));
    const int room = contentsRect().height() - head - 2 * gap - m_all->sizeHint().height();
    const bool roomy = room >= std::min(count, least_roomy_rows) * m_list->rowHeight(true);
    const int fitting = std::clamp(room / m_list->rowHeight(roomy), 1, std::max(1, count));
    m_list->setRoomy(roomy);
    m_list->setItems({m_items.begin(), m_items.begin() + std::min(fitting, count)});
    m_list->setMinimumHeight(count > 0 ? m_list->rowHeight(false) : 0);
    m_list->setVisible(count > 0);
    m_nothing->setVisible(count == 0);
    m_all->setText(m_open > 1    ? tr("All %1 open items ›").arg(m_open)
                   : m_open == 1 ? tr("1 open item ›")
                                 : tr("Open items ›"));
}

void OpenItemsCard::lookChanged() {
    Card::lookChanged();
    m_lines->setSpacing(sizes().gap);
    fill();
}

void OpenItemsCard::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    fill();
}

} // namespace latchround::ui

#include "moc_open_items_card.cpp"
