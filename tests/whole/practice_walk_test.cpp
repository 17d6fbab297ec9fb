// A trainee who sees everything: an exercise is chosen, walked, timed and ended by clicks on the
// real widgets, in virtual time.
#include <algorithm>

#include "app/desktop/practice_app.h"
#include "app/practice/attempts.h"
#include "core/evidence/run_sequence.h"
#include "core/practice/true_run.h"
#include "tests/whole/walking.h"
#include "ui/screens/practice/debrief_screen.h"

namespace latchround::test {
namespace {

using namespace practice;

class Practice : public Walk {
protected:
    std::int64_t now_ns = 5'000'000'000'000;
    std::uint32_t lot = 20261126;

    void SetUp() override {
        Walk::SetUp();
        app.clock().setSteady([this] { return now_ns; });
        app.setLot([this] { return lot; });
    }

    QWidget* window() override {
        return app.practiceApp() ? app.practiceApp()->window() : app.window();
    }
    DoorScreen& doorScreen() override {
        return app.practiceApp() ? app.practiceApp()->window()->doorScreen() : Walk::doorScreen();
    }
    const Stage& stage() { return app.practiceApp()->stage(); }

    void choose(const QString& exercise) {
        hands::click(window(), "home-practice");
        auto* key = window()->findChild<QWidget*>("practise-" + exercise);
        ASSERT_NE(key, nullptr);
        while (!key->isVisible())
            hands::click(hands::find(window(), "exercises"), "rows-after");
        hands::click(key);
        ASSERT_NE(app.practiceApp(), nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window()));
    }

    void pass(double seconds) { now_ns += std::int64_t(seconds * 1e9); }
    quint64 now_ms() const { return quint64(now_ns / 1'000'000); }

    DoorEvidence truthOf(const Door& door) {
        const Arrangement& vessel = stage().vessel();
        return perfectEvidence(stage().truth(door.number), vessel.particulars, door,
                               findBoundary(vessel, door.boundary),
                               app.practiceApp()->session().catalogue());
    }

    void answerRow(QWidget* row, const DoorEvidence& truth) {
        const std::string name = row->objectName().toStdString();
        if (auto* choice = qobject_cast<ChoiceRow*>(row)) {
            for (const Side side : {Side::None, Side::One, Side::Two})
                if (const auto seen = truth.observations.find({name.substr(4), side});
                    seen != truth.observations.end())
                    hands::click(choice->key(seen->second.body.answer, side));
        } else if (name == "plate-row") {
            hands::click(qobject_cast<ValueRow*>(row)->key());
            hands::clickWords(hands::sheet(window()), QString::fromStdString(std::string(
                                                          word(*truth.plate->body.fire_class))));
        } else if (name.starts_with("measure-")) {
            hands::click(qobject_cast<ValueRow*>(row)->key());
            hands::typeFigure(window(),
                              QString::number(truth.measured.at(name.substr(8)).body.value));
        }
    }

    void answerStepBy(const DoorEvidence& truth) {
        auto* pager = doorScreen().findChild<RowPager*>();
        for (int page = 0;; ++page) {
            for (QWidget* row : pager->rows())
                if (row->isVisible())
                    answerRow(row, truth);
            if (page + 1 >= pager->pages())
                return;
            hands::click(pager, "rows-after");
        }
    }

    static QString nameOf(Release release) {
        return QString::fromStdString(std::string(word(release)));
    }

    void beginRun(Release release) {
        hands::click(
            hands::find(window(), "release-" + nameOf(release))->findChild<QPushButton*>());
        if (release == Release::Remote)
            confirmCautions();
        if (auto* clear = window()->findChild<QWidget*>("clear-path"); clear && clear->isVisible())
            hands::click(clear);
        hands::click(window(), "work-release");
    }

    void endRun() {
        hands::until([&] { return hands::find(window(), "run-done")->isEnabled(); },
                     "the run is over");
        hands::click(window(), "run-done");
        pass(30);
    }

    /// Somebody walks in: the first closing from the control station is stopped.
    void stopForPeople(const DoorTruth& truth, const Door& door) {
        beginRun(Release::Remote);
        const std::int64_t released_ns = now_ns;
        const auto events = trueEvents(truth, door, Release::Remote, RunKind::Closing);
        for (const TrueEvent& event : events) {
            now_ns = released_ns + std::int64_t(event.t_s * 1e9);
            hands::pressAt(window(), "mark", now_ms());
            if (event.mark == MarkKind::LeafMoves)
                break;
        }
        pass(truth.passer_by->steps_in_s + 0.8);
        hands::click(window(), "stop");
        endRun();
    }

