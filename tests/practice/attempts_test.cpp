// Finished exercises on the disk: each comes back as it was; a spoiled file takes no other with it.
#include <QDir>
#include <gmock/gmock.h>

#include "app/practice/attempts.h"
#include "app/practice/practice_folder.h"
#include "tests/practice/practice_world.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

Attempt attemptAt(std::int64_t utc_ms) {
    return {{utc_ms, -210},
            "Nadia Ferrow",
            "stairways",
            "Held open in a stairway",
            Level::Easy,
            4294967295u,
            72,
            0,
            3,
            1,
            2,
            1,
            4,
            {{Cue::AlarmHeard, 0.213}, {Cue::LeafStops, -0.04}}};
}

TEST(Attempts, AreReadAsTheyWereKeptTheOldestFirst) {
    const test::DataFolder folder;
    const Attempt later = attemptAt(1'795'772'533'120);
    const Attempt earlier = attemptAt(1'695'772'533'121);
    ASSERT_TRUE(keepAttempt(later));
    ASSERT_TRUE(keepAttempt(earlier));
    ASSERT_TRUE(keepAttempt(later)) << "two may end in one millisecond";
    const AttemptsRead read = attempts();
    EXPECT_THAT(read.spoiled, IsEmpty());
    EXPECT_THAT(read.attempts, ElementsAre(earlier, later, later));
}

TEST(Attempts, AnExamKeepsWhatWouldHavePassedIt) {
    Attempt exam = attemptAt(1'795'772'533'120);
    exam.level = Level::Exam;
    exam.pass_percent = 80;
    EXPECT_EQ(attemptFrom(jsonFrom(exam), "a.json").value(), exam);
}

TEST(Attempts, ASpoiledFileIsNamedAndTheOthersAreRead) {
    const test::DataFolder folder;
    ASSERT_TRUE(keepAttempt(attemptAt(1'795'772'533'120)));
    QFile bad(attemptFolder() + QStringLiteral("/20200101-bad.json"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("{ cut sho");
    bad.close();
    const AttemptsRead read = attempts();
    EXPECT_THAT(read.attempts, SizeIs(1));
    ASSERT_THAT(read.spoiled, SizeIs(1));
    EXPECT_THAT(ui::phraseWords(read.spoiled[0].where).toStdString(),
                HasSubstr("20200101-bad.json"));
    EXPECT_TRUE(bad.exists()) << "it is left where it is";
}

TEST(Attempts, EveryFaultOfAFileIsNamedByItsPlace) {
    std::string json = jsonFrom(attemptAt(1'795'772'533'120));
    for (const auto& [from, to] :
         {std::pair<std::string, std::string>{"\"percent\": 72", "\"percent\": 172"},
          {"\"easy\"", "\"mild\""},
          {"\"leaf-stops\"", "\"leaf\""}})
        json.replace(json.find(from), from.size(), to);
    const auto attempt = attemptFrom(json, "a.json");
    ASSERT_FALSE(attempt);
    std::vector<std::string> places;
    for (const Error& error : attempt.error())
        places.push_back(ui::phraseWords(error.where).toStdString());
    EXPECT_THAT(places,
                ElementsAre("a.json at /level", "a.json at /percent", "a.json at /delays/1/cue"));
}

TEST(Attempts, ThereAreNoneBeforeTheFirst) {
    const test::DataFolder folder;
    EXPECT_THAT(attempts().attempts, IsEmpty());
    EXPECT_THAT(attempts().spoiled, IsEmpty());
}

TEST(Attempts, WhereNothingCanBeWrittenItIsSaid) {
    const test::DataFolder folder;
    ASSERT_TRUE(QDir().rmdir(attemptFolder()));
    QFile in_its_place(practiceFolder() + QStringLiteral("/attempts"));
    ASSERT_TRUE(in_its_place.open(QIODevice::WriteOnly));
    EXPECT_FALSE(keepAttempt(attemptAt(1)));
}

} // namespace
} // namespace latchround::practice
