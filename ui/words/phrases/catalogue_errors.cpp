#include "core/error/catalogue_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto catalogue_errors_table = std::to_array<PhraseRow>({
    {errors::no_catalogue_named, QT_TRANSLATE_NOOP("Core", "no file is named"),
     QT_TRANSLATE_NOOP("Core", "Name at least one.")},
    {errors::built_in_catalogue_used,
     QT_TRANSLATE_NOOP("Core", "Using the catalogue built into the program: %1")},
    {errors::catalogue_files_missing, QT_TRANSLATE_NOOP("Core", "its catalogue files are missing")},

    {errors::shipped_file_no_object, QT_TRANSLATE_NOOP("Core", "is not a JSON object"),
     QT_TRANSLATE_NOOP("Core", "Restore the file from a good copy.")},
    {errors::not_a_list_of_rows,
     QT_TRANSLATE_NOOP("Core", "must be a list with at least one entry")},
    {errors::row_id_twice, QT_TRANSLATE_NOOP("Core", "'%1' is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Ids must be unique.")},
    {errors::row_in_both_catalogues,
     QT_TRANSLATE_NOOP("Core", "requirement '%1' is in both catalogues"),
     QT_TRANSLATE_NOOP("Core", "Keep it in one of them.")},
    {errors::condition_without_fields, QT_TRANSLATE_NOOP("Core", "this condition is empty"),
     QT_TRANSLATE_NOOP("Core", "Give it a field.")},
    {errors::not_a_list_of_conditions, QT_TRANSLATE_NOOP("Core", "must be a list of conditions"),
     QT_TRANSLATE_NOOP("Core", "Leave it out if every door is meant.")},
    {errors::not_a_list_of_variants, QT_TRANSLATE_NOOP("Core", "must be a list of variants"),
     QT_TRANSLATE_NOOP("Core", "Leave it out if there are none.")},
    {errors::row_without_question,
     QT_TRANSLATE_NOOP("Core", "a requirement checked by eye needs a question"),
     QT_TRANSLATE_NOOP("Core", "Write the question as it is asked at the door.")},
    {errors::row_without_lower_limit, QT_TRANSLATE_NOOP("Core", "this check needs a lower limit"),
     QT_TRANSLATE_NOOP("Core", "Add a number.")},
    {errors::row_without_upper_limit, QT_TRANSLATE_NOOP("Core", "this check needs an upper limit"),
     QT_TRANSLATE_NOOP("Core", "Add a number.")},
    {errors::limits_reversed,
     QT_TRANSLATE_NOOP("Core", "the lower limit is not below the upper one"),
     QT_TRANSLATE_NOOP("Core", "Check both numbers.")},
    {errors::other_figure_alone,
     QT_TRANSLATE_NOOP("Core", "a second printed figure needs a gauge limit beside it"),
     QT_TRANSLATE_NOOP("Core", "Give low or high as well, and \"source\": \"gauge\".")},
    {errors::approximate_without_band,
     QT_TRANSLATE_NOOP("Core", "only a band of closing times or rates can be approximate"),
     QT_TRANSLATE_NOOP("Core", "Remove \"approximate\", or give such a band.")},
    {errors::margin_out_of_range,
     QT_TRANSLATE_NOOP("Core", "a margin must be 0 or more and less than 1"),
     QT_TRANSLATE_NOOP("Core", "Give it as a fraction of the limit: 0.05 is 5 per cent.")},
    {errors::figure_without_source, QT_TRANSLATE_NOOP("Core", "a figure needs a source"),
     QT_TRANSLATE_NOOP("Core",
                       "Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.")},

    {errors::row_there_already, QT_TRANSLATE_NOOP("Core", "'%1' is already in the catalogue"),
     QT_TRANSLATE_NOOP("Core", "Write \"change\": \"tighten\" or \"replace\".")},
    {errors::row_not_in_catalogue, QT_TRANSLATE_NOOP("Core", "'%1' is not in the catalogue"),
     QT_TRANSLATE_NOOP("Core", "Check its spelling, or write \"change\": \"add\".")},
    {errors::tightened_without_limit,
     QT_TRANSLATE_NOOP("Core", "a tightened requirement needs a limit"),
     QT_TRANSLATE_NOOP("Core", "Give low or high.")},
    {errors::limit_not_there, QT_TRANSLATE_NOOP("Core", "the requirement has no such limit"),
     QT_TRANSLATE_NOOP("Core", "Replace the whole requirement instead.")},
    {errors::limit_widened, QT_TRANSLATE_NOOP("Core", "%1 %2 is wider than the catalogue's %3 %2"),
     QT_TRANSLATE_NOOP("Core", "Tighten the requirement, or replace it as a whole.")},
    {errors::margin_widened, QT_TRANSLATE_NOOP("Core", "this margin is wider than the catalogue's"),
     QT_TRANSLATE_NOOP("Core", "Tighten the requirement, or replace it as a whole.")},

    {errors::not_a_list_of_categories, QT_TRANSLATE_NOOP("Core", "must be a list of categories")},
    {errors::categories_not_numbered,
     QT_TRANSLATE_NOOP("Core", "categories must be numbered from 1 without a gap")},
    {errors::unknown_category_list,
     QT_TRANSLATE_NOOP("Core", "'%1' is not a list of categories here")},
    {errors::not_a_list_of_tables,
     QT_TRANSLATE_NOOP("Core", "must be a list with at least one table")},
    {errors::table_there_already,
     QT_TRANSLATE_NOOP("Core", "there is already a table for these divisions"),
     QT_TRANSLATE_NOOP("Core", "Keep one of them.")},
    {errors::table_cell_missing, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Write null where nothing is printed.")},
    {errors::no_cell_of_table, QT_TRANSLATE_NOOP("Core", "is not a cell of this table"),
     QT_TRANSLATE_NOOP("Core",
                       "Write two of its categories; for a bulkhead, the lower one first.")},
    {errors::no_printed_value, QT_TRANSLATE_NOOP("Core", "%1 is not a value printed in a table"),
     QT_TRANSLATE_NOOP("Core", "Write a class with its notes in brackets, *, - or null.")},
    {errors::note_not_in_table, QT_TRANSLATE_NOOP("Core", "note '%1' is not in this table's notes"),
     QT_TRANSLATE_NOOP("Core", "Add the note.")},
});

} // namespace

const PhraseRows catalogue_errors_rows = catalogue_errors_table;

} // namespace latchround::ui
