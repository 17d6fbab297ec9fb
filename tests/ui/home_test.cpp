// The home screen over a small vessel: what it shows, and what its keys ask for.
#include <gmock/gmock.h>

#include <set>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>

#include "memory_register.h"
#include "print_to.h"
#include "tests/passing_time.h"
#include "ui/figures/figure_label.h"
#include "ui/frames/sheet.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/home/open_item_list.h"
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

TEST(HomeScreen, FailingDoorBreaksItsBulkheadAndSaysHowLong) {
    SmallShip ship;
    failingWalk(ship);
    Shown shown(ship.load());
    const QStringList words = part<ZoneProfile>(*shown.home, "home-profile").asList();
    EXPECT_TRUE(words.contains("bulkhead 2/3 open at deck 7 (door 7-02): zones 2 and 3 act as one, "
                               "66\u00a0m against 40\u00a0m, at most 48\u00a0m"))
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
    EXPECT_TRUE(faults.endsWith(
        "a.csv line 9: it is there twice (number 5-31). Leave one of the two out."));
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
    EXPECT_TRUE(part<QLabel>(shown.window, "told").text().contains("does not cover it"));
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
         {"Nothing was tested yet", "None yet: no door was tested", "No walkdown yet"})
        EXPECT_TRUE(all.contains(words)) << words;
}

namespace {

/// The home screen in a window with a look of its own.
struct Large {
    QWidget window;
    Look look;
    HomeScreen* home;
    Large(VesselSession& session, QSize size, bool gloves) {
        look.setScale(2);
        look.setGloves(gloves);
        home = new HomeScreen(session, &window);
        look.applyTo(window);
        window.resize(size);
        home->setGeometry(window.rect());
        window.show();
        home->enter();
        test::settle(window);
    }
    std::vector<QPushButton*> keys() {
        std::vector<QPushButton*> shown;
        for (QPushButton* each : home->findChildren<QPushButton*>())
            if (each->isVisible())
                shown.push_back(each);
        return shown;
    }
};

} // namespace

TEST(HomeScreen, TwiceAsLargeItComesInPartsWithEveryKeyInReach) {
    SmallShip ship;
    failingWalk(ship);
    VesselSession& session = ship.load();
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)})
        for (const bool gloves : {false, true}) {
            Large large(session, size, gloves);
            std::set<QString> reached;
            for (int page = 0; page < 5; ++page) {
                press(key(*large.home, QString("home-part-%1").arg(page)));
                test::settle(large.window);
                for (const QPushButton* each : large.keys()) {
                    const std::string where = each->objectName().toStdString() + " at " +
                                              std::to_string(size.width()) +
                                              (gloves ? " with gloves" : "");
                    reached.insert(each->objectName());
                    const QRect place(each->mapTo(large.home, QPoint()), each->size());
                    EXPECT_TRUE(large.home->rect().contains(place)) << where;
                    EXPECT_GE(each->height(), large.look.appearance().sizes.target) << where;
                }
                for (const QLabel* label : large.home->findChildren<QLabel*>()) {
                    if (!label->isVisible() || !label->wordWrap() || label->text().isEmpty())
                        continue;
                    EXPECT_GE(label->height() + 1, label->heightForWidth(label->width()))
                        << label->text().toStdString() << " at " << size.width() << gloves;
                }
            }
            for (const char* name :
                 {"home-main", "home-all-doors", "home-end", "open-items-all", "home-due",
                  "home-vessels", "home-settings", "home-practice", "profile-in", "profile-out"})
                EXPECT_TRUE(reached.contains(name)) << name << " at " << size.width() << gloves;
        }
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
