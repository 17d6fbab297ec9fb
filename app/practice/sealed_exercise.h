// An instructor's exercise whose faults nobody reads in the file. Title, words, level, doors and
// the mark that passes stand open; the whole exercise lies beside them encrypted (libsodium:
// Argon2id makes the key from the instructor's word, XSalsa20-Poly1305 encrypts and authenticates).
//
// What it is worth: who has only the file learns nothing of the faults. The program needs the word
// to run the exercise, so the instructor types it in at the start; a trainee who is told the word
// could unseal the file as well as the program can.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/practice/exercise.h"

namespace latchround::practice {

/// Characters. Shorter words are too easily tried out (our choice, no source).
inline constexpr std::size_t shortest_word = 6;

bool isSealedExercise(std::string_view json);

/// Refuses a word that is too short.
Result<std::string> sealedExercise(const Exercise& exercise, std::string_view word);

/// What can be read without the word: an exercise without faults. `where` names the file.
Checked<Exercise> frontOfSealed(std::string_view json, const std::string& where,
                                const Arrangement& vessel);

/// Refuses another word, and a file in which anything was changed after it was sealed.
Checked<Exercise> unsealedExercise(std::string_view json, const std::string& where,
                                   std::string_view word, const Arrangement& vessel);

} // namespace latchround::practice
