#include "core/error/exercise_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto exercise_errors_table = std::to_array<PhraseRow>({
    {errors::no_exercise, QT_TRANSLATE_NOOP("Core", "is missing: this is not an exercise"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::unknown_exercise_form,
     QT_TRANSLATE_NOOP("Core", "this program cannot read this form of exercise (it reads form %1)"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or have the exercise written again.")},
    {errors::exercise_is_locked, QT_TRANSLATE_NOOP("Core", "it is locked with a password"),
     QT_TRANSLATE_NOOP("Core", "Unlock it with that password.")},
    {errors::not_an_exercise_id,
     QT_TRANSLATE_NOOP("Core", "has characters other than lower-case letters, digits and hyphens"),
     QT_TRANSLATE_NOOP("Core", "Write it like \"stairway-doors\".")},
    {errors::exercise_words_too_long, QT_TRANSLATE_NOOP("Core", "is longer than %1 bytes"),
     QT_TRANSLATE_NOOP("Core", "Make it shorter.")},
    {errors::no_exercise_doors, QT_TRANSLATE_NOOP("Core", "must be a list of doors"),
     QT_TRANSLATE_NOOP("Core", "Write it like [{\"door\": \"P-01\", \"faults\": []}].")},
    {errors::exercise_door_twice, QT_TRANSLATE_NOOP("Core", "door %1 is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Put all of its faults in one place.")},
    {errors::no_practice_door, QT_TRANSLATE_NOOP("Core", "the practice vessel has no door '%1'"),
     "%2"},
    {errors::use_practice_doors, QT_TRANSLATE_NOOP("Core", "Use one of its doors.")},
    {errors::fault_does_not_fit, QT_TRANSLATE_NOOP("Core", "door %1 cannot have the fault '%2'"),
     QT_TRANSLATE_NOOP("Core", "Give it to a door of another kind or fitting.")},
    {errors::faults_hide_each_other,
     QT_TRANSLATE_NOOP("Core", "'%1' and '%2' would hide each other on one door"),
     QT_TRANSLATE_NOOP("Core", "Give one of them to another door.")},
    {errors::nothing_drawn,
     QT_TRANSLATE_NOOP("Core", "is given without \"drawn\": nothing is drawn"),
     QT_TRANSLATE_NOOP("Core", "Say how many faults are drawn.")},
    {errors::too_many_drawn, QT_TRANSLATE_NOOP("Core", "these doors can take only %1 more faults"),
     QT_TRANSLATE_NOOP("Core", "Draw fewer, or name more doors.")},
    {errors::exam_without_mark, QT_TRANSLATE_NOOP("Core", "is missing: an exam needs a pass mark"),
     QT_TRANSLATE_NOOP("Core", "Add it, 1 to 100.")},
    {errors::mark_without_exam, QT_TRANSLATE_NOOP("Core", "only an exam has a pass mark"),
     QT_TRANSLATE_NOOP("Core", "Remove it, or write \"exam\" as the level.")},

    {errors::answers_not_by_door, QT_TRANSLATE_NOOP("Core", "this must be an object of doors"),
     QT_TRANSLATE_NOOP("Core", "Write it like {\"P-01\": {\"plate\": \"A-60\"}}.")},
    {errors::door_not_in_exercise,
     QT_TRANSLATE_NOOP("Core", "the exercise has no door with this number"), "%1"},
    {errors::not_released_this_way, QT_TRANSLATE_NOOP("Core", "door %1 is not released this way"),
     QT_TRANSLATE_NOOP("Core", "Write one of: %2.")},
    {errors::time_out_of_run, QT_TRANSLATE_NOOP("Core", "a time must be from 0 to %1 seconds"),
     QT_TRANSLATE_NOOP("Core", "Give seconds after the release.")},

    {errors::not_a_moment, QT_TRANSLATE_NOOP("Core", "this is not a date and time"),
     QT_TRANSLATE_NOOP("Core", "Write it like 2026-11-26T10:42:00+01:00.")},
    {errors::delay_not_a_number, QT_TRANSLATE_NOOP("Core", "a delay is not a number: NOT saved"),
     QT_TRANSLATE_NOOP("Core", "Please report this.")},
    {errors::not_taken_away, QT_TRANSLATE_NOOP("Core", "could not be removed"),
     QT_TRANSLATE_NOOP("Core", "Check that you can write to the folder.")},

    {errors::exercise_id_ships,
     QT_TRANSLATE_NOOP("Core", "an exercise with this id comes with the program"),
     QT_TRANSLATE_NOOP("Core", "Give yours another id.")},
    {errors::exercise_id_taken,
     QT_TRANSLATE_NOOP("Core", "another exercise with this id is already here"),
     QT_TRANSLATE_NOOP("Core", "Give yours another id, or remove %1.")},

    {errors::exercise_not_locked, QT_TRANSLATE_NOOP("Core", "this exercise is not locked")},
    {errors::exercise_needs_password, QT_TRANSLATE_NOOP("Core", "it is locked with a password"),
     QT_TRANSLATE_NOOP("Core", "Enter the password.")},
    {errors::password_too_short, QT_TRANSLATE_NOOP("Core", "it must have at least %1 characters"),
     QT_TRANSLATE_NOOP("Core", "Choose a longer one; several words are best.")},
    {errors::no_memory_for_password,
     QT_TRANSLATE_NOOP("Core", "this computer has too little free memory to check the password"),
     QT_TRANSLATE_NOOP("Core", "Close other programs and try again.")},
    {errors::password_does_not_open,
     QT_TRANSLATE_NOOP("Core", "the password does not open it: the password is wrong, or the file "
                               "was changed after it was locked"),
     QT_TRANSLATE_NOOP("Core",
                       "Type the password exactly as the instructor chose it, or ask for the file "
                       "again.")},
    {errors::lock_damaged, QT_TRANSLATE_NOOP("Core", "the lock is damaged"),
     QT_TRANSLATE_NOOP("Core", "Ask for the file again.")},
    {errors::unknown_lock_form,
     QT_TRANSLATE_NOOP("Core", "this lock has a format that this program does not know"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or have the exercise locked again.")},
    {errors::locked_faults_in_open,
     QT_TRANSLATE_NOOP("Core", "it is locked, but its open part shows faults"),
     QT_TRANSLATE_NOOP("Core", "Have the exercise locked again.")},
    {errors::changed_after_locking,
     QT_TRANSLATE_NOOP("Core", "its open part was changed after it was locked: title, "
                               "words, level, doors or pass mark"),
     QT_TRANSLATE_NOOP("Core", "Ask for the file again.")},
});

} // namespace

const PhraseRows exercise_errors_rows = exercise_errors_table;

} // namespace latchround::ui
