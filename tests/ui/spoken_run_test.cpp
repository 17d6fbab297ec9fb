// What a screen reader is told while a run goes on: each mark and each stretch of the scale once,
// and the rest only when it asks. A part tells by changing its accessible name.
#include <gtest/gtest.h>

#include <QAccessible>
#include <QListView>
#include <QTest>

#include "tests/ui/memory_register.h"
#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/figures/band_gauge.h"
#include "ui/figures/figure_label.h"
#include "ui/keys/mark_key.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

QString asked(QWidget* widget, QAccessible::Text kind = QAccessible::Name) {
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    return spoken ? spoken->text(kind) : QString();
}

} // namespace

TEST(SpokenFigure, IsReadAsItStandsAndNeverToldAtEachStep) {
    FigureLabel figure(TextSize::Clock, "s");
    for (int hundredths = 0; hundredths < 50; ++hundredths) {
        figure.setFigure(QString::number(hundredths / 100.0, 'f', 2));
        EXPECT_EQ(figure.accessibleName(), QString());
    }
    EXPECT_EQ(asked(&figure), "0.49 s");
}

TEST(SpokenGauge, TellsOnlyWhenTheNeedleComesIntoAnotherStretch) {
    BandGauge gauge;
    gauge.setTitle("Leaf moving");
    gauge.setBand(7, 14, "s");
    gauge.setUncertainty(0.5);
    const auto run = [&](int from_tenths, int to_tenths) {
        int told = 0;
        for (int tenths = from_tenths; tenths < to_tenths; ++tenths) {
            const QString before = gauge.accessibleName();
            gauge.setValue(tenths / 10.0);
            told += gauge.accessibleName() == before ? 0 : 1;
        }
        return told;
    };
    EXPECT_EQ(run(0, 65), 1) << "below";
    EXPECT_EQ(run(65, 76), 1) << "at the limit";
    EXPECT_EQ(run(76, 135), 1) << "within";
    EXPECT_EQ(run(135, 200), 2) << "at the other limit, and above";
    EXPECT_EQ(asked(&gauge), "Leaf moving, allowed 7.0 to 14.0 s, now 19.9 s, above the limit");
}

TEST(SpokenGauge, HasAValueBetweenTheEndsOfItsScale) {
    BandGauge gauge;
    gauge.setBand(7, 14, "s");
    gauge.setScale(0, 20);
    gauge.setValue(9.5);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&gauge);
    ASSERT_NE(spoken, nullptr);
    ASSERT_NE(spoken->valueInterface(), nullptr);
    EXPECT_EQ(spoken->valueInterface()->currentValue().toDouble(), 9.5);
    EXPECT_EQ(spoken->valueInterface()->minimumValue().toDouble(), 0);
    EXPECT_EQ(spoken->valueInterface()->maximumValue().toDouble(), 20);
}

TEST(SpokenStopwatch, TheKeyIsToldOnceAMarkAndSaysWhatWasTaken) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    StopwatchScreen screen(session);
    screen.resize(1280, 800);
    screen.show();
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    auto* key = screen.findChild<MarkKey*>("mark");
    EXPECT_EQ(asked(key), "Leaf moves");
    QTest::mousePress(key, Qt::LeftButton, {}, {}, 10);
    QTest::mouseRelease(key, Qt::LeftButton);
    EXPECT_EQ(asked(key), "Shut");
    EXPECT_TRUE(asked(key, QAccessible::Description).startsWith("marked: leaf moves 0.00."))
        << asked(key, QAccessible::Description).toStdString();
}

TEST(SpokenVerdicts, EveryRowIsReadWithItsVerdictItsReasonAndItsCitation) {
    const SampleGrade sample;
    VerdictList list;
    list.setGrade(sample.grade);
    list.show();
    QAccessibleInterface* rows = QAccessible::queryAccessibleInterface(list.rows());
    ASSERT_NE(rows, nullptr);
    ASSERT_EQ(rows->childCount(), 5);
    const RowGrade& rate = sample.row("rate");
    QStringList spoken;
    for (int i = 0; i < rows->childCount(); ++i)
        spoken << rows->child(i)->text(QAccessible::Name);
    const auto of = [&](const char* words) {
        for (const QString& each : spoken)
            if (each.contains(words))
                return each;
        return QString();
    };
    const QString row = of("0.198");
    ASSERT_FALSE(row.isEmpty()) << spoken.join('\n').toStdString();
    EXPECT_TRUE(row.contains("time again"));
    EXPECT_TRUE(row.contains(QString::fromStdString(rate.requirement->cite)));
    EXPECT_FALSE(row.contains(QChar(0xb7))) << "a dot between is drawn, not read";
    for (const QString& each : spoken)
        EXPECT_GE(each.count(','), 2) << each.toStdString();
}