    void timeRunBy(const DoorTruth& truth, const Door& door, Release release) {
        const auto events = trueEvents(truth, door, release, RunKind::Closing);
        const auto at = [&](MarkKind mark) {
            return std::ranges::find(events, mark, &TrueEvent::mark);
        };
        if (at(MarkKind::LeafMoves) == events.end())
            return; // it does not let go: that is answered, not timed
        beginRun(release);
        const std::int64_t released_ns = now_ns;
        for (const TrueEvent& event : events) {
            if (event.mark == MarkKind::HalfWay)
                continue;
            now_ns = released_ns + std::int64_t(event.t_s * 1e9);
            const bool early =
                event.mark == MarkKind::AlarmOff && event.t_s < at(MarkKind::Shut)->t_s;
            hands::pressAt(window(), early ? "mark-alarm" : "mark", now_ms());
        }
        endRun();
    }

    void walkDoor(const std::string& number) {
        const Door& door = *findDoor(stage().vessel(), number);
        doorScreen().setDoor(QString::fromStdString(number));
        const DoorEvidence truth = truthOf(door);
        DoorTruth freed = stage().truth(number);
        freed.wedge = false;
        toStep(Step::Look);
        answerStepBy(truth);
        toStep(Step::Release);
        answerStepBy(truth);
        if (freed.passer_by)
            stopForPeople(freed, door);
        for (const Release release : releasesOf(door)) {
            toStep(Step::Release);
            timeRunBy(freed, door, release);
        }
        toStep(Step::Function);
        answerStepBy(truth);
    }

    void end() {
        hands::click(window(), "practice-end");
        hands::click(hands::sheet(window()), "practice-end-confirm");
        ASSERT_TRUE(window()->findChild<DebriefScreen*>()->isVisible());
    }
};

TEST_F(Practice, AFullExerciseByClicksScoresAHundredPercent) {
    choose("exam");
    planAndBegin();
    for (const DoorTask& task : stage().exercise().doors)
        walkDoor(task.door);
    end();
    const AttemptsRead kept = attempts();
    ASSERT_EQ(kept.attempts.size(), 1U);
    EXPECT_EQ(kept.attempts[0].percent, 100);
    EXPECT_EQ(kept.attempts[0].missed, 0);
    EXPECT_EQ(kept.attempts[0].absent, 0);
    EXPECT_EQ(kept.attempts[0].found, 9);
    EXPECT_EQ(kept.attempts[0].endangered, 0);
    EXPECT_EQ(kept.attempts[0].person, "Ansa Merlund");
    for (const ThumbTrial& trial : kept.attempts[0].delays)
        EXPECT_NEAR(trial.delay_s, 0, 0.001);
    hands::click(window(), "debrief-done");
    hands::until([&] { return app.practiceApp() == nullptr; }, "back to the vessel");
    EXPECT_TRUE(app.window()->isVisible());
}

TEST_F(Practice, LeavesTheVesselsRegisterAsItWas) {
    const std::size_t before = SqliteRegister::open(path).value()->facts().value().size();
    choose("first-look");
    planAndBegin();
    walkDoor(stage().exercise().doors[0].door);
    end();
    hands::click(window(), "debrief-done");
    hands::until([&] { return app.practiceApp() == nullptr; }, "back to the vessel");
    EXPECT_EQ(SqliteRegister::open(path).value()->facts().value().size(), before);
}

/// As if the program had been killed in the middle.
TEST_F(Practice, ABrokenOffExerciseIsOfferedAgainAndGoneOnWith) {
    choose("stairways");
    planAndBegin();
    walkDoor(stage().exercise().doors[0].door);
    ASSERT_FALSE(stage().runs().empty());
    const auto facts = app.practiceApp()->session().ledger().facts();
    DesktopApp next{builtInCatalogue().value(), {}, look};
    ASSERT_TRUE(next.open(path));
    next.window()->resize(1280, 800);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(next.window()));
    hands::click(next.window(), "home-practice");
    hands::click(hands::sheet(next.window()), "unfinished-continue");
    ASSERT_NE(next.practiceApp(), nullptr);
    EXPECT_EQ(next.practiceApp()->stage().runs(), stage().runs());
    EXPECT_EQ(next.practiceApp()->stage().seed(), stage().seed());
    EXPECT_EQ(next.practiceApp()->session().ledger().facts(), facts);
    QWidget* window = next.practiceApp()->window();
    hands::click(window, "practice-end");
    hands::click(hands::sheet(window), "practice-end-confirm");
    EXPECT_EQ(attempts().attempts.size(), 1U);
    EXPECT_FALSE(next.ports().exercises->unfinished()) << "it has its end";
}

TEST_F(Practice, ABrokenOffExerciseCanBePutAside) {
    choose("first-look");
    planAndBegin();
    DesktopApp next{builtInCatalogue().value(), {}, look};
    ASSERT_TRUE(next.open(path));
    next.window()->resize(1280, 800);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(next.window()));
    hands::click(next.window(), "home-practice");
    hands::click(hands::sheet(next.window()), "unfinished-aside");
    EXPECT_FALSE(next.ports().exercises->unfinished());
    EXPECT_EQ(next.practiceApp(), nullptr);
}

} // namespace
} // namespace latchround::test
