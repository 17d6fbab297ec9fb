// Exercises that were broken off: read back as they were kept, the one begun last is offered, and
// none that was put aside.
#include <QDir>
#include <QFile>
#include <gmock/gmock.h>

#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "app/practice/unfinished.h"
#include "tests/practice/practice_world.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

Unfinished brokenOff(const QString& register_file, const std::string& exercise) {
    return {register_file,
            "stairways",
            exercise,
            "Held open in a stairway",
            4294967295u,
            sampleMoment(),
            {{"3-08",
              "01a21c62-49b2-7001-8304-000000000001",
              RunKind::Closing,
              Release::Remote,
              -5,
              {{MarkKind::AlarmOn, 0.1}, {MarkKind::LeafMoves, 5.123456789012345}},
              9'000'000'000'000'000'001,
              2},
             {"3-09", "r", RunKind::Contact, Release::LetGo, 7, {}, std::nullopt, 0}},
            3};
}

QString begunAfter(int minutes) {
    Moment when = sampleMoment();
    when.utc_ms += std::int64_t{minutes} * 60'000;
    return newPracticeRegister(practiceVessel(), when).value()->file();
}

} // namespace

TEST(Unfinished, IsReadBackAsItWasKept) {
    const Unfinished kept = brokenOff({}, "stairways");
    const auto read = unfinishedFrom(jsonFrom(kept), "u.json");
    ASSERT_TRUE(read) << ui::inOneLine(read.error().front());
    EXPECT_EQ(read->place, kept.place);
    EXPECT_EQ(read->exercise, kept.exercise);
    EXPECT_EQ(read->title, kept.title);
    EXPECT_EQ(read->seed, kept.seed);
    EXPECT_EQ(read->begun, kept.begun);
    EXPECT_EQ(read->runs, kept.runs);
    EXPECT_EQ(read->cautions_untrue, kept.cautions_untrue);
}

TEST(Unfinished, TheOneBegunLastIsOfferedAndThenTheOneBefore) {
    const test::DataFolder folder;
    EXPECT_FALSE(unfinishedExercise());
    ASSERT_TRUE(keepUnfinished(brokenOff(begunAfter(0), "first")));
    ASSERT_TRUE(keepUnfinished(brokenOff(begunAfter(1), "second")));
    begunAfter(2); // and ended
    auto offered = unfinishedExercise();
    ASSERT_TRUE(offered);
    EXPECT_EQ(offered->exercise, "second");
    EXPECT_TRUE(registerOf(*offered));
    ASSERT_TRUE(putAside(*offered));
    EXPECT_TRUE(QFile::exists(offered->register_file)) << "what was recorded stays";
    offered = unfinishedExercise();
    ASSERT_TRUE(offered);
    EXPECT_EQ(offered->exercise, "first");
    ASSERT_TRUE(putAside(*offered));
    EXPECT_FALSE(unfinishedExercise());
}

TEST(Unfinished, OneThatCannotBeReadHidesNoOther) {
    const test::DataFolder folder;
    ASSERT_TRUE(keepUnfinished(brokenOff(begunAfter(0), "first")));
    QFile spoiled(begunAfter(1) + ".unfinished");
    ASSERT_TRUE(spoiled.open(QIODevice::WriteOnly));
    spoiled.write("{");
    spoiled.close();
    ASSERT_TRUE(unfinishedExercise());
    EXPECT_EQ(unfinishedExercise()->exercise, "first");
}

TEST(Unfinished, GoesWithItsRegister) {
    const test::DataFolder folder;
    ASSERT_TRUE(keepUnfinished(brokenOff(begunAfter(0), "first")));
    for (int i = 1; i <= registers_kept; ++i)
        begunAfter(i);
    EXPECT_FALSE(unfinishedExercise());
    EXPECT_EQ(QDir(practiceFolder()).entryList({"*.unfinished"}, QDir::Files), QStringList());
}

} // namespace latchround::practice
