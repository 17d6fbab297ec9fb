// The home screen over a small vessel: what it shows, and what its keys ask for.
#include <gmock/gmock.h>

#include <algorithm>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>

#include "memory_register.h"
#include "print_to.h"
#include "ui/figures/figure_label.h"
#include "ui/frames/sheet.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/home/legend.h"
#include "ui/screens/home/open_item_list.h"
#include "ui/screens/review/review_screen.h"
#include "ui/ship/zone_profile.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

template <class W>
W& part(QWidget& in, const QString& name) {
    W* found = in.findChild<W*>(name);
    if (!found)
        throw std::runtime_error("no part " + name.toStdString());
    return *found;
}

QPushButton& key(QWidget& in, const QString& name) {
    return part<QPushButton>(in, name);
}

void press(QPushButton& key) {
    if (!key.isVisible() || !key.isEnabled())
        throw std::runtime_error("out of reach: " + key.objectName().toStdString());
    QTest::mouseClick(&key, Qt::LeftButton);
}

/// A walkdown in which 7-02 does not close by itself.
FactId failingWalk(SmallShip& ship) {
    const FactId walkdown = ship.begun();
    ship.put(Observation{walkdown, "7-02", "self-closing", Side::None, Answer::No});
    return walkdown;
}

struct Shown {
    QWidget window;
    HomeScreen* home;
    explicit Shown(VesselSession& session, QSize size = {1280, 800}) {
        home = new HomeScreen(session, &window);
        window.resize(size);
        home->setGeometry(window.rect());
        window.show();
        home->enter();
        QCoreApplication::processEvents();
    }
};

std::string oneFailingRow(const VesselSession& session) {
    const GradedDoor* door = session.door(QStringLiteral("7-02"));
    return askedWorstFirst(door->grade).front()->requirement->words;
}

} // namespace

TEST(HomeScreen, FiguresAreTheTallyOfTheWalkdownUnderWay) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    EXPECT_EQ(part<FigureLabel>(*shown.home, "figure-done").figure(), QString("0"));
    EXPECT_EQ(part<FigureLabel>(*shown.home, "figure-unsatisfactory").figure(), QString("1"));
    EXPECT_EQ(part<QLabel>(*shown.home, "walkdown-title").text(), QString("Walkdown under way"));
    EXPECT_TRUE(part<QLabel>(*shown.home, "walkdown-aim").text().contains("Maren Tollefsby"));
}

TEST(HomeScreen, OpenItemSaysWhichDoorAndWhat) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    auto& items = part<OpenItemList>(*shown.home, "open-items");
    ASSERT_EQ(items.count(), 1);
    const QString spoken = items.model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(spoken.startsWith("7-02, unsatisfactory")) << spoken.toStdString();
    EXPECT_THAT(spoken.toStdString(), ::testing::HasSubstr(oneFailingRow(*ship.session)));
}

TEST(HomeScreen, TapOnAnOpenItemGoesToItsDoor) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    QSignalSpy chosen(shown.home, &HomeScreen::doorChosen);
    auto& items = part<OpenItemList>(*shown.home, "open-items");
    const QPoint row = items.visualRect(items.model()->index(0, 0)).center();
    QTest::mouseClick(items.viewport(), Qt::LeftButton, {}, row);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("7-02"));
}

TEST(HomeScreen, WithoutOpenItemsItSaysSoInWords) {
    SmallShip ship;
    ship.begun();
    Shown shown(ship.load());
    EXPECT_TRUE(part<QLabel>(*shown.home, "open-items-none").isVisible());
    EXPECT_FALSE(part<OpenItemList>(*shown.home, "open-items").isVisible());
}

TEST(HomeScreen, TheKeyOfTheOpenItemsPromisesTheNumberOfTheListItOpens) {
    SmallShip ship;
    const FactId walkdown = failingWalk(ship); // of which nothing is written up
    const auto said = [&ship] {
        Shown shown(ship.load());
        return std::pair(part<QLabel>(*shown.home, "open-items-title").text(),
                         key(*shown.home, "open-items-all").text());
    };
    EXPECT_EQ(said(), std::pair(QString("1 needs attention"), QString("Open items ›")));
    ship.put(Deficiency{walkdown, "5-11", "self-closing", "Stays ajar"});
    EXPECT_EQ(said(), std::pair(QString("2 need attention"), QString("1 open item ›")));
    ship.put(Deficiency{walkdown, "5-40", "no-hook", "Hook on the leaf"});
    EXPECT_EQ(said(), std::pair(QString("3 need attention"), QString("All 2 open items ›")));

    ReviewScreen review(*ship.session);
    review.resize(1280, 800);
    static_cast<QWidget&>(review).show(); // its own show() is of its parts
    review.enter();
    const auto labels = review.findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(
        labels, [](const QLabel* label) { return label->text() == QString("2 open"); }));
}

