// An instructor's exercise whose faults nobody reads in the file. Title, words, level, doors and
// the mark that passes stand open; the whole exercise lies beside them encrypted (libsodium:
// Argon2id makes the key from the password, XSalsa20-Poly1305 encrypts and authenticates).
//
// What it is worth: who has only the file learns nothing of the faults. The program needs the
// password to run the exercise, so the instructor types it in at the start; a trainee who is told
// the password could unlock the file as well as the program can.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/practice/exercise.h"

namespace latchround::practice {

/// Characters. Shorter ones are too easily tried out (our choice, no source).
inline constexpr std::size_t shortest_password = 6;

bool isLockedExercise(std::string_view json);

/// Refuses a password that is too short.
Result<std::string> lockedExercise(const Exercise& exercise, std::string_view password);

/// What can be read without the password: an exercise without faults. `where` names the file.
Checked<Exercise> frontOfLocked(std::string_view json, const std::string& where,
                                const Arrangement& vessel);

/// Refuses another password, and a file in which anything was changed after it was locked.
Checked<Exercise> unlockedExercise(std::string_view json, const std::string& where,
                                   std::string_view password, const Arrangement& vessel);

} // namespace latchround::practice
