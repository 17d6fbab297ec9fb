#include "core/grading/reason_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto reason_phrases_table = std::to_array<PhraseRow>({
    {reason::plate, QT_TRANSLATE_NOOP("Core", "plate %1")},
    {reason::in_register, QT_TRANSLATE_NOOP("Core", "register %1")},
    {reason::no_plate, QT_TRANSLATE_NOOP("Core", "no plate")},
    {reason::plate_illegible, QT_TRANSLATE_NOOP("Core", "plate illegible")},
    {reason::boundary, QT_TRANSLATE_NOOP("Core", "boundary %1")},
    {reason::boundary_by, QT_TRANSLATE_NOOP("Core", "boundary %1 (%2)")},
    {reason::boundary_by_plan,
     QT_TRANSLATE_NOOP("Core", "boundary %1 by the approved plan, %2 by %3")},
    {reason::boundary_below_a,
     QT_TRANSLATE_NOOP("Core", "boundary %1 by the approved plan, A class by %2")},
    {reason::two_figures, QT_TRANSLATE_NOOP("Core", "%1 and %2")},
    {reason::force_below, QT_TRANSLATE_NOOP("Core", "%1 measured, %2 needed at %3 degrees")},
    {reason::faster_by,
     QT_TRANSLATE_NOOP("Core", "faster by no more than %1 per cent (our own margin, no source), "
                               "and a fast leaf crushes")},
    {reason::slower_by,
     QT_TRANSLATE_NOOP("Core", "slower by no more than %1 per cent (our own margin, no source)")},
    {reason::whose_door_needs, QT_TRANSLATE_NOOP("Core", "%1, whose door needs %2")},
});

} // namespace

const PhraseRows reason_phrases_rows = reason_phrases_table;

} // namespace latchround::ui
