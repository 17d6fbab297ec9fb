// A whole walk by keyboard alone: planned, briefed, a door looked at, timed, released from the
// control station, asked why, noted; ended; written up, rectified and printed.
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QListView>

#include "tests/whole/keyboard.h"
#include "tests/whole/walking.h"
#include "ui/lists/door_list.h"
#include "ui/words/offered.h"

using namespace latchround;
using namespace latchround::test;
using namespace latchround::ui;

namespace {

class KeyboardWalk : public Walk {
protected:
    Keyboard keys{[this] { return window(); }};

    /// Nothing is looked for after a key was not found.
    void use(const QString& name) {
        if (!HasFailure())
            keys.use(name);
    }
    void useWords(const QString& words) {
        if (!HasFailure())
            keys.useWords(words);
    }

    void SetUp() override {
        Walk::SetUp();
        window()->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window()));
    }

    bool isShown(const char* name) {
        for (const QWidget* widget : window()->findChildren<QWidget*>(name))
            if (widget->isVisible())
                return true;
        return false;
    }
    bool aSheetIsOpen() { return isShown("sheet"); }

    DoorEvidence evidenceOnDisk(const char* door) {
        const Ledger ledger = ledgerOnDisk();
        return ledger.evidenceOf(ledger.walkdowns().back().id, door);
    }

    void plan() {
        use("home-main");
        use("add-person");
        keys.type("Ansa Merlund");
        useWords("surveyor");
        EXPECT_FALSE(aSheetIsOpen());
        use("to-brief");
        for (int i = 0; window()->findChild<QWidget*>(QString("read-out-%1").arg(i)); ++i)
            use(QString("read-out-%1").arg(i));
        use("agreed-1");
        useWords("Ch 10");
        use("begin");
        ASSERT_TRUE(doorScreen().isVisible());
    }

    /// From the list of all doors, by arrows.
    void goToDoor(const char* number) {
        use("all-doors");
        constexpr int most = 100;
        keys.press(Qt::Key_Home);
        const auto current = [] {
            const auto* list = qobject_cast<const QListView*>(QApplication::focusWidget());
            return list ? list->currentIndex().data().toString() : QString();
        };
        for (int i = 0; i < most && current() != number; ++i)
            keys.press(Qt::Key_Down);
        keys.press(Qt::Key_Return);
        EXPECT_EQ(doorScreen().door(), number);
        EXPECT_FALSE(aSheetIsOpen());
    }

    /// The key Yes of a question, side by side.
    void sayYes(const char* row) {
        auto* choice = doorScreen().findChild<ChoiceRow*>(QString("ask-") + row);
        ASSERT_NE(choice, nullptr) << row;
        for (const Side side : {Side::None, Side::One, Side::Two})
            if (const QPushButton* key = choice->key(Answer::Yes, side)) {
                keys.tabToWords(key->accessibleName());
                keys.press(Qt::Key_Space);
                EXPECT_EQ(choice->answer(side), Answer::Yes) << row;
            }
    }

    /// Marks with Space, longer apart than a bounce.
    void markBySpace(int times, int every_ms = 2 * int(bounce_ms)) {
        for (int i = 0; i < times; ++i) {
            keys.press(Qt::Key_Space);
            QTest::qWait(every_ms);
        }
    }

    void backToTheDoor() {
        const auto* done = window()->findChild<QPushButton*>("run-done");
        ASSERT_NE(done, nullptr);
        // Marked as fast as a test can, the program asks whether one touch was one too many.
        const auto* right = window()->findChild<QPushButton*>("double-right");
        hands::until(
            [&] {
                return (done->isVisible() && done->isEnabled()) ||
                       (right->isVisible() && right->isEnabled());
            },
            "the run is over");
        if (right->isVisible())
            use("double-right");
        use("run-done");
        ASSERT_TRUE(doorScreen().isVisible());
    }
};

} // namespace

