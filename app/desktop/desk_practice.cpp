// Practice, from the desk's side: which exercises there are, and the way into one and out of it.
#include <QDir>

#include "app/desktop/desk.h"
#include "app/desktop/file_dialog.h"
#include "app/desktop/practice_desk.h"
#include "app/practice/attempts.h"
#include "app/practice/exercise_files.h"
#include "app/practice/unfinished.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/core_words.h"

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
    exercise.is_sealed = file.is_sealed;
    if (!file.complaints.empty()) {
        exercise.title = QFileInfo(file.place).fileName();
        exercise.words = ui::complaintWords(file.complaints.front());
    }
    return exercise;
}

Complaint nothingBrokenOff() {
    return {"practice", "no exercise was broken off", ""};
}

} // namespace

std::vector<ui::ExerciseOffered> Desk::exercises() const {
    std::vector<ui::ExerciseOffered> offered;
    for (const practice::ExerciseFile& file : practice::exerciseFiles())
        offered.push_back(offerOf(file));
    return offered;
}

Checked<std::optional<QString>> Desk::takeInExercise(QWidget* parent) {
    const QString path = askForFile(parent, ui::Window::tr("Exercise of an instructor"),
                                    QDir::homePath(), ui::Window::tr("Exercises (*.json)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const Checked<QString> kept = practice::keepExerciseFile(path);
    if (!kept)
        return tl::unexpected(kept.error());
    return std::optional(*kept);
}

Done Desk::practise(const QString& place, const QString& word) {
    const auto exercise = practice::openExercise(place, word.toStdString());
    if (!exercise)
        return tl::unexpected(exercise.error().front());
    auto desk = std::make_unique<PracticeDesk>(*this, *exercise, m_lot());
    // The flag's own rules are those of a vessel; practice goes by the catalogue alone.
    if (Done opened = desk->open(place, m_catalogue, m_look); !opened)
        return opened;
    showPractice(std::move(desk));
    return {};
}

void Desk::showPractice(std::unique_ptr<PracticeDesk> desk) {
    m_practice = std::move(desk);
    m_practice->window()->setGeometry(m_window->geometry());
    m_practice->window()->show();
    m_window->hide();
}

std::optional<ui::ExerciseUnfinished> Desk::unfinishedExercise() const {
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

Done Desk::goOnPractising(const QString& word) {
    auto broken_off = practice::unfinishedExercise();
    if (!broken_off)
        return tl::unexpected(nothingBrokenOff());
    const auto exercise = practice::openExercise(broken_off->place, word.toStdString());
    if (!exercise)
        return tl::unexpected(exercise.error().front());
    auto desk = std::make_unique<PracticeDesk>(*this, *exercise, broken_off->seed);
    if (Done opened = desk->goOn(std::move(*broken_off), m_catalogue, m_look); !opened)
        return opened;
    showPractice(std::move(desk));
    return {};
}

Done Desk::putExerciseAside() {
    const auto broken_off = practice::unfinishedExercise();
    return broken_off ? practice::putAside(*broken_off) : tl::unexpected(nothingBrokenOff());
}

void Desk::endPractice() {
    m_window->setGeometry(m_practice->window()->geometry());
    m_window->show();
    m_window->showPractice();
    m_practice.reset();
    if (m_words != wordsSetting())
        makeAnew();
}

Result<std::vector<practice::Attempt>> Desk::attempts() const {
    practice::AttemptsRead read = practice::attempts();
    if (read.attempts.empty() && !read.spoiled.empty())
        return tl::unexpected(read.spoiled.front());
    return std::move(read.attempts);
}

Done Desk::keepAttempt(const practice::Attempt& attempt) {
    return practice::keepAttempt(attempt);
}

void Desk::leavePractice() {
    m_back.start();
}

} // namespace latchround
