#include "core/error/handover_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto handover_errors_table = std::to_array<PhraseRow>({
    {errors::handover_not_made, QT_TRANSLATE_NOOP("Core", "it could not be put together: %1"),
     QT_TRANSLATE_NOOP("Core", "Close other programs and try again.")},
    {errors::handover_bytes_missing, QT_TRANSLATE_NOOP("Core", "its bytes cannot be had")},
    {errors::handover_bytes_cut_short,
     QT_TRANSLATE_NOOP("Core", "not all of its bytes can be had")},
    {errors::handover_in_part,
     QT_TRANSLATE_NOOP("Core", "this is no handover file, or only a part of one"),
     QT_TRANSLATE_NOOP("Core", "Choose another file, or have it handed over again.")},
    {errors::handover_damaged, QT_TRANSLATE_NOOP("Core", "the file is damaged (%1)"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::an_entry_unreadable, QT_TRANSLATE_NOOP("Core", "an entry cannot be read")},
    {errors::entry_unreadable, QT_TRANSLATE_NOOP("Core", "%1 cannot be read")},
    {errors::entry_twice, QT_TRANSLATE_NOOP("Core", "the entry %1 is there twice")},
    {errors::entry_leads_out,
     QT_TRANSLATE_NOOP("Core", "the name of the entry \"%1\" leads out of the file"),
     QT_TRANSLATE_NOOP("Core", "No handover file is made so; do not use it.")},
    {errors::entry_swells,
     QT_TRANSLATE_NOOP("Core", "the entry %1 would swell out of all proportion"),
     QT_TRANSLATE_NOOP("Core", "No handover file is made so; do not use it.")},
    {errors::entry_missing, QT_TRANSLATE_NOOP("Core", "%1 is missing from it"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_too_large, QT_TRANSLATE_NOOP("Core", "%1 is larger than %2 MB"),
     QT_TRANSLATE_NOOP("Core", "No handover file is made so; do not use it.")},
    {errors::entry_damaged, QT_TRANSLATE_NOOP("Core", "%1 is damaged"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},

    {errors::handover_signature_unfit,
     QT_TRANSLATE_NOOP("Core", "the signature does not fit the key of the device that signed it: "
                               "contents.sha256 or contents.sig was changed"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::handover_key_unfit,
     QT_TRANSLATE_NOOP("Core", "key.pem is not the key that handover.json names"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_not_of_handover,
     QT_TRANSLATE_NOOP("Core", "the entry %1 belongs to no handover file"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_added, QT_TRANSLATE_NOOP("Core", "the entry %1 was added after it was signed"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_changed, QT_TRANSLATE_NOOP("Core", "%1 was changed after it was signed"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_of_other_hash,
     QT_TRANSLATE_NOOP("Core", "%1 does not have the hash it is named by"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::fact_twice_otherwise,
     QT_TRANSLATE_NOOP("Core", "the fact %1 is there twice, with different content"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::handover_holds_other_count,
     QT_TRANSLATE_NOOP("Core", "it does not hold as much as its first page says"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::handover_from_practice,
     QT_TRANSLATE_NOOP("Core", "this comes from practice: nothing in it is a record of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::entry_of_practice_vessel,
     QT_TRANSLATE_NOOP("Core", "%1 is the practice vessel, whose doors are not there"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},

    {errors::no_handover, QT_TRANSLATE_NOOP("Core", "this is no handover file"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::handover_newer,
     QT_TRANSLATE_NOOP("Core", "this file comes from a newer program (form %1; this one reads up "
                               "to %2)"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or take the file in with the newer one.")},
    {errors::sheet_not_a_moment, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a moment"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::sheet_not_a_list, QT_TRANSLATE_NOOP("Core", "this must be a list"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::sheet_arrangement_number,
     QT_TRANSLATE_NOOP("Core", "arrangements are numbered from 1"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::sheet_not_a_key, QT_TRANSLATE_NOOP("Core", "this is not the key of a device"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},

    {errors::handover_too_large, QT_TRANSLATE_NOOP("Core", "it would be larger than %1 MB"),
     QT_TRANSLATE_NOOP("Core", "Give a copy of the whole register instead.")},
    {errors::handover_of_other_vessel,
     QT_TRANSLATE_NOOP("Core",
                       "the file is about another vessel than this register, which is about %1 %2"),
     QT_TRANSLATE_NOOP("Core", "Open the register of that vessel, or begin a new one.")},

    {errors::receiver_not_a_key, QT_TRANSLATE_NOOP("Core", "this is not the key of a device"),
     QT_TRANSLATE_NOOP("Core", "Copy all 64 digits as the other tablet shows them.")},
    {errors::sealed_file_damaged, QT_TRANSLATE_NOOP("Core", "the sealed file is damaged"),
     QT_TRANSLATE_NOOP("Core", "Have it handed over again.")},
    {errors::sealed_for_a_device, QT_TRANSLATE_NOOP("Core", "this file is sealed for one device"),
     QT_TRANSLATE_NOOP("Core", "Look at it with the register of the device it is meant for.")},
    {errors::sealed_for_another,
     QT_TRANSLATE_NOOP("Core", "this file is sealed for another device, the one whose key has the "
                               "fingerprint %1"),
     QT_TRANSLATE_NOOP("Core", "Open it there, or have it sealed for this device, whose "
                               "fingerprint is %2.")},

    {errors::no_random_numbers, QT_TRANSLATE_NOOP("Core", "the computer gives no random numbers"),
     QT_TRANSLATE_NOOP("Core", "Start the computer again.")},
    {errors::own_device_other_key,
     QT_TRANSLATE_NOOP("Core",
                       "the file says that it comes from this very device, but its key has the "
                       "fingerprint %1, which is not this device's"),
     QT_TRANSLATE_NOOP("Core", "Do not take it; find out who made it.")},
    {errors::device_other_key,
     QT_TRANSLATE_NOOP("Core", "it comes with another key than the one accepted for it: the "
                               "fingerprint %1 instead of %2"),
     QT_TRANSLATE_NOOP("Core", "Do not take it before you have asked whoever has that tablet; if "
                               "its key really is new, take the old acceptance back first.")},
    {errors::accepts_in_our_name,
     QT_TRANSLATE_NOOP("Core", "it accepts, in the name of this device, a key that nobody here has "
                               "accepted: key %1 of device %2, fingerprint %3"),
     QT_TRANSLATE_NOOP("Core", "If this register was put back from a backup, compare that key as "
                               "well and accept it; else do not take the file.")},
    {errors::key_not_accepted,
     QT_TRANSLATE_NOOP("Core", "nobody here has accepted its key yet; it has the fingerprint %1"),
     QT_TRANSLATE_NOOP("Core",
                       "Compare the fingerprint with what that tablet shows, and accept it.")},

    {errors::no_walkdown_to_sign, QT_TRANSLATE_NOOP("Core", "there is no such walkdown to sign"),
     QT_TRANSLATE_NOOP("Core", "Choose another.")},
    {errors::signature_fails, "%1", QT_TRANSLATE_NOOP("Core", "Do not rely on this signature.")},
    {errors::report_fails, "%1", QT_TRANSLATE_NOOP("Core", "Make the report again.")},
    {errors::basis_of_other_count,
     QT_TRANSLATE_NOOP("Core", "it rests on %1 facts of device %2 up to %3; %4 are here")},
    {errors::basis_changed,
     QT_TRANSLATE_NOOP("Core", "the facts it rests on are not what they were then")},
    {errors::signature_unfit,
     QT_TRANSLATE_NOOP("Core", "the signature does not fit its key and what it says")},
    {errors::signed_with_other_key,
     QT_TRANSLATE_NOOP("Core", "it was made with another key than that of its device")},

    {errors::photograph_changed, QT_TRANSLATE_NOOP("Core", "its bytes were changed"),
     QT_TRANSLATE_NOOP("Core", "Take it over again from another tablet.")},
    {errors::takes_back_nothing,
     QT_TRANSLATE_NOOP("Core", "it takes something back but does not say what"),
     QT_TRANSLATE_NOOP("Core", "No program of ours writes this.")},
    {errors::replaced_not_here, QT_TRANSLATE_NOOP("Core", "the fact it replaces, %1, is not here"),
     QT_TRANSLATE_NOOP("Core", "No program of ours writes this.")},
    {errors::replaced_in_circle,
     QT_TRANSLATE_NOOP("Core", "it replaces %1, which replaces it in turn"),
     QT_TRANSLATE_NOOP("Core", "No program of ours writes this.")},
    {errors::replaced_other,
     QT_TRANSLATE_NOOP("Core", "it replaces %1, which is about something else"),
     QT_TRANSLATE_NOOP("Core", "No program of ours writes this.")},
});

} // namespace

const PhraseRows handover_errors_rows = handover_errors_table;

} // namespace latchround::ui
