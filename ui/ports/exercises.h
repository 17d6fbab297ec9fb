// The exercises that can be practised on this tablet, and the way into one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "core/error/error.h"
#include "core/practice/debrief.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

class QWidget;

namespace latchround::ui {

/// An exercise that can be practised on this tablet.
struct ExerciseOffered {
    QString place;  ///< handed back to begin()
    std::string id; ///< by which attempts name it
    QString title;
    QString words;
    practice::Level level = practice::Level::Easy;
    int doors = 0;
    bool is_locked = false; ///< opened by the instructor's password only
};

/// An exercise that was begun on this tablet and not ended.
struct ExerciseUnfinished {
    ExerciseOffered exercise;
    Moment begun;
};

class Exercises : public Port {
public:
    virtual std::vector<ExerciseOffered> offered() const = 0;
    /// Asks for an instructor's file and keeps it with the exercises; every error where it cannot.
    /// Nothing where the person cancelled.
    virtual Checked<std::optional<QString>> takeIn(QWidget* parent) = 0;
    /// Puts an exercise on the screen, in a window and a register of its own. `password`: the
    /// instructor's, of a locked one.
    virtual Result<> begin(const QString& place, const QString& password) = 0;
    /// The one that was broken off last; nothing where every one was ended or put aside.
    virtual std::optional<ExerciseUnfinished> unfinished() const = 0;
    /// Puts it on the screen as it stood, the doors as at its beginning.
    virtual Result<> goOn(const QString& password) = 0;
    /// It is offered no more; what was recorded of it stays in its file.
    virtual Result<> putAside() = 0;
};

} // namespace latchround::ui
