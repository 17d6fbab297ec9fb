#include "core/error/command_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto command_errors_table = std::to_array<PhraseRow>({
    {errors::command_line_said, "%1", QT_TRANSLATE_NOOP("Core", "See latchround-cli --help.")},
    {errors::fault_of_the_program, QT_TRANSLATE_NOOP("Core", "a fault in the program: %1"),
     QT_TRANSLATE_NOOP("Core", "Please report it, with the file that caused it.")},
    {errors::output_not_written, QT_TRANSLATE_NOOP("Core", "could not be written")},

    {errors::no_register_here, QT_TRANSLATE_NOOP("Core", "there is no register here"),
     QT_TRANSLATE_NOOP("Core", "Check the name, or import one first.")},
    {errors::no_vessel_yet, QT_TRANSLATE_NOOP("Core", "this register has no vessel yet"),
     QT_TRANSLATE_NOOP("Core", "Import one first.")},
    {errors::no_walkdown_yet, QT_TRANSLATE_NOOP("Core", "no walkdown is recorded in this register"),
     QT_TRANSLATE_NOOP("Core", "Begin one first.")},
    {errors::no_walkdown_of_id, QT_TRANSLATE_NOOP("Core", "no walkdown has the id '%1'"),
     QT_TRANSLATE_NOOP("Core", "The latest is %2.")},

    {errors::key_not_in_hex, QT_TRANSLATE_NOOP("Core", "a key is 64 lower-case hex digits"),
     QT_TRANSLATE_NOOP("Core", "The refused file states its key.")},
    {errors::nobody_accepts_key, QT_TRANSLATE_NOOP("Core", "who accepts the key is not stated"),
     QT_TRANSLATE_NOOP("Core", "Add --person NAME.")},
    {errors::not_key_of_file, QT_TRANSLATE_NOOP("Core", "this is not the file's key, which is %1"),
     QT_TRANSLATE_NOOP("Core", "Compare it with what the other tablet shows.")},

    {errors::unknown_document, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a document kind"),
     QT_TRANSLATE_NOOP(
         "Core",
         "Choose survey, deficiency-list, work-list, door-record, blank-form or rule-book.")},
    {errors::unknown_report_form, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a report format"),
     QT_TRANSLATE_NOOP("Core", "Choose pdf, csv or json.")},
    {errors::blank_form_not_pdf, QT_TRANSLATE_NOOP("Core", "a blank form can only be a PDF"),
     QT_TRANSLATE_NOOP("Core", "Write it to a PDF file.")},
    {errors::rule_book_not_pdf, QT_TRANSLATE_NOOP("Core", "a rule book can only be a PDF"),
     QT_TRANSLATE_NOOP("Core", "Write it to a PDF file; \"rules --json\" gives its data.")},
    {errors::unknown_language, QT_TRANSLATE_NOOP("Core", "there is no translation into \"%1\""),
     QT_TRANSLATE_NOOP("Core", "Choose one of: %2.")},
    {errors::only_pdf_is_translated, QT_TRANSLATE_NOOP("Core", "only a PDF can be a translation"),
     QT_TRANSLATE_NOOP("Core", "Write it to a PDF file; data is the same in every language.")},
    {errors::no_row_of_id, QT_TRANSLATE_NOOP("Core", "there is no requirement '%1'"),
     QT_TRANSLATE_NOOP("Core", "\"rules\" lists them all.")},
    {errors::door_without_vessel, QT_TRANSLATE_NOOP("Core", "a door belongs to a vessel"),
     QT_TRANSLATE_NOOP("Core", "Give the vessel's register with --vessel.")},
    {errors::door_record_without_door, QT_TRANSLATE_NOOP("Core", "a door record is for one door"),
     QT_TRANSLATE_NOOP("Core", "Give its number.")},
    {errors::nobody_of_name, QT_TRANSLATE_NOOP("Core", "no one in the register is named '%1'"),
     QT_TRANSLATE_NOOP("Core", "Write the name as it is in the register.")},

    {errors::exercise_not_named, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give an id from \"practice list\", or a file.")},
    {errors::seed_not_given, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give a number; the same number gives the same doors.")},
    {errors::answers_not_named, QT_TRANSLATE_NOOP("Core", "is missing"),
     QT_TRANSLATE_NOOP("Core", "Give the answers file.")},
    {errors::password_not_given, QT_TRANSLATE_NOOP("Core", "it is missing"),
     QT_TRANSLATE_NOOP(
         "Core", "Put it into LATCHROUND_PASSWORD, or into a file named by --password-from.")},

    {errors::no_pair_of_categories,
     QT_TRANSLATE_NOOP("Core", "\"%1\" is not a pair of this ship's categories"),
     QT_TRANSLATE_NOOP("Core", "Write two numbers from 1 to %2, such as 3,7.")},
    {errors::categories_needed,
     QT_TRANSLATE_NOOP("Core", "the categories of the two spaces are needed"),
     QT_TRANSLATE_NOOP("Core", "Write them like 3,7.")},
    {errors::ship_without_main_zones,
     QT_TRANSLATE_NOOP("Core", "a ship of this kind has no main vertical zones"),
     QT_TRANSLATE_NOOP("Core", "Ask for bulkhead or deck.")},

    {errors::confidence_not_a_share, QT_TRANSLATE_NOOP("Core", "must be between 0 and 1"),
     QT_TRANSLATE_NOOP("Core", "Write 0.95 for 95 %.")},
    {errors::confidence_not_in_millionths,
     QT_TRANSLATE_NOOP("Core", "must be between 0 and 1, to six decimals at most"),
     QT_TRANSLATE_NOOP("Core", "Write 0.95 for 95 %.")},
    {errors::nothing_to_look_up, QT_TRANSLATE_NOOP("Core", "is not a usable number"),
     QT_TRANSLATE_NOOP("Core", "Write a number.")},
    {errors::no_line_through_points,
     QT_TRANSLATE_NOOP("Core", "no line can be fitted: there are only %1 points, or all have the "
                               "same x, or a number is too large"),
     QT_TRANSLATE_NOOP("Core", "Give at least three points, with at least two different x.")},
    {errors::nothing_to_judge, QT_TRANSLATE_NOOP("Core", "is not a usable number"),
     QT_TRANSLATE_NOOP("Core", "Write a number such as 10.3.")},
    {errors::negative_uncertainty,
     QT_TRANSLATE_NOOP("Core", "a standard uncertainty must be 0 or more"),
     QT_TRANSLATE_NOOP("Core", "Write it in the unit of the value, for k = 1.")},
    {errors::limit_not_a_number, QT_TRANSLATE_NOOP("Core", "is not a limit"),
     QT_TRANSLATE_NOOP("Core", "Write a number.")},
    {errors::no_limit_given, QT_TRANSLATE_NOOP("Core", "there is no limit to judge against"),
     QT_TRANSLATE_NOOP("Core", "Give --low, --high or both.")},
    {errors::too_few_degrees_of_freedom,
     QT_TRANSLATE_NOOP("Core", "degrees of freedom must be 1 or more"),
     QT_TRANSLATE_NOOP("Core", "Leave it out if u is well known.")},

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
     QT_TRANSLATE_NOOP("Core", "failed cannot exceed tested, and tested cannot exceed the number "
                               "of doors"),
     QT_TRANSLATE_NOOP("Core", "Check the three numbers.")},
});

} // namespace

const PhraseRows command_errors_rows = command_errors_table;

} // namespace latchround::ui
