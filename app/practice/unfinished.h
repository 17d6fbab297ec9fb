// Exercises that were begun and not ended: beside the register of each ("*.practice") lies a file
// "*.practice.unfinished" that says which exercise it is and how the doors really moved, until its
// debrief or until it is put aside. So a program that ends in the middle loses none of it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "app/register/sqlite_register.h"
#include "core/practice/stage.h"

namespace latchround::practice {

struct Unfinished {
    QString register_file; ///< whole path
    QString place;         ///< of the exercise, for openExercise()
    std::string exercise;  ///< its id
    std::string title;
    std::uint32_t seed = 0;
    Moment begun;
    std::vector<TrueRun> runs; ///< that were over
    int cautions_untrue = 0;   ///< after them
};

/// Flushed to the storage when it returns.
Result<> keepUnfinished(const Unfinished& exercise);

/// The one begun last; files that cannot be read are passed over, and left.
std::optional<Unfinished> unfinishedExercise();

/// It is not offered any more; its register stays.
Result<> putAside(const Unfinished& exercise);

/// Its register, with all that was recorded.
Result<std::unique_ptr<SqliteRegister>> registerOf(const Unfinished& exercise);

std::string jsonFrom(const Unfinished& exercise);
/// All but its register.
Checked<Unfinished> unfinishedFrom(std::string_view json, const std::string& where);

} // namespace latchround::practice
