#include "app/practice/exercise_files.h"

#include <algorithm>
#include <span>

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/practice/built_in.h"
#include "app/practice/locked_exercise.h"
#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "core/error/exercise_errors.h"
#include "core/phrase/places.h"

namespace latchround::practice {

namespace {

constexpr std::uintmax_t most_exercise_bytes = 1u << 20;

tl::unexpected<Errors> refuse(Phrase where, Phrase what) {
    return tl::unexpected(Errors{{std::move(where), std::move(what)}});
}

struct Text {
    std::string where;
    std::string json;
};

const BuiltInExercise* builtIn(const QString& place) {
    const auto exercises = builtInExercises();
    const auto found = std::ranges::find(exercises, place.toStdString(), &BuiltInExercise::id);
    return found == exercises.end() ? nullptr : &*found;
}

Checked<Text> textOfFile(const QString& path) {
    auto bytes = bytesOf(pathOf(path), most_exercise_bytes);
    if (!bytes)
        return tl::unexpected(Errors{bytes.error()});
    return Text{QFileInfo(path).fileName().toStdString(), std::move(*bytes)};
}

QString pathForId(const QString& id) {
    return QDir(exerciseFolder()).filePath(id + QStringLiteral(".json"));
}

/// An id is no path; a path that is there goes before a kept file of that name.
Checked<Text> textAt(const QString& place) {
    if (const BuiltInExercise* exercise = builtIn(place))
        return Text{std::string(exercise->id), std::string(exercise->json)};
    if (QFileInfo::exists(place) || !QFileInfo::exists(pathForId(place)))
        return textOfFile(place);
    return textOfFile(pathForId(place));
}

Checked<ExerciseFile> lookedAt(const QString& place, const Text& text) {
    ExerciseFile file;
    file.place = place;
    file.is_locked = isLockedExercise(text.json);
    auto front = file.is_locked ? frontOfLocked(text.json, text.where, practiceVessel())
                                : exerciseFrom(text.json, text.where, practiceVessel());
    if (!front)
        return tl::unexpected(front.error());
    file.front = std::move(*front);
    return file;
}

} // namespace

Checked<ExerciseFile> lookAtExercise(const QString& place) {
    const auto text = textAt(place);
    if (!text)
        return tl::unexpected(text.error());
    return lookedAt(place, *text);
}

std::vector<ExerciseFile> exerciseFiles() {
    std::vector<ExerciseFile> files;
    const auto list = [&files](const QString& place) {
        auto looked = lookAtExercise(place);
        if (looked)
            files.push_back(std::move(*looked));
        else
            files.push_back({place, {}, false, looked.error()});
    };
    for (const BuiltInExercise& exercise : builtInExercises())
        list(QString::fromLatin1(exercise.id.data(), qsizetype(exercise.id.size())));
    const QDir folder(exerciseFolder());
    for (const QString& name :
         folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name))
        list(folder.filePath(name));
    return files;
}

Checked<Exercise> openExercise(const QString& place, std::string_view password) {
    const auto text = textAt(place);
    if (!text)
        return tl::unexpected(text.error());
    if (!isLockedExercise(text->json))
        return exerciseFrom(text->json, text->where, practiceVessel());
    if (password.empty())
        return refuse(text->where, errors::exercise_needs_password());
    return unlockedExercise(text->json, text->where, password, practiceVessel());
}

Checked<QString> keepExerciseFile(const QString& path) {
    const auto text = textOfFile(path);
    if (!text)
        return tl::unexpected(text.error());
    const auto file = lookedAt(path, *text);
    if (!file)
        return tl::unexpected(file.error());
    const QString id = QString::fromStdString(file->front.id);
    if (builtIn(id) != nullptr)
        return refuse(place::pointer(text->where, "/id"), errors::exercise_id_ships());
    const QString kept = pathForId(id);
    if (QFileInfo::exists(kept)) {
        const auto there = textOfFile(kept);
        if (there && there->json == text->json)
            return kept;
        return refuse(place::pointer(text->where, "/id"),
                      errors::exercise_id_taken(kept.toStdString()));
    }
    if (const Result<> written =
            writeDurably(pathOf(kept), std::as_bytes(std::span(text->json)), IfThere::Refuse);
        !written)
        return tl::unexpected(Errors{written.error()});
    return kept;
}

Checked<ExerciseFile> lockExerciseFile(const QString& from, const QString& to,
                                       std::string_view password) {
    const auto exercise = openExercise(from);
    if (!exercise)
        return tl::unexpected(exercise.error());
    const auto locked = lockedExercise(*exercise, password);
    if (!locked)
        return tl::unexpected(Errors{locked.error()});
    if (const Result<> written =
            writeDurably(pathOf(to), std::as_bytes(std::span(*locked)), IfThere::Refuse);
        !written)
        return tl::unexpected(Errors{written.error()});
    return lookAtExercise(to);
}

} // namespace latchround::practice