TEST_F(KeyboardWalk, ADoorIsLookedAtTimedAndGraded) {
    plan();
    goToDoor("5-09");

    // Look: every question, and the plate.
    std::vector<std::string> questions;
    for (const QWidget* row : doorScreen().findChild<RowPager*>()->rows())
        if (row->objectName().startsWith("ask-"))
            questions.push_back(row->objectName().mid(4).toStdString());
    ASSERT_FALSE(questions.empty());
    for (const std::string& question : questions)
        sayYes(question.c_str());
    EXPECT_GE(evidenceOnDisk("5-09").observations.size(), questions.size());
    use("plate-row");
    useWords("A-60");
    EXPECT_FALSE(aSheetIsOpen());

    // The last tap is taken back, and put back.
    keys.press(Qt::Key_Z, Qt::ControlModifier);
    use("undo-take-back");
    EXPECT_FALSE(evidenceOnDisk("5-09").plate);
    keys.press(Qt::Key_Z, Qt::ControlModifier);
    use("undo-put-back");
    EXPECT_TRUE(evidenceOnDisk("5-09").plate);

    // Release: one run by Space, one stopped by Escape, one from paper.
    use("step-1");
    use("release-local-1");
    markBySpace(2);
    backToTheDoor();
    use("release-local-2");
    markBySpace(1);
    keys.press(Qt::Key_Escape);
    useWords("someone in the way");
    backToTheDoor();
    use("from-paper");
    useWords("Ansa Merlund");
    use("walked-day-1");
    keys.type("0001");
    keys.press(Qt::Key_Return);
    use("release-local-2");
    keys.type("12.1");
    keys.press(Qt::Key_Return);
    EXPECT_FALSE(aSheetIsOpen());
    const DoorEvidence local = evidenceOnDisk("5-09");
    ASSERT_EQ(local.runs.size(), 3u);
    EXPECT_EQ(local.runs[0].end->outcome, RunOutcome::Complete);
    EXPECT_EQ(local.runs[1].end->outcome, RunOutcome::Stopped);
    EXPECT_EQ(local.runs[1].end->reason, ui::offered("someone-in-the-way"));
    EXPECT_EQ(local.runs[2].end->outcome, RunOutcome::Complete);
    EXPECT_EQ(local.runs[0].marks.front().mark.device, InputDevice::Key);

    // From the control station, each caution confirmed.
    use("step-1");
    use("release-remote");
    for (const char* id : {"announced", "people-clear", "watch-posted", "station-ready",
                           "words-agreed", "path-free"})
        use(QString("caution-%1").arg(id));
    use("arm");
    markBySpace(4);
    backToTheDoor();
    EXPECT_EQ(evidenceOnDisk("5-09").runs.size(), 4u);

    // Why, and a note.
    keys.tabTo("verdict-rows");
    keys.press(Qt::Key_Home);
    keys.press(Qt::Key_Return);
    EXPECT_TRUE(aSheetIsOpen());
    keys.press(Qt::Key_Escape);
    EXPECT_FALSE(aSheetIsOpen());
    use("note");
    useWords("leaf rubs on the sill");
    EXPECT_FALSE(aSheetIsOpen());
    EXPECT_EQ(evidenceOnDisk("5-09").notes.back().body.text, ui::offered("leaf-rubs-on-the-sill"));

    // The next door, and back to the first screen.
    use("step-2");
    use("forward");
    EXPECT_NE(doorScreen().door(), "5-09");
    use("back");
    EXPECT_TRUE(isShown("home-main"));
}

TEST_F(KeyboardWalk, ADoorThatSlamsIsGradedWrittenUpRectifiedAndPrinted) {
    plan();
    goToDoor("7-13");
    use("step-1");
    for (const char* release : {"release-local-1", "release-local-2"}) {
        use(release);
        markBySpace(2, 700); // slams, but no faster than a leaf can
        backToTheDoor();
    }
    EXPECT_EQ(verdictOnScreen(), Verdict::Unsatisfactory);
    use("back");
    use("home-end");
    use("end-confirm");
    ASSERT_TRUE(ledgerOnDisk().walkdowns().back().end);

    // What is not in order is written up, rectified and printed.
    use("open-items-all");
    use("review-write-up");
    use("write-up-all");
    EXPECT_FALSE(aSheetIsOpen());
    keys.tabTo("review-items");
    keys.press(Qt::Key_Home);
    keys.press(Qt::Key_Down);
    use("item-next");
    useWords("closer adjusted");
    EXPECT_TRUE(aSheetIsOpen()) << "by whom";
    useWords("Ansa Merlund");
    EXPECT_FALSE(aSheetIsOpen());
    const std::vector<Fact> facts = SqliteRegister::open(path).value()->facts().value();
    EXPECT_TRUE(std::ranges::any_of(
        facts, [](const Fact& fact) { return std::holds_alternative<Rectification>(fact.body); }));
    use("review-papers");
    use("paper-deficiencies");
    const QString told = qobject_cast<QLabel*>(hands::find(window(), "told"))->text();
    EXPECT_TRUE(QFile::exists(told.mid(told.indexOf('/'))));
    keys.press(Qt::Key_Escape);
}
