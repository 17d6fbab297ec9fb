// The exercises on this tablet: those of the program, and those of instructors.
#pragma once

#include <functional>

#include "app/practice/unfinished.h"
#include "core/practice/exercise.h"
#include "ui/ports/exercises.h"

namespace latchround {

class DesktopExercises : public ui::Exercises {
public:
    /// Puts an exercise on the screen: as new, or as it was broken off.
    using Begin = std::function<Result<>(const practice::Exercise& exercise, const QString& place)>;
    using GoOn = std::function<Result<>(const practice::Exercise& exercise, practice::Unfinished)>;

    DesktopExercises(Begin begin, GoOn go_on)
        : m_begin(std::move(begin))
        , m_go_on(std::move(go_on)) {}

    std::vector<ui::ExerciseOffered> offered() const override;
    Checked<std::optional<QString>> takeIn(QWidget* parent) override;
    Result<> begin(const QString& place, const QString& word) override;
    std::optional<ui::ExerciseUnfinished> unfinished() const override;
    Result<> goOn(const QString& word) override;
    Result<> putAside() override;

private:
    Begin m_begin;
    GoOn m_go_on;
};

} // namespace latchround
