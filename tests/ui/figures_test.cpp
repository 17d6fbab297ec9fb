// Budget, outlook, due list and decision limits as they are shown.
#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/memory_register.h"
#include "tests/ui/sample_grade.h"
#include "ui/figures/budget_table.h"
#include "ui/figures/trend_chart.h"
#include "ui/lists/value_row.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/settings/decision_sheet.h"
#include "ui/words/due_words.h"
#include "ui/words/inclination_words.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

CalendarDate day(const char* text) {
    return calendarDateFrom(text).value();
}

QPushButton* key(QWidget& window, const char* name) {
    for (QPushButton* each : window.findChildren<QPushButton*>(QLatin1String(name)))
        if (each->isVisible())
            return each;
    return nullptr;
}

} // namespace

TEST(BudgetTable, ListsEveryPartAndWhatTheyComeTo) {
    SampleGrade sample;
    RowGrade row = sample.row("rate");
    row.figure = Reading{0.15,
                         {{Influence::SpreadAtEnd, 0.0707, 0.02, known_exactly, true},
                          {Influence::Opening, 0.005, 0.25, 9, false}}};
    row.inside = 0.9612;
    const BudgetTable table(row);
    const QStringList lines = table.lines();
    EXPECT_TRUE(lines.contains("reaction scatter at the end, 0.071\u00a0s, 0.0014"));
    EXPECT_TRUE(lines.contains("clear opening, 0.0050\u00a0m, 0.0013"));
    EXPECT_TRUE(lines.contains("combined, 0.0019"));
    // (0.001414^2 + 0.00125^2)^2 / (0.00125^4 / 9) = 46.8
    EXPECT_TRUE(lines.contains("degrees of freedom, 46"));
    EXPECT_TRUE(lines.contains("probability inside the limits, 96.1 %"));
}

TEST(OutlookWords, SayWhenAndOfWhat) {
    std::vector<TimedDay> days;
    for (int i = 0; i < 24; ++i) {
        TimedDay one;
        one.day = std::chrono::sys_days(day("2020-01-15")) + std::chrono::days(91 * i);
        one.value = 14 - 0.1 * i;
        one.u = 0.1;
        days.push_back(one);
    }
    const QString words =
        outlookWords(outlookOf(days, 10, 40, day("2026-01-01")), 10, 40, QStringLiteral("s"));
    EXPECT_TRUE(words.startsWith("24 timings, changing by −0.4")) << words.toStdString();
    EXPECT_TRUE(words.contains("first reaches 10.0")) << words.toStdString();
    days.resize(3);
    EXPECT_TRUE(outlookWords(outlookOf(days, 10, 40, day("2021-01-01")), 10, 40, "s")
                    .contains("too few to predict"));
}

TEST(InclinationWords, NeverSayThatTheRowIsGood) {
    SmallShip ship;
    VesselSession& session = (ship.begun(), ship.load());
    GradedDoor door = session.doors().front();
    Door heavy = *door.door;
    heavy.leaf_mass_kg = 60;
    heavy.kind = DoorKind::SingleLeaf;
    door.door = &heavy;
    Requirement row;
    row.id = "closes";
    EXPECT_EQ(inclinationWords(row, door), QString());
    row.incline_deg = 3.5;
    // 60 kg: half of 60 x 9.80665 x sin 3.5 degrees is 17.96 N.
    EXPECT_TRUE(inclinationWords(row, door).contains("up to 18\u00a0N"));
    door.evidence.measured["closes"] = {{}, {"w", "d", "closes", 12, "N"}};
    EXPECT_TRUE(inclinationWords(row, door).contains("could not close"));
    door.evidence.measured["closes"].body.value = 18;
    EXPECT_TRUE(inclinationWords(row, door).contains("too close"));
    door.evidence.measured["closes"].body.value = 40;
    EXPECT_TRUE(inclinationWords(row, door).contains("this gives no verdict"));
}

TEST(DueWords, OverdueIsSaidFirst) {
    const Upkeep lamps{"weekly", "Lamps are tried", Period::Weekly, {}, {}, {}, {}, {}, {}, {}};
    DueItem item;
    item.upkeep = &lamps;
    item.is_overdue = true;
    EXPECT_TRUE(dueDetail(item, day("2026-11-26")).startsWith("overdue: never recorded"));
    item.last = day("2026-11-20");
    item.due = day("2026-11-27");
    item.is_overdue = false;
    EXPECT_EQ(dueDetail(item, day("2026-11-26")), "due 27 Nov 2026 · weekly · last 20 Nov 2026");
    EXPECT_EQ(dueSummary({item}), "next due 27 Nov 2026");
    item.is_overdue = true;
    EXPECT_EQ(dueSummary({item}), "1 overdue");
}

TEST(DueSheet, LampsAndCertificateAreRecordedHere) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    HomeScreen home(session);
    home.resize(1280, 800);
    home.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&home));
    home.enter();
    QTest::mouseClick(key(home, "home-due"), Qt::LeftButton);
    ASSERT_NE(key(home, "due-weekly"), nullptr);
    QTest::mouseClick(key(home, "due-weekly"), Qt::LeftButton);
    ASSERT_EQ(ship.vessel_register.transactions.size(), 1u);
    EXPECT_EQ(ship.vessel_register.transactions[0].front().body,
              FactBody(UpkeepDone{"weekly", ""}));
    EXPECT_TRUE(QTest::qWaitFor([&] { return key(home, "due-weekly") == nullptr; }, 2000));
    QTest::mouseClick(key(home, "home-due"), Qt::LeftButton);
    QTest::mouseClick(key(home, "due-certificate"), Qt::LeftButton);
    auto* line = home.findChild<QLineEdit*>("certificate-day");
    QTest::keyClicks(line, "2027-02-30"); // no such day
    EXPECT_FALSE(key(home, "certificate-day-keep")->isEnabled());
    line->clear();
    QTest::keyClicks(line, "2027-02-28");
    QTest::keyClick(line, Qt::Key_Return);
    ASSERT_EQ(ship.vessel_register.transactions.size(), 2u);
    EXPECT_EQ(session.ledger().certificateUntil(), day("2027-02-28"));
}

TEST(DecisionSheet, SaysWhatEachPairLeadsTo) {
    DecisionSheet sheet(DecisionLimits{}, 0.104133);
    sheet.resize(800, 500);
    sheet.show();
    QSignalSpy chosen(&sheet, &DecisionSheet::chosen);
    EXPECT_FALSE(key(sheet, "decide-95")->isEnabled());
    // 1.645 x 0.104 = 0.17 s, 2.326 x 0.104 = 0.24 s.
    QString words;
    for (ValueRow* row : sheet.findChildren<ValueRow*>())
        words += row->detail();
    EXPECT_TRUE(words.contains("within 0.17 s"));
    EXPECT_TRUE(words.contains("within 0.24 s"));
    EXPECT_TRUE(words.contains("1 in 100"));
    QTest::mouseClick(key(sheet, "decide-99"), Qt::LeftButton);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].value<DecisionLimits>().satisfactory_from, 0.99);
}

TEST(DecisionLimits, RegradeTheWalkdownOnTheScreen) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    session.setHeel(0.7);
    QSignalSpy changed(&session, &VesselSession::walkdownChanged);
    ASSERT_TRUE(session.record(DecisionLimits{0.99, 0.01, ""}));
    EXPECT_EQ(changed.size(), 1);
    EXPECT_EQ(session.doors().front().evidence.limits.satisfactory_from, 0.99);
    EXPECT_EQ(session.heel_deg(), 0.7); // nothing else moves
}
