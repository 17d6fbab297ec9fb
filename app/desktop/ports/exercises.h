// The exercises on this tablet: those of the program, and those of instructors.
#pragma once

#include <functional>
#include <optional>
#include <utility>

#include "app/practice/unfinished.h"
#include "core/practice/exercise.h"
#include "ui/ports/exercises.h"

namespace latchround {

class DesktopExercises : public ui::Exercises {
public:
    /// Puts an exercise on the screen: as new, or as it was broken off.
    using Practise =
        std::function<Result<>(const practice::Exercise& exercise, const QString& place,
                               std::optional<practice::Unfinished> broken_off)>;

    explicit DesktopExercises(Practise practise)
        : m_practise(std::move(practise)) {}

    std::vector<ui::ExerciseOffered> offered() const override;
    Checked<std::optional<QString>> takeIn(QWidget* parent) override;
    Result<> begin(const QString& place, const QString& password) override;
    std::optional<ui::ExerciseUnfinished> unfinished() const override;
    Result<> goOn(const QString& password) override;
    Result<> putAside() override;

private:
    Practise m_practise;
};

} // namespace latchround
