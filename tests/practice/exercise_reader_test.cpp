// An exercise's file: what is read, and that every fault of it is named at once, each by its place.
#include <gmock/gmock.h>

#include "app/practice/practice_vessel.h"
#include "core/practice/exercise.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::SizeIs;

Checked<Exercise> read(const std::string& json) {
    return exerciseFrom(json, "my.json", practiceVessel());
}

std::string with(const std::string& doors, const std::string& more = {}) {
    return R"({"exercise": 1, "id": "mine", "title": "Mine", "words": "Look.", "level": "easy",
               "doors": )" +
           doors + more + "}";
}

std::vector<std::string> placesOfFaults(const std::string& json) {
    const auto exercise = read(json);
    std::vector<std::string> places;
    if (!exercise)
        for (const Error& error : exercise.error())
            places.push_back(ui::phraseWords(error.where).toStdString());
    return places;
}

std::string whatIsWrong(const std::string& json) {
    const auto exercise = read(json);
    return exercise ? "" : ui::inOneLine(exercise.error().front());
}

TEST(ExerciseReader, ReadsEveryField) {
    const auto exercise = read(R"({"exercise": 1, "id": "own-exam", "title": "Our exam",
        "words": "Three doors.", "level": "exam",
        "doors": [{"door": "P-01", "faults": ["hook", "too-fast"]}, {"door": "P-04"}],
        "drawn": 2, "drawn_from": ["wedge", "alarm-short"], "pass_percent": 75})");
    ASSERT_TRUE(exercise) << ui::inOneLine(exercise.error().front());
    const Exercise expected{"own-exam",
                            "Our exam",
                            "Three doors.",
                            Level::Exam,
                            {{"P-01", {Fault::Hook, Fault::TooFast}}, {"P-04", {}}},
                            2,
                            {Fault::Wedge, Fault::AlarmShort},
                            75};
    EXPECT_EQ(*exercise, expected);
}

TEST(ExerciseReader, ReadsWhatItWrites) {
    const Exercise exercise{"own",
                            "Ours \"and\" yours",
                            "Wörter",
                            Level::Hard,
                            {{"P-12", {Fault::WrongPlate}}, {"P-06", {}}},
                            3,
                            {},
                            0};
    const auto again = read(jsonFrom(exercise));
    ASSERT_TRUE(again) << ui::inOneLine(again.error().front());
    EXPECT_EQ(*again, exercise);
}

TEST(ExerciseReader, NamesEveryFaultAtOnceByItsPlace) {
    EXPECT_THAT(placesOfFaults(R"({"exercise": 1, "id": "My Own", "words": "", "level": "mild",
        "colour": "red", "drawn": -1,
        "doors": [{"door": "P-99"}, {"door": "P-01", "faults": ["hok"], "side": 1}, 7]})"),
                ::testing::UnorderedElementsAre(
                    "my.json at /colour", "my.json at /id", "my.json at /title",
                    "my.json at /words", "my.json at /level", "my.json at /doors/0/door",
                    "my.json at /doors/1/faults/0", "my.json at /doors/1/side",
                    "my.json at /doors/2", "my.json at /drawn"));
}

TEST(ExerciseReader, NullIsAbsentAndRemarksArePassedOver) {
    const auto exercise = read(with(R"([{"door": "P-01", "faults": null, "x-why": 7}])",
                                    R"(, "$schema": "exercise", "drawn": null, "pass_percent": null,
                      "locked": null)"));
    ASSERT_TRUE(exercise) << ui::inOneLine(exercise.error().front());
    EXPECT_THAT(exercise->doors.front().faults, ::testing::IsEmpty());
    EXPECT_EQ(exercise->drawn, 0);
}

TEST(ExerciseReader, RefusesWhatIsNoExercise) {
    EXPECT_THAT(whatIsWrong("{ spoiled"), HasSubstr("not a JSON object"));
    EXPECT_THAT(whatIsWrong("[]"), HasSubstr("not a JSON object"));
    EXPECT_THAT(whatIsWrong(R"({"vessel": {}, "doors": []})"),
                HasSubstr("this is not an exercise"));
    EXPECT_THAT(whatIsWrong(R"({"exercise": 2, "id": "x"})"), HasSubstr("Update this program"));
    EXPECT_THAT(whatIsWrong(R"({"exercise": 1, "locked": {}})"), HasSubstr("with a password"));
    EXPECT_THAT(whatIsWrong(with("[]")), HasSubstr("must be a list of doors"));
}

TEST(ExerciseReader, PutsNoFaultIntoADoorThatCannotHaveIt) {
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P-12", "faults": ["alarm-short"]}])")),
                ::testing::AllOf(HasSubstr("/doors/0/faults/0"), HasSubstr("door P-12 cannot")));
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P-01", "faults": ["too-fast", "too-slow"]}])")),
                ::testing::AllOf(HasSubstr("/doors/0/faults/1"), HasSubstr("hide each other")));
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P-01", "faults": ["hook", "hook"]}])")),
                HasSubstr("hide each other"));
}

TEST(ExerciseReader, SuggestsTheDoorThatWasMeantAndRefusesItTwice) {
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P01"}])")), HasSubstr("P-01"));
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P-01"}, {"door": "P-01"}])")),
                HasSubstr("is listed twice"));
}

TEST(ExerciseReader, DrawsNoMoreThanTheDoorsCanHave) {
    const std::string doors = R"([{"door": "P-12"}, {"door": "P-09"}])";
    EXPECT_EQ(whatIsWrong(with(doors, R"(, "drawn": 1, "drawn_from": ["wrong-plate"])")), "");
    EXPECT_THAT(whatIsWrong(with(doors, R"(, "drawn": 2, "drawn_from": ["alarm-short"])")),
                HasSubstr("only 0 more faults"));
    EXPECT_THAT(whatIsWrong(with(doors, R"(, "drawn_from": ["wedge"])")),
                HasSubstr("without \"drawn\""));
    EXPECT_THAT(whatIsWrong(with(doors, R"(, "drawn": 1e9)")), HasSubstr("whole number"));
    EXPECT_THAT(whatIsWrong(with(doors, R"(, "drawn": 99999999999999999999)")),
                HasSubstr("whole number"));
}

TEST(ExerciseReader, OnlyAnExamHasAMarkAndEveryExamHas) {
    EXPECT_THAT(whatIsWrong(with(R"([{"door": "P-01"}])", R"(, "pass_percent": 80)")),
                HasSubstr("only an exam"));
    EXPECT_THAT(whatIsWrong(R"({"exercise": 1, "id": "e", "title": "E", "words": "E.",
        "level": "exam", "doors": [{"door": "P-01"}]})"),
                HasSubstr("needs a pass mark"));
    EXPECT_THAT(whatIsWrong(R"({"exercise": 1, "id": "e", "title": "E", "words": "E.",
        "level": "exam", "doors": [{"door": "P-01"}], "pass_percent": 101})"),
                HasSubstr("from 1 to 100"));
}

} // namespace
} // namespace latchround::practice
