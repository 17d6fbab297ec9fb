// The screens round practice: choosing an exercise, progress, the frame, and the one thing that
// practice may leave in a real register.
#include <QLineEdit>
#include <QSignalSpy>

#include "core/error/exercise_errors.h"
#include "practice_hands.h"
#include "ui/frames/sheet.h"
#include "ui/keys/row_pager.h"
#include "ui/look/practice_colours.h"
#include "ui/screens/drill/drill_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/practice/practice_frame.h"
#include "ui/screens/practice/practice_screen.h"
#include "ui/screens/practice/progress_plot.h"

using namespace latchround;
using namespace latchround::ui;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(PracticeScreen, ExercisesStandFromTheFirstToTheExam) {
    SmallShip ship;
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    std::ranges::reverse(ship.ports.offered);
    Shown<PracticeScreen> shown(session);
    QStringList names;
    for (const QWidget* row : part<RowPager>(*shown.screen, "exercises").rows())
        names << row->accessibleName();
    EXPECT_EQ(names, QStringList({"Look before you time", "One bulkhead", "Whole deck by night",
                                  "Exam of November"}));
    const QString spoken = key(*shown.screen, "practise-first").accessibleName();
    EXPECT_THAT(spoken.toStdString(), HasSubstr("first steps"));
    EXPECT_THAT(spoken.toStdString(), HasSubstr("2 doors"));
}

TEST(PracticeScreen, AnOpenExerciseBeginsByOneTap) {
    SmallShip ship;
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    Shown<PracticeScreen> shown(session);
    press(key(*shown.screen, "practise-easy"));
    EXPECT_THAT(ship.ports.practised, ElementsAre(std::pair(QString("easy"), QString())));
}

TEST(PracticeScreen, ALockedOneAsksForThePasswordAndHidesIt) {
    SmallShip ship;
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    Shown<PracticeScreen> shown(session);
    press(key(*shown.screen, "practise-exam"));
    EXPECT_TRUE(ship.ports.practised.empty());
    auto& typed = part<QLineEdit>(shown.window, "exercise-password");
    EXPECT_EQ(typed.echoMode(), QLineEdit::Password);
    EXPECT_FALSE(key(shown.window, "exercise-open").isEnabled());
    QTest::keyClicks(&typed, "barnacle");
    press(key(shown.window, "exercise-password-seen"));
    EXPECT_EQ(typed.echoMode(), QLineEdit::Normal);
    press(key(shown.window, "exercise-open"));
    EXPECT_THAT(ship.ports.practised, ElementsAre(std::pair(QString("exam"), QString("barnacle"))));
    settle();
    EXPECT_EQ(shown.window.findChild<Sheet*>(), nullptr);
}

TEST(PracticeScreen, ALockedOneThatWasBrokenOffAsksForThePasswordAgain) {
    SmallShip ship;
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    ship.ports.broken_off = ExerciseUnfinished{ship.ports.offered.back(), ship.ports.now()};
    ship.ports.broken_off->exercise.is_locked = true;
    Shown<PracticeScreen> shown(session);
    QTest::keyClicks(&part<QLineEdit>(shown.window, "exercise-password"), "barnacle");
    press(key(shown.window, "exercise-open"));
    EXPECT_THAT(ship.ports.gone_on, ElementsAre(QString("barnacle")));
    settle();
    EXPECT_EQ(shown.window.findChild<Sheet*>(), nullptr);
}

TEST(PracticeScreen, AWrongPasswordIsToldAndCanBeTypedAgain) {
    SmallShip ship;
    ship.ports.offered = sampleExercises();
    ship.ports.right_password = "barnacle";
    Shown<PracticeScreen> shown(ship.load());
    press(key(*shown.screen, "practise-exam"));
    auto& typed = part<QLineEdit>(shown.window, "exercise-password");
    QTest::keyClicks(&typed, "limpet");
    QTest::keyClick(&typed, Qt::Key_Return);
    EXPECT_THAT(text(shown.window, "told"), HasSubstr("the password is wrong"));
    shown.window.findChildren<Sheet*>().last()->close();
    settle();
    ASSERT_TRUE(typed.isVisible());
    typed.setText("barnacle");
    press(key(shown.window, "exercise-open"));
    EXPECT_EQ(ship.ports.practised.size(), 1u);
}

TEST(PracticeScreen, NothingToPractiseAndNobodyWhoDidIsSaid) {
    SmallShip ship;
    Shown<PracticeScreen> shown(ship.load());
    EXPECT_TRUE(part<QLabel>(*shown.screen, "practice-none").isVisible());
    EXPECT_TRUE(part<QLabel>(*shown.screen, "practice-nobody").isVisible());
    EXPECT_THAT(text(*shown.screen, "practice-nobody"),
                HasSubstr("No one has practised on this tablet yet"));
    EXPECT_FALSE(part<QWidget>(*shown.screen, "progress-plot").isVisible());
}

