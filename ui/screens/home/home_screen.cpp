#include "ui/screens/home/home_screen.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/card.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/page_tabs.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/home/changed_rules_card.h"
#include "ui/screens/home/home_sheets.h"
#include "ui/screens/home/legend.h"
#include "ui/screens/home/open_items_card.h"
#include "ui/screens/home/vessel_card.h"
#include "ui/screens/home/walkdown_card.h"
#include "ui/sheets/register_sheet.h"
#include "ui/ship/zone_profile.h"
#include "ui/words/boundary_words.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

namespace {

/// Narrower margins above and below: the profile keeps room of its own there.
class ProfileCard : public Card {
public:
    ProfileCard() { ProfileCard::lookChanged(); }

protected:
    void lookChanged() override {
        Card::lookChanged();
        setContentsMargins(sizes().pad, sizes().gap / 2, sizes().pad, sizes().gap / 2);
    }
};

} // namespace

HomeScreen::HomeScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_lines(new QVBoxLayout(page()))
    , m_head(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_cards(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_now(new QHBoxLayout)
    , m_profile_card(new ProfileCard)
    , m_profile(new ZoneProfile)
    , m_walkdown(new WalkdownCard(session))
    , m_open_items(new OpenItemsCard(session))
    , m_vessel(new VesselCard(session))
    , m_changed_rules(new ChangedRulesCard(session))
    , m_foot_line(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_foot(new Label({}, TextSize::Small, Ink::Muted))
    , m_rules_key(keyOf(tr("Rule book ›"), "home-rules"))
    , m_title(new Label(tr("Boundary integrity"), TextSize::Title, Ink::Plain, true))
    , m_legend(new Legend)
    , m_tabs(new PageTabs(QStringLiteral("home-part"),
                          {tr("Doors"), tr("Zones"), tr("Open"), tr("Vessel"), tr("Rules")},
                          {tr("Doors and walkdown"), tr("Boundary integrity"), tr("Open items"),
                           tr("This vessel"), tr("Rules applied")}))
    , m_sheets(new HomeSheets(session, this)) {
    setObjectName(QStringLiteral("home"));
    m_profile->setObjectName(QStringLiteral("home-profile"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addWidget(m_tabs);
    m_lines->addWidget(m_changed_rules);
    m_title->setWordWrap(false);
    m_head->addWidget(m_title);
    m_head->addStretch(1);
    m_head->addWidget(m_legend);
    m_lines->addLayout(m_head);
    auto* profile_lines = new QVBoxLayout(m_profile_card);
    profile_lines->setContentsMargins(0, 0, 0, 0);
    profile_lines->addWidget(m_profile);
    m_lines->addWidget(m_profile_card, 6);
    m_lines->addLayout(m_cards, 5);
    m_cards->addLayout(m_now);
    m_now->addWidget(m_walkdown, 1);
    m_now->addWidget(m_open_items, 1);
    m_cards->addWidget(m_vessel);
    m_foot_line->addWidget(m_foot, 1);
    m_foot_line->addWidget(m_rules_key);
    m_lines->addLayout(m_foot_line);
    connect(m_rules_key, &QPushButton::clicked, this, &HomeScreen::rulesAsked);
    connect(m_tabs, &PageTabs::turned, this, [this] { arrange(isUpright()); });
    connect(m_vessel, &VesselCard::practiceAsked, this, &HomeScreen::practiceAsked);
    for (Card* card : std::initializer_list<Card*>{m_walkdown, m_open_items, m_vessel})
        card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_foot->setObjectName(QStringLiteral("home-edition"));

    connect(m_profile, &ZoneProfile::doorChosen, this, &HomeScreen::choose);
    connect(m_profile, &ZoneProfile::marksChanged, this,
            [this] { m_legend->setMarks(m_profile->marks()); });
    connect(m_walkdown, &WalkdownCard::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_walkdown, &WalkdownCard::beginAsked, this, &HomeScreen::beginAsked);
    connect(m_walkdown, &WalkdownCard::registerAsked, this,
            [this] { takeInRegister(this->session(), this); });
    connect(m_walkdown, &WalkdownCard::endAsked, m_sheets, &HomeSheets::endWalkdown);
    connect(m_walkdown, &WalkdownCard::allDoorsAsked, m_sheets, &HomeSheets::allDoors);
    connect(m_open_items, &OpenItemsCard::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_open_items, &OpenItemsCard::reviewAsked, this, &HomeScreen::reviewAsked);
    connect(m_vessel, &VesselCard::reportAsked, this, &HomeScreen::reportAsked);
    connect(m_vessel, &VesselCard::allWalkdownsAsked, m_sheets, &HomeSheets::allWalkdowns);
    connect(m_vessel, &VesselCard::otherVesselsAsked, m_sheets, &HomeSheets::otherVessels);
    connect(m_vessel, &VesselCard::settingsAsked, this, &HomeScreen::settingsAsked);
    connect(m_vessel, &VesselCard::dueAsked, m_sheets, &HomeSheets::due);
    connect(m_changed_rules, &ChangedRulesCard::asked, m_sheets, &HomeSheets::changedDoors);
    connect(m_sheets, &HomeSheets::rulesSeen, this, &HomeScreen::showChangedRules);
    connect(m_sheets, &HomeSheets::drillAsked, this, &HomeScreen::drillAsked);
    connect(m_sheets, &HomeSheets::planAsked, this, &HomeScreen::planAsked);
    connect(m_sheets, &HomeSheets::dueChanged, m_vessel, &VesselCard::refreshDue);
    connect(m_sheets, &HomeSheets::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_sheets, &HomeSheets::reportAsked, this, &HomeScreen::reportAsked);
    connect(&session, &VesselSession::doorChanged, this, [this] {
        if (isVisible()) // else enter() does it
            refreshDoor();
    });
    connect(&session, &VesselSession::walkdownChanged, this, &HomeScreen::refresh);
    connect(&session, &VesselSession::waitingChanged, this, [this] {
        if (isVisible()) // a run was passed over while its end waited
            lookForUnfinishedRun();
    });
    m_profile->setArrangement(session.arrangement());
    arrange(false);
    lookChanged();
    refresh();
}

/// Where there is little room one part comes at a time, turned to by the keys above it.
void HomeScreen::arrange(bool upright) {
    const bool small = isSmall();
    const auto shows = [&](Page page) { return !small || m_tabs->chosen() == page; };
    m_tabs->setVisible(small);
    placeChangedRules();
    // Upright with gloves the profile needs the title's room; the legend says what it shows.
    m_title->setVisible(!small && m_head->indexOf(m_changed_rules) < 0 &&
                        !(upright && sizes().gloves));
    m_legend->setVisible(shows(Zones));
    const bool is_crowded =
        m_changed_rules->isNeeded() || session().isReadOnly() || (upright && sizes().gloves);
    m_legend->setBrief(!small && is_crowded);
    giveLegendRoom();
    m_profile_card->setVisible(shows(Zones));
    m_walkdown->setVisible(shows(Walk));
    m_open_items->setVisible(shows(Open));
    m_changed_rules->setVisible(m_changed_rules->isNeeded() && (shows(Walk) || shows(Rules)));
    m_vessel->setVisible(shows(Vessel));
    m_foot->setVisible(shows(Rules));
    placeRulesKey();
    m_rules_key->setVisible(shows(Rules));
    m_foot_line->setDirection(small ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_foot->setAlignment(small ? Qt::AlignLeft | Qt::AlignTop : Qt::AlignLeft | Qt::AlignVCenter);
    m_head->setDirection(upright && !small ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_cards->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_cards->setStretch(0, shows(Walk) || shows(Open) ? (upright ? 5 : 2) : 0);
    m_cards->setStretch(1, shows(Vessel) ? (upright ? 5 : 1) : 0);
    m_lines->setStretchFactor(m_profile_card, 10);
    m_lines->setStretchFactor(m_cards,
                              small ? (shows(Zones) || shows(Rules) ? 0 : 9) : (upright ? 18 : 8));
    m_lines->setStretchFactor(m_foot_line, small ? (shows(Rules) ? 9 : 0) : 0);
    setSpacings();
    showBoundaries();
}

/// Beside the words of the rules, where they lie flat; in an upright window these need its width.
void HomeScreen::placeRulesKey() {
    const bool in_card = isUpright() && !isSmall();
    if (in_card == m_vessel->isAncestorOf(m_rules_key))
        return;
    if (in_card) {
        m_foot_line->removeWidget(m_rules_key);
        m_vessel->takeIn(*m_rules_key);
    } else {
        m_vessel->letGo();
        m_foot_line->addWidget(m_rules_key);
    }
}

/// In a window that lies flat it takes the room of the title, so that the profile keeps its own.
void HomeScreen::placeChangedRules() {
    const bool in_head = !isUpright() && !isSmall() && m_changed_rules->isNeeded();
    m_changed_rules->setBrief(in_head || isSmall());
    if (in_head == (m_head->indexOf(m_changed_rules) >= 0))
        return;
    if (in_head) {
        m_lines->removeWidget(m_changed_rules);
        m_head->insertWidget(0, m_changed_rules, 50);
    } else {
        m_head->removeWidget(m_changed_rules);
        m_lines->insertWidget(1, m_changed_rules);
    }
}

/// In a window that lies flat it stands beside the title, or what has the title's room.
void HomeScreen::giveLegendRoom() {
    const bool in_head = m_head->indexOf(m_changed_rules) >= 0;
    const int beside = isUpright() || isSmall() ? 0
                       : in_head ? (width() - 2 * sizes().main_gap) / 2 + sizes().main_gap
                                 : m_title->sizeHint().width() + sizes().main_gap;
    const int margin = isSmall() ? sizes().gap : sizes().main_gap;
    m_legend->setRoom(width() - 2 * margin - beside);
}

void HomeScreen::resizeEvent(QResizeEvent* event) {
    Screen::resizeEvent(event);
    giveLegendRoom();
}

void HomeScreen::lookChanged() {
    Screen::lookChanged();
    arrange(isUpright()); // gloves may have come or gone
}

void HomeScreen::setSpacings() {
    m_lines->setSpacing(sizes().gap);
    // On a small window the keys below keep their size and the picture gives way.
    m_profile->setMinimumHeight(int(mm(24)));
    m_head->setSpacing(sizes().gap / 2);
    m_now->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
    m_cards->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
    m_foot_line->setSpacing(sizes().gap);
}

void HomeScreen::enter() {
    refreshDoor();
    showChangedRules();
    m_vessel->refreshDue();
    m_walkdown->mainKey()->setFocus();
    lookForUnfinishedRun();
}

void HomeScreen::setPractising() {
    m_vessel->hideOthers();
}

void HomeScreen::refresh() {
    const QString vessel = QString::fromStdString(session().arrangement().particulars.name);
    bar().setTitle(QStringLiteral("Latchround"), vessel);
    m_vessel->refresh();
    showRules();
    refreshDoor();
}

/// By which editions the vessel is graded, what stands above them and what is not in them.
void HomeScreen::showRules() {
    const Particulars& vessel = session().arrangement().particulars;
    m_foot->setText(
        tr("%1. Flag Administration, approved plans and local rules come first. Not for "
           "high-speed craft, nor watertight doors as such.")
            .arg(QString::fromStdString(editionFor(session().catalogue(), vessel))));
}

/// Costs the grading of every door twice where there is something to say: not after each tap.
void HomeScreen::showChangedRules() {
    const bool was_needed = m_changed_rules->isNeeded();
    m_changed_rules->refresh();
    if (m_changed_rules->isNeeded() != was_needed)
        arrange(isUpright());
}

/// What one door's new grade changes.
void HomeScreen::refreshDoor() {
    const Tally tally = tallyOf(session().doors());
    if (session().isUnderWay())
        bar().setProgress(tally.done, tally.doors);
    else
        bar().setProgress(0, 0);
    showBoundaries();
    m_walkdown->refresh();
    m_open_items->refresh();
    m_vessel->refresh(true);
}

void HomeScreen::showBoundaries() {
    DoorVerdicts verdicts;
    for (const GradedDoor& graded : session().doors())
        verdicts[graded.door->number] = graded.grade.verdict;
    m_profile->setVerdicts(std::move(verdicts));
    const ZoneIntegrity integrity = zoneIntegrity(session().arrangement(), session().doors());
    BulkheadsShown shown;
    for (const ActingZone& acting : integrity.failing) {
        shown.broken.insert(acting.boundaries.begin(), acting.boundaries.end());
        shown.sentences << actingWords(session().arrangement(), acting);
    }
    for (const ActingZone& group : integrity.not_shown)
        shown.not_shown.insert(group.boundaries.begin(), group.boundaries.end());
    QStringList also;
    if (integrity.best_repair)
        also << repairWords(*integrity.best_repair);
    if (const QString open = notShownWords(integrity.not_shown, integrity.failing); !open.isEmpty())
        also << open;
    if (!also.isEmpty())
        shown.remarks << also.join(QStringLiteral("; "));
    m_profile->setBulkheads(std::move(shown));
}

void HomeScreen::lookForUnfinishedRun() {
    if (!session().isUnderWay())
        return;
    for (const GradedDoor& graded : session().doors()) {
        const RunRecord* run = unfinishedRun(graded.evidence);
        if (run && session().waitsFor(run->id)) {
            m_told.erase(run->id); // looked at anew once that is saved
        } else if (run && m_told.insert(run->id).second) {
            emit unfinishedRunFound(QString::fromStdString(graded.door->number));
            return;
        }
    }
}

/// A tap on the profile: only doors of the walkdown shown have a page.
void HomeScreen::choose(const QString& number) {
    if (session().door(number))
        emit doorChosen(number);
    else
        m_sheets->doorNotOnWalk(number);
}

} // namespace latchround::ui

#include "moc_home_screen.cpp"
