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
constexpr std::uintmax_t most_password_bytes = 4096;

QString placeOf(const std::string& path) {
    return QFile::decodeName(QByteArray::fromStdString(path));
}

/// From the environment or a file: what stands on a command line can be read by everybody on the
/// machine.
Result<std::string> passwordOf(const PracticeAsked& asked) {
    if (!asked.password_from) {
        const char* password = std::getenv("LATCHROUND_PASSWORD");
        return std::string(password == nullptr ? "" : password);
    }
    auto password = bytesOf(*asked.password_from, most_password_bytes);
    while (password && !password->empty() && (password->back() == '\n' || password->back() == '\r'))
        password->pop_back();
    return password;
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
    const auto password = passwordOf(asked);
    if (!password)
        return refused(password.error());
    const auto exercise = openExercise(placeOf(asked.exercise), *password);
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

Answer lockExercise(const PracticeAsked& asked) {
    const auto password = passwordOf(asked);
    if (!password)
        return refused(password.error());
    if (password->empty())
        return refused({place::password(), errors::password_not_given()});
    const auto locked = lockExerciseFile(placeOf(asked.lock), placeOf(asked.output), *password);
    if (!locked)
        return tl::unexpected(locked.error());
    OrderedJson answer = frontJson(*locked);
    answer["file"] = asked.output;
    return inLines(answer);
}

void addPracticeCommands(CLI::App& program, PracticeAsked& asked, std::function<Answer()>& command,
                         const Graded& graded) {
    CLI::App* commands = program.add_subcommand("practice", "Exercises on simulated doors");
    commands->require_subcommand(0, 1)->fallthrough();
    const auto exercise = [&asked](CLI::App* to) {
        to->add_option("--seed", asked.seed, "seed for drawing faults at random; 0 to 4294967295");
        return to->add_option("--exercise", asked.exercise, "id, or an instructor's file");
    };
    const auto password = [&asked](CLI::App* to) {
        to->add_option("--password-from", asked.password_from,
                       "file with the password; default: LATCHROUND_PASSWORD");
    };
    exercise(commands);
    password(commands);
    commands->add_option("--answers", asked.answers, "file of answers to score");
    commands->callback([&asked, &command, graded, commands] {
        if (commands->get_subcommands().empty())
            command = graded(
                [&asked](const Catalogue& catalogue) { return scoreExercise(asked, catalogue); });
    });

    CLI::App* list = commands->add_subcommand("list", "List the exercises");
    list->fallthrough()->callback([&command] { command = listExercises; });

    CLI::App* show = commands->add_subcommand("show", "Show an exercise without its faults");
    exercise(show->fallthrough())->required();
    show->callback([&asked, &command, graded] {
        command =
            graded([&asked](const Catalogue& catalogue) { return showExercise(asked, catalogue); });
    });

    CLI::App* lock = commands->add_subcommand("lock", "Lock an exercise's faults with a password");
    lock->fallthrough()->add_option("FILE", asked.lock, "exercise")->required();
    lock->add_option("--output", asked.output, "locked file")->required();
    password(lock);
    lock->callback([&asked, &command] { command = [&asked] { return lockExercise(asked); }; });
}

} // namespace latchround::headless
