#include "ui/screens/home/open_items_card.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/door_words.h"
#include "ui/parts/lettering.h"
#include "ui/screens/home/open_item_list.h"

namespace latchround::ui {

namespace {

/// Two doors with the whole sentence say more than three cut short.
constexpr int least_roomy_rows = 2;

} // namespace

OpenItemsCard::OpenItemsCard(Round& round, QWidget* parent)
    : Card(parent)
    , m_round(round)
    , m_lines(new QVBoxLayout(this))
    , m_title(new Lettering(tr("Open items"), TextSize::Heading, Ink::Plain, true))
    , m_count(new Lettering({}, TextSize::Small, Ink::Muted))
    , m_nothing(new Lettering({}, TextSize::Body, Ink::Muted))
    , m_list(new OpenItemList)
    , m_all(new QPushButton) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(m_count);
    m_count->setWordWrap(false);
    m_lines->addLayout(head);
    m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_lines->addWidget(m_nothing, 1);
    m_lines->addWidget(m_list, 1);
    m_lines->addWidget(m_all);
    m_nothing->setObjectName(QStringLiteral("open-items-none"));
    m_list->setObjectName(QStringLiteral("open-items"));
    m_all->setObjectName(QStringLiteral("open-items-all"));
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setRole(*m_all, "plain");
    m_all->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(m_list, &OpenItemList::doorChosen, this, &OpenItemsCard::doorChosen);
    connect(m_all, &QPushButton::clicked, this, &OpenItemsCard::allAsked);
    lookChanged();
}

void OpenItemsCard::refresh() {
    m_items = openItems(m_round.doors());
    m_count->setText(m_items.empty()
                         ? QString()
                         : tr("%1, worst first").arg(doorCountWords(int(m_items.size()))));
    m_nothing->setText(!m_round.walkdown()
                           ? tr("None yet: no door was tested.")
                           : tr("None: no door failed, waits for a judgement, or is to be timed "
                                "again."));
    fill();
}

/// As many rows as fit whole, roomy ones where there is room.
void OpenItemsCard::fill() {
    const int gap = m_lines->spacing();
    const int room = contentsRect().height() - m_title->sizeHint().height() - gap;
    const int count = int(m_items.size());
    const int beside_key = room - sizes().target - gap;
    const bool roomy = count * m_list->rowHeight(true) <= room ||
                       beside_key >= least_roomy_rows * m_list->rowHeight(true);
    const int row = m_list->rowHeight(roomy);
    const bool all_fit = count * row <= room;
    const int fitting = all_fit ? count : std::clamp(beside_key / row, 1, std::max(1, count));
    m_list->setRoomy(roomy);
    m_list->setItems({m_items.begin(), m_items.begin() + std::min(fitting, count)});
    m_list->setMinimumHeight(count > 0 ? m_list->rowHeight(false) : 0);
    m_list->setVisible(count > 0);
    m_nothing->setVisible(count == 0);
    m_all->setVisible(!all_fit);
    m_all->setText(tr("All %n open items ›", nullptr, count));
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