TEST(HomeScreen, CarryOnGoesToTheFirstDoorThatIsNotDone) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    ship.put(CouldNotTest{walkdown, "7-02", "", "space locked, no key"});
    VesselSession& session = ship.load();
    ASSERT_EQ(session.doors().front().door->number, "7-02");
    const std::string second = session.doors()[1].door->number;
    Shown shown(session);
    QSignalSpy chosen(shown.home, &HomeScreen::doorChosen);
    EXPECT_THAT(key(*shown.home, "home-main").text().toStdString(), ::testing::HasSubstr(second));
    press(key(*shown.home, "home-main"));
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].toString().toStdString(), second);
}

TEST(HomeScreen, RecordedFactShowsAtOnce) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    Shown shown(session);
    ASSERT_EQ(part<FigureLabel>(*shown.home, "figure-unsatisfactory").figure(), QString("0"));
    ASSERT_TRUE(
        session.record(Observation{walkdown, "5-11", "self-closing", Side::None, Answer::No}));
    EXPECT_EQ(part<FigureLabel>(*shown.home, "figure-unsatisfactory").figure(), QString("1"));
}

TEST(HomeScreen, LegendNamesWhatTheProfileDraws) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    const auto* legend = shown.home->findChild<Legend*>();
    ASSERT_NE(legend, nullptr);
    std::vector<std::string> words;
    for (const QLabel* label : legend->findChildren<QLabel*>())
        if (label->isVisible())
            words.push_back(label->text().toStdString());
    EXPECT_THAT(words, ::testing::IsSupersetOf({"unsatisfactory", "untested", "bulkhead open"}));
    EXPECT_THAT(words, ::testing::Not(::testing::Contains("time again")));
}

TEST(HomeScreen, FailingDoorBreaksItsBulkheadAndSaysHowLong) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    const QStringList words = part<ZoneProfile>(*shown.home, "home-profile").asList();
    EXPECT_TRUE(words.contains("bulkhead 2/3 open at deck 7 (door 7-02): zones 2 and 3 act as one, "
                               "66\u00a0m long; limit 40\u00a0m, 48\u00a0m maximum"))
        << words.join("\n").toStdString();
}

TEST(HomeScreen, WithoutAWalkdownTheMainKeyBeginsOne) {
    SmallShip ship;
    Shown shown(ship.load());
    QSignalSpy begin(shown.home, &HomeScreen::beginAsked);
    EXPECT_EQ(key(*shown.home, "home-main").text(), QString("Begin a walkdown ›"));
    QTest::keyClick(&key(*shown.home, "home-main"), Qt::Key_Space);
    EXPECT_EQ(begin.size(), 1);
}

TEST(HomeScreen, EndingAsksFirstAndThenRecordsIt) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    Shown shown(session);
    press(key(*shown.home, "home-end"));
    EXPECT_TRUE(part<QLabel>(shown.window, "end-words").text().contains("5 of 5 doors not done"));
    EXPECT_TRUE(ship.vessel_register.transactions.empty());
    press(key(shown.window, "end-confirm"));
    ASSERT_EQ(ship.vessel_register.transactions.size(), 1U);
    const auto* end =
        std::get_if<WalkdownEnded>(&ship.vessel_register.transactions[0].front().body);
    ASSERT_NE(end, nullptr);
    EXPECT_EQ(end->walkdown, walkdown);
    EXPECT_FALSE(session.isUnderWay());
    EXPECT_EQ(key(*shown.home, "home-main").text(), QString("Begin a walkdown ›"));
}

TEST(HomeScreen, GoOnWalkingEndsNothing) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    Shown shown(session);
    press(key(*shown.home, "home-end"));
    press(key(shown.window, "end-not"));
    EXPECT_TRUE(session.isUnderWay());
    EXPECT_TRUE(ship.vessel_register.transactions.empty());
}

TEST(HomeScreen, UnfinishedRunIsFoundOnce) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    ship.put(RunStarted{walkdown, "5-32", RunKind::Closing, Release::LetGo, 0});
    VesselSession& session = ship.load();
    HomeScreen home(session);
    QSignalSpy found(&home, &HomeScreen::unfinishedRunFound);
    home.enter();
    home.enter();
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found[0][0].toString(), QString("5-32"));
}

TEST(HomeScreen, EveryWalkdownHasItsReport) {
    SmallShip ship;
    const FactId first = ship.begun();
    ship.ended(first);
    ship.ports.advance(86400000);
    const FactId second = ship.begun();
    Shown shown(ship.load(), {800, 1280});
    QSignalSpy report(shown.home, &HomeScreen::reportAsked);
    press(key(*shown.home, "report-" + QString::fromStdString(first)));
    press(key(*shown.home, "report-" + QString::fromStdString(second)));
    ASSERT_EQ(report.size(), 2);
    EXPECT_EQ(report[0][0].toString().toStdString(), first);
    EXPECT_EQ(report[1][0].toString().toStdString(), second);
}

