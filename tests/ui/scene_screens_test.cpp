// Practice on its screens: the release is one key on the stopwatch, the door then moves by itself,
// seen and heard; at the door everything is looked at, tried and asked by keys.
#include <QApplication>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "tests/core/practice_given.h"
#include "tests/ui/memory_register.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/mark_key.h"
#include "ui/look/label.h"
#include "ui/screens/practice/close_up.h"
#include "ui/screens/practice/live_scene.h"
#include "ui/screens/practice/scene_screen.h"
#include "ui/screens/practice/scene_view.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

namespace latchround::ui {
namespace {

using practice::Fault;

constexpr std::int64_t second_ns = 1'000'000'000;

using Tasks = std::vector<practice::DoorTask>;

/// An exercise over the practice vessel, on a clock that stands until it is moved.
struct Rehearsal {
    MemoryRegister vessel_register{given::practiceVessel()};
    FakePorts ports;
    FactId person;
    std::int64_t now_ns = 100 * second_ns;
    std::unique_ptr<VesselSession> session;
    practice::Stage stage;

    explicit Rehearsal(Tasks tasks)
        : stage(exerciseOf(std::move(tasks)), given::practiceVessel(), 11) {
        ports.steady_ns = [this] { return now_ns; };
        ports.loudspeaker = true;
        person = put(PersonJoined{"Maren Tollefsby", "surveyor"});
        WalkdownBegun plan;
        for (const Door& door : given::practiceVessel().doors)
            plan.doors.push_back(door.number);
        plan.control_station = "bridge";
        put(std::move(plan));
        session = std::make_unique<VesselSession>(vessel_register, ports.all(),
                                                  builtInCatalogue().value());
        EXPECT_TRUE(session->load());
    }
    static practice::Exercise exerciseOf(Tasks tasks) {
        practice::Exercise exercise;
        exercise.id = "scene";
        exercise.title = "Scene";
        exercise.doors = std::move(tasks);
        return exercise;
    }
    FactId put(FactBody body) {
        Fact fact;
        const FactId id = ports.newId();
        fact.stamp = {id, ports.now(), person.empty() ? id : person, "tablet-test", std::nullopt};
        fact.body = std::move(body);
        vessel_register.put(std::move(fact));
        return id;
    }
    void pass(double seconds) { now_ns += std::int64_t(seconds * double(second_ns)); }
};

QPushButton* keyIn(QWidget& within, const char* name) {
    auto* key = within.findChild<QPushButton*>(QString::fromLatin1(name));
    EXPECT_NE(key, nullptr) << name;
    return key;
}

void click(QWidget& within, const char* name) {
    QTest::mouseClick(keyIn(within, name), Qt::LeftButton);
}

QString voiceIn(QWidget& within) {
    return within.findChild<Label*>(QStringLiteral("voice"))->text();
}

} // namespace

TEST(LiveScene, TheKeyIsNamedForTheReleaseAndGoesWhenItIsWorked) {
    Rehearsal play{Tasks{{"P-01", {}}, {"P-02", {}}}};
    LiveScene scene(*play.session, play.stage);
    scene.resize(1240, 210);
    scene.show();
    scene.setReady("P-01", Release::LocalSideTwo, RunKind::Closing);
    QPushButton* key = keyIn(scene, "work-release");
    EXPECT_EQ(key->text(), "Operate release,\nside two");
    scene.setReady("P-02", Release::LetGo, RunKind::Closing);
    EXPECT_EQ(key->text(), "Let it go");
    scene.setReady("P-01", Release::LetGo, RunKind::Contact);
    EXPECT_EQ(key->text(), "Let it run\nonto the block");
    scene.setReady("P-01", Release::Remote, RunKind::Closing);
    EXPECT_EQ(key->text(), "Give the\nstart word");
    EXPECT_TRUE(key->isVisible());
    QTest::mousePress(key, Qt::LeftButton);
    EXPECT_TRUE(play.stage.isReleased()); // at the press
    EXPECT_FALSE(key->isVisible());
    EXPECT_EQ(voiceIn(scene), "Control station: releasing now");
}

TEST(LiveScene, AlarmIsHeardAndSeenWhileItSoundsAndTheLeafMovesByItself) {
    Rehearsal play{Tasks{{"P-01", {}}}};
    LiveScene scene(*play.session, play.stage);
    scene.resize(1240, 210);
    scene.show();
    scene.setReady("P-01", Release::Remote, RunKind::Closing);
    const auto* view = scene.findChild<SceneView*>();
    EXPECT_FALSE(play.ports.sounding);
    click(scene, "work-release");
    play.pass(play.stage.truth("P-01").station_takes_s + 1);
    scene.refresh();
    EXPECT_TRUE(play.ports.sounding);
    EXPECT_TRUE(view->accessibleDescription().contains("alarm on"));
    play.pass(60);
    scene.refresh();
    EXPECT_FALSE(play.ports.sounding);
    EXPECT_EQ(view->accessibleDescription(), "The leaf is shut");
}

TEST(LiveScene, HiddenItIsSilent) {
    Rehearsal play{Tasks{{"P-01", {}}}};
    LiveScene scene(*play.session, play.stage);
    scene.show();
    scene.setReady("P-01", Release::Remote, RunKind::Closing);
    click(scene, "work-release");
    play.pass(play.stage.truth("P-01").station_takes_s + 1);
    scene.refresh();
    ASSERT_TRUE(play.ports.sounding);
    scene.hide();
    EXPECT_FALSE(play.ports.sounding);
}

TEST(LiveScene, StopHoldsTheLeafAndTheRunIsKept) {
    Rehearsal play{Tasks{{"P-02", {}}}};
    LiveScene scene(*play.session, play.stage);
    scene.show();
    scene.setReady("P-02", Release::LetGo, RunKind::Closing);
    click(scene, "work-release");
    play.pass(4);
    scene.stop();
    const double stands = play.stage.view("P-02", play.now_ns).open;
    EXPECT_EQ(voiceIn(scene), "Run stopped");
    play.pass(5);
    EXPECT_DOUBLE_EQ(play.stage.view("P-02", play.now_ns).open, stands);
    scene.finish("run-1");
    EXPECT_EQ(voiceIn(scene), "Run stopped"); // until the next run stands ready
    ASSERT_EQ(play.stage.runs().size(), 1u);
    EXPECT_EQ(play.stage.runs()[0].run, "run-1");
    EXPECT_TRUE(play.stage.runs()[0].stopped_ns);
}

TEST(LiveScene, AKeyThatIsAlwaysThereClearsThePathAndTellsNothing) {
    Rehearsal play{Tasks{{"P-01", {}}, {"P-02", {Fault::Wedge}}}};
    LiveScene scene(*play.session, play.stage);
    scene.show();
    scene.setReady("P-01", Release::LocalSideOne, RunKind::Closing);
    EXPECT_TRUE(keyIn(scene, "clear-path")->isVisible());
    scene.setReady("P-02", Release::LetGo, RunKind::Closing);
    ASSERT_TRUE(keyIn(scene, "clear-path")->isVisible());
    click(scene, "clear-path");
    EXPECT_TRUE(keyIn(scene, "clear-path")->isVisible());
    EXPECT_FALSE(play.stage.view("P-02", play.now_ns).wedge);
}

TEST(LiveScene, AfterTheReleaseNoKeyMovesAndSpaceMarksOnTheStopwatch) {
    Rehearsal play{Tasks{{"P-02", {}}}};
    StopwatchScreen stopwatch(*play.session);
    auto* scene = new LiveScene(*play.session, play.stage);
    stopwatch.setScene(scene);
    QObject::connect(&stopwatch, &StopwatchScreen::ready, scene, &LiveScene::setReady);
    stopwatch.resize(1280, 800);
    stopwatch.show();
    ASSERT_TRUE(stopwatch.begin("P-02", Release::LetGo, RunKind::Closing));
    QPushButton* key = keyIn(stopwatch, "work-release");
    for (int i = 0; i < 3; ++i) // until the layout has settled
        QApplication::processEvents();
    const QRect mark = stopwatch.findChild<MarkKey*>("mark")->geometry();
    key->setFocus();
    QTest::keyClick(key, Qt::Key_Space);
    ASSERT_TRUE(play.stage.isReleased());
    QApplication::processEvents();
    EXPECT_EQ(stopwatch.findChild<MarkKey*>("mark")->geometry(), mark); // no key moves
    QTest::keyClick(&stopwatch, Qt::Key_Space);
    EXPECT_EQ(play.session->door("P-02")->evidence.runs.back().marks.size(), 1u);
    EXPECT_TRUE(stopwatch.hasFocus() || QApplication::focusWidget() == nullptr);
}

namespace {

struct AtTheDoor : testing::Test {
    Rehearsal play{Tasks{{"P-01", {}},
                         {"P-02", {Fault::NoLatch}},
                         {"P-03", {Fault::HosePortStuck, Fault::IndicatorLies}},
                         {"P-05", {}}}};
    SceneScreen screen{*play.session, play.stage};

