// The exercises there are: those that ship, compiled in, and the instructors' own files in the
// practice folder.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <QString>

#include "core/error/error.h"
#include "core/practice/exercise.h"

namespace latchround::practice {

struct ExerciseFile {
    QString place;  ///< id of one that ships, path of a file; handed back to openExercise()
    Exercise front; ///< as far as it can be read without a password; of a locked one without faults
    bool is_locked = false;
    Errors errors; ///< not empty: it cannot be practised, and `front` has nothing
};

/// Those that ship, in their order, then the instructors' own by file name.
std::vector<ExerciseFile> exerciseFiles();

/// By its place, by the id of one that is listed, or by the path of a file anywhere. `password`:
/// the instructor's; of no account where it is not locked.
Checked<Exercise> openExercise(const QString& place, std::string_view password = {});

/// What can be read of it without the password.
Checked<ExerciseFile> lookAtExercise(const QString& place);

/// Copies an instructor's file into the practice folder, so that it is listed; answers its place
/// there. Refuses a faulty one, and another one with an id that is taken.
Checked<QString> keepExerciseFile(const QString& path);

/// Locks the exercise of a file into another file, which is whole afterwards or untouched.
Checked<ExerciseFile> lockExerciseFile(const QString& from, const QString& to,
                                       std::string_view password);

} // namespace latchround::practice
