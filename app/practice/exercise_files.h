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
    Exercise front; ///< as far as it can be read without a word; of a sealed one without faults
    bool is_sealed = false;
    Errors errors; ///< not empty: it cannot be practised, and `front` has nothing
};

/// Those that ship, in their order, then the instructors' own by file name.
std::vector<ExerciseFile> exerciseFiles();

/// By its place, by the id of one that is listed, or by the path of a file anywhere. `word`: the
/// instructor's; of no account where it is not sealed.
Checked<Exercise> openExercise(const QString& place, std::string_view word = {});

/// What can be read of it without the word.
Checked<ExerciseFile> lookAtExercise(const QString& place);

/// Copies an instructor's file into the practice folder, so that it is listed; answers its place
/// there. Refuses a faulty one, and another one with an id that is taken.
Checked<QString> keepExerciseFile(const QString& path);

/// Seals the exercise of a file into another file, which is whole afterwards or untouched.
Checked<ExerciseFile> sealExerciseFile(const QString& from, const QString& to,
                                       std::string_view word);

} // namespace latchround::practice