TEST(PracticeScreen, AnExerciseTakenInStandsAmongTheOthers) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<PracticeScreen> shown(session);
    ship.ports.offered = sampleExercises();
    ship.ports.taken_in = "Exam of November";
    press(key(*shown.screen, "take-in-exercise"));
    EXPECT_EQ(part<RowPager>(*shown.screen, "exercises").rows().size(), 4u);
    EXPECT_EQ(text(shown.window, "told"), "Exam of November");
}

TEST(PracticeScreen, ProgressAddsUpWhatOnePersonDid) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    ship.ports.finished = sampleAttempts("Maren Tollefsby");
    practice::Attempt other = sampleAttempts("Osk Vandermeer").front();
    other.title = "One bulkhead";
    other.percent = 12;
    ship.ports.finished.push_back(other);
    Shown<PracticeScreen> shown(session);
    // Who records stands first, though somebody else practised later.
    EXPECT_TRUE(key(*shown.screen, "practice-person-0").isChecked());
    EXPECT_EQ(key(*shown.screen, "practice-person-0").text(), QString("Maren Tollefsby"));
    EXPECT_THAT(text(*shown.screen, "practice-sum"),
                HasSubstr("3 exercises. 7 of 9 faults found, 3 reported but absent"));
    const std::string plot =
        part<QWidget>(*shown.screen, "progress-plot").accessibleDescription().toStdString();
    EXPECT_THAT(plot, HasSubstr("52 %"));
    EXPECT_THAT(plot, HasSubstr("exam: 91 %"));
    EXPECT_THAT(plot, HasSubstr("leaf seen to stop 40 ms late, scatter"));
    const auto best = [&](int row) {
        return text(*part<RowPager>(*shown.screen, "exercises").rows()[std::size_t(row)],
                    "best-score");
    };
    EXPECT_EQ(best(1), "best 74 %");
    press(key(*shown.screen, "practice-person-1"));
    EXPECT_THAT(text(*shown.screen, "practice-sum"), HasSubstr("One exercise."));
    EXPECT_EQ(best(1), "best 12 %");
}

TEST(PracticeScreen, KeysAreInReachInEveryShape) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    ship.ports.offered = sampleExercises();
    ship.ports.finished = sampleAttempts("Maren Tollefsby");
    for (const bool gloves : {false, true})
        for (const QSize size : shapes) {
            Shown<PracticeScreen> shown(session, size, gloves);
            expectReachable(*shown.screen, size.width());
            expectRoom(*shown.screen, std::to_string(size.width()) + (gloves ? " gloves" : ""));
        }
}

TEST(ProgressPlot, PassMarkAndScoresArePaintedWithoutThumbMarks) {
    ProgressPlot plot;
    plot.resize(500, 300);
    std::vector<practice::Attempt> attempts = sampleAttempts("Maren Tollefsby");
    for (practice::Attempt& attempt : attempts) {
        attempt.delays.clear();
        attempt.pass_percent = 0;
    }
    plot.setAttempts(attempts);
    const QImage without = plot.grab().toImage();
    attempts.back().pass_percent = 80;
    plot.setAttempts(attempts);
    EXPECT_NE(plot.grab().toImage(), without);
    EXPECT_THAT(plot.accessibleDescription().toStdString(), Not(HasSubstr("late")));
}

TEST(PracticeFrame, EveryPartOfTheWindowShowsItAndNoTouchIsLost) {
    QWidget window;
    window.resize(800, 600);
    auto* inside = new QPushButton("inside");
    PracticeFrame* frame = new PracticeFrame(inside, &window);
    frame->setGeometry(window.rect());
    window.show();
    QCoreApplication::processEvents();
    const QImage plain = inside->grab().toImage();
    const QImage seen = window.grab().toImage();
    const QPoint corner = inside->mapTo(&window, QPoint());
    // Whatever piece of 80 x 45 mm is cut out, it differs from the same without practice.
    const int wide = 400;
    const int high = 225;
    for (int x = 0; x + wide <= inside->width(); x += 90)
        for (int y = 0; y + high <= inside->height(); y += 90)
            EXPECT_NE(seen.copy(corner.x() + x, corner.y() + y, wide, high),
                      plain.copy(x, y, wide, high))
                << x << ", " << y;
    const PracticeColours& colours = practiceColoursOf(Light::Day);
    for (const QPoint at : {QPoint(1, 300), QPoint(798, 300), QPoint(400, 598)}) {
        // Along the border ground and stripe take turns.
        bool ground = false;
        bool stripe = false;
        for (int i = -40; i <= 40; ++i) {
            const QPoint along = at.x() == 400 ? at + QPoint(i, 0) : at + QPoint(0, i);
            ground |= seen.pixelColor(along) == colours.area;
            stripe |= seen.pixelColor(along) == colours.stripe;
        }
        EXPECT_TRUE(ground && stripe) << at.x() << ", " << at.y();
    }
    EXPECT_EQ(window.childAt(inside->mapTo(&window, inside->rect().center())), inside);
    EXPECT_THAT(part<QWidget>(window, "practice-words").accessibleName().toStdString(),
                HasSubstr("nothing here is a record"));
}

