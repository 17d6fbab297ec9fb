// Answers without a screen: what is read, what is refused, and what they score.
#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/practice/exercise_files.h"
#include "app/practice/scored_run.h"
#include "tests/practice/perfect_answers.h"
#include "tests/practice/practice_world.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using nlohmann::json;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::SizeIs;

const Catalogue& catalogue() {
    static const Catalogue built_in = builtInCatalogue().value();
    return built_in;
}

Exercise exerciseOf(std::vector<DoorTask> doors) {
    return {"ours", "Ours", "Look.", Level::Easy, std::move(doors), 0, {}, 0};
}

Checked<Answers> read(const Exercise& exercise, const json& answers) {
    return answersFrom(answers.dump(), "a.json", vesselFor(exercise, practiceVessel()),
                       catalogue());
}

Debrief debriefOf(const Exercise& exercise, const json& answers, std::uint32_t seed = 5) {
    const auto read_answers = read(exercise, answers);
    EXPECT_TRUE(read_answers) << ui::inOneLine(read_answers.error().front());
    return scored(exercise, vesselFor(exercise, practiceVessel()), seed, *read_answers,
                  catalogue());
}

std::vector<std::string> placesOfFaults(const json& answers) {
    const auto refused = read(exerciseOf({{"P-01", {}}}), answers);
    std::vector<std::string> places;
    if (!refused)
        for (const Error& error : refused.error())
            places.push_back(ui::phraseWords(error.where).toStdString());
    return places;
}

TEST(Answers, PerfectOnesScoreAHundredInEveryExerciseThatShips) {
    const test::DataFolder no_others;
    for (const ExerciseFile& file : exerciseFiles())
        for (const std::uint32_t seed : {0u, 7u, 4294967295u}) {
            const Debrief debrief =
                debriefOf(file.front, perfectAnswers(file.front, seed, catalogue()), seed);
            EXPECT_EQ(debrief.percent, 100) << file.front.id << " with seed " << seed;
            EXPECT_EQ(countOf(debrief, Outcome::Missed), 0) << file.front.id;
            EXPECT_EQ(debrief.endangered, 0) << file.front.id;
            for (const MarkCompared& mark : debrief.marks)
                EXPECT_NEAR(mark.late_s.value(), 0, 1e-6) << file.front.id << mark.door;
        }
}

TEST(Answers, NoneScoreWellBelowIt) {
    const Exercise exercise = exerciseOf({{"P-01", {Fault::Hook}}});
    const Debrief debrief = debriefOf(exercise, {{"doors", json::object()}});
    EXPECT_EQ(countOf(debrief, Outcome::Missed), 1);
    EXPECT_LT(debrief.percent, 20);
}

TEST(Answers, AFaultThatWasOverlookedAndOneThatIsNotThereAreCounted) {
    const Exercise exercise = exerciseOf({{"P-01", {Fault::Hook}}});
    json answers = perfectAnswers(exercise, 5, catalogue());
    answers["doors"]["P-01"]["answers"]["no-hook"] = "yes";
    answers["doors"]["P-01"]["answers"]["not-held"] = "no";
    const Debrief debrief = debriefOf(exercise, answers);
    EXPECT_EQ(countOf(debrief, Outcome::Missed), 1);
    EXPECT_EQ(countOf(debrief, Outcome::Absent), 1);
    EXPECT_LT(debrief.percent, 100);
}

TEST(Answers, WhoeverWalksByIsEndangeredUnlessTheRunIsStopped) {
    const Exercise exercise = exerciseOf({{"P-04", {Fault::PeopleInPath}}});
    json answers = perfectAnswers(exercise, 5, catalogue());
    ASSERT_TRUE(answers["doors"]["P-04"]["runs"][0].contains("stopped_s"));
    EXPECT_EQ(debriefOf(exercise, answers).endangered, 0);

    json too_late = answers;
    too_late["doors"]["P-04"]["runs"][0]["stopped_s"] = 3000;
    EXPECT_EQ(debriefOf(exercise, too_late).endangered, 1);

    answers["doors"]["P-04"]["runs"][0].erase("stopped_s");
    const Debrief debrief = debriefOf(exercise, answers);
    EXPECT_EQ(debrief.endangered, 1);
    EXPECT_EQ(countOf(debrief, Outcome::Missed), 1);
    EXPECT_LE(debrief.percent, 90);
}