TEST(HomeScreen, RegisterThatDoesNotFitShowsEveryFault) {
    SmallShip ship;
    ship.ports.taken_in_faults = {
        Error{place::line("a.csv", 3), "no such deck"},
        Error{place::line("a.csv", 9), errors::recorded_twice("number 5-31")}};
    Shown shown(ship.load());
    press(key(*shown.home, "home-vessels"));
    press(key(shown.window, "take-in-register"));
    QString faults;
    for (const QLabel* fault :
         part<QWidget>(shown.window, "register-faults").findChildren<QLabel*>())
        faults += fault->text();
    EXPECT_TRUE(faults.startsWith("a.csv line 3: no such deck"));
    EXPECT_TRUE(
        faults.endsWith("a.csv line 9: it appears twice (number 5-31). Remove one of the two."));
}

TEST(HomeScreen, AnotherVesselIsOpenedByItsPlace) {
    SmallShip ship;
    ship.ports.on_tablet = {{"Pale Widgeon", "12 doors, 2 zones", "here"}};
    Shown shown(ship.load());
    press(key(*shown.home, "home-vessels"));
    press(key(shown.window, "vessel-here"));
    EXPECT_THAT(ship.ports.opened, ::testing::ElementsAre(QString("here")));
}

TEST(HomeScreen, FootNamesTheEditionAndWhatStandsAboveIt) {
    SmallShip ship;
    Shown shown(ship.load());
    const QString foot = part<QLabel>(*shown.home, "home-edition").text();
    const Particulars& vessel = ship.session->arrangement().particulars;
    EXPECT_TRUE(
        foot.contains(QString::fromStdString(editionFor(ship.session->catalogue(), vessel))));
    EXPECT_TRUE(foot.contains("Not for high-speed craft, nor watertight doors as such"));
    EXPECT_TRUE(foot.contains("Flag Administration"));
}

TEST(HomeScreen, DoorThatTheWalkdownDoesNotCoverIsTold) {
    SmallShip ship;
    ship.begun({"7-02"});
    Shown shown(ship.load());
    QSignalSpy chosen(shown.home, &HomeScreen::doorChosen);
    part<ZoneProfile>(*shown.home, "home-profile").choose("5-11");
    EXPECT_EQ(chosen.size(), 0);
    EXPECT_TRUE(part<QLabel>(shown.window, "told").text().contains("not in the walkdown shown"));
}

TEST(HomeScreen, RegisterWithoutDoorsSaysSoAndOffersToTakeOneIn) {
    Arrangement empty = smallVessel();
    empty.doors.clear();
    MemoryRegister vessel_register{empty};
    FakePorts ports;
    ports.taken_in = "/vessels/mine.db";
    SmallShip other; // its catalogue
    VesselSession session(vessel_register, ports.all(), other.load().catalogue());
    ASSERT_TRUE(session.load());
    Shown shown(session);
    EXPECT_TRUE(part<QLabel>(*shown.home, "walkdown-aim").text().contains("no doors yet"));
    press(key(*shown.home, "home-main"));
    press(key(shown.window, "register-open"));
    EXPECT_THAT(ports.opened, ::testing::ElementsAre(QString("/vessels/mine.db")));
}

TEST(HomeScreen, WithoutAWalkdownEveryCardSaysWhatIsNotThereYet) {
    SmallShip ship;
    Shown shown(ship.load());
    QString all;
    for (const QLabel* label : shown.home->findChildren<QLabel*>())
        if (label->isVisible())
            all += label->text() + '\n';
    for (const char* words :
         {"Nothing has been tested yet", "None yet: no door has been tested", "No walkdown yet"})
        EXPECT_TRUE(all.contains(words)) << words;
}

TEST(HomeScreen, KeysAreInsideThePageAndLargeEnoughInEveryShape) {
    SmallShip ship;
    failingWalk(ship);
    VesselSession& session = ship.load();
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280), QSize(1920, 1080)}) {
        Shown shown(session, size);
        for (const QPushButton* each : shown.home->findChildren<QPushButton*>()) {
            if (!each->isVisible())
                continue;
            const QRect place(each->mapTo(shown.home, QPoint()), each->size());
            EXPECT_TRUE(shown.home->rect().contains(place))
                << each->objectName().toStdString() << " at " << size.width();
            EXPECT_GE(each->height(), lookOf(shown.home).sizes.target)
                << each->objectName().toStdString() << " at " << size.width();
        }
    }
}
