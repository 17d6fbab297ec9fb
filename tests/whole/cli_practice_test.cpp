// Practice as a shell sees it: exercises listed, shown, locked and scored, and nothing told before.
#include <QDir>
#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/practice/exercise_files.h"
#include "shell.h"
#include "tests/practice/perfect_answers.h"

namespace latchround {
namespace {

using namespace practice;
using nlohmann::json;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr const char* password = "seven grey herons";

const Catalogue& catalogue() {
    static const Catalogue built_in = builtInCatalogue().value();
    return built_in;
}

class CliPractice : public Cli {
protected:
    CliPractice() { qputenv("LATCHROUND_DATA", QFile::encodeName(at("data"))); }
    ~CliPractice() override {
        qunsetenv("LATCHROUND_DATA");
        qunsetenv("LATCHROUND_PASSWORD");
    }

    static Exercise sample(const std::vector<Fault>& faults) {
        return {"ours", "Ours", "One door.", Level::Easy, {{"P-01", faults}}, 0, {}, 0};
    }
    QString putExercise(const char* name, const Exercise& exercise) const {
        return put(name, QByteArray::fromStdString(jsonFrom(exercise)));
    }
    QString putAnswers(const json& answers) const {
        return put("answers.json", QByteArray::fromStdString(answers.dump()));
    }
    static json answer(const QStringList& arguments) {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 0) << said.err;
        EXPECT_EQ(said.err, "");
        return json::parse(said.out, nullptr, false);
    }
    json score(const QString& exercise, const json& answers, const char* seed = "7") const {
        return answer({"practice", "--exercise", exercise, "--seed", QString::fromLatin1(seed),
                       "--answers", putAnswers(answers)});
    }
    /// Of a command that is refused with one line.
    static std::string refusal(const QStringList& arguments) {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 2) << said.out;
        EXPECT_EQ(said.out, "");
        EXPECT_EQ(lines(said.err), 1) << said.err;
        return said.err;
    }
};

TEST_F(CliPractice, ListsWhatThereIs) {
    const json list = answer({"practice", "list"})["exercises"];
    EXPECT_GE(list.size(), 6u);
    for (const json& exercise : list) {
        EXPECT_EQ(exercise["exercise"], exercise["id"]);
        EXPECT_FALSE(exercise["doors"].empty());
        EXPECT_EQ(exercise["locked"], false);
    }
    EXPECT_EQ(list.back()["level"], "exam");
}

TEST_F(CliPractice, ShowsWhatIsToBeDoneAndNothingOfWhatIsWrong) {
    const json shown = answer({"practice", "show", "--exercise", "stairways", "--seed", "3"});
    EXPECT_EQ(shown["doors"].size(), 4u);
    for (const json& door : shown["doors"]) {
        EXPECT_FALSE(door["rows"].empty());
        EXPECT_FALSE(door["runs"].empty());
    }
    json other = answer({"practice", "show", "--exercise", "stairways", "--seed", "4"});
    other["seed"] = 3;
    EXPECT_EQ(other, shown) << "the lot is seen";

    json faulty = answer({"practice", "show", "--exercise",
                          putExercise("a.json", sample({Fault::Hook, Fault::WrongPlate}))});
    const json sound =
        answer({"practice", "show", "--exercise", putExercise("b.json", sample({}))});
    faulty["exercise"] = sound["exercise"];
    EXPECT_EQ(faulty, sound) << "the faults are seen";
}

TEST_F(CliPractice, NoCommandTellsTheAnswers) {
    for (const char* command : {"answers", "truth", "unlock"})
        EXPECT_THAT(refusal({"practice", command, "--exercise", "exam", "--seed", "7"}),
                    Not(HasSubstr("P-0")));
}

TEST_F(CliPractice, PerfectAnswersScoreAHundred) {
    for (const ExerciseFile& file : exerciseFiles()) {
        const json scored = score(file.place, perfectAnswers(file.front, 7, catalogue()));
        EXPECT_EQ(scored["percent"], 100) << file.front.id;
        EXPECT_EQ(scored["rows_right"], scored["rows"]) << file.front.id;
        EXPECT_EQ(scored["missed"], 0) << file.front.id;
        EXPECT_EQ(scored["absent"], 0) << file.front.id;
        EXPECT_EQ(scored["endangered"], 0) << file.front.id;
        EXPECT_EQ(scored.contains("passed"), file.front.level == Level::Exam);
        EXPECT_EQ(scored["person"], "Nadia Ferrow");
    }
}

