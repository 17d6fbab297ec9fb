// What is wrong with a handover, its seal or its key.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// The archive.
inline constexpr PhraseCode<1> handover_not_made{"handover-not-made"}; ///< why not
inline constexpr PhraseCode<0> handover_bytes_missing{"handover-bytes-missing"};
inline constexpr PhraseCode<0> handover_bytes_cut_short{"handover-bytes-cut-short"};
inline constexpr PhraseCode<0> handover_in_part{"handover-in-part"};
inline constexpr PhraseCode<1> handover_damaged{"handover-damaged"}; ///< in what
inline constexpr PhraseCode<0> an_entry_unreadable{"an-entry-unreadable"};
inline constexpr PhraseCode<1> entry_unreadable{"entry-unreadable"}; ///< the entry, as below
inline constexpr PhraseCode<1> entry_twice{"entry-twice"};
inline constexpr PhraseCode<1> entry_leads_out{"entry-leads-out"};
inline constexpr PhraseCode<1> entry_swells{"entry-swells"};
inline constexpr PhraseCode<1> entry_missing{"entry-missing"};
inline constexpr PhraseCode<2> entry_too_large{"entry-too-large"}; ///< the entry, MB at most
inline constexpr PhraseCode<1> entry_damaged{"entry-damaged"};

// What was signed.
inline constexpr PhraseCode<0> handover_signature_unfit{"handover-signature-unfit"};
inline constexpr PhraseCode<0> handover_key_unfit{"handover-key-unfit"};
inline constexpr PhraseCode<1> entry_not_of_handover{"entry-not-of-handover"};
inline constexpr PhraseCode<1> entry_added{"entry-added"};
inline constexpr PhraseCode<1> entry_changed{"entry-changed"};
inline constexpr PhraseCode<1> entry_of_other_hash{"entry-of-other-hash"};
inline constexpr PhraseCode<1> fact_twice_otherwise{"fact-twice-otherwise"}; ///< its id
inline constexpr PhraseCode<0> handover_holds_other_count{"handover-holds-other-count"};
inline constexpr PhraseCode<0> handover_from_practice{"handover-from-practice"};
inline constexpr PhraseCode<1> entry_of_practice_vessel{"entry-of-practice-vessel"};

// The cover sheet.
inline constexpr PhraseCode<0> no_handover{"no-handover"};
inline constexpr PhraseCode<2> handover_newer{"handover-newer"}; ///< its form, the newest known
inline constexpr PhraseCode<1> sheet_not_a_moment{"sheet-not-a-moment"}; ///< as it is written
inline constexpr PhraseCode<0> sheet_not_a_list{"sheet-not-a-list"};
inline constexpr PhraseCode<0> sheet_arrangement_number{"sheet-arrangement-number"};
inline constexpr PhraseCode<0> sheet_not_a_key{"sheet-not-a-key"};

// Giving and taking.
inline constexpr PhraseCode<1> handover_too_large{"handover-too-large"}; ///< MB at most
inline constexpr PhraseCode<2> handover_of_other_vessel{
    "handover-of-other-vessel"}; ///< number and name of the register's own

// The seal; keys by their fingerprints.
inline constexpr PhraseCode<0> receiver_not_a_key{"receiver-not-a-key"};
inline constexpr PhraseCode<0> sealed_file_damaged{"sealed-file-damaged"};
inline constexpr PhraseCode<0> sealed_for_a_device{"sealed-for-a-device"};
inline constexpr PhraseCode<2> sealed_for_another{
    "sealed-for-another"}; ///< the receiver's, our own

// Keys, by their fingerprints.
inline constexpr PhraseCode<0> no_random_numbers{"no-random-numbers"};
inline constexpr PhraseCode<1> own_device_other_key{"own-device-other-key"};
inline constexpr PhraseCode<2> device_other_key{"device-other-key"}; ///< it comes with, accepted
inline constexpr PhraseCode<3> accepts_in_our_name{
    "accepts-in-our-name"}; ///< the key in hex, of which device, fingerprint
inline constexpr PhraseCode<1> key_not_accepted{"key-not-accepted"};

// Signatures and reports, and what they rest on.
inline constexpr PhraseCode<0> no_walkdown_to_sign{"no-walkdown-to-sign"};
inline constexpr PhraseCode<1> signature_fails{"signature-fails"}; ///< why
inline constexpr PhraseCode<1> report_fails{"report-fails"};       ///< why
inline constexpr PhraseCode<4> basis_of_other_count{
    "basis-of-other-count"}; ///< facts, device, last fact, how many are here
inline constexpr PhraseCode<0> basis_changed{"basis-changed"};
inline constexpr PhraseCode<0> signature_unfit{"signature-unfit"};
inline constexpr PhraseCode<0> signed_with_other_key{"signed-with-other-key"};

// Of a register that is looked through; see register_errors.h as well.
inline constexpr PhraseCode<0> photograph_changed{"photograph-changed"};
inline constexpr PhraseCode<0> takes_back_nothing{"takes-back-nothing"};
inline constexpr PhraseCode<1> replaced_not_here{"replaced-not-here"};   ///< a fact
inline constexpr PhraseCode<1> replaced_in_circle{"replaced-in-circle"}; ///< a fact
inline constexpr PhraseCode<1> replaced_other{"replaced-other"};         ///< a fact

} // namespace latchround::errors
