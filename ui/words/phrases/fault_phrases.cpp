#include "core/practice/fault_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto fault_phrases_table = std::to_array<PhraseRow>({
    {practice_fault::too_fast, QT_TRANSLATE_NOOP("Core", "It shuts faster than permitted.")},
    {practice_fault::too_slow, QT_TRANSLATE_NOOP("Core", "It shuts more slowly than permitted.")},
    {practice_fault::near_limit,
     QT_TRANSLATE_NOOP("Core", "It shuts too close to the limit for any hand timing to pass or "
                               "fail it.")},
    {practice_fault::alarm_short,
     QT_TRANSLATE_NOOP("Core", "It moves less than 5 s after the alarm begins.")},
    {practice_fault::alarm_stops,
     QT_TRANSLATE_NOOP("Core", "The alarm stops before the leaf is home.")},
    {practice_fault::reopens_too_far,
     QT_TRANSLATE_NOOP("Core", "On contact it re-opens more than 1 m.")},
    {practice_fault::leaves_reversed,
     QT_TRANSLATE_NOOP("Core", "The selector fails: the leaf that must wait closes first.")},
    {practice_fault::no_latch,
     QT_TRANSLATE_NOOP("Core", "It shuts but does not latch: it opens when pushed.")},
    {practice_fault::magnet_late,
     QT_TRANSLATE_NOOP("Core", "The magnet holds for half a minute after the control station "
                               "releases it, which counts as not released (common practice, no "
                               "published source).")},
    {practice_fault::magnet_one_side,
     QT_TRANSLATE_NOOP("Core", "It cannot be released from one side.")},
    {practice_fault::hook,
     QT_TRANSLATE_NOOP("Core", "It can be held open by a hook that the control station cannot "
                               "release.")},
    {practice_fault::wedge, QT_TRANSLATE_NOOP("Core", "A wedge holds it open.")},
    {practice_fault::pocket_litter, QT_TRANSLATE_NOOP("Core", "There is litter in the pocket.")},
    {practice_fault::sill_missing, QT_TRANSLATE_NOOP("Core", "The sill is missing.")},
    {practice_fault::gap,
     QT_TRANSLATE_NOOP("Core", "The gap under the leaf is wider than permitted.")},
    {practice_fault::wrong_plate,
     QT_TRANSLATE_NOOP("Core", "The plate shows a lower class than the boundary requires.")},
    {practice_fault::painted_seal, QT_TRANSLATE_NOOP("Core", "The seal is painted over.")},
    {practice_fault::indicator_lies,
     QT_TRANSLATE_NOOP("Core", "The control station's panel shows it open when it is shut.")},
    {practice_fault::hose_port_stuck,
     QT_TRANSLATE_NOOP("Core", "The cover of the hose port does not shut by itself.")},
    {practice_fault::stays_open,
     QT_TRANSLATE_NOOP("Core",
                       "It stays open when opened again at the door after remote closing.")},
    {practice_fault::people_in_path,
     QT_TRANSLATE_NOOP("Core", "Someone was in the path of the leaf: the run had to be stopped.")},
});

} // namespace

const PhraseRows fault_phrases_rows = fault_phrases_table;

} // namespace latchround::ui
