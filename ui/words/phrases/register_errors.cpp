#include "core/error/register_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto register_errors_table = std::to_array<PhraseRow>({
    {errors::not_saved, QT_TRANSLATE_NOOP("Core", "%1: NOT saved")},
    {errors::not_adopted, QT_TRANSLATE_NOOP("Core", "%1: NOT adopted")},
    {errors::not_taken_in, QT_TRANSLATE_NOOP("Core", "%1: NOT imported")},

    {errors::stopped, QT_TRANSLATE_NOOP("Core", "stopped as requested")},

    {errors::refers_to_unknown,
     QT_TRANSLATE_NOOP("Core", "it refers to something that is not in this register"),
     QT_TRANSLATE_NOOP("Core", "Record what it refers to first.")},
    {errors::record_never_changed,
     QT_TRANSLATE_NOOP("Core", "records are never changed or deleted (%1)"),
     QT_TRANSLATE_NOOP("Core", "Record a correction instead.")},
    {errors::value_of_wrong_kind,
     QT_TRANSLATE_NOOP("Core", "a text contains invalid bytes, or a value is of the wrong kind"),
     QT_TRANSLATE_NOOP("Core", "Enter it again.")},
    {errors::value_missing, QT_TRANSLATE_NOOP("Core", "a value is missing or is not a number (%1)"),
     QT_TRANSLATE_NOOP("Core", "Enter it again.")},
    {errors::recorded_twice, QT_TRANSLATE_NOOP("Core", "it appears twice (%1)"),
     QT_TRANSLATE_NOOP("Core", "Remove one of the two.")},
    {errors::value_not_allowed,
     QT_TRANSLATE_NOOP("Core", "the register does not allow one of the values (%1)"),
     QT_TRANSLATE_NOOP("Core", "Enter it again.")},
    {errors::disk_full, QT_TRANSLATE_NOOP("Core", "the disk is full"),
     QT_TRANSLATE_NOOP("Core", "Free some space and try again.")},
    {errors::disk_fault, QT_TRANSLATE_NOOP("Core", "the disk reports a fault (SQLite %1)"),
     QT_TRANSLATE_NOOP("Core",
                       "Try again; if it happens again, save the register to another disk.")},
    {errors::somebody_is_writing,
     QT_TRANSLATE_NOOP("Core", "another program is writing to this register"),
     QT_TRANSLATE_NOOP("Core", "Wait a moment or close the other program, then try again.")},
    {errors::register_write_protected,
     QT_TRANSLATE_NOOP("Core", "you cannot write to the register here"),
     QT_TRANSLATE_NOOP("Core", "Copy it to a folder you can write to and open it there.")},
    {errors::register_not_opened,
     QT_TRANSLATE_NOOP("Core", "the file cannot be opened (SQLite %1)"),
     QT_TRANSLATE_NOOP("Core", "Check that the disk is connected and that you can write to the "
                               "folder.")},
    {errors::register_corrupt, QT_TRANSLATE_NOOP("Core", "the file is damaged (SQLite %1)"),
     QT_TRANSLATE_NOOP("Core", "Open the last backup instead.")},
    {errors::no_register, QT_TRANSLATE_NOOP("Core", "this is not a vessel register"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::out_of_memory, QT_TRANSLATE_NOOP("Core", "the computer is out of memory"),
     QT_TRANSLATE_NOOP("Core", "Close other programs and try again.")},
    {errors::too_large_for_register, QT_TRANSLATE_NOOP("Core", "it is too large for the register"),
     QT_TRANSLATE_NOOP("Core", "Use a smaller photograph or a shorter text.")},
    {errors::sqlite_said, QT_TRANSLATE_NOOP("Core", "%1 (SQLite %2)"),
     QT_TRANSLATE_NOOP("Core", "Try again; if it happens again, open the last backup.")},

    {errors::no_sqlite_driver, QT_TRANSLATE_NOOP("Core", "Qt's SQLite driver is not installed"),
     QT_TRANSLATE_NOOP("Core", "Install the package libqt6sql6-sqlite.")},
    {errors::sqlite_driver_unusable, QT_TRANSLATE_NOOP("Core", "Qt's SQLite driver is not usable"),
     QT_TRANSLATE_NOOP("Core", "Install the package libqt6sql6-sqlite.")},
    {errors::no_file_layer, QT_TRANSLATE_NOOP("Core", "there is no file layer with that name")},

    {errors::register_missing_beside,
     QT_TRANSLATE_NOOP("Core",
                       "the register is missing, but \"%1\" beside it contains its entries"),
     QT_TRANSLATE_NOOP("Core", "Put the register back beside it, or move that file away to begin "
                               "a new register.")},
    {errors::register_folder_missing, QT_TRANSLATE_NOOP("Core", "the folder does not exist"),
     QT_TRANSLATE_NOOP("Core", "Create the folder, or choose another place.")},
    {errors::register_folder_read_only,
     QT_TRANSLATE_NOOP("Core", "you cannot write to this folder"),
     QT_TRANSLATE_NOOP("Core", "Choose another folder.")},
    {errors::register_not_placed, QT_TRANSLATE_NOOP("Core", "the new register cannot be put there"),
     QT_TRANSLATE_NOOP("Core", "Choose another folder.")},
    {errors::disk_fault_here, QT_TRANSLATE_NOOP("Core", "the disk reports a fault"),
     QT_TRANSLATE_NOOP("Core", "Try again; if it happens again, choose another disk.")},

    {errors::register_is_no_file, QT_TRANSLATE_NOOP("Core", "this is not a file"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::register_unreadable, QT_TRANSLATE_NOOP("Core", "you cannot read this file"),
     QT_TRANSLATE_NOOP("Core", "Copy it to a folder of your own and open it there.")},
    {errors::register_read_only,
     QT_TRANSLATE_NOOP("Core", "the register is in a read-only place; nothing can be recorded"),
     QT_TRANSLATE_NOOP("Core", "Copy it to a folder you can write to and open it there.")},
    {errors::register_empty,
     QT_TRANSLATE_NOOP("Core", "the file is empty; it is not a vessel register"),
     QT_TRANSLATE_NOOP("Core", "Delete it to begin a new register with this name, or choose "
                               "another file.")},
    {errors::register_of_others,
     QT_TRANSLATE_NOOP("Core", "this is not a Latchround vessel register"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::register_newer,
     QT_TRANSLATE_NOOP("Core", "the register was written by a newer program (version %1; this one "
                               "reads up to %2)"),
     QT_TRANSLATE_NOOP("Core", "Update this program, then open it again.")},
    {errors::register_unfinished, QT_TRANSLATE_NOOP("Core", "the register was never completed"),
     QT_TRANSLATE_NOOP("Core", "Open the last backup instead.")},
    {errors::setting_not_accepted,
     QT_TRANSLATE_NOOP("Core", "SQLite does not accept \"%1\" here (it answers %2), so entries "
                               "would not be safe"),
     QT_TRANSLATE_NOOP("Core", "Copy the register to a disk of this computer and open it there.")},
    {errors::no_write_ahead_log,
     QT_TRANSLATE_NOOP("Core", "this disk does not support a write-ahead log"),
     QT_TRANSLATE_NOOP("Core", "Copy the register to a disk of this computer and open it there.")},
    {errors::other_version_writes,
     QT_TRANSLATE_NOOP("Core", "a program of another version is writing to it"),
     QT_TRANSLATE_NOOP("Core", "Close it there, then open it here.")},
    {errors::rows_would_dangle,
     QT_TRANSLATE_NOOP("Core", "updating the register would leave rows of %1 with missing "
                               "references: NOT changed"),
     QT_TRANSLATE_NOOP("Core", "Open it with the program that wrote it.")},
    {errors::register_damaged, QT_TRANSLATE_NOOP("Core", "the file is damaged (%1)"),
     QT_TRANSLATE_NOOP("Core", "Open the last backup instead.")},

    {errors::register_unsound, QT_TRANSLATE_NOOP("Core", "the file is damaged: %1"),
     QT_TRANSLATE_NOOP("Core", "Open the last backup instead.")},
    {errors::row_refers_to_nothing,
     QT_TRANSLATE_NOOP("Core", "a row of %1 has a missing reference")},
    {errors::fact_half_there, QT_TRANSLATE_NOOP("Core", "entry %1 is incomplete")},

    {errors::practice_register,
     QT_TRANSLATE_NOOP("Core",
                       "this is a practice register: nothing in it is a record of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::practice_takes_nothing_in,
     QT_TRANSLATE_NOOP("Core",
                       "this is a practice register: nothing in it is a record of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Import the file into the register of its vessel.")},
    {errors::practice_signs_nothing,
     QT_TRANSLATE_NOOP("Core",
                       "this is a practice register: nothing in it is a record of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Sign and export in a vessel's register.")},
    {errors::vessel_register,
     QT_TRANSLATE_NOOP("Core", "this is a vessel's register: it cannot be used for practice"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::practice_vessel_alone,
     QT_TRANSLATE_NOOP("Core", "a practice register can hold only the practice vessel"),
     QT_TRANSLATE_NOOP("Core", "Import it into a register of its own.")},
    {errors::number_of_practice,
     QT_TRANSLATE_NOOP("Core", "the number %1 is reserved for the practice vessel, whose doors are "
                               "simulated"),
     QT_TRANSLATE_NOOP("Core", "Give the vessel's own number, or use it under Practice.")},

    {errors::another_program, QT_TRANSLATE_NOOP("Core", "another program")},
    {errors::process_on_machine, QT_TRANSLATE_NOOP("Core", "process %1 on %2")},
    {errors::register_written_elsewhere,
     QT_TRANSLATE_NOOP("Core", "another program is writing to this register (%1)"),
     QT_TRANSLATE_NOOP("Core", "Close it there first.")},
    {errors::log_taken_away,
     QT_TRANSLATE_NOOP("Core", "another program removed the register's log"),
     QT_TRANSLATE_NOOP("Core", "Try again: the contents of the log are put into the register "
                               "first. Do not open the register in another program meanwhile.")},
    {errors::register_closed, QT_TRANSLATE_NOOP("Core", "the register is closed after a fault"),
     QT_TRANSLATE_NOOP("Core", "Open it again.")},

    {errors::walkdown_has_ended, QT_TRANSLATE_NOOP("Core", "its walkdown has ended"),
     QT_TRANSLATE_NOOP("Core", "Take back the end of the walkdown first, or begin another.")},
    {errors::undo_does_not_reach, QT_TRANSLATE_NOOP("Core", "%1 cannot be undone"),
     QT_TRANSLATE_NOOP("Core", "Only what you recorded on this tablet can be undone; record a "
                               "correction.")},
    {errors::would_replace_other,
     QT_TRANSLATE_NOOP("Core", "it would replace %1, which is about something else"),
     QT_TRANSLATE_NOOP("Core", "Record it separately.")},
    {errors::fact_id_taken,
     QT_TRANSLATE_NOOP("Core", "another entry with this id is recorded already"),
     QT_TRANSLATE_NOOP("Core", "Record a correction under an id of its own.")},
    {errors::fact_is_no_photograph, QT_TRANSLATE_NOOP("Core", "this is not a photograph")},
    {errors::photograph_hash_differs,
     QT_TRANSLATE_NOOP("Core", "the photograph does not match its hash"),
     QT_TRANSLATE_NOOP("Core", "Take or choose the photograph again.")},
    {errors::photograph_not_here, QT_TRANSLATE_NOOP("Core", "its bytes are not in this register"),
     QT_TRANSLATE_NOOP("Core", "Import it from the tablet that took it.")},
    {errors::no_such_door,
     QT_TRANSLATE_NOOP("Core", "there is no such door in this vessel's register"),
     QT_TRANSLATE_NOOP("Core", "Check the number, or first import an arrangement that lists the "
                               "door.")},
    {errors::reference_not_here, QT_TRANSLATE_NOOP("Core", "%1 is not in this register"),
     QT_TRANSLATE_NOOP("Core", "Record it first, or both together.")},

    {errors::its_walkdown, QT_TRANSLATE_NOOP("Core", "the walkdown \"%1\"")},
    {errors::its_run, QT_TRANSLATE_NOOP("Core", "the run \"%1\"")},
    {errors::its_deficiency, QT_TRANSLATE_NOOP("Core", "the deficiency \"%1\"")},
    {errors::its_person, QT_TRANSLATE_NOOP("Core", "the person \"%1\"")},
    {errors::what_it_repeats, QT_TRANSLATE_NOOP("Core", "the deficiency it repeats, \"%1\"")},
    {errors::what_it_shows, QT_TRANSLATE_NOOP("Core", "the entry it shows, \"%1\"")},
    {errors::what_it_replaces, QT_TRANSLATE_NOOP("Core", "the entry it replaces, \"%1\"")},
    {errors::what_stands, QT_TRANSLATE_NOOP("Core", "the entry that stands, \"%1\"")},
    {errors::what_yields, QT_TRANSLATE_NOOP("Core", "the entry it overrules, \"%1\"")},

    {errors::door_with_fact_dropped,
     QT_TRANSLATE_NOOP("Core",
                       "the new arrangement has no such door, but 1 entry is recorded about it"),
     QT_TRANSLATE_NOOP("Core", "Keep the door in the arrangement, under the number used when it "
                               "was tested.")},
    {errors::door_with_facts_dropped,
     QT_TRANSLATE_NOOP("Core", "the new arrangement has no such door, but %1 entries are recorded "
                               "about it"),
     QT_TRANSLATE_NOOP("Core", "Keep the door in the arrangement, under the number used when it "
                               "was tested.")},
    {errors::and_one_more_door, QT_TRANSLATE_NOOP("Core", "%1 (and 1 more such door)")},
    {errors::and_more_doors, QT_TRANSLATE_NOOP("Core", "%1 (and %2 more such doors)")},
    {errors::incoming_drops_door_with_fact,
     QT_TRANSLATE_NOOP("Core",
                       "the arrangement in the file has no such door, but 1 entry is recorded "
                       "about it"),
     QT_TRANSLATE_NOOP("Core", "Import an arrangement that includes the door, here or on the other "
                               "device, then export again.")},
    {errors::incoming_drops_door_with_facts,
     QT_TRANSLATE_NOOP("Core", "the arrangement in the file has no such door, but %1 entries are "
                               "recorded about it"),
     QT_TRANSLATE_NOOP("Core", "Import an arrangement that includes the door, here or on the other "
                               "device, then export again.")},

    {errors::recorded_otherwise,
     QT_TRANSLATE_NOOP("Core", "it is recorded here with different content under the same id"),
     QT_TRANSLATE_NOOP("Core", "One of the two registers was changed outside this program; find "
                               "out which before using either.")},
    {errors::refers_back, QT_TRANSLATE_NOOP("Core", "%1 refers back to it")},
    {errors::reference_nowhere,
     QT_TRANSLATE_NOOP("Core", "%1 is neither in this register nor in the import"),
     QT_TRANSLATE_NOOP("Core", "Ask for a complete new export.")},
    {errors::no_issue_has_door,
     QT_TRANSLATE_NOOP("Core", "no issue of the arrangement has a door \"%1\"")},
});

} // namespace

const PhraseRows register_errors_rows = register_errors_table;

} // namespace latchround::ui
