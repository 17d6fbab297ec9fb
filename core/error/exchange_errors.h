// What is wrong with a vessel's register or its facts in a file of exchange. `what to do`: one of
// the phrases given for it beside the code, or what didYouMean asks.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// The rows of a register file.
inline constexpr PhraseCode<0> no_vessel_row{"no-vessel-row"};
inline constexpr PhraseCode<1> second_vessel_row{"second-vessel-row"}; ///< line of the first
inline constexpr PhraseCode<0> row_of_no_table{"row-of-no-table"};
inline constexpr PhraseCode<2> row_of_unknown_table{
    "row-of-unknown-table"}; ///< its first cell, what to do
inline constexpr PhraseCode<0> tables_of_register{"tables-of-register"}; ///< what to do
inline constexpr PhraseCode<1> meant_or_table{"meant-or-table"};         ///< what to do: was meant
inline constexpr PhraseCode<1> row_before_header{"row-before-header"};   ///< table
inline constexpr PhraseCode<1> more_cells_than_columns{"more-cells-than-columns"}; ///< what to do
inline constexpr PhraseCode<0> quote_commas{"quote-commas"};                       ///< what to do
inline constexpr PhraseCode<0> take_cell_out{"take-cell-out"};                     ///< what to do
inline constexpr PhraseCode<2> unknown_column{"unknown-column"};   ///< table, what to do
inline constexpr PhraseCode<0> take_column_out{"take-column-out"}; ///< what to do
inline constexpr PhraseCode<0> column_twice{"column-twice"};
inline constexpr PhraseCode<1> column_missing{"column-missing"}; ///< its name
inline constexpr PhraseCode<2> first_on_line{"first-on-line"};   ///< what is there twice, line
inline constexpr PhraseCode<0> cell_not_two_spaces{"cell-not-two-spaces"};

// Points.
inline constexpr PhraseCode<1> not_two_cells{"not-two-cells"};           ///< how many there are
inline constexpr PhraseCode<1> point_not_a_number{"point-not-a-number"}; ///< as written

// Facts.
inline constexpr PhraseCode<0> not_a_fact_id{"not-a-fact-id"};
inline constexpr PhraseCode<1> text_not_a_moment{"text-not-a-moment"}; ///< as written
inline constexpr PhraseCode<2> not_a_fact_kind{"not-a-fact-kind"};     ///< as written, what may be

// A grade file: its vessel and doors.
inline constexpr PhraseCode<0> not_a_list_of_doors{"not-a-list-of-doors"};
inline constexpr PhraseCode<0> door_needs_number{"door-needs-number"};
inline constexpr PhraseCode<2> door_recorded_twice{"door-recorded-twice"}; ///< number, first at
inline constexpr PhraseCode<0> opening_out_of_range{"opening-out-of-range"};
inline constexpr PhraseCode<0> leaf_mass_out_of_range{"leaf-mass-out-of-range"};
inline constexpr PhraseCode<1> not_two_spaces{"not-two-spaces"}; ///< how many categories there are

// What was seen, measured and timed at a door.
inline constexpr PhraseCode<0> not_an_object_of_rows{"not-an-object-of-rows"};
inline constexpr PhraseCode<1> unknown_requirement{"unknown-requirement"}; ///< what to do
inline constexpr PhraseCode<0> use_catalogue_ids{"use-catalogue-ids"};     ///< what to do
inline constexpr PhraseCode<0> not_an_answer{"not-an-answer"};
inline constexpr PhraseCode<1> row_not_answered{"row-not-answered"};         ///< what to do
inline constexpr PhraseCode<0> give_measured_figure{"give-measured-figure"}; ///< what to do
inline constexpr PhraseCode<0> follows_by_itself{"follows-by-itself"};       ///< what to do
inline constexpr PhraseCode<0> row_not_measured{"row-not-measured"};
inline constexpr PhraseCode<1> step_too_coarse{"step-too-coarse"}; ///< the coarsest there is
inline constexpr PhraseCode<1> figure_negative{"figure-negative"}; ///< what to do
inline constexpr PhraseCode<0> write_without_quotes{"write-without-quotes"}; ///< what to do
inline constexpr PhraseCode<1> write_in_unit{"write-in-unit"}; ///< what to do: the unit
inline constexpr PhraseCode<0> not_a_list_of_runs{"not-a-list-of-runs"};
inline constexpr PhraseCode<0> run_without_marks{"run-without-marks"};
inline constexpr PhraseCode<0> mark_time_out_of_range{"mark-time-out-of-range"};
inline constexpr PhraseCode<1> marks_reversed{"marks-reversed"}; ///< the event that comes first
inline constexpr PhraseCode<0> heel_too_large{"heel-too-large"};
inline constexpr PhraseCode<1> run_not_complete{"run-not-complete"}; ///< the mark it lacks

// Vessels on this machine.
inline constexpr PhraseCode<0> vessel_not_placed{"vessel-not-placed"};

} // namespace latchround::errors
