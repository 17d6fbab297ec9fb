#include "core/error/exercise_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto exercise_errors_table = std::to_array<PhraseRow>({
    {errors::no_exercise, QT_TRANSLATE_NOOP("Core", "is missing: this is no exercise"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::unknown_exercise_form,
     QT_TRANSLATE_NOOP("Core", "this exercise is of another form than this program knows (%1)"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or have the exercise written anew.")},
    {errors::exercise_is_sealed, QT_TRANSLATE_NOOP("Core", "it is sealed by the instructor's word"),
     QT_TRANSLATE_NOOP("Core", "Open it with that word.")},
    {errors::not_an_exercise_id,
     QT_TRANSLATE_NOOP("Core", "has other signs than lower-case letters, digits and hyphens"),
     QT_TRANSLATE_NOOP("Core", "Write it like \"stairway-doors\".")},
    {errors::exercise_words_too_long, QT_TRANSLATE_NOOP("Core", "is longer than %1 bytes"),
     QT_TRANSLATE_NOOP("Core", "Say it shorter.")},
    {errors::no_exercise_doors, QT_TRANSLATE_NOOP("Core", "must be a list of doors"),
     QT_TRANSLATE_NOOP("Core", "Write it like [{\"door\": \"P-01\", \"faults\": []}].")},
    {errors::exercise_door_twice, QT_TRANSLATE_NOOP("Core", "door %1 is there twice"),
     QT_TRANSLATE_NOOP("Core", "Put all of its faults in one place.")},
    {errors::no_practice_door, QT_TRANSLATE_NOOP("Core", "the practice vessel has no door '%1'"),
     "%2"},
    {errors::use_practice_doors, QT_TRANSLATE_NOOP("Core", "Use one of its doors.")},
    {errors::fault_does_not_fit, QT_TRANSLATE_NOOP("Core", "door %1 cannot have the fault '%2'"),
     QT_TRANSLATE_NOOP("Core", "Give it to a door of another kind or fitting.")},
    {errors::faults_hide_each_other,
     QT_TRANSLATE_NOOP("Core", "'%1' and '%2' would hide one another on one door"),
     QT_TRANSLATE_NOOP("Core", "Give one of them to another door.")},
    {errors::nothing_drawn, QT_TRANSLATE_NOOP("Core", "stands without \"drawn\": nothing is drawn"),
     QT_TRANSLATE_NOOP("Core", "Say how many faults are drawn.")},
    {errors::too_many_drawn,
     QT_TRANSLATE_NOOP("Core", "only %1 faults more can be put into these doors"),
     QT_TRANSLATE_NOOP("Core", "Draw fewer, or name more doors.")},
    {errors::exam_without_mark,
     QT_TRANSLATE_NOOP("Core", "is missing: an exam says what passes it"),
     QT_TRANSLATE_NOOP("Core", "Add it, 1 to 100.")},
    {errors::mark_without_exam, QT_TRANSLATE_NOOP("Core", "only an exam is passed or failed"),
     QT_TRANSLATE_NOOP("Core", "Take it out, or write \"exam\" as the level.")},

    {errors::answers_not_by_door, QT_TRANSLATE_NOOP("Core", "this must be an object of doors"),
     QT_TRANSLATE_NOOP("Core", "Write it like {\"P-01\": {\"plate\": \"A-60\"}}.")},
    {errors::door_not_in_exercise,
     QT_TRANSLATE_NOOP("Core", "the exercise has no door of this number"), "%1"},
    {errors::not_released_this_way, QT_TRANSLATE_NOOP("Core", "door %1 is not released this way"),
     QT_TRANSLATE_NOOP("Core", "Write one of: %2.")},
    {errors::time_out_of_run, QT_TRANSLATE_NOOP("Core", "a time must be from 0 to %1 seconds"),
     QT_TRANSLATE_NOOP("Core", "Give seconds after the release.")},

    {errors::not_a_moment, QT_TRANSLATE_NOOP("Core", "this is no moment"),
     QT_TRANSLATE_NOOP("Core", "Write it like 2026-11-26T10:42:00+01:00.")},
    {errors::delay_not_a_number, QT_TRANSLATE_NOOP("Core", "a delay is no number: NOT kept"),
     QT_TRANSLATE_NOOP("Core", "Please report this.")},
    {errors::not_taken_away, QT_TRANSLATE_NOOP("Core", "could not be taken away"),
     QT_TRANSLATE_NOOP("Core", "Look whether the folder can be written to.")},

    {errors::exercise_id_ships,
     QT_TRANSLATE_NOOP("Core", "an exercise of this id ships with the program"),
     QT_TRANSLATE_NOOP("Core", "Give yours another id.")},
    {errors::exercise_id_taken,
     QT_TRANSLATE_NOOP("Core", "another exercise of this id is kept here already"),
     QT_TRANSLATE_NOOP("Core", "Give yours another id, or take away %1.")},

    {errors::exercise_not_sealed, QT_TRANSLATE_NOOP("Core", "this exercise is not sealed")},
    {errors::exercise_needs_word,
     QT_TRANSLATE_NOOP("Core", "it is sealed by the instructor's word"),
     QT_TRANSLATE_NOOP("Core", "Give the word.")},
    {errors::word_too_short, QT_TRANSLATE_NOOP("Core", "it must have at least %1 characters"),
     QT_TRANSLATE_NOOP("Core", "Choose a longer one, best several words.")},
    {errors::no_memory_for_word,
     QT_TRANSLATE_NOOP("Core", "this machine has too little memory free for the word"),
     QT_TRANSLATE_NOOP("Core", "Close other programs and try again.")},
    {errors::word_does_not_open,
     QT_TRANSLATE_NOOP("Core", "the word does not open it: it is not the word it was sealed with, "
                               "or the file was changed after it was sealed"),
     QT_TRANSLATE_NOOP("Core",
                       "Type the word as the instructor chose it, or have the file given again.")},
    {errors::seal_damaged, QT_TRANSLATE_NOOP("Core", "the seal is damaged"),
     QT_TRANSLATE_NOOP("Core", "Have the file given again.")},
    {errors::unknown_seal_form,
     QT_TRANSLATE_NOOP("Core", "this seal is of another form than this program knows"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or have the exercise sealed anew.")},
    {errors::sealed_faults_in_open,
     QT_TRANSLATE_NOOP("Core", "a sealed exercise has faults in the open"),
     QT_TRANSLATE_NOOP("Core", "Have the exercise sealed anew.")},
    {errors::changed_after_sealing,
     QT_TRANSLATE_NOOP("Core", "what stands open in it was changed after it was sealed: title, "
                               "words, level, doors or mark"),
     QT_TRANSLATE_NOOP("Core", "Have the file given again.")},
});

} // namespace

const PhraseRows exercise_errors_rows = exercise_errors_table;

} // namespace latchround::ui
