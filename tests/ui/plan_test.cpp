// Planning a walkdown: what must be said before it begins, and what is recorded when it does.
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "core/planning/sample.h"
#include "core/planning/walk_order.h"
#include "memory_register.h"
#include "print_to.h"
#include "ui/frames/sheet.h"
#include "ui/keys/keypad.h"
#include "ui/screens/plan/plan_screen.h"

using namespace latchround;
using namespace latchround::ui;
using ::testing::ElementsAre;

namespace {

struct Planning {
    SmallShip ship;
    QWidget window;
    PlanScreen* plan = nullptr;

    /// Where nobody recorded before, the first of the people does.
    PlanScreen& open() {
        PlanScreen& opened = openUnsigned();
        if (ship.session->person().empty())
            press("person-0");
        return opened;
    }
    PlanScreen& openUnsigned() {
        plan = new PlanScreen(ship.load(), &window);
        window.resize(1280, 800);
        plan->setGeometry(window.rect());
        window.show();
        plan->enter();
        QCoreApplication::processEvents();
        return *plan;
    }
    QPushButton& key(const QString& name) {
        auto* found = window.findChild<QPushButton*>(name);
        if (!found)
            throw std::runtime_error("no key " + name.toStdString());
        return *found;
    }
    void press(const QString& name) {
        QPushButton& pressed = key(name);
        if (!pressed.isVisible() || !pressed.isEnabled())
            throw std::runtime_error("out of reach: " + name.toStdString());
        QTest::mouseClick(&pressed, Qt::LeftButton);
        QCoreApplication::processEvents();
    }
    /// The key of the open sheet with these words.
    void pick(const QString& words) {
        for (Sheet* sheet : window.findChildren<Sheet*>())
            for (QPushButton* each : sheet->findChildren<QPushButton*>())
                if (sheet->isVisible() && each->text() == words) {
                    QTest::mouseClick(each, Qt::LeftButton);
                    QCoreApplication::processEvents();
                    return;
                }
        throw std::runtime_error("nothing to pick: " + words.toStdString());
    }
    void toBrief() {
        press("to-brief");
        press("agreed-1");
        pick("Ch 15");
    }
    void readOutAll() {
        for (int i = 0; i < 5; ++i)
            press(QString("read-out-%1").arg(i));
    }
    const WalkdownBegun* recorded() const {
        for (const auto& transaction : ship.vessel_register.transactions)
            for (const Fact& fact : transaction)
                if (const auto* begun = std::get_if<WalkdownBegun>(&fact.body))
                    return begun;
        return nullptr;
    }
};

} // namespace

TEST(PlanScreen, BeginWaitsUntilEveryPartOfTheBriefIsReadOut) {
    Planning planning;
    planning.open();
    planning.toBrief();
    EXPECT_FALSE(planning.key("begin").isEnabled());
    for (int i = 0; i < 5; ++i) {
        EXPECT_FALSE(planning.key("begin").isEnabled()) << i << " read out";
        planning.press(QString("read-out-%1").arg(i));
    }
    EXPECT_TRUE(planning.key("begin").isEnabled());
    planning.press("read-out-2");
    EXPECT_FALSE(planning.key("begin").isEnabled());
    EXPECT_EQ(planning.recorded(), nullptr);
}

TEST(PlanScreen, ChannelMustBeAgreedOnTheFirstWalk) {
    Planning planning;
    planning.open();
    planning.press("to-brief");
    planning.readOutAll();
    EXPECT_FALSE(planning.key("begin").isEnabled());
    EXPECT_EQ(planning.window.findChild<QLabel*>("brief-state")->text(),
              QString("Not yet agreed: channel."));
}

TEST(PlanScreen, WhatTheLastWalkdownAgreedIsOfferedAgain) {
    Planning planning;
    planning.ship.ended(planning.ship.begun());
    planning.open();
    planning.press("to-brief");
    EXPECT_EQ(planning.key("agreed-1").text(), QString("Ch 8"));
}

