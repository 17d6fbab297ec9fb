#include "ui/screens/home/home_screen.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/card.h"
#include "ui/parts/door_words.h"
#include "ui/parts/lettering.h"
#include "ui/parts/top_bar.h"
#include "ui/parts/zone_profile.h"
#include "ui/screens/home/boundary_words.h"
#include "ui/screens/home/home_sheets.h"
#include "ui/screens/home/legend.h"
#include "ui/screens/home/open_items_card.h"
#include "ui/screens/home/vessel_card.h"
#include "ui/screens/home/walkdown_card.h"

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

HomeScreen::HomeScreen(Round& round, QWidget* parent)
    : Screen(round, parent)
    , m_lines(new QVBoxLayout(page()))
    , m_head(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_cards(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_now(new QHBoxLayout)
    , m_profile_card(new ProfileCard)
    , m_profile(new ZoneProfile)
    , m_walkdown(new WalkdownCard(round))
    , m_open_items(new OpenItemsCard(round))
    , m_vessel(new VesselCard(round))
    , m_foot_line(new QHBoxLayout)
    , m_foot(new Lettering({}, TextSize::Small, Ink::Muted))
    , m_practice(keyOf(tr("Practice ›"), "home-practice"))
    , m_sheets(new HomeSheets(round, this)) {
    setObjectName(QStringLiteral("home"));
    m_profile->setObjectName(QStringLiteral("home-profile"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    auto* title = new Lettering(tr("Which boundaries hold"), TextSize::Title, Ink::Plain, true);
    title->setWordWrap(false);
    m_head->addWidget(title);
    m_head->addStretch(1);
    m_head->addWidget(new Legend);
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
    m_foot_line->addWidget(m_practice);
    m_lines->addLayout(m_foot_line);
    connect(m_practice, &QPushButton::clicked, this, &HomeScreen::practiceAsked);
    for (Card* card : std::initializer_list<Card*>{m_walkdown, m_open_items, m_vessel})
        card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_foot->setText(tr("%1. The flag Administration, approved plans and local rules stand above "
                       "it.")
                        .arg(QString::fromStdString(round.catalogue().edition)));
    m_foot->setObjectName(QStringLiteral("home-edition"));

    connect(m_profile, &ZoneProfile::doorChosen, this, &HomeScreen::choose);
    connect(m_walkdown, &WalkdownCard::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_walkdown, &WalkdownCard::beginAsked, this, &HomeScreen::beginAsked);
    connect(m_walkdown, &WalkdownCard::endAsked, m_sheets, &HomeSheets::endWalkdown);
    connect(m_walkdown, &WalkdownCard::allDoorsAsked, m_sheets, &HomeSheets::allDoors);
    connect(m_open_items, &OpenItemsCard::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_open_items, &OpenItemsCard::reviewAsked, this, &HomeScreen::reviewAsked);
    connect(m_vessel, &VesselCard::reportAsked, this, &HomeScreen::reportAsked);
    connect(m_vessel, &VesselCard::allWalkdownsAsked, m_sheets, &HomeSheets::allWalkdowns);
    connect(m_vessel, &VesselCard::otherVesselsAsked, m_sheets, &HomeSheets::otherVessels);
    connect(m_vessel, &VesselCard::settingsAsked, this, &HomeScreen::settingsAsked);
    connect(m_vessel, &VesselCard::dueAsked, m_sheets, &HomeSheets::due);
    connect(m_sheets, &HomeSheets::drillAsked, this, &HomeScreen::drillAsked);
    connect(m_sheets, &HomeSheets::planAsked, this, &HomeScreen::planAsked);
    connect(m_sheets, &HomeSheets::dueChanged, m_vessel, &VesselCard::refreshDue);
    connect(m_sheets, &HomeSheets::doorChosen, this, &HomeScreen::doorChosen);
    connect(m_sheets, &HomeSheets::reportAsked, this, &HomeScreen::reportAsked);
    connect(&round, &Round::doorChanged, this, [this] {
        if (isVisible()) // else enter() does it
            refreshDoor();
    });
    connect(&round, &Round::walkdownChanged, this, &HomeScreen::refresh);
    m_profile->setArrangement(round.arrangement());
    arrange(false);
    lookChanged();
    refresh();
}

void HomeScreen::arrange(bool upright) {
    m_head->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_cards->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_cards->setStretch(0, upright ? 6 : 2);
    m_cards->setStretch(1, upright ? 5 : 1);
    m_cards->setSpacing(upright ? sizes().gap : sizes().main_gap);
    m_lines->setStretchFactor(m_profile_card, upright ? 7 : 9);
    m_lines->setStretchFactor(m_cards, upright ? 9 : 5);
    showBoundaries();
}

void HomeScreen::lookChanged() {
    Screen::lookChanged();
    m_lines->setSpacing(sizes().gap);
    // On a small window the keys below keep their size and the picture gives way.
    m_profile->setMinimumHeight(int(mm(30)));
    m_head->setSpacing(sizes().gap / 2);
    m_foot_line->setSpacing(sizes().main_gap);
    m_now->setSpacing(sizes().main_gap);
    m_cards->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
}

void HomeScreen::enter() {
    refreshDoor();
    m_vessel->refreshDue();
    m_walkdown->mainKey()->setFocus();
    lookForUnfinishedRun();
}

void HomeScreen::setPractising() {
    m_practice->hide();
    m_vessel->hideOthers();
}

void HomeScreen::refresh() {
    const QString vessel = QString::fromStdString(round().arrangement().particulars.name);
    bar().setTitle(QStringLiteral("Latchround"), vessel);
    m_vessel->refresh();
    refreshDoor();
}

/// What one door's new grade changes.
void HomeScreen::refreshDoor() {
    const Tally tally = tallyOf(round().doors());
    if (round().isUnderWay())
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
    for (const GradedDoor& graded : round().doors())
        verdicts[graded.door->number] = graded.grade.verdict;
    m_profile->setVerdicts(std::move(verdicts));
    const ZoneIntegrity integrity = zoneIntegrity(round().arrangement(), round().doors());
    BulkheadsShown shown;
    for (const ActingZone& acting : integrity.failing) {
        shown.broken.insert(acting.boundaries.begin(), acting.boundaries.end());
        QString words = actingWords(round().arrangement(), acting);
        if (isUpright()) // too long for one line of a narrow window
            words.replace(QStringLiteral(": "), QStringLiteral(":\n"));
        shown.sentences << words.split(QLatin1Char('\n'));
    }
    for (const ActingZone& group : integrity.not_shown)
        shown.not_shown.insert(group.boundaries.begin(), group.boundaries.end());
    QStringList also;
    if (integrity.best_repair)
        also << repairWords(*integrity.best_repair);
    if (const QString open = notShownWords(integrity.not_shown, integrity.failing); !open.isEmpty())
        also << open;
    shown.remarks =
        isUpright() || also.isEmpty() ? also : QStringList{also.join(QStringLiteral("; "))};
    m_profile->setBulkheads(std::move(shown));
}

void HomeScreen::lookForUnfinishedRun() {
    if (!round().isUnderWay())
        return;
    for (const GradedDoor& graded : round().doors()) {
        const RunRecord* run = unfinishedRun(graded.evidence);
        if (run && m_told.insert(run->id).second) {
            emit unfinishedRunFound(QString::fromStdString(graded.door->number));
            return;
        }
    }
}

/// A tap on the profile: only doors of the walkdown shown have a page.
void HomeScreen::choose(const QString& number) {
    if (round().door(number))
        emit doorChosen(number);
}

} // namespace latchround::ui