TEST_F(CliPractice, SaysWhatWasMissedWithItsTextAndCitation) {
    json answers = perfectAnswers(sample({Fault::Hook}), 7, catalogue());
    answers["doors"]["P-01"]["answers"]["no-hook"] = "yes";
    const json scored = score(putExercise("own.json", sample({Fault::Hook})), answers);
    EXPECT_LT(scored["percent"], 100);
    EXPECT_EQ(scored["missed"], 1);
    const json expected{
        {"door", "P-01"},
        {"outcome", "missed"},
        {"fault", "hook"},
        {"words", "It can be held open by a hook that the control station cannot release."},
        {"requirement", "no-hook"}};
    EXPECT_EQ(scored["faults"], json::array({expected}));
    for (const json& verdict : scored["verdicts"]) {
        EXPECT_NE(verdict["cite"], "");
        if (verdict["requirement"] == "no-hook") {
            EXPECT_EQ(verdict["given"], "satisfactory");
            EXPECT_EQ(verdict["right"], "unsatisfactory");
        }
    }
}

TEST_F(CliPractice, AnotherSeedIsAnotherExamAndTheSameSeedTheSame) {
    const Exercise exam = openExercise(QStringLiteral("exam")).value();
    const json answers = perfectAnswers(exam, 7, catalogue());
    EXPECT_EQ(score(QStringLiteral("exam"), answers), score(QStringLiteral("exam"), answers));
    const json other = score(QStringLiteral("exam"), answers, "8");
    EXPECT_LT(other["percent"], 100);
    EXPECT_EQ(other["pass_percent"], 80);
}

TEST_F(CliPractice, ALockedExerciseIsShownWithoutItsPasswordAndScoredWithIt) {
    const QString plain = putExercise("plain.json", sample({Fault::Hook}));
    qputenv("LATCHROUND_PASSWORD", password);
    const json locked = answer({"practice", "lock", plain, "--output", at("locked.json")});
    EXPECT_EQ(locked["locked"], true);
    EXPECT_THAT(bytesAt(at("locked.json")).toStdString(), Not(HasSubstr("hook")));

    const json answers = perfectAnswers(sample({Fault::Hook}), 7, catalogue());
    EXPECT_EQ(score(at("locked.json"), answers)["percent"], 100);
    qunsetenv("LATCHROUND_PASSWORD");
    EXPECT_EQ(answer({"practice", "show", "--exercise", at("locked.json")})["doors"].size(), 1u);
    const QStringList run{"practice", "--exercise", at("locked.json"), "--seed",
                          "7",        "--answers",  at("answers.json")};
    EXPECT_THAT(refusal(run), HasSubstr("with a password"));
    const QString wrong = put("wrong.txt", "seven grey geese\n");
    EXPECT_THAT(refusal(run + QStringList{"--password-from", wrong}),
                HasSubstr("does not open it"));
    const QString right = put("right.txt", QByteArray(password) + "\n");
    EXPECT_EQ(answer(run + QStringList{"--password-from", right})["percent"], 100);
}

TEST_F(CliPractice, LocksNothingWithoutAPasswordAndTakesNoneFromTheCommandLine) {
    const QString plain = putExercise("plain.json", sample({Fault::Hook}));
    EXPECT_THAT(refusal({"practice", "lock", plain, "--output", at("s.json")}),
                HasSubstr("LATCHROUND_PASSWORD"));
    qputenv("LATCHROUND_PASSWORD", "short");
    EXPECT_THAT(refusal({"practice", "lock", plain, "--output", at("s.json")}),
                HasSubstr("at least 6"));
    EXPECT_THAT(refusal({"practice", "lock", plain, "--output", at("s.json"), "--password", "x"}),
                HasSubstr("--password"));
    EXPECT_FALSE(QFileInfo::exists(at("s.json")));
}

TEST_F(CliPractice, WhatIsWrongWithTheAnswersIsSaidLineByLine) {
    const QString answers =
        put("answers.json", R"({"doors": {"P-77": {}, "P-01": {"plate": "green"}}})");
    const ShellOutput said = run({"practice", "--exercise", putExercise("own.json", sample({})),
                                  "--seed", "7", "--answers", answers});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(lines(said.err), 2) << said.err;
    EXPECT_THAT(said.err, HasSubstr("/doors/P-77"));
    EXPECT_THAT(said.err, HasSubstr("/doors/P-01/plate"));
}

TEST_F(CliPractice, WhatIsMissingIsSaid) {
    const ShellOutput said = run({"practice"});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(lines(said.err), 3) << said.err;
    EXPECT_THAT(refusal({"practice", "show", "--exercise", "no-such-exercise"}),
                HasSubstr("no-such-exercise"));
    EXPECT_EQ(run({"practice", "show"}).exit_code, 2);
}

TEST_F(CliPractice, KeepsNoAttempt) {
    score(QStringLiteral("first-look"),
          perfectAnswers(openExercise(QStringLiteral("first-look")).value(), 7, catalogue()));
    const QDir data(at("data"));
    EXPECT_TRUE(data.entryList({QStringLiteral("*.db")}, QDir::Files).isEmpty());
    EXPECT_TRUE(
        QDir(data.filePath(QStringLiteral("practice/attempts"))).entryList(QDir::Files).isEmpty());
}

} // namespace
} // namespace latchround
