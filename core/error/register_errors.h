// Why the register did not open, save or answer.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// What came of it; each holds why.
inline constexpr PhraseCode<1> not_saved{"not-saved"};
inline constexpr PhraseCode<1> not_adopted{"not-adopted"}; ///< what is wrong with the arrangement
inline constexpr PhraseCode<1> not_taken_in{"not-taken-in"};

inline constexpr PhraseCode<0> stopped{"stopped"};

// What SQLite's codes mean. Its own words, or its number, are what changes.
inline constexpr PhraseCode<0> refers_to_unknown{"refers-to-unknown"};
inline constexpr PhraseCode<1> record_never_changed{"record-never-changed"};
inline constexpr PhraseCode<0> value_of_wrong_kind{"value-of-wrong-kind"};
inline constexpr PhraseCode<1> value_missing{"value-missing"};
inline constexpr PhraseCode<1> recorded_twice{"recorded-twice"};
inline constexpr PhraseCode<1> value_not_allowed{"value-not-allowed"};
inline constexpr PhraseCode<0> disk_full{"disk-full"};
inline constexpr PhraseCode<1> disk_fault{"disk-fault"};
inline constexpr PhraseCode<0> somebody_is_writing{"somebody-is-writing"};
inline constexpr PhraseCode<0> register_write_protected{"register-write-protected"};
inline constexpr PhraseCode<1> register_not_opened{"register-not-opened"};
inline constexpr PhraseCode<1> register_corrupt{"register-corrupt"};
inline constexpr PhraseCode<0> no_register{"no-register"};
inline constexpr PhraseCode<0> out_of_memory{"out-of-memory"};
inline constexpr PhraseCode<0> too_large_for_register{"too-large-for-register"};
inline constexpr PhraseCode<2> sqlite_said{"sqlite-said"}; ///< its words, its number

// The machine.
inline constexpr PhraseCode<0> no_sqlite_driver{"no-sqlite-driver"};
inline constexpr PhraseCode<0> sqlite_driver_unusable{"sqlite-driver-unusable"};
inline constexpr PhraseCode<0> no_file_layer{"no-file-layer"};

// Making a register.
inline constexpr PhraseCode<1> register_missing_beside{
    "register-missing-beside"}; ///< what is there
inline constexpr PhraseCode<0> register_folder_missing{"register-folder-missing"};
inline constexpr PhraseCode<0> register_folder_read_only{"register-folder-read-only"};
inline constexpr PhraseCode<0> register_not_placed{"register-not-placed"};
inline constexpr PhraseCode<0> disk_fault_here{"disk-fault-here"};

// Opening one.
inline constexpr PhraseCode<0> register_is_no_file{"register-is-no-file"};
inline constexpr PhraseCode<0> register_unreadable{"register-unreadable"};
inline constexpr PhraseCode<0> register_read_only{"register-read-only"};
inline constexpr PhraseCode<0> register_empty{"register-empty"};
inline constexpr PhraseCode<0> register_of_others{"register-of-others"};
inline constexpr PhraseCode<2> register_newer{"register-newer"}; ///< its version, the newest known
inline constexpr PhraseCode<0> register_unfinished{"register-unfinished"};
inline constexpr PhraseCode<2> setting_not_accepted{"setting-not-accepted"}; ///< pragma, answer
inline constexpr PhraseCode<0> no_write_ahead_log{"no-write-ahead-log"};
inline constexpr PhraseCode<0> other_version_writes{"other-version-writes"};
inline constexpr PhraseCode<1> rows_would_dangle{"rows-would-dangle"}; ///< of which table
inline constexpr PhraseCode<1> register_damaged{"register-damaged"};   ///< in SQLite's own words

// Looking through one.
inline constexpr PhraseCode<1> register_unsound{"register-unsound"};           ///< in what
inline constexpr PhraseCode<1> row_refers_to_nothing{"row-refers-to-nothing"}; ///< of which table
inline constexpr PhraseCode<1> fact_half_there{"fact-half-there"};

