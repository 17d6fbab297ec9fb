// What is wrong with what was asked on the command line.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

inline constexpr PhraseCode<1> command_line_said{"command-line-said"}; ///< what its reader said
inline constexpr PhraseCode<1> fault_of_the_program{"fault-of-the-program"}; ///< what was thrown
inline constexpr PhraseCode<0> output_not_written{"output-not-written"};

// Of a register that was named.
inline constexpr PhraseCode<0> no_register_here{"no-register-here"};
inline constexpr PhraseCode<0> no_vessel_yet{"no-vessel-yet"};
inline constexpr PhraseCode<0> no_walkdown_yet{"no-walkdown-yet"};
inline constexpr PhraseCode<2> no_walkdown_of_id{"no-walkdown-of-id"}; ///< the id, the latest one

// Of keys that are to be accepted.
inline constexpr PhraseCode<0> key_not_in_hex{"key-not-in-hex"};
inline constexpr PhraseCode<0> nobody_accepts_key{"nobody-accepts-key"};
inline constexpr PhraseCode<1> not_key_of_file{"not-key-of-file"}; ///< the file's key

// Of a document.
inline constexpr PhraseCode<1> unknown_document{"unknown-document"};       ///< as it is written
inline constexpr PhraseCode<1> unknown_report_form{"unknown-report-form"}; ///< as it is written
inline constexpr PhraseCode<0> blank_form_not_pdf{"blank-form-not-pdf"};
inline constexpr PhraseCode<0> rule_book_not_pdf{"rule-book-not-pdf"};
inline constexpr PhraseCode<2> unknown_language{
    "unknown-language"}; ///< as it is written, those there are
inline constexpr PhraseCode<0> only_pdf_is_translated{"only-pdf-is-translated"};
inline constexpr PhraseCode<0> door_without_vessel{"door-without-vessel"};
inline constexpr PhraseCode<1> no_row_of_id{"no-row-of-id"}; ///< the id
inline constexpr PhraseCode<0> door_record_without_door{"door-record-without-door"};
inline constexpr PhraseCode<1> nobody_of_name{"nobody-of-name"}; ///< the name

// Of practice.
inline constexpr PhraseCode<0> exercise_not_named{"exercise-not-named"};
inline constexpr PhraseCode<0> seed_not_given{"seed-not-given"};
inline constexpr PhraseCode<0> answers_not_named{"answers-not-named"};
inline constexpr PhraseCode<0> password_not_given{"password-not-given"};

// Of the class of a boundary.
inline constexpr PhraseCode<2> no_pair_of_categories{
    "no-pair-of-categories"}; ///< as it is written, how many categories there are
inline constexpr PhraseCode<0> categories_needed{"categories-needed"};
inline constexpr PhraseCode<0> ship_without_main_zones{"ship-without-main-zones"};

// Of figures.
inline constexpr PhraseCode<0> confidence_not_a_share{"confidence-not-a-share"};
inline constexpr PhraseCode<0> confidence_not_in_millionths{"confidence-not-in-millionths"};
inline constexpr PhraseCode<0> nothing_to_look_up{"nothing-to-look-up"};
inline constexpr PhraseCode<1> no_line_through_points{"no-line-through-points"}; ///< how many
inline constexpr PhraseCode<0> nothing_to_judge{"nothing-to-judge"};
inline constexpr PhraseCode<0> negative_uncertainty{"negative-uncertainty"};
inline constexpr PhraseCode<0> limit_not_a_number{"limit-not-a-number"};
inline constexpr PhraseCode<0> no_limit_given{"no-limit-given"};
inline constexpr PhraseCode<0> too_few_degrees_of_freedom{"too-few-degrees-of-freedom"};

// Of a sample.
inline constexpr PhraseCode<1> sample_of_too_many{"sample-of-too-many"}; ///< most doors
inline constexpr PhraseCode<0> claim_of_too_many_defective{"claim-of-too-many-defective"};
inline constexpr PhraseCode<0> half_a_result{"half-a-result"};
inline constexpr PhraseCode<0> impossible_result{"impossible-result"};

} // namespace latchround::errors