    void SetUp() override {
        screen.resize(1280, 740);
        screen.show();
    }
    /// Runs it until it is home.
    void shut(const char* door) {
        play.stage.setReady(door, Release::LetGo, RunKind::Closing);
        play.stage.release(play.now_ns);
        play.pass(90);
        play.stage.finish("run", play.now_ns);
    }
    QString heard() { return screen.findChild<CloseUp*>()->accessibleDescription(); }
};

} // namespace

TEST_F(AtTheDoor, EverySpotHasAKeyLargeEnoughAndShowsItsCloseUp) {
    for (const char* number : {"P-01", "P-02", "P-03", "P-05"}) {
        screen.setDoor(number);
        QApplication::processEvents();
        for (const Spot spot : spotsOf(*play.session->door(number)->door)) {
            const QByteArray name = ("spot-" + spotName(spot)).toLatin1();
            QPushButton* key = keyIn(screen, name.constData());
            ASSERT_NE(key, nullptr);
            EXPECT_TRUE(key->isVisible()) << number << name.constData();
            EXPECT_GE(key->height(), 60) << name.constData();
            EXPECT_GE(key->width(), 60) << name.constData();
            click(screen, name.constData());
            if (spot != Spot::Papers) {
                EXPECT_EQ(screen.findChild<CloseUp*>()->spot(), spot);
            }
            EXPECT_TRUE(keyIn(screen, "scene-whole")->isVisible());
        }
        click(screen, "scene-whole");
        EXPECT_TRUE(screen.findChild<SceneView*>()->isVisible());
    }
}

TEST_F(AtTheDoor, OtherSideTurnsTheSceneRound) {
    screen.setDoor("P-02");
    auto* view = screen.findChild<SceneView*>();
    EXPECT_EQ(view->side(), Side::One);
    click(screen, "scene-side");
    EXPECT_EQ(view->side(), Side::Two);
}

TEST_F(AtTheDoor, PushedALeafThatDidNotLatchGivesWay) {
    screen.setDoor("P-02");
    click(screen, "try-push");
    EXPECT_EQ(voiceIn(screen), "It is not shut. Time its closing first.");
    shut("P-02");
    click(screen, "try-push");
    play.pass(2);
    screen.refresh();
    EXPECT_TRUE(play.stage.view("P-02", play.now_ns).pushed_open);
    EXPECT_EQ(screen.findChild<SceneView*>()->accessibleDescription(), "The leaf is part open");
}

TEST_F(AtTheDoor, OpenedAgainItIsSeenToShutByItself) {
    shut("P-01");
    screen.setDoor("P-01");
    click(screen, "try-open");
    play.pass(1);
    screen.refresh();
    EXPECT_EQ(screen.findChild<SceneView*>()->accessibleDescription(), "The leaf is moving");
    play.pass(90);
    screen.refresh();
    EXPECT_EQ(screen.findChild<SceneView*>()->accessibleDescription(), "The leaf is shut");
}

TEST_F(AtTheDoor, AskedTheStationTellsItsLampAndTheCloseUpShowsIt) {
    shut("P-03");
    screen.setDoor("P-03");
    click(screen, "spot-panel");
    EXPECT_EQ(heard(), "Two lamps; no one has read them out yet");
    click(screen, "ask-panel");
    EXPECT_EQ(voiceIn(screen), "Control station: my panel shows it open"); // it lies
    EXPECT_EQ(heard(), "The lamp marked open is lit");
}

TEST_F(AtTheDoor, AStuckCoverOfTheHosePortStaysUp) {
    screen.setDoor("P-03");
    click(screen, "spot-hose-port");
    EXPECT_EQ(heard(), "A port 150 mm by 150 mm, its cover lies flat on it");
    click(screen, "lift-port");
    EXPECT_EQ(heard(), "A port 150 mm by 150 mm, its cover lifted");
    play.pass(3);
    screen.refresh();
    EXPECT_EQ(heard(), "A port 150 mm by 150 mm, its cover hangs part open");
}

TEST_F(AtTheDoor, TheTapeIsThereOnlyAfterAContactRun) {
    screen.setDoor("P-01");
    click(screen, "spot-safety-edge");
    const QString before = heard();
    play.stage.setReady("P-01", Release::LetGo, RunKind::Contact);
    play.stage.release(play.now_ns);
    play.pass(60);
    play.stage.finish("run", play.now_ns);
    screen.refresh();
    EXPECT_NE(heard(), before);
    EXPECT_TRUE(heard().contains(QLocale().toString(play.stage.truth("P-01").reopens_m, 'f', 2)));
}

TEST_F(AtTheDoor, EscapeStepsBackFromACloseUpAndThenLeaves) {
    screen.setDoor("P-01");
    int left = 0;
    QObject::connect(&screen.bar(), &TopBar::back, [&] { ++left; });
    click(screen, "spot-sill");
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_TRUE(screen.findChild<SceneView*>()->isVisible());
    EXPECT_EQ(left, 0);
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(left, 1);
}

TEST_F(AtTheDoor, EveryKeyHasItsNameAndRoomForIt) {
    for (const QSize& size : {QSize(1280, 740), QSize(800, 1220), QSize(1920, 1020)}) {
        screen.resize(size);
        screen.setDoor("P-01");
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
        for (QPushButton* key : screen.findChildren<QPushButton*>()) {
            if (!key->isVisible())
                continue;
            EXPECT_LE(screen.width(), size.width());
            EXPECT_FALSE(key->text().isEmpty() && key->accessibleName().isEmpty());
            EXPECT_GE(key->height(), 60) << key->text().toStdString();
            const QRect words = key->fontMetrics().boundingRect(key->text());
            EXPECT_LE(words.width(), key->width() - 14) << key->text().toStdString();
            EXPECT_TRUE(key->parentWidget()->rect().contains(key->geometry()))
                << key->text().toStdString();
        }
        EXPECT_GE(screen.findChild<SceneView*>()->height(), 400) << size.width();
    }
}

} // namespace latchround::ui