// Practice and vessels.
inline constexpr PhraseCode<0> practice_register{"practice-register"};
inline constexpr PhraseCode<0> practice_takes_nothing_in{"practice-takes-nothing-in"};
inline constexpr PhraseCode<0> practice_signs_nothing{"practice-signs-nothing"};
inline constexpr PhraseCode<0> vessel_register{"vessel-register"};
inline constexpr PhraseCode<0> practice_vessel_alone{"practice-vessel-alone"};
inline constexpr PhraseCode<1> number_of_practice{"number-of-practice"}; ///< that number

// Who else writes in it.
inline constexpr PhraseCode<0> another_program{"another-program"};
inline constexpr PhraseCode<2> process_on_machine{"process-on-machine"}; ///< its number, where
inline constexpr PhraseCode<1> register_written_elsewhere{
    "register-written-elsewhere"}; ///< by whom
inline constexpr PhraseCode<0> log_taken_away{"log-taken-away"};
inline constexpr PhraseCode<0> register_closed{"register-closed"};

// What may not be recorded.
inline constexpr PhraseCode<0> walkdown_has_ended{"walkdown-has-ended"};
inline constexpr PhraseCode<1> undo_does_not_reach{"undo-does-not-reach"}; ///< a fact
inline constexpr PhraseCode<1> would_replace_other{"would-replace-other"}; ///< a fact
inline constexpr PhraseCode<0> fact_id_taken{"fact-id-taken"};
inline constexpr PhraseCode<0> fact_is_no_photograph{"fact-is-no-photograph"};
inline constexpr PhraseCode<0> photograph_hash_differs{"photograph-hash-differs"};
inline constexpr PhraseCode<0> photograph_not_here{"photograph-not-here"};
inline constexpr PhraseCode<0> no_such_door{"no-such-door"};
inline constexpr PhraseCode<1> reference_not_here{"reference-not-here"}; ///< a reference

// A reference: what it is to the fact that refers to it, with its id.
inline constexpr PhraseCode<1> its_walkdown{"its-walkdown"};
inline constexpr PhraseCode<1> its_run{"its-run"};
inline constexpr PhraseCode<1> its_deficiency{"its-deficiency"};
inline constexpr PhraseCode<1> its_person{"its-person"};
inline constexpr PhraseCode<1> what_it_repeats{"what-it-repeats"};
inline constexpr PhraseCode<1> what_it_shows{"what-it-shows"};
inline constexpr PhraseCode<1> what_it_replaces{"what-it-replaces"};
inline constexpr PhraseCode<1> what_stands{"what-stands"};
inline constexpr PhraseCode<1> what_yields{"what-yields"};

// Doors that an arrangement lacks.
inline constexpr PhraseCode<0> door_with_fact_dropped{"door-with-fact-dropped"};
inline constexpr PhraseCode<1> door_with_facts_dropped{"door-with-facts-dropped"}; ///< how many
inline constexpr PhraseCode<1> and_one_more_door{
    "and-one-more-door"};                                        ///< what is said of the first
inline constexpr PhraseCode<2> and_more_doors{"and-more-doors"}; ///< the same, how many more
inline constexpr PhraseCode<0> incoming_drops_door_with_fact{"incoming-drops-door-with-fact"};
inline constexpr PhraseCode<1> incoming_drops_door_with_facts{"incoming-drops-door-with-facts"};

// What another register brings.
inline constexpr PhraseCode<0> recorded_otherwise{"recorded-otherwise"};
inline constexpr PhraseCode<1> refers_back{"refers-back"};             ///< a reference
inline constexpr PhraseCode<1> reference_nowhere{"reference-nowhere"}; ///< a reference
inline constexpr PhraseCode<1> no_issue_has_door{"no-issue-has-door"}; ///< its number

} // namespace latchround::errors