TEST(PlanScreen, BeginRecordsWhatWasTapped) {
    Planning planning;
    planning.ship.put(PersonJoined{"Odd Ferrier", "chief officer"});
    PlanScreen& plan = planning.open();
    QSignalSpy begun(&plan, &PlanScreen::begun);
    planning.press("purpose-1"); // quarterly
    planning.press("team-0");
    planning.press("scope-1"); // zone bulkheads
    planning.press("heel");
    QTest::keyClicks(planning.window.findChild<Keypad*>("heel-pad"), "0.7");
    QTest::keyClick(planning.window.findChild<Keypad*>("heel-pad"), Qt::Key_Return);
    planning.toBrief();
    planning.press("agreed-0");
    planning.pick("safety centre");
    planning.readOutAll();
    planning.press("begin");

    const WalkdownBegun* fact = planning.recorded();
    ASSERT_NE(fact, nullptr);
    EXPECT_EQ(fact->purpose, Purpose::Quarterly);
    EXPECT_THAT(fact->team, ElementsAre("Maren Tollefsby", "Odd Ferrier"));
    EXPECT_EQ(fact->scope, Wording("quarterly: zone bulkheads", "quarterly-zone-bulkheads"));
    EXPECT_EQ(
        fact->doors,
        walkRoute(smallVessel(), doorsInScope(smallVessel(), {ScopeKind::ZoneBulkheads, {}, {}}))
            .doors);
    EXPECT_DOUBLE_EQ(fact->heel_deg, 0.7);
    EXPECT_EQ(fact->control_station, Wording("safety centre", "safety-centre"));
    EXPECT_EQ(fact->channel, Wording("Ch 15", "ch-15"));
    EXPECT_EQ(fact->start_word, "release now");
    EXPECT_EQ(fact->stop_word, "stop stop stop");
    EXPECT_EQ(fact->may_stop, Wording("anyone", "anyone"));
    EXPECT_TRUE(fact->brief_read);
    ASSERT_EQ(begun.size(), 1);
    EXPECT_EQ(begun[0][0].toString().toStdString(), fact->doors.front());
    EXPECT_TRUE(planning.ship.session->isUnderWay());
}

TEST(PlanScreen, NothingGoesOnBeforeSomebodyRecords) {
    Planning planning;
    planning.openUnsigned();
    EXPECT_FALSE(planning.key("to-brief").isEnabled());
    EXPECT_EQ(planning.window.findChild<QLabel*>("plan-missing")->text(),
              QString("First choose who is recording."));
    planning.press("person-0");
    EXPECT_TRUE(planning.key("to-brief").isEnabled());
}

TEST(PlanScreen, ChosenPersonSignsFromThenOn) {
    Planning planning;
    planning.ship.put(PersonJoined{"Odd Ferrier", "chief officer"});
    planning.open();
    for (int i = 0; i < 3; ++i)
        if (planning.window.findChild<QPushButton*>(QString("person-%1").arg(i))
                ->text()
                .startsWith("Odd Ferrier")) {
            planning.press(QString("person-%1").arg(i));
            break;
        }
    EXPECT_EQ(planning.ship.session->personName(), QString("Odd Ferrier"));
}

TEST(PlanScreen, AddedPersonIsRecordedAndWalks) {
    Planning planning;
    planning.ship.ended(planning.ship.begun()); // so that somebody records already
    planning.open();
    planning.press("add-person");
    QTest::keyClicks(planning.window.findChild<QLineEdit*>("person-name"), "Sunniva Brask");
    planning.pick("chief engineer");
    ASSERT_EQ(planning.ship.vessel_register.transactions.size(), 1U);
    const Fact& fact = planning.ship.vessel_register.transactions[0].front();
    EXPECT_EQ(fact.body,
              FactBody(PersonJoined{"Sunniva Brask", Wording("chief engineer", "chief-engineer")}));
    EXPECT_TRUE(planning.key("team-0").text().startsWith("Sunniva Brask"));
    EXPECT_TRUE(planning.key("team-0").isChecked());
}

TEST(PlanScreen, OneDeckTakesOnlyItsDoors) {
    Planning planning;
    planning.open();
    planning.press("scope-2");
    planning.pick("deck 5, Saloon");
    EXPECT_EQ(planning.window.findChild<QLabel*>("plan-sum")->text(),
              QString("deck 5: 4 doors, 82\u00a0m on foot. First: 5-11."));
    EXPECT_TRUE(planning.key("scope-2").isChecked());
}

TEST(PlanScreen, FailedLastTimeAreTheUnsatisfactoryDoorsOfTheLastWalkdown) {
    Planning planning;
    const FactId last = planning.ship.begun();
    planning.ship.put(Observation{last, "5-31", "self-closing", Side::None, Answer::No});
    planning.ship.ended(last);
    planning.open();
    EXPECT_EQ(planning.key("scope-4").text(), QString("Failed last time\n1 door"));
    planning.press("scope-4");
    planning.press("to-brief"); // the channel is offered again
    planning.readOutAll();
    planning.press("begin");
    ASSERT_NE(planning.recorded(), nullptr);
    EXPECT_THAT(planning.recorded()->doors, ElementsAre("5-31"));
}