TEST(PracticeFrame, LiesOverSheetsToo) {
    QWidget window;
    window.resize(800, 600);
    auto* frame = new PracticeFrame(new QWidget, &window);
    frame->setGeometry(window.rect());
    window.show();
    QCoreApplication::processEvents();
    auto* sheet = new Sheet(&window, "A matter");
    sheet->open();
    QCoreApplication::processEvents();
    EXPECT_EQ(window.children().last()->objectName(), QString("practice-cover"));
    const QColor edge = window.grab().toImage().pixelColor(1, 590);
    const PracticeColours& colours = practiceColoursOf(Light::Day);
    EXPECT_GT(contrastOf(edge, lookOf(&window).colours.bar), 1.2);
    EXPECT_TRUE(edge == colours.area || edge == colours.stripe ||
                (edge.red() >= colours.area.red() && edge.green() <= colours.stripe.green()));
    window.resize(900, 700);
    QCoreApplication::processEvents();
    EXPECT_EQ(part<QWidget>(window, "practice-cover").size(), QSize(900, 700));
}

TEST(PracticeFrame, ItsKeysAskAndCanBeWithheld) {
    QWidget window;
    window.resize(800, 600);
    auto* frame = new PracticeFrame(new QWidget, &window);
    frame->setGeometry(window.rect());
    window.show();
    QSignalSpy scene(frame, &PracticeFrame::sceneAsked);
    QSignalSpy end(frame, &PracticeFrame::endAsked);
    press(key(window, "practice-scene"));
    press(key(window, "practice-end"));
    EXPECT_EQ(scene.size(), 1);
    EXPECT_EQ(end.size(), 1);
    expectReachable(window, 800);
    frame->setSceneOffered(false);
    frame->setEndOffered(false);
    EXPECT_FALSE(key(window, "practice-scene").isVisible());
    EXPECT_FALSE(key(window, "practice-end").isVisible());
}

TEST(PracticeOffer, FiguresOfTheSamePersonAreTakenOnceAndNothingElse) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    ship.ports.finished = sampleAttempts("Maren Tollefsby");
    Shown<DrillScreen> shown(session);
    auto& use = key(*shown.screen, "use-practice");
    ASSERT_TRUE(use.isVisible());
    EXPECT_THAT(wordsOf(part<QWidget>(*shown.screen, "practice-offer")),
                HasSubstr("Leaf seen to stop: 30 marks, 40 ms late"));
    EXPECT_GE(use.height(), lookOf(shown.screen).sizes.target);
    QSignalSpy done(shown.screen, &DrillScreen::done);
    press(use);
    EXPECT_EQ(done.size(), 1);
    ASSERT_EQ(ship.vessel_register.transactions.size(), 1u);
    ASSERT_EQ(ship.vessel_register.transactions.front().size(), 1u);
    const Fact& fact = ship.vessel_register.transactions.front().front();
    EXPECT_EQ(std::get<ThumbDrill>(fact.body),
              practice::drillFrom(ship.ports.finished, "Maren Tollefsby"));
    EXPECT_TRUE(session.thumb().own(Cue::LeafStops));
    shown.screen->enter();
    EXPECT_FALSE(use.isVisible());
    // Another exercise later, and it is offered again.
    ship.ports.advance(86400000);
    practice::Attempt later = ship.ports.finished.front();
    later.ended = ship.ports.clock;
    ship.ports.finished.push_back(later);
    shown.screen->enter();
    EXPECT_TRUE(use.isVisible());
}

TEST(PracticeOffer, IsNotMadeToOthersNorOfTooFewMarks) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    ship.ports.finished = sampleAttempts("Osk Vandermeer");
    Shown<DrillScreen> shown(session);
    EXPECT_FALSE(key(*shown.screen, "use-practice").isVisible());
    ship.ports.finished = {sampleAttempts("Maren Tollefsby").front()};
    ship.ports.finished.front().delays.resize(std::size_t(min_trials) - 1);
    shown.screen->enter();
    EXPECT_FALSE(key(*shown.screen, "use-practice").isVisible());
}

TEST(HomeScreen, AsksForPracticeExceptWhilePractising) {
    SmallShip ship;
    for (const QSize size : shapes) {
        Shown<HomeScreen> shown(ship.load(), size);
        QSignalSpy asked(shown.screen, &HomeScreen::practiceAsked);
        press(key(*shown.screen, "home-practice"));
        EXPECT_EQ(asked.size(), 1);
        shown.screen->setPractising();
        EXPECT_FALSE(key(*shown.screen, "home-practice").isVisible());
        EXPECT_FALSE(key(*shown.screen, "home-vessels").isVisible());
    }
}
