#include "ui/screens/review/review_screen.h"

#include <algorithm>

#include <QButtonGroup>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/deficiency/findings.h"
#include "core/evidence/moment_text.h"
#include "ui/frames/card.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/key_grid.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/handovers.h"
#include "ui/ports/signing.h"
#include "ui/screens/review/item_line.h"
#include "ui/screens/review/item_list.h"
#include "ui/screens/review/item_panel.h"
#include "ui/screens/review/item_sheets.h"
#include "ui/screens/review/review_sheets.h"
#include "ui/words/group_words.h"

namespace latchround::ui {

namespace {

/// As they stand on the keys.
struct Order {
    GroupBy by;
    const char* name; ///< of the key
    const char* words;
};
constexpr std::array orders{
    Order{GroupBy::Due, "by-due", QT_TRANSLATE_NOOP("latchround::ui::ReviewScreen", "Due")},
    Order{GroupBy::Zone, "by-zone", QT_TRANSLATE_NOOP("latchround::ui::ReviewScreen", "Zone")},
    Order{GroupBy::Severity, "by-severity",
          QT_TRANSLATE_NOOP("latchround::ui::ReviewScreen", "Severity")},
    Order{GroupBy::Age, "by-age", QT_TRANSLATE_NOOP("latchround::ui::ReviewScreen", "Age")},
    Order{GroupBy::Person, "by-person",
          QT_TRANSLATE_NOOP("latchround::ui::ReviewScreen", "Person")}};

} // namespace

ReviewScreen::ReviewScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_sheets(new ReviewSheets(session, this))
    , m_item_sheets(new ItemSheets(session, this))
    , m_halves(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_left(new Card)
    , m_order(new KeyGrid)
    , m_nothing(new Label({}, TextSize::Body, Ink::Muted))
    , m_list(new ItemList)
    , m_panel(new ItemPanel(session, *m_item_sheets))
    , m_openers(new KeyGrid)
    , m_keys(new KeyGrid)
    , m_back(keyOf(tr("‹ Open items"), "part-list"))
    , m_who(keyOf({}, "review-who"))
    , m_which(keyOf({}, "review-which"))
    , m_write_up(keyOf({}, "review-write-up"))
    , m_retest(keyOf({}, "review-retest"))
    , m_compare(keyOf(tr("Compare ›"), "review-compare"))
    , m_differences(keyOf({}, "review-differences"))
    , m_papers(keyOf(tr("Documents ›"), "review-papers"))
    , m_hand_over(keyOf(tr("Hand over ›"), "review-hand-over"))
    , m_sign(keyOf(tr("Sign ›"), "review-sign")) {
    setObjectName(QStringLiteral("review"));
    bar().setBack(true);
    m_list->setObjectName(QStringLiteral("review-items"));
    m_nothing->setObjectName(QStringLiteral("review-none"));
    m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* lines = new QVBoxLayout(page());
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addLayout(m_halves, 1);
    auto* left = new QVBoxLayout(m_left);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_order);
    left->addWidget(m_nothing, 1);
    left->addWidget(m_list, 1);
    auto* open_item = keyOf(tr("Open it ›"), "part-item", "primary");
    auto* open_keys =
        keyOf(session.ports().handovers ? tr("Who, documents, handover ›") : tr("Who, documents ›"),
              "part-keys");
    m_openers->add(open_item);
    m_openers->add(open_keys);
    left->addWidget(m_openers);
    for (Card* card : std::initializer_list<Card*>{m_left, m_panel})
        card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_halves->addWidget(m_left, 1);
    m_halves->addWidget(m_panel, 1);
    lines->addWidget(m_keys);
    addOrders();
    addKeys();
    connect(m_list, &ItemList::currentItemChanged, m_panel, &ItemPanel::show);
    connect(m_list, &ItemList::clicked, this, [this] { show(Shown::Item); });
    connect(m_list, &ItemList::activated, this, [this] { show(Shown::Item); });
    connect(m_panel, &ItemPanel::listAsked, this, [this] { show(Shown::List); });
    connect(open_item, &QPushButton::clicked, this, [this] { show(Shown::Item); });
    connect(open_keys, &QPushButton::clicked, this, [this] { show(Shown::Keys); });
    connect(m_back, &QPushButton::clicked, this, [this] { show(Shown::List); });
    connect(m_panel, &ItemPanel::historyAsked, m_sheets, &ReviewSheets::history);
    connect(m_panel, &ItemPanel::photographsAsked, m_sheets, &ReviewSheets::photographs);
    connect(m_sheets, &ReviewSheets::personChosen, this, &ReviewScreen::refresh);
    connect(&session, &VesselSession::recorded, this, [this] {
        if (isVisible()) // else enter() does it
            refresh();
    });
    arrange(false);
    lookChanged();
}

void ReviewScreen::addOrders() {
    auto* group = new QButtonGroup(this);
    for (const Order& order : orders) {
        QPushButton* key = keyOf(tr(order.words), order.name, "choice");
        key->setCheckable(true);
        key->setChecked(order.by == m_by);
        group->addButton(key);
        m_order->add(key);
        connect(key, &QPushButton::clicked, this, [this, by = order.by] {
            m_by = by;
            fillList();
        });
    }
}

void ReviewScreen::addKeys() {
    for (QPushButton* key : {m_back, m_who, m_write_up, m_retest, m_differences, m_compare, m_which,
                             m_papers, m_hand_over, m_sign})
        m_keys->add(key);
    m_hand_over->setVisible(session().ports().handovers != nullptr);
    m_sign->setVisible(session().ports().signing != nullptr);
    connect(m_who, &QPushButton::clicked, m_sheets, &ReviewSheets::who);
    connect(m_write_up, &QPushButton::clicked, m_sheets, &ReviewSheets::writeUp);
    connect(m_compare, &QPushButton::clicked, m_sheets, &ReviewSheets::compareWalkdowns);
    connect(m_differences, &QPushButton::clicked, m_sheets, &ReviewSheets::differences);
    connect(m_papers, &QPushButton::clicked, this, [this] {
        const Item* item = session().item(m_list->current());
        m_sheets->papers(item ? QString::fromStdString(item->door) : QString());
    });
    connect(m_hand_over, &QPushButton::clicked, m_sheets, &ReviewSheets::handOver);
    connect(m_sign, &QPushButton::clicked, m_sheets, &ReviewSheets::sign);
    connect(m_retest, &QPushButton::clicked, this, &ReviewScreen::retestAsked);
    connect(m_which, &QPushButton::clicked, this, [this] {
        m_all = !m_all;
        refresh();
    });
}

void ReviewScreen::enter() {
    refresh();
    show(Shown::List);
}

void ReviewScreen::choose(const FactId& item) {
    m_list->setCurrent(item);
    show(Shown::Item);
}

void ReviewScreen::show(Shown shown) {
    m_shown = shown;
    const bool all = !isSmall();
    m_left->setVisible(all || shown == Shown::List);
    m_panel->setVisible(all || shown == Shown::Item);
    m_keys->setVisible(all || shown == Shown::Keys);
    m_openers->setVisible(!all);
    m_back->setVisible(!all);
    m_panel->setAlone(!all, isUpright());
    m_keys->arrange();
    if ((all || shown == Shown::List) && m_list->isHidden())
        m_order->findChild<QPushButton*>()->setFocus();
    else if (all || shown == Shown::List)
        m_list->setFocus();
    else if (shown == Shown::Item)
        m_panel->setFocus();
    else
        m_back->setFocus();
}

std::vector<Item> ReviewScreen::shown() const {
    std::vector<Item> items;
    for (const Item& item : session().items())
        if (m_all || item.isOpen())
            items.push_back(item);
    return items;
}

void ReviewScreen::fillList() {
    const CalendarDate today = shipsDay(session().clock().now());
    const std::vector<Item> items = shown();
    std::vector<TwoLineRow> lines;
    for (const ItemGroup& group : grouped(items, m_by, session().arrangement(), today)) {
        TwoLineRow heading;
        heading.name = groupWords(m_by, group);
        lines.push_back(std::move(heading));
        for (const Item* item : group.items)
            lines.push_back(lineOf(*item, today));
    }
    m_list->setVisible(!lines.empty());
    m_nothing->setVisible(lines.empty());
    m_list->setLines(std::move(lines));
}

void ReviewScreen::refresh() {
    const auto& items = session().items();
    const auto open = std::ranges::count_if(items, &Item::isOpen);
    bar().setTitle(tr("Open items"), open == 1 ? tr("1 open") : tr("%1 open").arg(open));
    fillList();
    m_panel->show(m_list->current());
    fillKeys();
}

void ReviewScreen::fillKeys() {
    const auto& items = session().items();
    const auto settled =
        std::ranges::count_if(items, [](const Item& item) { return !item.isOpen(); });
    const auto to_write = toWriteUp(session().doors(), items).size();
    const auto ready = doorsToRetest(items).size();
    const auto differing = differencesOf(session().ledger()).size();
    const bool known = !session().person().empty();
    m_nothing->setText(
        to_write > 0 ? tr("Nothing is open yet. %1 checks are not in order and not written up.")
                           .arg(to_write)
                     : tr("Nothing is open."));
    m_who->setText(known ? session().personName() : tr("Who are you?"));
    m_who->setAccessibleName(tr("Recorded by: %1").arg(m_who->text()));
    m_write_up->setText(tr("Write up (%1)").arg(to_write));
    m_write_up->setVisible(to_write > 0);
    m_write_up->setEnabled(known);
    m_retest->setText(tr("Plan retest (%1)").arg(ready));
    m_retest->setVisible(ready > 0);
    m_retest->setEnabled(session().mayBegin());
    m_differences->setText(tr("Conflicts (%1)").arg(differing));
    m_differences->setVisible(differing > 0);
    m_which->setText(m_all ? tr("Open only") : tr("Show closed (%1)").arg(settled));
    m_which->setVisible(m_all || settled > 0);
    m_sign->setEnabled(known && session().walkdown().has_value());
    m_keys->arrange();
}

void ReviewScreen::arrange(bool upright) {
    m_halves->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_halves->setStretch(0, upright ? 4 : 1);
    m_halves->setStretch(1, upright ? 5 : 1);
    show(m_shown);
}

void ReviewScreen::lookChanged() {
    Screen::lookChanged();
    page()->layout()->setSpacing(sizes().gap);
    m_halves->setSpacing(sizes().main_gap);
    m_left->layout()->setSpacing(sizes().gap);
}

} // namespace latchround::ui

#include "moc_review_screen.cpp"
