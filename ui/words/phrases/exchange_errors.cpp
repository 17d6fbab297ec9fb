#include "core/error/exchange_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto exchange_errors_table = std::to_array<PhraseRow>({
    {errors::no_vessel_row, QT_TRANSLATE_NOOP("Core", "the file has no vessel row"),
     QT_TRANSLATE_NOOP("Core", "Begin with the header \"vessel:\" and a row \"vessel\" below it.")},
    {errors::second_vessel_row,
     QT_TRANSLATE_NOOP("Core", "a file can describe only one vessel; the first is on line %1"),
     QT_TRANSLATE_NOOP("Core", "Put each vessel in a file of its own.")},
    {errors::row_of_no_table,
     QT_TRANSLATE_NOOP("Core", "the row does not say which table it belongs to"),
     QT_TRANSLATE_NOOP("Core", "A row begins with vessel, deck, zone, boundary or door.")},
    {errors::row_of_unknown_table,
     QT_TRANSLATE_NOOP("Core", "a register row cannot begin with \"%1\""), "%2"},
    {errors::tables_of_register,
     QT_TRANSLATE_NOOP("Core", "A row begins with vessel, deck, zone, boundary or door.")},
    {errors::meant_or_table,
     QT_TRANSLATE_NOOP("Core", "%1 A row begins with vessel, deck, zone, boundary or door.")},
    {errors::row_before_header,
     QT_TRANSLATE_NOOP("Core", "this row comes before the header of its table"),
     QT_TRANSLATE_NOOP("Core", "Put the header \"%1:\" with the column names above it.")},
    {errors::more_cells_than_columns,
     QT_TRANSLATE_NOOP("Core", "the row has more cells than its header has columns"), "%1"},
    {errors::quote_commas,
     QT_TRANSLATE_NOOP("Core", "A text or number with a comma in it needs quotes around it.")},
    {errors::take_cell_out,
     QT_TRANSLATE_NOOP("Core", "Remove the cell, or name its column in the header.")},
    {errors::unknown_column, QT_TRANSLATE_NOOP("Core", "the %1 table has no such column"), "%2"},
    {errors::take_column_out, QT_TRANSLATE_NOOP("Core", "Correct its name, or remove the column.")},
    {errors::column_twice, QT_TRANSLATE_NOOP("Core", "the column is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Remove one of them.")},
    {errors::column_missing, QT_TRANSLATE_NOOP("Core", "the required column %1 is missing"),
     QT_TRANSLATE_NOOP("Core", "Add it to the header and to every row of the table.")},
    {errors::first_on_line, QT_TRANSLATE_NOOP("Core", "%1; the first is on line %2")},
    {errors::cell_not_two_spaces,
     QT_TRANSLATE_NOOP("Core", "these are not the categories of two spaces"),
     QT_TRANSLATE_NOOP("Core",
                       "Write two numbers with a blank between, such as 3 7, or leave it empty.")},

    {errors::not_two_cells,
     QT_TRANSLATE_NOOP("Core", "a point has two numbers; here there are %1 cells"),
     QT_TRANSLATE_NOOP("Core", "Write x,y on each line.")},
    {errors::point_not_a_number, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a number"),
     QT_TRANSLATE_NOOP("Core", "Write a number such as 12.4.")},

    {errors::not_a_fact_id, QT_TRANSLATE_NOOP("Core", "this is not an entry id"),
     QT_TRANSLATE_NOOP("Core", "Ids are version 7 UUIDs in lower case.")},
    {errors::text_not_a_moment, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a date and time"),
     QT_TRANSLATE_NOOP("Core", "Write it like 2026-11-25T10:42:13.120+01:00.")},
    {errors::not_a_fact_kind, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a kind of entry"),
     QT_TRANSLATE_NOOP("Core", "It must be one of: %2.")},

    {errors::not_a_list_of_doors, QT_TRANSLATE_NOOP("Core", "this must be a list of doors"),
     QT_TRANSLATE_NOOP("Core", "Write it in brackets.")},
    {errors::door_needs_number, QT_TRANSLATE_NOOP("Core", "a door needs a number"),
     QT_TRANSLATE_NOOP("Core", "Give the one painted on it.")},
    {errors::door_recorded_twice,
     QT_TRANSLATE_NOOP("Core", "door \"%1\" is listed twice, first at %2"),
     QT_TRANSLATE_NOOP("Core", "Give every door its own id, or merge the two records.")},
    {errors::opening_out_of_range,
     QT_TRANSLATE_NOOP("Core", "a clear opening must be more than 0 and at most 10 m"),
     QT_TRANSLATE_NOOP("Core", "Give the clear width in metres.")},
    {errors::leaf_mass_out_of_range,
     QT_TRANSLATE_NOOP("Core", "a leaf must weigh more than 0 and at most 5000 kg"),
     QT_TRANSLATE_NOOP("Core", "Give the mass of the heaviest leaf in kilograms.")},
    {errors::not_two_spaces,
     QT_TRANSLATE_NOOP("Core", "this must be the categories of the two spaces, 1 to %1 in this "
                               "vessel's fire tables"),
     QT_TRANSLATE_NOOP("Core", "Write them like [3, 5].")},

    {errors::not_an_object_of_rows, QT_TRANSLATE_NOOP("Core", "this must be an object"),
     QT_TRANSLATE_NOOP("Core", "Write it in braces: {\"requirement\": value}.")},
    {errors::unknown_requirement,
     QT_TRANSLATE_NOOP("Core", "the catalogue has no requirement with this name"), "%1"},
    {errors::use_catalogue_ids, QT_TRANSLATE_NOOP("Core", "Use the ids in the catalogue.")},
    {errors::not_an_answer, QT_TRANSLATE_NOOP("Core", "this is not an answer"),
     QT_TRANSLATE_NOOP("Core", "Write \"yes\", \"no\" or \"n/a\".")},
    {errors::row_not_answered,
     QT_TRANSLATE_NOOP("Core", "this requirement is not answered by yes or no"), "%1"},
    {errors::give_measured_figure,
     QT_TRANSLATE_NOOP("Core", "Give its figure under \"measured\".")},
    {errors::follows_by_itself,
     QT_TRANSLATE_NOOP("Core", "It follows from the runs or from the class.")},
    {errors::row_not_measured,
     QT_TRANSLATE_NOOP("Core", "this requirement has no figure measured with rule or gauge"),
     QT_TRANSLATE_NOOP("Core", "Give runs with their marks, or an answer under \"observations\".")},
    {errors::step_too_coarse,
     QT_TRANSLATE_NOOP("Core", "no instrument for this figure has so coarse a step"),
     QT_TRANSLATE_NOOP("Core", "Give the step in the unit of the requirement, at most %1.")},
    {errors::figure_negative, QT_TRANSLATE_NOOP("Core", "this must be a number, 0 or more"), "%1"},
    {errors::write_without_quotes, QT_TRANSLATE_NOOP("Core", "Write it without quotes.")},
    {errors::write_in_unit, QT_TRANSLATE_NOOP("Core", "Write it in %1, without quotes.")},
    {errors::not_a_list_of_runs, QT_TRANSLATE_NOOP("Core", "this must be a list of runs"),
     QT_TRANSLATE_NOOP("Core", "Write it in brackets.")},
    {errors::run_without_marks, QT_TRANSLATE_NOOP("Core", "a run without marks shows nothing"),
     QT_TRANSLATE_NOOP("Core", "Give the marks that were timed, or remove the run.")},
    {errors::mark_time_out_of_range,
     QT_TRANSLATE_NOOP("Core", "a time must be from 0 to 3600 seconds"),
     QT_TRANSLATE_NOOP("Core", "Give seconds from the start of the stopwatch.")},
    {errors::marks_reversed, QT_TRANSLATE_NOOP("Core", "this cannot come before \"%1\""),
     QT_TRANSLATE_NOOP("Core", "Give the seconds of both events on one stopwatch.")},
    {errors::heel_too_large,
     QT_TRANSLATE_NOOP("Core", "a heel of more than 45 degrees is not possible"),
     QT_TRANSLATE_NOOP("Core", "Give the heel in degrees.")},
    {errors::run_not_complete,
     QT_TRANSLATE_NOOP("Core", "the run is not complete: \"%1\" was not marked"),
     QT_TRANSLATE_NOOP("Core", "Give that mark, or write \"void\".")},

    {errors::vessel_not_placed, QT_TRANSLATE_NOOP("Core", "the vessel could not be saved there"),
     QT_TRANSLATE_NOOP("Core", "Check the folder.")},
});

} // namespace

const PhraseRows exchange_errors_rows = exchange_errors_table;

} // namespace latchround::ui
