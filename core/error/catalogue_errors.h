// What is wrong with requirements, flag rules and fire tables.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// Which catalogue the program goes by.
inline constexpr PhraseCode<0> no_catalogue_named{"no-catalogue-named"};
inline constexpr PhraseCode<1> built_in_catalogue_used{"built-in-catalogue-used"}; ///< why
inline constexpr PhraseCode<0> catalogue_files_missing{"catalogue-files-missing"};

// A file of rows.
inline constexpr PhraseCode<0> shipped_file_no_object{"shipped-file-no-object"};
inline constexpr PhraseCode<0> not_a_list_of_rows{"not-a-list-of-rows"};
inline constexpr PhraseCode<1> row_id_twice{"row-id-twice"};
inline constexpr PhraseCode<1> row_in_both_catalogues{"row-in-both-catalogues"};
inline constexpr PhraseCode<0> condition_without_fields{"condition-without-fields"};
inline constexpr PhraseCode<0> not_a_list_of_conditions{"not-a-list-of-conditions"};
inline constexpr PhraseCode<0> not_a_list_of_variants{"not-a-list-of-variants"};
inline constexpr PhraseCode<0> row_without_question{"row-without-question"};
inline constexpr PhraseCode<0> row_without_lower_limit{"row-without-lower-limit"};
inline constexpr PhraseCode<0> row_without_upper_limit{"row-without-upper-limit"};
inline constexpr PhraseCode<0> limits_reversed{"limits-reversed"};
inline constexpr PhraseCode<0> other_figure_alone{"other-figure-alone"};
inline constexpr PhraseCode<0> approximate_without_band{"approximate-without-band"};
inline constexpr PhraseCode<0> margin_out_of_range{"margin-out-of-range"};
inline constexpr PhraseCode<0> figure_without_source{"figure-without-source"};

// A flag's own rules.
inline constexpr PhraseCode<1> row_there_already{"row-there-already"};
inline constexpr PhraseCode<1> row_not_in_catalogue{"row-not-in-catalogue"};
inline constexpr PhraseCode<0> tightened_without_limit{"tightened-without-limit"};
inline constexpr PhraseCode<0> limit_not_there{"limit-not-there"};
inline constexpr PhraseCode<3> limit_widened{"limit-widened"}; ///< wanted, unit, of the catalogue
inline constexpr PhraseCode<0> margin_widened{"margin-widened"};

// Fire tables.
inline constexpr PhraseCode<0> not_a_list_of_categories{"not-a-list-of-categories"};
inline constexpr PhraseCode<0> categories_not_numbered{"categories-not-numbered"};
inline constexpr PhraseCode<1> unknown_category_list{"unknown-category-list"}; ///< its name
inline constexpr PhraseCode<0> not_a_list_of_tables{"not-a-list-of-tables"};
inline constexpr PhraseCode<0> table_there_already{"table-there-already"};
inline constexpr PhraseCode<0> table_cell_missing{"table-cell-missing"};
inline constexpr PhraseCode<0> no_cell_of_table{"no-cell-of-table"};
inline constexpr PhraseCode<1> no_printed_value{"no-printed-value"};   ///< as written
inline constexpr PhraseCode<1> note_not_in_table{"note-not-in-table"}; ///< its mark

} // namespace latchround::errors
