#include "core/safety/caution_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto caution_phrases_table = std::to_array<PhraseRow>({
    {caution::announced,
     QT_TRANSLATE_NOOP("Core", "The release has been announced to everyone near these doors")},
    {caution::people_clear,
     QT_TRANSLATE_NOOP(
         "Core", "Passengers and crew are clear of every door that will move, and kept clear")},
    {caution::watch_posted,
     QT_TRANSLATE_NOOP("Core", "A lookout is posted on each side of every door that will move")},
    {caution::station_ready,
     QT_TRANSLATE_NOOP("Core", "The control station is on the agreed channel and ready")},
    {caution::words_agreed,
     QT_TRANSLATE_NOOP("Core", "The start word and the stop word have been given and read back")},
    {caution::path_free,
     QT_TRANSLATE_NOOP("Core", "Every path and pocket is clear; hands, feet and cables are off "
                               "every edge")},
});

} // namespace

const PhraseRows caution_phrases_rows = caution_phrases_table;

} // namespace latchround::ui
