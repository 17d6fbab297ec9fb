// What the program with its screens could not do.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// At the start.
inline constexpr PhraseCode<0> no_display{"no-display"};
inline constexpr PhraseCode<0> no_such_register{"no-such-register"};
inline constexpr PhraseCode<1> flag_rules_not_in_force{"flag-rules-not-in-force"}; ///< why not

// Of what a person wanted.
inline constexpr PhraseCode<0> entries_wait_here{"entries-wait-here"};
inline constexpr PhraseCode<0> no_handover_looked_at{"no-handover-looked-at"};
inline constexpr PhraseCode<0> no_exercise_broken_off{"no-exercise-broken-off"};
inline constexpr PhraseCode<0> exercise_changed_since{"exercise-changed-since"};
inline constexpr PhraseCode<0> not_a_door_of_walkdown{"not-a-door-of-walkdown"};
inline constexpr PhraseCode<0> cautions_not_confirmed{"cautions-not-confirmed"};

// Photographs.
inline constexpr PhraseCode<0> picture_unreadable{"picture-unreadable"};
inline constexpr PhraseCode<1> picture_too_large{"picture-too-large"}; ///< more than so many MB
inline constexpr PhraseCode<0> no_picture{"no-picture"};
inline constexpr PhraseCode<0> picture_not_kept{"picture-not-kept"};

// What waits to be saved.
inline constexpr PhraseCode<1> another_program_writes{"another-program-writes"}; ///< which
inline constexpr PhraseCode<0> door_not_on_walkdown{"door-not-on-walkdown"};
inline constexpr PhraseCode<0> something_not_saved_yet{"something-not-saved-yet"};
inline constexpr PhraseCode<0> ended_before_saved{"ended-before-saved"};
inline constexpr PhraseCode<0> nothing_refused{"nothing-refused"};

// The file of what waits. What is wrong with it, and where it is kept.
inline constexpr PhraseCode<0> waiting_cut_short{"waiting-cut-short"};
inline constexpr PhraseCode<0> waiting_kept_nowhere_else{"waiting-kept-nowhere-else"};
inline constexpr PhraseCode<2> waiting_unread{"waiting-unread"};
inline constexpr PhraseCode<1> waiting_unread_stays{"waiting-unread-stays"};
inline constexpr PhraseCode<2> waiting_unread_in_part{"waiting-unread-in-part"};
inline constexpr PhraseCode<1> waiting_unread_in_part_stays{"waiting-unread-in-part-stays"};

} // namespace latchround::errors
