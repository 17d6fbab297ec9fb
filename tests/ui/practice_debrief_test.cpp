// The debrief: what it says of the score, the faults, the rows, the people and the marks.
#include <QSignalSpy>

#include "practice_hands.h"
#include "ui/figures/figure_label.h"
#include "ui/frames/reading_pane.h"
#include "ui/screens/practice/debrief_screen.h"
#include "ui/words/exercise_words.h"

using namespace latchround;
using namespace latchround::ui;
using ::testing::HasSubstr;

TEST(DebriefScreen, ScoreIsLargeAndSaysWhetherTheExamIsPassed) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<DebriefScreen> shown(session);
    practice::Debrief debrief = sampleDebrief(session.catalogue());
    shown.screen->show(sampleExam(), debrief);
    EXPECT_EQ(part<FigureLabel>(*shown.screen, "debrief-percent").figure(), QString("64"));
    EXPECT_EQ(text(*shown.screen, "debrief-passed"), "Not passed: 80 % required");
    EXPECT_EQ(text(*shown.screen, "debrief-rows-right"), "21 of 23 checks graded correctly");
    EXPECT_EQ(text(*shown.screen, "debrief-fault-count"),
              "1 of 3 faults found, 1 false");
    debrief.percent = 80;
    shown.screen->show(sampleExam(), debrief);
    EXPECT_EQ(text(*shown.screen, "debrief-passed"), "Passed: 80 % required");
    practice::Exercise easy = sampleExam();
    easy.pass_percent = 0;
    shown.screen->show(easy, debrief);
    EXPECT_FALSE(part<QLabel>(*shown.screen, "debrief-passed").isVisible());
}

TEST(DebriefScreen, FaultsAreNamedWithTheirRowAndItsCitation) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<DebriefScreen> shown(session);
    shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
    press(key(*shown.screen, "debrief-faults"));
    settle();
    const std::string words = wordsOf(part<ReadingPane>(*shown.screen, "debrief-pane"));
    const Requirement& hook = *findRequirement(session.catalogue(), "no-hook");
    EXPECT_THAT(words, HasSubstr("5-32 · missed: hook"));
    EXPECT_THAT(
        words, HasSubstr("It can be held open by a hook that the control station cannot release."));
    EXPECT_THAT(words, HasSubstr(hook.words));
    EXPECT_THAT(words, HasSubstr(hook.cite));
    EXPECT_THAT(words, HasSubstr("5-31 · found: closes too fast"));
    EXPECT_THAT(words, HasSubstr("7-02 · reported but absent: nothing was wrong here"));
    EXPECT_THAT(words, HasSubstr("5-31 · missed: people in the path"));
    EXPECT_THAT(words, HasSubstr("The right response is to stop"));
    EXPECT_LT(words.find("missed: hook"), words.find("found: closes too fast"));
}

TEST(DebriefScreen, RowsThatDifferShowBothVerdictsAndBothFigures) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<DebriefScreen> shown(session);
    shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
    press(key(*shown.screen, "debrief-verdicts"));
    settle();
    const std::string words = wordsOf(part<ReadingPane>(*shown.screen, "debrief-pane"));
    EXPECT_EQ(key(*shown.screen, "debrief-verdicts").text(), QString("Checks (2)"));
    EXPECT_THAT(words, HasSubstr("You: satisfactory, 10.20\u00a0s"));
    EXPECT_THAT(words, HasSubstr("Correct: unsatisfactory, 7.84\u00a0s"));
    EXPECT_THAT(words, HasSubstr(findRequirement(session.catalogue(), "hinged-time")->cite));
}

TEST(DebriefScreen, PeopleComeFirstWhereSomebodyWasEndangered) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<DebriefScreen> shown(session);
    practice::Debrief debrief = sampleDebrief(session.catalogue());
    shown.screen->show(sampleExam(), debrief);
    settle();
    EXPECT_TRUE(key(*shown.screen, "debrief-people").isChecked());
    const std::string words = wordsOf(part<ReadingPane>(*shown.screen, "debrief-pane"));
    EXPECT_THAT(words, HasSubstr("One person was endangered"));
    EXPECT_THAT(words, HasSubstr("One caution was falsely confirmed"));
    debrief.endangered = 0;
    debrief.cautions_untrue = 0;
    shown.screen->show(sampleExam(), debrief);
    EXPECT_TRUE(key(*shown.screen, "debrief-faults").isChecked());
}

TEST(DebriefScreen, MarksStandAgainstTheTruthInMilliseconds) {
    SmallShip ship;
    VesselSession& session = ship.load();
    Shown<DebriefScreen> shown(session);
    shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
    press(key(*shown.screen, "debrief-marks"));
    settle();
    auto& pane = part<ReadingPane>(*shown.screen, "debrief-pane");
    QStringList marks;
    for (const QWidget* row : pane.findChildren<QWidget*>("debrief-mark"))
        marks << row->accessibleName();
    ASSERT_EQ(marks.size(), 21);
    EXPECT_TRUE(marks.contains("Door 5-31, Shut: 40 ms early")) << marks.join("; ").toStdString();
    EXPECT_TRUE(marks.contains("Door 7-02, Alarm off: no such event"))
        << marks.join("; ").toStdString();
    const std::string words = wordsOf(pane);
    EXPECT_THAT(words, HasSubstr("Leaf seen to start: 10 marks, 185 ms late, scatter 30\u00a0ms"));
    EXPECT_THAT(words, HasSubstr("Alarm heard: no marks"));
    EXPECT_THAT(words, HasSubstr("your own figures"));
}

TEST(DebriefScreen, SaysWhatPracticeDoesNotReplaceAndIsLeftByDone) {
    SmallShip ship;
    VesselSession& session = ship.load();
    for (const QSize size : shapes) {
        Shown<DebriefScreen> shown(session, size);
        shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
        shown.screen->enter();
        QCoreApplication::processEvents();
        expectReachable(*shown.screen, size.width());
        EXPECT_TRUE(part<QLabel>(*shown.screen, "debrief-notice").isVisible());
        EXPECT_THAT(text(*shown.screen, "debrief-notice"), HasSubstr("flag Administration"));
        QSignalSpy done(shown.screen, &DebriefScreen::done);
        press(key(*shown.screen, "debrief-done"));
        EXPECT_EQ(done.size(), 1);
    }
}

// With the frame round it, as it is seen.
TEST(DebriefScreen, NothingIsCutInAnyShapeNorWithGloves) {
    SmallShip ship;
    VesselSession& session = ship.load();
    for (const bool gloves : {false, true})
        for (const QSize size : shapes) {
            Shown<DebriefScreen> shown(session, size - QSize(30, gloves ? 107 : 92), gloves);
            shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
            for (const char* section :
                 {"debrief-faults", "debrief-verdicts", "debrief-people", "debrief-marks"}) {
                press(key(*shown.screen, section));
                settle();
                expectRoom(*shown.screen, std::string(section) + " at " +
                                              std::to_string(size.width()) +
                                              (gloves ? " gloves" : ""));
            }
        }
}

TEST(ExerciseWords, EveryFaultAndLevelHasWordsOfItsOwn) {
    QSet<QString> faults;
    for (const auto& entry : practice::faultWords)
        faults << faultWords(entry.value);
    EXPECT_EQ(std::size_t(faults.size()), practice::faultWords.size());
    EXPECT_FALSE(faults.contains(QString()));
    QSet<QString> levels;
    for (const auto& entry : practice::levelWords)
        levels << levelWords(entry.value);
    EXPECT_EQ(std::size_t(levels.size()), practice::levelWords.size());
}
