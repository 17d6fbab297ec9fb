#include "app/headless/practice_command.h"

#include <cstdlib>

#include <CLI/CLI.hpp>
#include <QFile>

#include "app/exchange/file_bytes.h"
#include "app/headless/debrief_json.h"
#include "app/headless/exercise_json.h"
#include "app/practice/exercise_files.h"
#include "app/practice/practice_vessel.h"
#include "app/practice/scored_run.h"
#include "core/error/command_errors.h"
#include "core/phrase/places.h"

namespace latchround::headless {

namespace {

using namespace practice;

constexpr std::uintmax_t most_answer_bytes = 16u << 20;
constexpr std::uintmax_t most_word_bytes = 4096;

QString placeOf(const std::string& path) {
    return QFile::decodeName(QByteArray::fromStdString(path));
}

/// From the environment or a file: what stands on a command line can be read by everybody on the
/// machine.
Result<std::string> wordOf(const PracticeAsked& asked) {
    if (!asked.word_file) {
        const char* word = std::getenv("LATCHROUND_WORD");
        return std::string(word == nullptr ? "" : word);
    }
    auto word = bytesOf(*asked.word_file, most_word_bytes);
    while (word && !word->empty() && (word->back() == '\n' || word->back() == '\r'))
        word->pop_back();
    return word;
}

/// Options that the command itself needs and its subcommands do not.
Errors missingOf(const PracticeAsked& asked) {
    Errors missing;
    if (asked.exercise.empty())
        missing.push_back({"--exercise", errors::exercise_not_named()});
    if (!asked.seed)
        missing.push_back({"--seed", errors::seed_not_given()});
    if (asked.answers.empty())
        missing.push_back({"--answers", errors::answers_not_named()});
    return missing;
}

} // namespace

Answer listExercises() {
    OrderedJson list = OrderedJson::array();
    for (const ExerciseFile& file : exerciseFiles())
        list.push_back(frontJson(file));
    return inLines({{"exercises", std::move(list)}});
}

Answer showExercise(const PracticeAsked& asked, const Catalogue& catalogue) {
    const auto file = lookAtExercise(placeOf(asked.exercise));
    if (!file)
        return tl::unexpected(file.error());
    const Arrangement vessel = vesselFor(file->front, practiceVessel());
    OrderedJson answer = frontJson(*file);
    if (asked.seed)
        answer["seed"] = *asked.seed;
    answer["doors"] = OrderedJson::array();
    for (const Door& door : vessel.doors)
        answer["doors"].push_back(practiceDoorJson(vessel, door, catalogue));
    return inLines(answer);
}

Answer scoreExercise(const PracticeAsked& asked, const Catalogue& catalogue) {
    if (Errors missing = missingOf(asked); !missing.empty())
        return tl::unexpected(std::move(missing));
    const auto word = wordOf(asked);
    if (!word)
        return refused(word.error());
    const auto exercise = openExercise(placeOf(asked.exercise), *word);
    if (!exercise)
        return tl::unexpected(exercise.error());
    const auto bytes = bytesOf(asked.answers, most_answer_bytes);
    if (!bytes)
        return refused(bytes.error());
    const Arrangement vessel = vesselFor(*exercise, practiceVessel());
    const auto answers = answersFrom(*bytes, asked.answers, vessel, catalogue);
    if (!answers)
        return tl::unexpected(answers.error());
    const Debrief debrief = scored(*exercise, vessel, *asked.seed, *answers, catalogue);
    return inLines(debriefJson(*exercise, *asked.seed, answers->person, debrief));
}

Answer sealExercise(const PracticeAsked& asked) {
    const auto word = wordOf(asked);
    if (!word)
        return refused(word.error());
    if (word->empty())
        return refused({place::instructors_word(), errors::word_not_given()});
    const auto sealed = sealExerciseFile(placeOf(asked.seal), placeOf(asked.output), *word);
    if (!sealed)
        return tl::unexpected(sealed.error());
    OrderedJson answer = frontJson(*sealed);
    answer["file"] = asked.output;
    return inLines(answer);
}

void addPracticeCommands(CLI::App& program, PracticeAsked& asked, std::function<Answer()>& command,
                         const Graded& graded) {
    CLI::App* commands =
        program.add_subcommand("practice", "Exercises on a vessel whose doors are not there");
    commands->require_subcommand(0, 1)->fallthrough();
    const auto exercise = [&asked](CLI::App* to) {
        to->add_option("--seed", asked.seed, "number by which faults are drawn; 0 to 4294967295");
        return to->add_option("--exercise", asked.exercise, "id, or file of an instructor");
    };
    const auto word = [&asked](CLI::App* to) {
        to->add_option("--word-file", asked.word_file,
                       "file with the instructor's word; without it LATCHROUND_WORD");
    };
    exercise(commands);
    word(commands);
    commands->add_option("--answers", asked.answers, "file of answers, to be scored");
    commands->callback([&asked, &command, graded, commands] {
        if (commands->get_subcommands().empty())
            command = graded(
                [&asked](const Catalogue& catalogue) { return scoreExercise(asked, catalogue); });
    });

    CLI::App* list = commands->add_subcommand("list", "Exercises that there are");
    list->fallthrough()->callback([&command] { command = listExercises; });

    CLI::App* show = commands->add_subcommand("show", "What is to be done, without what is wrong");
    exercise(show->fallthrough())->required();
    show->callback([&asked, &command, graded] {
        command =
            graded([&asked](const Catalogue& catalogue) { return showExercise(asked, catalogue); });
    });

    CLI::App* seal = commands->add_subcommand("seal", "Seal an exercise's faults by a word");
    seal->fallthrough()->add_option("FILE", asked.seal, "exercise")->required();
    seal->add_option("--output", asked.output, "sealed file")->required();
    word(seal);
    seal->callback([&asked, &command] { command = [&asked] { return sealExercise(asked); }; });
}

} // namespace latchround::headless
