#include "app/desktop/ports/exercises.h"

#include <QDir>
#include <QFileInfo>

#include "app/desktop/file_dialog.h"
#include "app/practice/exercise_files.h"
#include "core/error/desktop_errors.h"
#include "core/phrase/places.h"
#include "ui/window/window.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

ui::ExerciseOffered offerOf(const practice::ExerciseFile& file) {
    ui::ExerciseOffered exercise;
    exercise.place = file.place;
    exercise.id = file.front.id;
    exercise.title = ui::catalogueWords(file.front.title);
    exercise.words = ui::catalogueWords(file.front.words);
    exercise.level = file.front.level;
    exercise.doors = int(file.front.doors.size());
    exercise.is_locked = file.is_locked;
    if (!file.errors.empty()) {
        exercise.title = QFileInfo(file.place).fileName();
        exercise.words = ui::errorWords(file.errors.front());
    }
    return exercise;
}

Error nothingBrokenOff() {
    return {place::practice(), errors::no_exercise_broken_off()};
}

} // namespace

std::vector<ui::ExerciseOffered> DesktopExercises::offered() const {
    std::vector<ui::ExerciseOffered> offered;
    for (const practice::ExerciseFile& file : practice::exerciseFiles())
        offered.push_back(offerOf(file));
    return offered;
}

Checked<std::optional<QString>> DesktopExercises::takeIn(QWidget* parent) {
    const QString path = askForFile(parent, ui::Window::tr("Import an instructor's exercise"),
                                    QDir::homePath(), ui::Window::tr("Exercises (*.json)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const Checked<QString> kept = practice::keepExerciseFile(path);
    if (!kept)
        return tl::unexpected(kept.error());
    return std::optional(*kept);
}

Result<> DesktopExercises::begin(const QString& place, const QString& password) {
    const auto exercise = practice::openExercise(place, password.toStdString());
    if (!exercise)
        return tl::unexpected(exercise.error().front());
    return m_practise(*exercise, place, std::nullopt);
}

std::optional<ui::ExerciseUnfinished> DesktopExercises::unfinished() const {
    const auto broken_off = practice::unfinishedExercise();
    if (!broken_off)
        return std::nullopt;
    ui::ExerciseUnfinished unfinished{{}, broken_off->begun};
    if (const auto file = practice::lookAtExercise(broken_off->place))
        unfinished.exercise = offerOf(*file);
    else
        unfinished.exercise.title = QString::fromStdString(broken_off->title);
    return unfinished;
}

Result<> DesktopExercises::goOn(const QString& password) {
    const auto broken_off = practice::unfinishedExercise();
    if (!broken_off)
        return tl::unexpected(nothingBrokenOff());
    const auto exercise = practice::openExercise(broken_off->place, password.toStdString());
    if (!exercise)
        return tl::unexpected(exercise.error().front());
    return m_practise(*exercise, broken_off->place, broken_off);
}

Result<> DesktopExercises::putAside() {
    const auto broken_off = practice::unfinishedExercise();
    return broken_off ? practice::putAside(*broken_off) : tl::unexpected(nothingBrokenOff());
}

} // namespace latchround
