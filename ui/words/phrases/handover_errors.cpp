#include "core/error/handover_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto handover_errors_table = std::to_array<PhraseRow>({
    {errors::handover_not_made, QT_TRANSLATE_NOOP("Core", "it could not be put together: %1"),
     QT_TRANSLATE_NOOP("Core", "Close other programs and try again.")},
    {errors::handover_bytes_missing, QT_TRANSLATE_NOOP("Core", "its bytes cannot be read")},
    {errors::handover_bytes_cut_short,
     QT_TRANSLATE_NOOP("Core", "not all of its bytes can be read")},
    {errors::handover_in_part,
     QT_TRANSLATE_NOOP("Core", "this is not a handover file, or only part of one"),
     QT_TRANSLATE_NOOP("Core", "Choose another file, or ask for a new export.")},
    {errors::handover_damaged, QT_TRANSLATE_NOOP("Core", "the file is damaged (%1)"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::an_entry_unreadable, QT_TRANSLATE_NOOP("Core", "a part of the file cannot be read")},
    {errors::entry_unreadable, QT_TRANSLATE_NOOP("Core", "%1 cannot be read")},
    {errors::entry_twice, QT_TRANSLATE_NOOP("Core", "%1 is in the file twice")},
    {errors::entry_leads_out,
     QT_TRANSLATE_NOOP("Core", "the name \"%1\" in it points outside the file"),
     QT_TRANSLATE_NOOP("Core", "No genuine handover file is like this; do not use it.")},
    {errors::entry_swells, QT_TRANSLATE_NOOP("Core", "%1 would expand out of all proportion"),
     QT_TRANSLATE_NOOP("Core", "No genuine handover file is like this; do not use it.")},
    {errors::entry_missing, QT_TRANSLATE_NOOP("Core", "%1 is missing from it"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::entry_too_large, QT_TRANSLATE_NOOP("Core", "%1 is larger than %2 MB"),
     QT_TRANSLATE_NOOP("Core", "No genuine handover file is like this; do not use it.")},
    {errors::entry_damaged, QT_TRANSLATE_NOOP("Core", "%1 is damaged"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},

    {errors::handover_signature_unfit,
     QT_TRANSLATE_NOOP("Core", "the signature does not match the key of the device that signed it: "
                               "contents.sha256 or contents.sig was changed"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::handover_key_unfit,
     QT_TRANSLATE_NOOP("Core", "key.pem is not the key that handover.json names"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::entry_not_of_handover,
     QT_TRANSLATE_NOOP("Core", "%1 does not belong in a handover file"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::entry_added, QT_TRANSLATE_NOOP("Core", "%1 was added after the file was signed"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::entry_changed, QT_TRANSLATE_NOOP("Core", "%1 was changed after the file was signed"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::entry_of_other_hash,
     QT_TRANSLATE_NOOP("Core", "%1 does not match the hash in its name"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::fact_twice_otherwise,
     QT_TRANSLATE_NOOP("Core", "entry %1 appears twice, with different content"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::handover_holds_other_count,
     QT_TRANSLATE_NOOP("Core", "its contents do not match the counts on its first page"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::handover_from_practice,
     QT_TRANSLATE_NOOP("Core", "this comes from practice: nothing in it is a record of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::entry_of_practice_vessel,
     QT_TRANSLATE_NOOP("Core", "%1 is the practice vessel, whose doors are simulated"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},

    {errors::no_handover, QT_TRANSLATE_NOOP("Core", "this is not a handover file"),
     QT_TRANSLATE_NOOP("Core", "Choose another file.")},
    {errors::handover_newer,
     QT_TRANSLATE_NOOP("Core", "this file comes from a newer program (form %1; this one reads up "
                               "to %2)"),
     QT_TRANSLATE_NOOP("Core", "Update this program, or import the file with the newer one.")},
    {errors::sheet_not_a_moment, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a date and time"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::sheet_not_a_list, QT_TRANSLATE_NOOP("Core", "this must be a list"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::sheet_arrangement_number,
     QT_TRANSLATE_NOOP("Core", "arrangements are numbered from 1"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::sheet_not_a_key, QT_TRANSLATE_NOOP("Core", "this is not a device key"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},

    {errors::handover_too_large, QT_TRANSLATE_NOOP("Core", "it would be larger than %1 MB"),
     QT_TRANSLATE_NOOP("Core", "Hand over a copy of the whole register instead.")},
    {errors::handover_of_other_vessel,
     QT_TRANSLATE_NOOP("Core", "the file is for a different vessel; this register is for %1 %2"),
     QT_TRANSLATE_NOOP("Core", "Open that vessel's register, or begin a new one.")},

    {errors::receiver_not_a_key, QT_TRANSLATE_NOOP("Core", "this is not a device key"),
     QT_TRANSLATE_NOOP("Core", "Copy all 64 digits and letters as shown on the other tablet.")},
    {errors::sealed_file_damaged,
     QT_TRANSLATE_NOOP("Core", "the file is damaged and cannot be opened"),
     QT_TRANSLATE_NOOP("Core", "Ask for a new export.")},
    {errors::sealed_for_a_device, QT_TRANSLATE_NOOP("Core", "this file is for one device only"),
     QT_TRANSLATE_NOOP("Core", "Open it with the register of the device it is meant for.")},
    {errors::sealed_for_another,
     QT_TRANSLATE_NOOP("Core", "this file is for another device only, with key fingerprint %1"),
     QT_TRANSLATE_NOOP("Core", "Open it there, or have it exported for this device, with key "
                               "fingerprint %2.")},

    {errors::no_random_numbers,
     QT_TRANSLATE_NOOP("Core", "the computer provides no random numbers"),
     QT_TRANSLATE_NOOP("Core", "Restart the computer.")},
    {errors::own_device_other_key,
     QT_TRANSLATE_NOOP("Core", "the file claims to come from this device, but its key fingerprint, "
                               "%1, is not this device's"),
     QT_TRANSLATE_NOOP("Core", "Do not import it; find out who made it.")},
    {errors::device_other_key,
     QT_TRANSLATE_NOOP("Core", "its key is not the one accepted for it: fingerprint %1 instead of "
                               "%2"),
     QT_TRANSLATE_NOOP("Core", "Do not import it until you have asked whoever has that tablet; if "
                               "its key really is new, take back the old acceptance first.")},
    {errors::accepts_in_our_name,
     QT_TRANSLATE_NOOP("Core", "it accepts, in this device's name, a key that no one here has "
                               "accepted: key %1 of device %2, fingerprint %3"),
     QT_TRANSLATE_NOOP("Core", "If this register was restored from a backup, compare that key too "
                               "and accept it; otherwise do not import the file.")},
    {errors::key_not_accepted,
     QT_TRANSLATE_NOOP("Core", "its key has not been accepted here yet; fingerprint %1"),
     QT_TRANSLATE_NOOP("Core", "Compare it with the fingerprint shown on that tablet, then accept "
                               "it.")},

    {errors::no_walkdown_to_sign, QT_TRANSLATE_NOOP("Core", "there is no such walkdown to sign"),
     QT_TRANSLATE_NOOP("Core", "Choose another.")},
    {errors::signature_fails, "%1", QT_TRANSLATE_NOOP("Core", "Do not rely on this signature.")},
    {errors::report_fails, "%1", QT_TRANSLATE_NOOP("Core", "Create the report again.")},
    {errors::basis_of_other_count,
     QT_TRANSLATE_NOOP("Core", "it is based on %1 entries of device %2 up to %3; %4 are here")},
    {errors::basis_changed,
     QT_TRANSLATE_NOOP("Core", "the entries it is based on have changed since")},
    {errors::signature_unfit,
     QT_TRANSLATE_NOOP("Core", "the signature does not match its key and contents")},
    {errors::signed_with_other_key,
     QT_TRANSLATE_NOOP("Core", "it was not made with its device's key")},

    {errors::photograph_changed, QT_TRANSLATE_NOOP("Core", "its bytes have been changed"),
     QT_TRANSLATE_NOOP("Core", "Import it again from another tablet.")},
    {errors::takes_back_nothing,
     QT_TRANSLATE_NOOP("Core", "it takes something back but does not say what"),
     QT_TRANSLATE_NOOP("Core", "Latchround never writes this; do not rely on it.")},
    {errors::replaced_not_here, QT_TRANSLATE_NOOP("Core", "the entry it replaces, %1, is not here"),
     QT_TRANSLATE_NOOP("Core", "Latchround never writes this; do not rely on it.")},
    {errors::replaced_in_circle,
     QT_TRANSLATE_NOOP("Core", "it replaces %1, which replaces it in turn"),
     QT_TRANSLATE_NOOP("Core", "Latchround never writes this; do not rely on it.")},
    {errors::replaced_other,
     QT_TRANSLATE_NOOP("Core", "it replaces %1, which is about something else"),
     QT_TRANSLATE_NOOP("Core", "Latchround never writes this; do not rely on it.")},
});

} // namespace

const PhraseRows handover_errors_rows = handover_errors_table;

} // namespace latchround::ui
