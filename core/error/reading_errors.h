// What is wrong with a file before its contents are looked at: bytes, CSV, JSON, a field of one;
// why a file could not be written; why a job stopped. `what to do`: one of the phrases given for it
// here or beside the code, or what didYouMean asks.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// What can be said of anything.
inline constexpr PhraseCode<0> stopped_as_asked{"stopped-as-asked"};
inline constexpr PhraseCode<2> at_place{"at-place"}; ///< where, what is wrong there
inline constexpr PhraseCode<1> did_you_mean_one{"did-you-mean-one"};
inline constexpr PhraseCode<2> did_you_mean_two{"did-you-mean-two"};
inline constexpr PhraseCode<3> did_you_mean_three{"did-you-mean-three"};

// A file that is read.
inline constexpr PhraseCode<0> no_such_file{"no-such-file"};
inline constexpr PhraseCode<0> folder_not_file{"folder-not-file"};
inline constexpr PhraseCode<0> not_readable_file{"not-readable-file"};
inline constexpr PhraseCode<1> file_too_large{"file-too-large"}; ///< more than so many MB
inline constexpr PhraseCode<0> file_not_opened{"file-not-opened"};
inline constexpr PhraseCode<0> file_cut_short{"file-cut-short"};

// A file that is written. The first of two: what the system says; the second: what to do, empty
// where a file that was there is written on.
inline constexpr PhraseCode<0> folder_not_file_name{"folder-not-file-name"};
inline constexpr PhraseCode<0> file_there_already{"file-there-already"};
inline constexpr PhraseCode<0> register_not_written_over{"register-not-written-over"};
inline constexpr PhraseCode<2> not_written_here{"not-written-here"};
inline constexpr PhraseCode<2> not_all_written{"not-all-written"};
inline constexpr PhraseCode<2> file_not_flushed{"file-not-flushed"};
inline constexpr PhraseCode<2> written_not_closed{"written-not-closed"};
inline constexpr PhraseCode<2> written_not_in_place{"written-not-in-place"};
inline constexpr PhraseCode<0> choose_elsewhere{"choose-elsewhere"}; ///< what to do
inline constexpr PhraseCode<1> written_folder_not_flushed{"written-folder-not-flushed"};
inline constexpr PhraseCode<1> file_not_removed{"file-not-removed"};
inline constexpr PhraseCode<1> folder_not_flushed{"folder-not-flushed"};

// CSV.
inline constexpr PhraseCode<1> csv_too_large{"csv-too-large"}; ///< more than so many MB
inline constexpr PhraseCode<0> csv_in_utf16{"csv-in-utf16"};
inline constexpr PhraseCode<0> csv_empty{"csv-empty"};
inline constexpr PhraseCode<0> text_beside_quotes{"text-beside-quotes"};
inline constexpr PhraseCode<0> quote_not_closed{"quote-not-closed"};
inline constexpr PhraseCode<1> byte_not_utf8{"byte-not-utf8"}; ///< "0xE9"
inline constexpr PhraseCode<0> cell_empty{"cell-empty"};
inline constexpr PhraseCode<1> cell_not_a_number{"cell-not-a-number"};             ///< as written
inline constexpr PhraseCode<1> cell_not_a_whole_number{"cell-not-a-whole-number"}; ///< as written
inline constexpr PhraseCode<1> cell_not_yes_or_no{"cell-not-yes-or-no"};           ///< as written
inline constexpr PhraseCode<1> cell_not_a_date{"cell-not-a-date"};                 ///< as written
inline constexpr PhraseCode<2> not_one_of{"not-one-of"}; ///< as written, what may be; JSON as well

// JSON as a whole.
inline constexpr PhraseCode<0> not_json{"not-json"};
inline constexpr PhraseCode<0> json_number_too_large{"json-number-too-large"};
inline constexpr PhraseCode<0> given_file_no_object{"given-file-no-object"};

// A field of a JSON file (JsonObject).
inline constexpr PhraseCode<0> field_twice{"field-twice"};
inline constexpr PhraseCode<0> field_missing{"field-missing"};
inline constexpr PhraseCode<1> field_not_known{"field-not-known"}; ///< what to do
inline constexpr PhraseCode<0> take_field_out{"take-field-out"};   ///< what to do
inline constexpr PhraseCode<0> field_empty{"field-empty"};
inline constexpr PhraseCode<0> field_list_empty{"field-list-empty"};
inline constexpr PhraseCode<0> field_not_an_object{"field-not-an-object"};
inline constexpr PhraseCode<0> field_not_a_list{"field-not-a-list"};
inline constexpr PhraseCode<0> field_not_a_list_of_texts{"field-not-a-list-of-texts"};
inline constexpr PhraseCode<0> field_not_a_text{"field-not-a-text"};
inline constexpr PhraseCode<0> field_not_a_number{"field-not-a-number"};
inline constexpr PhraseCode<2> field_not_a_whole_number{"field-not-a-whole-number"}; ///< low, high
inline constexpr PhraseCode<0> field_not_true_or_false{"field-not-true-or-false"};
inline constexpr PhraseCode<1> field_not_a_date{"field-not-a-date"}; ///< as written

} // namespace latchround::errors
