// The tables of phrases, one for each header of codes.
#pragma once

#include "ui/words/phrases/phrase_rows.h"

namespace latchround::ui {

extern const PhraseRows applicability_phrases_rows;
extern const PhraseRows arrangement_errors_rows;
extern const PhraseRows ashore_errors_rows;
extern const PhraseRows catalogue_errors_rows;
extern const PhraseRows caution_phrases_rows;
extern const PhraseRows command_errors_rows;
extern const PhraseRows desktop_errors_rows;
extern const PhraseRows division_phrases_rows;
extern const PhraseRows document_errors_rows;
extern const PhraseRows exchange_errors_rows;
extern const PhraseRows exercise_errors_rows;
extern const PhraseRows fault_phrases_rows;
extern const PhraseRows handover_errors_rows;
extern const PhraseRows place_rows;
extern const PhraseRows reading_errors_rows;
extern const PhraseRows reason_phrases_rows;
extern const PhraseRows register_errors_rows;

} // namespace latchround::ui
