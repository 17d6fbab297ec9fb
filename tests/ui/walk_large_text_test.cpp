// The screens of the walk at 200 %: the same window, text and targets twice as large. Parts come
// one at a time, all of them within reach, and what must be touched in a hurry stays large and in
// sight.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "core/safety/cautions.h"
#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/keys/mark_key.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/door/bulkhead_panel.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/plan/plan_screen.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/ship/door_drawing.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct LargeText : testing::TestWithParam<std::tuple<QSize, bool>> {
    SmallShip ship;
    FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    Look look;

    void show(Screen& screen) {
        look.setScale(2);
        look.setGloves(std::get<1>(GetParam()));
        look.applyTo(screen);
        screen.resize(std::get<0>(GetParam()));
        screen.show();
        (void)QTest::qWaitForWindowExposed(&screen);
    }
    /// Every key that is shown lies on the screen, and is a target.
    void expectReachable(const Screen& screen, const char* where) {
        test::settle(screen);
        const int target = look.appearance().sizes.target;
        for (const QWidget* part : screen.findChildren<QWidget*>()) {
            const bool touched = qobject_cast<const QPushButton*>(part) != nullptr ||
                                 qobject_cast<const MarkKey*>(part) != nullptr;
            if (!touched || !part->isVisible())
                continue;
            const QRect area(part->mapTo(&screen, QPoint()), part->size());
            const std::string name = part->objectName().toStdString() + ", " + where;
            EXPECT_TRUE(screen.rect().contains(area)) << name;
            EXPECT_GE(part->height(), target) << name;
            EXPECT_GE(part->width(), target) << name;
        }
    }
    template <class Part>
    static Part& of(Screen& screen, const char* name = "") {
        return *screen.findChild<Part*>(QLatin1String(name));
    }
    static void click(Screen& screen, const char* name) {
        auto* key = screen.findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(key, nullptr) << name;
        ASSERT_TRUE(key->isVisible() && key->isEnabled()) << name;
        QTest::mouseClick(key, Qt::LeftButton);
    }
    void confirmAll() {
        for (const Caution& caution : cautionsBeforeRelease())
            (void)session.record(CautionAnswered{walkdown, "5-32", std::string(caution.id), true});
    }
};

} // namespace

TEST_P(LargeText, OfADoorOneThingIsShownAtATimeAndTheOthersAreOneTouchAway) {
    DoorScreen screen(session);
    screen.setDoor("5-32");
    show(screen);
    const auto shown = [&](const char* name) {
        return screen.findChild<QWidget*>(QLatin1String(name))->isVisible();
    };
    auto& rows = of<RowPager>(screen);
    auto& verdict = of<VerdictList>(screen);
    auto& doors = of<BulkheadPanel>(screen);
    EXPECT_TRUE(rows.isVisible());
    EXPECT_FALSE(verdict.isVisible() || doors.isVisible() || shown("photograph"));
    expectReachable(screen, "rows");
    click(screen, "part-verdict");
    EXPECT_TRUE(verdict.isVisible() && shown("not-asked"));
    EXPECT_FALSE(rows.isVisible());
    expectReachable(screen, "verdict");
    click(screen, "part-doors");
    EXPECT_TRUE(doors.isVisible());
    EXPECT_FALSE(verdict.isVisible());
    expectReachable(screen, "doors");
    click(screen, "part-more");
    for (const char* key : {"photograph", "note", "could-not", "from-paper", "forward"})
        EXPECT_TRUE(shown(key)) << key;
    expectReachable(screen, "notes");
    click(screen, "part-more"); // the same key leads back
    EXPECT_TRUE(rows.isVisible());
    click(screen, "part-verdict");
    click(screen, "forward"); // and so does going on
    EXPECT_TRUE(rows.isVisible());
    EXPECT_EQ(screen.step(), Step::Release);
}

