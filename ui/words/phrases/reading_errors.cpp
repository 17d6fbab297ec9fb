#include "core/error/reading_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto reading_errors_table = std::to_array<PhraseRow>({
    {errors::stopped_as_asked,
     QT_TRANSLATE_NOOP("Core", "stopped as requested: nothing was changed")},
    {errors::at_place, QT_TRANSLATE_NOOP("Core", "%1: %2")},
    {errors::did_you_mean_one, QT_TRANSLATE_NOOP("Core", "Nearest name here: \"%1\".")},
    {errors::did_you_mean_two, QT_TRANSLATE_NOOP("Core", "Nearest names here: \"%1\" or \"%2\".")},
    {errors::did_you_mean_three,
     QT_TRANSLATE_NOOP("Core", "Nearest names here: \"%1\", \"%2\" or \"%3\".")},

    {errors::no_such_file, QT_TRANSLATE_NOOP("Core", "there is no such file"),
     QT_TRANSLATE_NOOP("Core", "Check its name and folder.")},
    {errors::folder_not_file, QT_TRANSLATE_NOOP("Core", "this is a folder, not a file"),
     QT_TRANSLATE_NOOP("Core", "Name the file in it.")},
    {errors::not_readable_file, QT_TRANSLATE_NOOP("Core", "this is not a file that can be read"),
     QT_TRANSLATE_NOOP("Core", "Copy it to one of your own folders.")},
    {errors::file_too_large, QT_TRANSLATE_NOOP("Core", "the file is larger than %1 MB"),
     QT_TRANSLATE_NOOP("Core", "Choose the right file.")},
    {errors::file_not_opened, QT_TRANSLATE_NOOP("Core", "the file cannot be opened"),
     QT_TRANSLATE_NOOP("Core", "Ask for permission to read it.")},
    {errors::file_cut_short, QT_TRANSLATE_NOOP("Core", "the file could not be read to its end"),
     QT_TRANSLATE_NOOP("Core", "Try again, or copy it first.")},

    {errors::folder_not_file_name, QT_TRANSLATE_NOOP("Core", "this is a folder, not a file"),
     QT_TRANSLATE_NOOP("Core", "Give a file name.")},
    {errors::file_there_already,
     QT_TRANSLATE_NOOP("Core", "a file with this name already exists: NOT replaced"),
     QT_TRANSLATE_NOOP("Core", "Give another name, or allow it to be replaced.")},
    {errors::register_not_written_over,
     QT_TRANSLATE_NOOP("Core", "this is the register itself: NOT overwritten"),
     QT_TRANSLATE_NOOP("Core", "Give another name.")},
    {errors::not_written_here, QT_TRANSLATE_NOOP("Core", "cannot be written here: %1"), "%2"},
    {errors::not_all_written, QT_TRANSLATE_NOOP("Core", "not all of it could be written: %1"),
     "%2"},
    {errors::file_not_flushed, QT_TRANSLATE_NOOP("Core", "it could not be flushed to storage: %1"),
     "%2"},
    {errors::written_not_closed,
     QT_TRANSLATE_NOOP("Core", "the written file could not be closed: %1"), "%2"},
    {errors::written_not_in_place,
     QT_TRANSLATE_NOOP("Core", "the written file could not be moved into place: %1"), "%2"},
    {errors::choose_elsewhere,
     QT_TRANSLATE_NOOP("Core", "Choose another place; what was there before is untouched.")},
    {errors::written_folder_not_flushed,
     QT_TRANSLATE_NOOP("Core", "it is written, but its folder could not be flushed: %1"),
     QT_TRANSLATE_NOOP("Core", "Write it again before the power is switched off.")},
    {errors::file_not_removed, QT_TRANSLATE_NOOP("Core", "could not be removed: %1")},
    {errors::folder_not_flushed, QT_TRANSLATE_NOOP("Core", "its folder could not be flushed: %1")},

    {errors::csv_too_large, QT_TRANSLATE_NOOP("Core", "the file is larger than %1 MB"),
     QT_TRANSLATE_NOOP("Core", "A vessel's register is far smaller; choose the right file.")},
    {errors::csv_in_utf16, QT_TRANSLATE_NOOP("Core", "the file is written in UTF-16, not in UTF-8"),
     QT_TRANSLATE_NOOP("Core", "Save it as CSV UTF-8.")},
    {errors::csv_empty, QT_TRANSLATE_NOOP("Core", "the file is empty"),
     QT_TRANSLATE_NOOP("Core", "Export a register to see the tables it needs.")},
    {errors::text_beside_quotes,
     QT_TRANSLATE_NOOP("Core", "there is text before or after the quotes of a cell"),
     QT_TRANSLATE_NOOP("Core", "Put one quote at each end of the cell and double any quote inside "
                               "it, or save the table as CSV again from the spreadsheet.")},
    {errors::quote_not_closed,
     QT_TRANSLATE_NOOP("Core", "a quoted cell is not closed before the file ends"),
     QT_TRANSLATE_NOOP("Core", "Put one quote at each end of the cell and double any quote inside "
                               "it, or save the table as CSV again from the spreadsheet.")},
    {errors::byte_not_utf8, QT_TRANSLATE_NOOP("Core", "byte %1 is not UTF-8"),
     QT_TRANSLATE_NOOP("Core", "Save the file as CSV UTF-8.")},
    {errors::cell_empty, QT_TRANSLATE_NOOP("Core", "the cell is empty"),
     QT_TRANSLATE_NOOP("Core", "Fill it in.")},
    {errors::cell_not_a_number, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a number"),
     QT_TRANSLATE_NOOP("Core", "Write digits with a point, such as 71.40, without a unit.")},
    {errors::cell_not_a_whole_number, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a whole number"),
     QT_TRANSLATE_NOOP("Core", "Write digits only, such as 1200.")},
    {errors::cell_not_yes_or_no, QT_TRANSLATE_NOOP("Core", "\"%1\" is neither yes nor no"),
     QT_TRANSLATE_NOOP("Core", "Write yes or no.")},
    {errors::cell_not_a_date, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a date"),
     QT_TRANSLATE_NOOP("Core", "Write it as YYYY-MM-DD, such as 2015-03-01, or leave it empty.")},
    {errors::not_one_of, QT_TRANSLATE_NOOP("Core", "\"%1\" is not known here"),
     QT_TRANSLATE_NOOP("Core", "Write one of: %2.")},

    {errors::not_json, QT_TRANSLATE_NOOP("Core", "this is not JSON"),
     QT_TRANSLATE_NOOP("Core", "Look for a missing comma, quote or bracket just before this place; "
                               "the file must be UTF-8.")},
    {errors::json_number_too_large,
     QT_TRANSLATE_NOOP("Core", "a number in it is too large to read"),
     QT_TRANSLATE_NOOP("Core", "Correct it.")},
    {errors::given_file_no_object, QT_TRANSLATE_NOOP("Core", "is not a JSON object"),
     QT_TRANSLATE_NOOP("Core", "Ask whoever gave you the file for a good copy.")},

    {errors::field_twice, QT_TRANSLATE_NOOP("Core", "this field is given twice"),
     QT_TRANSLATE_NOOP("Core", "Remove one of them.")},
    {errors::field_missing, QT_TRANSLATE_NOOP("Core", "this field is missing"),
     QT_TRANSLATE_NOOP("Core", "Add it.")},
    {errors::field_not_known, QT_TRANSLATE_NOOP("Core", "this field is not known here"), "%1"},
    {errors::take_field_out,
     QT_TRANSLATE_NOOP("Core", "Remove it, or begin its name with \"x-\".")},
    {errors::field_empty, QT_TRANSLATE_NOOP("Core", "this field is empty"),
     QT_TRANSLATE_NOOP("Core", "Fill it in.")},
    {errors::field_list_empty, QT_TRANSLATE_NOOP("Core", "this list is empty"),
     QT_TRANSLATE_NOOP("Core", "Name at least one, or leave the field out.")},
    {errors::field_not_an_object, QT_TRANSLATE_NOOP("Core", "this must be an object"),
     QT_TRANSLATE_NOOP("Core", "Write it in braces: {\"field\": value}.")},
    {errors::field_not_a_list, QT_TRANSLATE_NOOP("Core", "this must be a list"),
     QT_TRANSLATE_NOOP("Core", "Write it in brackets.")},
    {errors::field_not_a_list_of_texts,
     QT_TRANSLATE_NOOP("Core", "this must be a list of text values"),
     QT_TRANSLATE_NOOP("Core", "Write it in brackets: [\"one\", \"two\"].")},
    {errors::field_not_a_text, QT_TRANSLATE_NOOP("Core", "this must be text"),
     QT_TRANSLATE_NOOP("Core", "Write it in quotes.")},
    {errors::field_not_a_number, QT_TRANSLATE_NOOP("Core", "this must be a number"),
     QT_TRANSLATE_NOOP("Core", "Write it without quotes, with a point.")},
    {errors::field_not_a_whole_number,
     QT_TRANSLATE_NOOP("Core", "this must be a whole number from %1 to %2"),
     QT_TRANSLATE_NOOP("Core", "Write digits only, without quotes.")},
    {errors::field_not_true_or_false, QT_TRANSLATE_NOOP("Core", "this must be true or false"),
     QT_TRANSLATE_NOOP("Core", "Write it without quotes.")},
    {errors::field_not_a_date, QT_TRANSLATE_NOOP("Core", "\"%1\" is not a date"),
     QT_TRANSLATE_NOOP("Core", "Write YYYY-MM-DD.")},
});

} // namespace

const PhraseRows reading_errors_rows = reading_errors_table;

} // namespace latchround::ui