TEST(Answers, MarksAreComparedWithTheTruthInSecondsAfterTheRelease) {
    const Exercise exercise = exerciseOf({{"P-01", {}}});
    json answers = perfectAnswers(exercise, 5, catalogue());
    for (json& run : answers["doors"]["P-01"]["runs"])
        for (auto& [mark, seconds] : run["marks"].items())
            seconds = seconds.get<double>() + 0.25;
    const Debrief debrief = debriefOf(exercise, answers);
    ASSERT_FALSE(debrief.marks.empty());
    for (const MarkCompared& mark : debrief.marks)
        EXPECT_NEAR(mark.late_s.value(), 0.25, 1e-6) << word(mark.mark);
}

TEST(Answers, AStoppedRunAndOneWithoutItsLastMarkAreNoMeasurements) {
    const Exercise exercise = exerciseOf({{"P-01", {}}});
    const auto answers = read(exercise, json::parse(R"({"doors": {"P-01": {"runs": [
            {"release": "let-go", "marks": {"moves": 1, "shut": 15}},
            {"release": "let-go", "marks": {"moves": 1}},
            {"release": "let-go", "marks": {"moves": 1, "shut": 15}, "stopped_s": 9}]}}})"));
    ASSERT_TRUE(answers) << ui::inOneLine(answers.error().front());
    ASSERT_THAT(answers->evidence, SizeIs(1));
    EXPECT_THAT(completeRuns(answers->evidence[0], RunKind::Closing), SizeIs(1));
    EXPECT_EQ(answers->evidence[0].runs[2].end->outcome, RunOutcome::Stopped);
    EXPECT_THAT(answers->runs, SizeIs(3));
}

TEST(Answers, AJudgementGoesWithItsReason) {
    const Exercise exercise = exerciseOf({{"P-01", {}}});
    const auto answers =
        read(exercise, json::parse(R"({"doors": {"P-01": {"judgements": {"seals-whole":
                       {"satisfactory": false, "reason": "painted over"}}}}})"));
    ASSERT_TRUE(answers) << ui::inOneLine(answers.error().front());
    const Judgement& judgement = answers->evidence[0].judgements.at("seals-whole").body;
    EXPECT_FALSE(judgement.satisfactory);
    EXPECT_EQ(judgement.reason, "painted over");
}

TEST(Answers, EveryFaultIsNamedAtOnceByItsPlace) {
    EXPECT_THAT(
        placesOfFaults(json::parse(R"({"colour": 1, "doors": {"P-99": {}, "P-01": {
        "plate": "Z-60", "answers": {"no-hok": "yes", "no-hook": "maybe"},
        "measured": {"a-gap": -1}, "judgements": {"sills": {"satisfactory": 1}},
        "runs": [{"release": "remotely", "marks": {"shut": -2, "shots": 1}},
                 {"kind": "closing", "marks": {"shut": 2}}], "sides": 2}}})")),
        ::testing::UnorderedElementsAre(
            "a.json at /colour", "a.json at /doors/P-99", "a.json at /doors/P-01/plate",
            "a.json at /doors/P-01/answers/no-hok", "a.json at /doors/P-01/answers/no-hook",
            "a.json at /doors/P-01/measured/a-gap", "a.json at /doors/P-01/judgements/sills",
            "a.json at /doors/P-01/judgements/sills/satisfactory",
            "a.json at /doors/P-01/judgements/sills/reason", "a.json at /doors/P-01/runs/0/release",
            "a.json at /doors/P-01/runs/0/marks/shut", "a.json at /doors/P-01/runs/0/marks/shots",
            "a.json at /doors/P-01/runs/1/release", "a.json at /doors/P-01/sides"));
}

TEST(Answers, ARunThatTheDoorDoesNotMakeIsRefused) {
    const auto answers =
        read(exerciseOf({{"P-12", {}}}), json::parse(R"({"doors": {"P-12": {"runs": [
                                  {"release": "remote", "marks": {"shut": 2}}]}}})"));
    ASSERT_FALSE(answers);
    EXPECT_THAT(ui::inOneLine(answers.error().front()),
                AllOf(HasSubstr("/doors/P-12/runs/0/release"), HasSubstr("let-go")));
}

} // namespace
} // namespace latchround::practice
