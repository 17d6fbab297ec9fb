#include "core/error/document_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto document_errors_table = std::to_array<PhraseRow>({
    {errors::walkdown_not_in_register,
     QT_TRANSLATE_NOOP("Core", "the register has no walkdown with this id"),
     QT_TRANSLATE_NOOP("Core", "Choose one of its walkdowns.")},
    {errors::door_not_in_register,
     QT_TRANSLATE_NOOP("Core", "the register has no door with this number"),
     QT_TRANSLATE_NOOP("Core", "Check the number.")},
    {errors::door_record_not_pdf, QT_TRANSLATE_NOOP("Core", "a door record can only be a PDF"),
     QT_TRANSLATE_NOOP("Core", "Choose PDF, or the survey report as CSV or JSON.")},
    {errors::pdf_not_made, QT_TRANSLATE_NOOP("Core", "the PDF could not be created"),
     QT_TRANSLATE_NOOP("Core", "Free some memory and try again.")},
    {errors::bookmarks_not_written,
     QT_TRANSLATE_NOOP("Core", "the bookmarks could not be written: %1"),
     QT_TRANSLATE_NOOP("Core", "Free some memory and try again.")},
});

} // namespace

const PhraseRows document_errors_rows = document_errors_table;

} // namespace latchround::ui
