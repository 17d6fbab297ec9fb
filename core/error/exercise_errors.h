// What is wrong with an exercise of practice, or with what is kept of one.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// What an exercise says.
inline constexpr PhraseCode<0> no_exercise{"no-exercise"};
inline constexpr PhraseCode<1> unknown_exercise_form{"unknown-exercise-form"}; ///< the form known
inline constexpr PhraseCode<0> exercise_is_locked{"exercise-is-locked"};
inline constexpr PhraseCode<0> not_an_exercise_id{"not-an-exercise-id"};
inline constexpr PhraseCode<1> exercise_words_too_long{
    "exercise-words-too-long"}; ///< at most so many bytes
inline constexpr PhraseCode<0> no_exercise_doors{"no-exercise-doors"};
inline constexpr PhraseCode<1> exercise_door_twice{"exercise-door-twice"}; ///< its number
inline constexpr PhraseCode<2> no_practice_door{"no-practice-door"};     ///< its number, what to do
inline constexpr PhraseCode<0> use_practice_doors{"use-practice-doors"}; ///< what to do
inline constexpr PhraseCode<2> fault_does_not_fit{"fault-does-not-fit"}; ///< door, fault
inline constexpr PhraseCode<2> faults_hide_each_other{"faults-hide-each-other"};
inline constexpr PhraseCode<0> nothing_drawn{"nothing-drawn"};
inline constexpr PhraseCode<1> too_many_drawn{"too-many-drawn"}; ///< how many find a door
inline constexpr PhraseCode<0> exam_without_mark{"exam-without-mark"};
inline constexpr PhraseCode<0> mark_without_exam{"mark-without-exam"};

// Answers.
inline constexpr PhraseCode<0> answers_not_by_door{"answers-not-by-door"};
inline constexpr PhraseCode<1> door_not_in_exercise{"door-not-in-exercise"}; ///< what to do
inline constexpr PhraseCode<2> not_released_this_way{
    "not-released-this-way"}; ///< the door, the ways that it is released
inline constexpr PhraseCode<1> time_out_of_run{"time-out-of-run"}; ///< the longest, in seconds

// What is kept of an exercise.
inline constexpr PhraseCode<0> not_a_moment{"not-a-moment"};
inline constexpr PhraseCode<0> delay_not_a_number{"delay-not-a-number"};
inline constexpr PhraseCode<0> not_taken_away{"not-taken-away"};

// Files of exercises.
inline constexpr PhraseCode<0> exercise_id_ships{"exercise-id-ships"};
inline constexpr PhraseCode<1> exercise_id_taken{"exercise-id-taken"}; ///< the file of the other

// Locked ones.
inline constexpr PhraseCode<0> exercise_not_locked{"exercise-not-locked"};
inline constexpr PhraseCode<0> exercise_needs_password{"exercise-needs-password"};
inline constexpr PhraseCode<1> password_too_short{
    "password-too-short"}; ///< at least so many characters
inline constexpr PhraseCode<0> no_memory_for_password{"no-memory-for-password"};
inline constexpr PhraseCode<0> password_does_not_open{"password-does-not-open"};
inline constexpr PhraseCode<0> lock_damaged{"lock-damaged"};
inline constexpr PhraseCode<0> unknown_lock_form{"unknown-lock-form"};
inline constexpr PhraseCode<0> locked_faults_in_open{"locked-faults-in-open"};
inline constexpr PhraseCode<0> changed_after_locking{"changed-after-locking"};

} // namespace latchround::errors
