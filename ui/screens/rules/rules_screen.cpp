#include "ui/screens/rules/rules_screen.h"

#include <algorithm>

#include <QButtonGroup>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/card.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/key_grid.h"
#include "ui/lists/chosen_list.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/rules/rule_page.h"
#include "ui/screens/rules/rules_shown.h"
#include "ui/sheets/paper_sheet.h"

namespace latchround::ui {

RulesScreen::RulesScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_halves(new QBoxLayout(QBoxLayout::LeftToRight, page()))
    , m_left(new Card)
    , m_search(new QLineEdit)
    , m_which(new KeyGrid)
    , m_asked_key(keyOf({}, "rules-asked", "choice"))
    , m_all_key(keyOf(tr("All"), "rules-all", "choice"))
    , m_nothing(new Label(tr("No requirement has these words."), TextSize::Body, Ink::Muted))
    , m_list(new ChosenList)
    , m_openers(new KeyGrid)
    , m_page(new RulePage) {
    setObjectName(QStringLiteral("rules"));
    bar().setBack(true);
    m_search->setObjectName(QStringLiteral("rules-search"));
    m_search->setPlaceholderText(tr("words, or a citation"));
    m_search->setAccessibleName(tr("Find requirements by words or citation"));
    m_search->setClearButtonEnabled(false);
    m_list->setObjectName(QStringLiteral("rules-rows"));
    m_list->setAccessibleName(tr("Requirements of the rule book"));
    m_nothing->setObjectName(QStringLiteral("rules-none"));
    m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* group = new QButtonGroup(this);
    for (QPushButton* key : {m_asked_key, m_all_key}) {
        key->setCheckable(true);
        group->addButton(key);
        m_which->add(key);
    }
    auto* open_row = keyOf(tr("Read ›"), "part-row", "primary");
    m_openers->add(open_row);
    auto* left = new QVBoxLayout(m_left);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_search);
    left->addWidget(m_which);
    left->addWidget(m_nothing, 1);
    left->addWidget(m_list, 1);
    left->addWidget(m_openers);
    m_halves->setContentsMargins(0, 0, 0, 0);
    for (Card* card : std::initializer_list<Card*>{m_left, m_page}) {
        card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
        m_halves->addWidget(card, 1);
    }
    m_page->setPrintable(session.ports().documents != nullptr);
    connect(m_search, &QLineEdit::textChanged, this, &RulesScreen::fillList);
    connect(m_asked_key, &QPushButton::clicked, this, [this] { showAll(false); });
    connect(m_all_key, &QPushButton::clicked, this, [this] { showAll(true); });
    connect(m_list, &ChosenList::chosenChanged, this, &RulesScreen::fillPage);
    connect(m_list, &QListView::clicked, this, [this] { turnTo(Shown::Row); });
    connect(m_list, &QListView::activated, this, [this] { turnTo(Shown::Row); });
    connect(open_row, &QPushButton::clicked, this, [this] { turnTo(Shown::Row); });
    connect(m_page, &RulePage::listAsked, this, [this] { turnTo(Shown::List); });
    connect(m_page, &RulePage::printAsked, this,
            [this] { makePaper(this->session(), rule_book, {}, m_door, this); });
    arrange(false);
    lookChanged();
}

RulesScreen::~RulesScreen() = default;

void RulesScreen::openAt(const QString& door, const QString& row) {
    m_door = door;
    m_row = row;
}

void RulesScreen::enter() {
    m_rules = std::make_unique<RulesShown>(session(), m_door);
    bar().setTitle(tr("Rule book"), m_door.isEmpty() ? QString::fromStdString(
                                                           session().arrangement().particulars.name)
                                                     : tr("door %1").arg(m_door));
    m_asked_key->setText(m_door.isEmpty() ? tr("This vessel") : tr("This door"));
    m_which->arrange();
    const QSignalBlocker quiet(m_search);
    m_search->clear();
    showAll(!m_row.isEmpty() && !m_rules->isAsked(m_row));
    if (!m_row.isEmpty()) {
        m_list->choose(m_row);
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtTop);
    }
    turnTo(m_row.isEmpty() ? Shown::List : Shown::Row);
}

void RulesScreen::showAll(bool all) {
    m_all = all;
    (all ? m_all_key : m_asked_key)->setChecked(true);
    fillList();
}

void RulesScreen::fillList() {
    if (!m_rules)
        return;
    std::vector<TwoLineRow> lines = m_rules->lines(m_all, m_search->text());
    m_list->setVisible(!lines.empty());
    m_nothing->setVisible(lines.empty());
    m_openers->setEnabled(!lines.empty());
    m_list->setLines(std::move(lines));
}

void RulesScreen::fillPage() {
    const QString key = m_list->chosenKey();
    m_page->show(m_rules->title(key), m_rules->parts(key));
}

void RulesScreen::turnTo(Shown shown) {
    m_shown = shown;
    const bool all = !isSmall();
    m_left->setVisible(all || shown == Shown::List);
    m_page->setVisible(all || shown == Shown::Row);
    m_openers->setVisible(!all);
    m_page->setAlone(!all);
    if (!isVisible())
        return;
    if (all || shown == Shown::List)
        m_list->setFocus();
    else
        m_page->setFocus();
}

void RulesScreen::arrange(bool upright) {
    m_halves->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_halves->setStretch(0, upright ? 4 : 1);
    m_halves->setStretch(1, upright ? 5 : 1);
    turnTo(m_shown);
}

void RulesScreen::lookChanged() {
    Screen::lookChanged();
    m_halves->setSpacing(sizes().main_gap);
    m_left->layout()->setSpacing(sizes().gap);
}

} // namespace latchround::ui

#include "moc_rules_screen.cpp"
