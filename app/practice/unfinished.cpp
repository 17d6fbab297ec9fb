#include "app/practice/unfinished.h"

#include <limits>
#include <span>

#include <QDir>
#include <QFile>
#include <nlohmann/json.hpp>

#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/json_text.h"
#include "app/practice/practice_folder.h"
#include "core/error/exercise_errors.h"
#include "core/evidence/fact_words.h"
#include "core/evidence/moment_text.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround::practice {

namespace {

using Written = nlohmann::ordered_json;

constexpr int unfinished_version = 1;
constexpr std::uintmax_t most_unfinished_bytes = 4u << 20;
constexpr std::int64_t most_kept = 1'000'000;
constexpr std::int64_t any_ns = std::numeric_limits<std::int64_t>::max();

Written written(const TrueRun& run) {
    Written entry;
    entry["door"] = run.door;
    entry["run"] = run.run;
    entry["kind"] = word(run.kind);
    entry["release"] = word(run.release);
    entry["released_ns"] = run.released_ns;
    entry["events"] = Written::array();
    for (const TrueEvent& event : run.events)
        entry["events"].push_back({{"mark", word(event.mark)}, {"t_s", event.t_s}});
    if (run.stopped_ns)
        entry["stopped_ns"] = *run.stopped_ns;
    entry["endangered"] = run.endangered;
    return entry;
}

TrueRun runFrom(JsonObject& entry) {
    TrueRun run;
    run.door = entry.text("door", Need::Required).value_or("");
    run.run = entry.text("run", Need::Required).value_or("");
    run.kind = entry.word<RunKind>("kind", Need::Required, runKindWords).value_or(run.kind);
    run.release =
        entry.word<Release>("release", Need::Required, releaseWords).value_or(run.release);
    run.released_ns = entry.wholeNumber("released_ns", Need::Required, -any_ns, any_ns).value_or(0);
    for (JsonObject& each : entry.objects("events", Need::Required)) {
        TrueEvent event;
        event.mark =
            each.word<MarkKind>("mark", Need::Required, markKindWords).value_or(event.mark);
        event.t_s = each.number("t_s", Need::Required).value_or(0);
        each.complainOfTheRest();
        run.events.push_back(event);
    }
    run.stopped_ns = entry.wholeNumber("stopped_ns", Need::Optional, -any_ns, any_ns);
    run.endangered =
        static_cast<int>(entry.wholeNumber("endangered", Need::Required, 0, most_kept).value_or(0));
    entry.complainOfTheRest();
    return run;
}

const QString unfinished_ending = QStringLiteral(".unfinished");

} // namespace

std::string jsonFrom(const Unfinished& exercise) {
    Written file;
    file["unfinished"] = unfinished_version;
    file["place"] = exercise.place.toStdString();
    file["exercise"] = exercise.exercise;
    file["title"] = exercise.title;
    file["seed"] = exercise.seed;
    file["begun"] = rfc3339Text(exercise.begun);
    file["cautions_untrue"] = exercise.cautions_untrue;
    file["runs"] = Written::array();
    for (const TrueRun& run : exercise.runs)
        file["runs"].push_back(written(run));
    return inLines(file);
}

Checked<Unfinished> unfinishedFrom(std::string_view json, const std::string& where) {
    const Checked<Json> file = latchround::jsonFrom(json, where);
    if (!file)
        return tl::unexpected(file.error());
    JsonFaults faults(where);
    JsonObject object(*file, "", faults);
    Unfinished exercise;
    static_cast<void>(
        object.wholeNumber("unfinished", Need::Required, unfinished_version, unfinished_version));
    exercise.place = QString::fromStdString(object.text("place", Need::Required).value_or(""));
    exercise.exercise = object.text("exercise", Need::Required).value_or("");
    exercise.title = object.text("title", Need::Required).value_or("");
    exercise.seed = static_cast<std::uint32_t>(
        object.wholeNumber("seed", Need::Required, 0, std::numeric_limits<std::uint32_t>::max())
            .value_or(0));
    const std::string begun = object.text("begun", Need::Required).value_or("");
    if (const auto moment = momentFrom(begun))
        exercise.begun = *moment;
    else
        object.complain("begun", errors::not_a_moment());
    exercise.cautions_untrue = static_cast<int>(
        object.wholeNumber("cautions_untrue", Need::Required, 0, most_kept).value_or(0));
    for (JsonObject& entry : object.objects("runs", Need::Required))
        exercise.runs.push_back(runFrom(entry));
    object.complainOfTheRest();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return exercise;
}

Result<> keepUnfinished(const Unfinished& exercise) {
    const std::string json = jsonFrom(exercise);
    return writeDurably(pathOf(exercise.register_file + unfinished_ending),
                        std::as_bytes(std::span(json)), IfThere::Replace);
}

std::optional<Unfinished> unfinishedExercise() {
    const QDir folder(practiceFolder());
    const QStringList names = folder.entryList({QStringLiteral("*.practice") + unfinished_ending},
                                               QDir::Files, QDir::Name | QDir::Reversed);
    for (const QString& name : names) {
        const QString file = folder.filePath(name.chopped(unfinished_ending.size()));
        const auto bytes = bytesOf(pathOf(folder.filePath(name)), most_unfinished_bytes);
        auto exercise = bytes ? unfinishedFrom(*bytes, name.toStdString())
                              : Checked<Unfinished>(tl::unexpect, Errors{bytes.error()});
        if (!exercise || !QFile::exists(file))
            continue;
        exercise->register_file = file;
        return std::move(*exercise);
    }
    return std::nullopt;
}

Result<> putAside(const Unfinished& exercise) {
    QFile file(exercise.register_file + unfinished_ending);
    if (file.exists() && !file.remove())
        return tl::unexpected(Error{file.fileName().toStdString(), errors::not_taken_away()});
    return {};
}

Result<std::unique_ptr<SqliteRegister>> registerOf(const Unfinished& exercise) {
    OpenOptions options;
    options.kind = RegisterKind::Practice;
    return SqliteRegister::open(exercise.register_file, options);
}

} // namespace latchround::practice
