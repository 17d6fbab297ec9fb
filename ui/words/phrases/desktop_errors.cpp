#include "core/error/desktop_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto desktop_errors_table = std::to_array<PhraseRow>({
    {errors::no_display, QT_TRANSLATE_NOOP("Core", "no display is available"),
     QT_TRANSLATE_NOOP("Core", "Start it on a desktop, or use latchround-cli.")},
    {errors::no_such_register, QT_TRANSLATE_NOOP("Core", "there is no such register file"),
     QT_TRANSLATE_NOOP("Core", "Check the path, or start without one.")},
    {errors::flag_rules_not_in_force,
     QT_TRANSLATE_NOOP("Core", "The flag's own rules are NOT in force: %1")},

    {errors::entries_wait_here,
     QT_TRANSLATE_NOOP("Core", "entries for this vessel are not saved yet and cannot be kept "
                               "elsewhere"),
     QT_TRANSLATE_NOOP("Core", "Save them first.")},
    {errors::no_handover_looked_at, QT_TRANSLATE_NOOP("Core", "no file has been opened"),
     QT_TRANSLATE_NOOP("Core", "Open the file first.")},
    {errors::no_exercise_broken_off, QT_TRANSLATE_NOOP("Core", "there is no unfinished exercise")},
    {errors::exercise_changed_since,
     QT_TRANSLATE_NOOP("Core", "the exercise has changed since it was begun"),
     QT_TRANSLATE_NOOP("Core", "Put it aside and begin again.")},
    {errors::not_a_door_of_walkdown, QT_TRANSLATE_NOOP("Core", "is not in this walkdown")},
    {errors::cautions_not_confirmed, QT_TRANSLATE_NOOP("Core", "not all cautions are confirmed"),
     QT_TRANSLATE_NOOP("Core", "Confirm each of them first.")},

    {errors::picture_unreadable, QT_TRANSLATE_NOOP("Core", "the file cannot be read"),
     QT_TRANSLATE_NOOP("Core", "Choose another, or check its permissions.")},
    {errors::picture_too_large, QT_TRANSLATE_NOOP("Core", "the picture is larger than %1 MB"),
     QT_TRANSLATE_NOOP("Core", "Take it again at a smaller size.")},
    {errors::no_picture, QT_TRANSLATE_NOOP("Core", "this is not a picture that can be shown"),
     QT_TRANSLATE_NOOP("Core", "Choose a JPEG or PNG file.")},
    {errors::picture_not_kept, QT_TRANSLATE_NOOP("Core", "it could not be saved"),
     QT_TRANSLATE_NOOP("Core", "Take it again.")},

    {errors::another_program_writes,
     QT_TRANSLATE_NOOP("Core", "another program is writing to it (%1)"),
     QT_TRANSLATE_NOOP("Core", "Close it there, then open the vessel here again.")},
    {errors::door_not_on_walkdown, QT_TRANSLATE_NOOP("Core", "it is not in the walkdown on screen"),
     QT_TRANSLATE_NOOP("Core", "Choose the door again.")},
    {errors::something_not_saved_yet, QT_TRANSLATE_NOOP("Core", "Something is not saved yet"),
     QT_TRANSLATE_NOOP("Core", "Save it first, then try again.")},
    {errors::ended_before_saved,
     QT_TRANSLATE_NOOP("Core", "the program ended before this was saved"),
     QT_TRANSLATE_NOOP("Core", "Save it now.")},
    {errors::nothing_refused, QT_TRANSLATE_NOOP("Core", "None of it is refused any more")},

    {errors::waiting_cut_short, QT_TRANSLATE_NOOP("Core", "it was cut short")},
    {errors::waiting_kept_nowhere_else,
     QT_TRANSLATE_NOOP("Core", "the part that cannot be read is kept nowhere else"),
     QT_TRANSLATE_NOOP("Core", "Free some space and start again.")},
    {errors::waiting_unread,
     QT_TRANSLATE_NOOP("Core", "unsaved entries kept here cannot be read: %1"),
     QT_TRANSLATE_NOOP("Core", "The file is kept as %2; report this.")},
    {errors::waiting_unread_stays,
     QT_TRANSLATE_NOOP("Core", "unsaved entries kept here cannot be read: %1"),
     QT_TRANSLATE_NOOP("Core", "The file stays as it is and nothing is added to it: free some "
                               "space, then start again.")},
    {errors::waiting_unread_in_part,
     QT_TRANSLATE_NOOP("Core", "some unsaved entries kept here cannot be read: %1"),
     QT_TRANSLATE_NOOP("Core", "The file is kept as %2; report this.")},
    {errors::waiting_unread_in_part_stays,
     QT_TRANSLATE_NOOP("Core", "some unsaved entries kept here cannot be read: %1"),
     QT_TRANSLATE_NOOP("Core", "The file stays as it is and nothing is added to it: free some "
                               "space, then start again.")},
});

} // namespace

const PhraseRows desktop_errors_rows = desktop_errors_table;

} // namespace latchround::ui