TEST_P(LargeText, ADoorIsWholeAgainWhenTheTextIsSmallAgain) {
    DoorScreen screen(session);
    screen.setDoor("5-32");
    show(screen);
    click(screen, "part-verdict");
    look.setScale(1);
    look.setGloves(false);
    EXPECT_TRUE(of<RowPager>(screen).isVisible());
    EXPECT_TRUE(of<VerdictList>(screen).isVisible());
    EXPECT_TRUE(of<BulkheadPanel>(screen).isVisible());
    EXPECT_TRUE(screen.findChild<QPushButton*>("photograph")->isVisible());
    EXPECT_FALSE(screen.findChild<QPushButton*>("part-verdict")->isVisible());
}

TEST_P(LargeText, TheMarkKeyFillsAThirdAndStopIsOneTouchAway) {
    confirmAll();
    StopwatchScreen screen(session);
    show(screen);
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing, "MVZ2"));
    QCoreApplication::processEvents();
    auto& mark = of<MarkKey>(screen, "mark");
    const auto areaOf = [](const QWidget& part) { return double(part.width()) * part.height(); };
    EXPECT_GE(areaOf(mark), areaOf(screen) / 3);
    EXPECT_FALSE(of<DoorDrawing>(screen).isVisible());
    auto& stop = of<QPushButton>(screen, "stop");
    EXPECT_GT(areaOf(stop), areaOf(screen) / 20);
    EXPECT_TRUE(of<MarkKey>(screen, "mark-half-way").isVisible());
    expectReachable(screen, "marks");
    const QRect before(mark.geometry());
    const QRect stop_before(stop.geometry());
    click(screen, "slips");
    EXPECT_TRUE(of<QPushButton>(screen, "take-back").isVisible());
    EXPECT_TRUE(of<QPushButton>(screen, "void").isVisible());
    EXPECT_EQ(mark.geometry(), before) << "nothing moves while a run goes on";
    EXPECT_EQ(stop.geometry(), stop_before);
    expectReachable(screen, "slips");
    QTest::mousePress(&stop, Qt::LeftButton);
    QCoreApplication::processEvents();
    EXPECT_TRUE(of<QPushButton>(screen, "run-done").isVisible());
    expectReachable(screen, "stopped");
}

TEST_P(LargeText, WhatWillMoveComesBeforeTheQuestionsAndEachCanBeConfirmed) {
    CautionScreen screen(session);
    show(screen);
    screen.setDoor("5-32");
    EXPECT_FALSE(of<RowPager>(screen).isVisible());
    expectReachable(screen, "what will move");
    click(screen, "caution-next");
    auto& rows = of<RowPager>(screen);
    for (int page = 0; page < rows.pages(); ++page) {
        rows.turnTo(page);
        expectReachable(screen, "questions");
        for (QWidget* row : rows.rows())
            if (row->isVisible())
                for (QPushButton* key : row->findChildren<QPushButton*>())
                    if (key->isCheckable())
                        QTest::mouseClick(key, Qt::LeftButton);
    }
    EXPECT_TRUE(of<QPushButton>(screen, "arm").isEnabled());
    click(screen, "caution-doors");
    EXPECT_FALSE(rows.isVisible());
}

TEST_P(LargeText, APlanIsMadePartByPart) {
    PlanScreen screen(session);
    show(screen);
    screen.enter();
    int parts = 1;
    for (; parts < 10; ++parts) {
        expectReachable(screen, "plan");
        auto* on = screen.findChild<QPushButton*>("plan-on");
        if (!on->isVisible())
            break;
        QTest::mouseClick(on, Qt::LeftButton);
    }
    EXPECT_GE(parts, 4);
    click(screen, "to-brief");
    EXPECT_TRUE(of<RowPager>(screen, "brief").isVisible());
    EXPECT_FALSE(of<RowPager>(screen, "agreed").isVisible());
    expectReachable(screen, "brief");
    click(screen, "brief-on");
    EXPECT_TRUE(of<RowPager>(screen, "agreed").isVisible());
    expectReachable(screen, "agreed");
}

INSTANTIATE_TEST_SUITE_P(Windows, LargeText,
                         testing::Combine(testing::Values(QSize(1280, 800), QSize(800, 1280)),
                                          testing::Bool()));
