#include "core/practice/fault_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto fault_phrases_table = std::to_array<PhraseRow>({
    {practice_fault::too_fast, QT_TRANSLATE_NOOP("Core", "It shuts faster than the text allows.")},
    {practice_fault::too_slow,
     QT_TRANSLATE_NOOP("Core", "It shuts more slowly than the text allows.")},
    {practice_fault::near_limit,
     QT_TRANSLATE_NOOP("Core",
                       "It shuts within a hair of the limit: no thumb can pass or fail it.")},
    {practice_fault::alarm_short,
     QT_TRANSLATE_NOOP("Core", "It moves less than 5 s after the alarm begins.")},
    {practice_fault::alarm_stops,
     QT_TRANSLATE_NOOP("Core", "The alarm stops before the leaf is home.")},
    {practice_fault::reopens_too_far,
     QT_TRANSLATE_NOOP("Core", "On contact it re-opens more than 1 m.")},
    {practice_fault::leaves_reversed,
     QT_TRANSLATE_NOOP("Core", "The selector fails: the leaf that must wait comes home first.")},
    {practice_fault::no_latch,
     QT_TRANSLATE_NOOP("Core", "It shuts but does not latch: it gives way when it is pushed.")},
    {practice_fault::magnet_late,
     QT_TRANSLATE_NOOP("Core",
                       "The magnet holds on for half a minute after the control station's release, "
                       "which is taken as not released (common practice, no source).")},
    {practice_fault::magnet_one_side,
     QT_TRANSLATE_NOOP("Core", "It cannot be released from one of its sides.")},
    {practice_fault::hook,
     QT_TRANSLATE_NOOP("Core", "A hook can hold it open that the control station cannot release.")},
    {practice_fault::wedge, QT_TRANSLATE_NOOP("Core", "A wedge holds it open.")},
    {practice_fault::pocket_litter, QT_TRANSLATE_NOOP("Core", "Litter lies in the pocket.")},
    {practice_fault::sill_missing, QT_TRANSLATE_NOOP("Core", "The sill is missing.")},
    {practice_fault::gap,
     QT_TRANSLATE_NOOP("Core", "The gap under the leaf is wider than the text allows.")},
    {practice_fault::wrong_plate,
     QT_TRANSLATE_NOOP("Core", "The plate names a lower class than the boundary asks for.")},
    {practice_fault::painted_seal, QT_TRANSLATE_NOOP("Core", "The seal is painted over.")},
    {practice_fault::indicator_lies,
     QT_TRANSLATE_NOOP("Core", "The control station's panel shows it open when it is shut.")},
    {practice_fault::hose_port_stuck,
     QT_TRANSLATE_NOOP("Core", "The cover of the hose port does not shut by itself.")},
    {practice_fault::stays_open,
     QT_TRANSLATE_NOOP("Core", "Opened again at the door after remote closing, it stays open.")},
    {practice_fault::people_in_path,
     QT_TRANSLATE_NOOP("Core", "Somebody was in the way of the leaf: the run has to be stopped.")},
});

} // namespace

const PhraseRows fault_phrases_rows = fault_phrases_table;

} // namespace latchround::ui