TEST(PlanScreen, FailingRegisterKeepsTheWalkdownWaitingAndTheScreenStays) {
    Planning planning;
    PlanScreen& plan = planning.open();
    QSignalSpy begun(&plan, &PlanScreen::begun);
    planning.toBrief();
    planning.readOutAll();
    planning.ship.vessel_register.failure = disk_full;
    planning.press("begin");
    EXPECT_EQ(begun.size(), 0);
    EXPECT_EQ(planning.ship.session->waiting(), 1U);
    EXPECT_TRUE(
        planning.window.findChild<QLabel*>("brief-state")->text().contains("the disk is full"));
    // A second tap tries again; it does not begin a second walkdown.
    planning.press("begin");
    EXPECT_EQ(planning.ship.session->waiting(), 1U);
    planning.ship.vessel_register.failure.reset();
    planning.press("begin");
    EXPECT_EQ(planning.ship.session->waiting(), 0U);
    ASSERT_EQ(begun.size(), 1);
    EXPECT_EQ(planning.ship.session->ledger().walkdowns().size(), 1U);
}

TEST(PlanScreen, WaitingWalkdownSavedElsewhereBegins) {
    Planning planning;
    PlanScreen& plan = planning.open();
    QSignalSpy begun(&plan, &PlanScreen::begun);
    planning.toBrief();
    planning.readOutAll();
    planning.ship.vessel_register.failure = disk_full;
    planning.press("begin");
    planning.ship.vessel_register.failure.reset();
    ASSERT_TRUE(planning.ship.session->saveWaiting());
    EXPECT_EQ(begun.size(), 1);
}

TEST(PlanScreen, PersonThatCouldNotBeSavedIsNotLost) {
    Planning planning;
    planning.open();
    planning.ship.vessel_register.failure = disk_full;
    planning.press("add-person");
    QTest::keyClicks(planning.window.findChild<QLineEdit*>("person-name"), "Sunniva Brask");
    planning.pick("master");
    EXPECT_EQ(planning.ship.session->waiting(), 1U);
    bool shown = false;
    for (QPushButton* each : planning.plan->findChildren<QPushButton*>())
        shown = shown || each->text().startsWith("Sunniva Brask");
    EXPECT_TRUE(shown);
}

TEST(PlanScreen, BriefIsReadAnewWhenTheScreenIsEnteredAgain) {
    Planning planning;
    PlanScreen& plan = planning.open();
    planning.toBrief();
    planning.readOutAll();
    plan.enter();
    QCoreApplication::processEvents();
    planning.press("to-brief");
    EXPECT_FALSE(planning.key("begin").isEnabled());
    EXPECT_FALSE(planning.key("read-out-0").isChecked());
}

TEST(PlanScreen, EveryKeyIsReachedByTab) {
    Planning planning;
    planning.ship.put(PersonJoined{"Odd Ferrier", "chief officer"});
    PlanScreen& plan = planning.open();
    std::set<QString> wanted;
    for (QPushButton* each : plan.findChildren<QPushButton*>())
        if (each->isVisible() && each->isEnabled())
            wanted.insert(each->objectName());
    for (int i = 0; i < 60; ++i) {
        if (const QWidget* focused = QApplication::focusWidget())
            wanted.erase(focused->objectName());
        QTest::keyClick(&planning.window, Qt::Key_Tab);
    }
    EXPECT_THAT(wanted, ::testing::IsEmpty());
}

TEST(PlanScreen, ASampleIsDrawnByLotAndSaysWhatItProves) {
    Arrangement larger = smallVessel();
    const Door like = larger.doors.front();
    while (larger.doors.size() < 60) {
        larger.doors.push_back(like);
        larger.doors.back().number = "9-" + std::to_string(larger.doors.size());
    }
    Planning planning;
    ASSERT_TRUE(planning.ship.vessel_register.adopt(larger, {}));
    planning.open();
    EXPECT_EQ(planning.key("sample").text(), "All");
    planning.press("sample");
    QString offer;
    for (QPushButton* each : planning.window.findChildren<QPushButton*>())
        if (offer.isEmpty() && each->text().contains("95\u00a0% confidence that at most 3 "))
            offer = each->text();
    ASSERT_FALSE(offer.isEmpty());
    planning.pick(offer);
    const int drawn = offer.section(QLatin1Char(' '), 0, 0).toInt();
    // At most 3 of 60: 31 of one kind of door (hypergeometric), a few more over strata.
    EXPECT_GE(drawn, *sampleForAtMost(60, 3, 950'000));
    EXPECT_LT(drawn, 45);
    EXPECT_EQ(planning.key("sample").text(), QString("%1 drawn").arg(drawn));
    const QString sum = planning.window.findChild<QLabel*>("plan-sum")->text();
    EXPECT_TRUE(sum.startsWith(QString("all doors, random sample of %1 (seed ").arg(drawn)))
        << sum.toStdString();
    planning.press("sample");
    planning.pick("All");
    EXPECT_EQ(planning.key("sample").text(), "All");
    EXPECT_TRUE(planning.window.findChild<QLabel*>("plan-sum")->text().startsWith("all doors: 60"));
}
