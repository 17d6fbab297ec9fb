#include "core/error/command_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto command_errors_table = std::to_array<PhraseRow>({
    {errors::command_line_said, "%1", QT_TRANSLATE_NOOP("Core", "See latchround-cli --help.")},
    {errors::fault_of_the_program, QT_TRANSLATE_NOOP("Core", "a fault of the program: %1"),
     QT_TRANSLATE_NOOP("Core", "Please report it with the file that brought it about.")},
    {errors::output_not_written, QT_TRANSLATE_NOOP("Core", "could not be written")},

    {errors::no_register_here, QT_TRANSLATE_NOOP("Core", "no register is here"),
     QT_TRANSLATE_NOOP("Core", "Check the name, or import one first.")},
    {errors::no_vessel_yet, QT_TRANSLATE_NOOP("Core", "this register holds no vessel yet"),
     QT_TRANSLATE_NOOP("Core", "Import one first.")},
    {errors::no_walkdown_yet, QT_TRANSLATE_NOOP("Core", "no walkdown is recorded in this register"),
     QT_TRANSLATE_NOOP("Core", "Begin one first.")},
    {errors::no_walkdown_of_id, QT_TRANSLATE_NOOP("Core", "no walkdown has the id '%1'"),
     QT_TRANSLATE_NOOP("Core", "The latest is %2.")},

    {errors::key_not_in_hex, QT_TRANSLATE_NOOP("Core", "a key is 64 lower-case hex digits"),
     QT_TRANSLATE_NOOP("Core", "The file that was refused names its key.")},
    {errors::nobody_accepts_key, QT_TRANSLATE_NOOP("Core", "it does not say who accepts the key"),
     QT_TRANSLATE_NOOP("Core", "Add --person NAME.")},
    {errors::not_key_of_file,
     QT_TRANSLATE_NOOP("Core", "this is not the key of the file, which is %1"),
     QT_TRANSLATE_NOOP("Core", "Compare it with what the other tablet shows.")},

    {errors::unknown_document, QT_TRANSLATE_NOOP("Core", "\"%1\" is no document of this program"),
     QT_TRANSLATE_NOOP(
         "Core",
         "Choose survey, deficiency-list, work-list, door-record, paper-form or rule-book.")},
    {errors::unknown_report_form,
     QT_TRANSLATE_NOOP("Core", "\"%1\" is no form a report is written in"),
     QT_TRANSLATE_NOOP("Core", "Choose pdf, csv or json.")},
    {errors::paper_form_not_pdf, QT_TRANSLATE_NOOP("Core", "a paper form is printed"),
     QT_TRANSLATE_NOOP("Core", "Write it to a PDF file.")},
    {errors::rule_book_not_pdf, QT_TRANSLATE_NOOP("Core", "a rule book is printed"),
     QT_TRANSLATE_NOOP("Core", "Write it to a PDF file; its data are given by \"rules --json\".")},
    {errors::no_row_of_id, QT_TRANSLATE_NOOP("Core", "there is no row '%1'"),
     QT_TRANSLATE_NOOP("Core", "The table of \"rules\" names them all.")},
    {errors::door_without_vessel, QT_TRANSLATE_NOOP("Core", "a door is one of a vessel"),
     QT_TRANSLATE_NOOP("Core", "Give the vessel's register by --vessel.")},
    {errors::door_record_without_door, QT_TRANSLATE_NOOP("Core", "a door record is of one door"),
     QT_TRANSLATE_NOOP("Core", "Give its number.")},
    {errors::nobody_of_name,
     QT_TRANSLATE_NOOP("Core", "the register knows nobody of the name '%1'"),
     QT_TRANSLATE_NOOP("Core", "Write the name as it stands in the register.")},

    {errors::exercise_not_named, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give an id of \"practice list\" or a file.")},
    {errors::seed_not_given, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give a number; the same one gives the same doors.")},
    {errors::answers_not_named, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give the file of answers.")},
    {errors::word_not_given, QT_TRANSLATE_NOOP("Core", "it is missing"),
     QT_TRANSLATE_NOOP("Core",
                       "Put it into LATCHROUND_WORD, or into a file named by --word-file.")},

    {errors::no_pair_of_categories,
     QT_TRANSLATE_NOOP("Core", "\"%1\" is no pair of this ship's categories"),
     QT_TRANSLATE_NOOP("Core", "Write two numbers from 1 to %2, such as 3,7.")},
    {errors::categories_needed,
     QT_TRANSLATE_NOOP("Core", "the categories of the two spaces are needed"),
     QT_TRANSLATE_NOOP("Core", "Write them like 3,7.")},
    {errors::ship_without_main_zones,
     QT_TRANSLATE_NOOP("Core", "such a ship has no main vertical zones"),
     QT_TRANSLATE_NOOP("Core", "Ask for bulkhead or deck.")},

    {errors::confidence_not_a_share, QT_TRANSLATE_NOOP("Core", "must lie between 0 and 1"),
     QT_TRANSLATE_NOOP("Core", "Write 0.95 for 95 %.")},
    {errors::confidence_not_in_millionths,
     QT_TRANSLATE_NOOP("Core", "must lie between 0 and 1, in whole millionths"),
     QT_TRANSLATE_NOOP("Core", "Write 0.95 for 95 %.")},
    {errors::nothing_to_look_up, QT_TRANSLATE_NOOP("Core", "is not a number that can be looked up"),
     QT_TRANSLATE_NOOP("Core", "Write a number.")},
    {errors::no_line_through_points,
     QT_TRANSLATE_NOOP("Core", "no line can be laid through %1 points, or all lie at the same x, "
                               "or a number is too large"),
     QT_TRANSLATE_NOOP("Core", "Give at least three points at two different x.")},
    {errors::nothing_to_judge, QT_TRANSLATE_NOOP("Core", "is not a number that can be judged"),
     QT_TRANSLATE_NOOP("Core", "Write a number such as 10.3.")},
    {errors::negative_uncertainty, QT_TRANSLATE_NOOP("Core", "a standard uncertainty is 0 or more"),
     QT_TRANSLATE_NOOP("Core", "Write it in the unit of the value, for k = 1.")},
    {errors::limit_not_a_number, QT_TRANSLATE_NOOP("Core", "is no limit"),
     QT_TRANSLATE_NOOP("Core", "Write a number.")},
    {errors::no_limit_given, QT_TRANSLATE_NOOP("Core", "without a limit there is nothing to judge"),
     QT_TRANSLATE_NOOP("Core", "Give --low, --high or both.")},
    {errors::too_few_degrees_of_freedom,
     QT_TRANSLATE_NOOP("Core", "degrees of freedom are 1 or more"),
     QT_TRANSLATE_NOOP("Core", "Leave it out where u is well known.")},

    {errors::sample_of_too_many,
     QT_TRANSLATE_NOOP("Core", "there must be at least 1 door and at most %1"),
     QT_TRANSLATE_NOOP("Core", "Give the number of doors.")},
    {errors::claim_of_too_many_defective,
     QT_TRANSLATE_NOOP("Core", "must be 0 or more and less than the number of doors"),
     QT_TRANSLATE_NOOP("Core", "Give the number of defective doors that the claim allows.")},
    {errors::half_a_result,
     QT_TRANSLATE_NOOP("Core", "a result is how many were tested and how many of those failed"),
     QT_TRANSLATE_NOOP("Core", "Give both, or neither.")},
    {errors::impossible_result,
     QT_TRANSLATE_NOOP("Core",
                       "no more can fail than were tested, and no more be tested than there are"),
     QT_TRANSLATE_NOOP("Core", "Check the three numbers.")},
});

} // namespace

const PhraseRows command_errors_rows = command_errors_table;

} // namespace latchround::ui
