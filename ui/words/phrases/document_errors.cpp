#include "core/error/document_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto document_errors_table = std::to_array<PhraseRow>({
    {errors::walkdown_not_in_register,
     QT_TRANSLATE_NOOP("Core", "the register knows no walkdown of this id"),
     QT_TRANSLATE_NOOP("Core", "Choose one of its walkdowns.")},
    {errors::door_not_in_register,
     QT_TRANSLATE_NOOP("Core", "the register knows no door of this number"),
     QT_TRANSLATE_NOOP("Core", "Check the number.")},
    {errors::door_record_not_pdf, QT_TRANSLATE_NOOP("Core", "a door record is a printed page"),
     QT_TRANSLATE_NOOP("Core", "Choose PDF, or the survey as CSV or JSON.")},
    {errors::pdf_not_made, QT_TRANSLATE_NOOP("Core", "the PDF could not be made"),
     QT_TRANSLATE_NOOP("Core", "Free some memory and try again.")},
    {errors::bookmarks_not_written,
     QT_TRANSLATE_NOOP("Core", "the bookmarks could not be written: %1"),
     QT_TRANSLATE_NOOP("Core", "Free some memory and try again.")},
});

} // namespace

const PhraseRows document_errors_rows = document_errors_table;

} // namespace latchround::ui
