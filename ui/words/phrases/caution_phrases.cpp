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
     QT_TRANSLATE_NOOP("Core", "A watch stands at every door that will move, on both sides")},
    {caution::station_ready,
     QT_TRANSLATE_NOOP("Core", "The control station is on the agreed channel and ready")},
    {caution::words_agreed,
     QT_TRANSLATE_NOOP("Core",
                       "The word to start and the word to stop have been said and repeated")},
    {caution::path_free,
     QT_TRANSLATE_NOOP(
         "Core", "Nothing stands in the path or the pocket; no hand, foot or cable at an edge")},
});

} // namespace

const PhraseRows caution_phrases_rows = caution_phrases_table;

} // namespace latchround::ui
