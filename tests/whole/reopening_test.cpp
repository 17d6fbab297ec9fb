// A vessel is opened again, by a new start of the program or in a window that is made anew: what
// waits to be saved is known before anything is shown, and goes on as it stood.
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/waiting_file.h"
#include "app/vessels/sample_vessel.h"
#include "tests/passing_time.h"
#include "tests/whole/hands.h"
#include "ui/frames/sheet.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

struct Reopening : testing::Test {
    QTemporaryDir data;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    FactIdSequence ids;
    QString vessel;
    std::string device;
    FactId person;
    FactId walkdown;
    std::string door;

    /// A walkdown of one door is under way.
    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        vessel = placeSampleVessel(sampleVessels().front(), momentNow()).value();
        const auto opened = SqliteRegister::open(vessel).value();
        device = opened->device();
        door = opened->arrangement().value().doors.front().number;
        const auto facts = opened->facts().value();
        ids.continueAfter(facts.back().stamp.id);
        Fact joins = made(PersonJoined{"Ansa Merlund", "surveyor"});
        person = joins.stamp.person = joins.stamp.id;
        Fact begins = made(planOfOneDoor());
        walkdown = begins.stamp.id;
        ASSERT_TRUE(opened->record(std::vector{joins, begins}));
    }
    WalkdownBegun planOfOneDoor() const {
        WalkdownBegun plan;
        plan.team = {"Ansa Merlund"};
        plan.scope = "chosen doors";
        plan.doors = {door};
        plan.control_station = "bridge";
        plan.channel = "Ch 8";
        plan.start_word = "release now";
        plan.stop_word = "stop stop stop";
        plan.may_stop = "anyone";
        plan.brief_read = true;
        return plan;
    }
    Fact made(FactBody body) {
        return {{nextFactId(ids), momentNow(), person, device, {}}, std::move(body)};
    }
    void wait(const std::vector<ui::WaitingBatch>& waiting) const {
        ASSERT_TRUE(WaitingFile(vessel).keep(waiting));
    }
    bool isShown(const char* name) const {
        for (const QWidget* each : app.window()->findChildren<QWidget*>(QLatin1String(name)))
            if (each->isVisible())
                return true;
        return false;
    }
};

} // namespace

TEST_F(Reopening, ARunWhoseEndWaitsIsNotCutShort) {
    Fact run = made(RunStarted{walkdown, door, RunKind::Closing, Release::LetGo, 0});
    const FactId id = run.stamp.id;
    const Fact moves = made(Mark{id, MarkKind::LeafMoves, 1000, {}, InputDevice::Touch, {}});
    ASSERT_TRUE(SqliteRegister::open(vessel).value()->record(std::vector{run, moves}));
    wait({{{made(Mark{id, MarkKind::Shut, 9000, {}, InputDevice::Touch, {}}),
            made(RunEnded{id, RunOutcome::Complete, {}})},
           {}}});
    ASSERT_TRUE(app.open(vessel));
    test::settle(*app.window());
    EXPECT_EQ(app.window()->findChild<ui::Sheet*>("cut-short"), nullptr);
    EXPECT_TRUE(isShown("not-saved"));
    hands::click(app.window(), "save-again");
    test::settle(*app.window());
    EXPECT_EQ(app.window()->findChild<ui::Sheet*>("cut-short"), nullptr);
    EXPECT_FALSE(isShown("not-saved"));
}

/// Else it would be walked on by the arrangement that was before.
TEST_F(Reopening, ANewArrangementOfTheVesselOnTheScreenIsShownAtOnce) {
    ASSERT_TRUE(app.open(vessel));
    ASSERT_TRUE(QTest::qWaitForWindowExposed(app.window()));
    const QWidget* before = app.window();
    const QString csv = data.filePath("register.csv");
    ASSERT_TRUE(QFile::copy(
        QStringLiteral(LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv"), csv));
    hands::chooseFileWhenAsked(app.window(), csv);
    const auto taken = app.ports().vessels->takeIn(app.window(), {});
    ASSERT_TRUE(taken) << ui::inOneLine(taken.error().front());
    EXPECT_FALSE(*taken) << "there is nothing left to be opened";
    hands::until([&] { return app.window() != before; }, "the vessel is opened anew");
}

/// A signature names this device's facts by the last id of them: none may come before it later.
TEST_F(Reopening, NoNewIdComesBeforeOneThatWaits) {
    Fact late = made(Note{walkdown, door, "written before the clock was set back"});
    Moment ahead = momentNow();
    ahead.utc_ms += 3'600'000;
    late.stamp.when = ahead;
    late.stamp.id = factIdOf(ahead.utc_ms, {});
    wait({{{late}, {}}});
    ASSERT_TRUE(app.open(vessel));
    EXPECT_GT(app.clock().newId(), late.stamp.id);
}

} // namespace latchround
