#include "core/requirement/applicability_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto applicability_phrases_table = std::to_array<PhraseRow>({
    {applies::zone_bulkhead, QT_TRANSLATE_NOOP("Core", "zone bulkhead")},
    {applies::stairway_enclosure, QT_TRANSLATE_NOOP("Core", "stairway enclosure")},
    {applies::galley_boundary, QT_TRANSLATE_NOOP("Core", "galley boundary")},
    {applies::machinery_boundary, QT_TRANSLATE_NOOP("Core", "machinery space boundary")},
    {applies::special_category_boundary, QT_TRANSLATE_NOOP("Core", "special category boundary")},
    {applies::cabin, QT_TRANSLATE_NOOP("Core", "cabin")},
    {applies::exterior, QT_TRANSLATE_NOOP("Core", "exterior")},
    {applies::other_boundary, QT_TRANSLATE_NOOP("Core", "other boundary")},
    {applies::single_leaf, QT_TRANSLATE_NOOP("Core", "single leaf")},
    {applies::double_leaf, QT_TRANSLATE_NOOP("Core", "double leaf")},
    {applies::sliding, QT_TRANSLATE_NOOP("Core", "sliding")},
    {applies::double_swing, QT_TRANSLATE_NOOP("Core", "double swing")},
    {applies::not_listed, QT_TRANSLATE_NOOP("Core", "not listed by II-2/9.4.1.1.5")},
    {applies::normally_locked, QT_TRANSLATE_NOOP("Core", "normally locked")},
    {applies::power_watertight, QT_TRANSLATE_NOOP("Core", "power-operated watertight door")},
    {applies::not_in_listed_place,
     QT_TRANSLATE_NOOP("Core", "not in a zone bulkhead, galley or stairway boundary")},
    {applies::a_class, QT_TRANSLATE_NOOP("Core", "A class")},
    {applies::not_a_class, QT_TRANSLATE_NOOP("Core", "not an A-class door")},
    {applies::b_class, QT_TRANSLATE_NOOP("Core", "B class")},
    {applies::not_b_class, QT_TRANSLATE_NOOP("Core", "not a B-class door")},
    {applies::power_operated, QT_TRANSLATE_NOOP("Core", "power-operated")},
    {applies::not_power_operated, QT_TRANSLATE_NOOP("Core", "not power-operated")},
    {applies::released_remotely, QT_TRANSLATE_NOOP("Core", "released remotely")},
    {applies::no_remote_release, QT_TRANSLATE_NOOP("Core", "no remote release")},
    {applies::held_open, QT_TRANSLATE_NOOP("Core", "held open")},
    {applies::not_held_open, QT_TRANSLATE_NOOP("Core", "not held open")},
    {applies::designed_to_reopen, QT_TRANSLATE_NOOP("Core", "designed to re-open")},
    {applies::not_designed_to_reopen, QT_TRANSLATE_NOOP("Core", "not designed to re-open")},
    {applies::hose_port, QT_TRANSLATE_NOOP("Core", "hose port fitted")},
    {applies::no_hose_port, QT_TRANSLATE_NOOP("Core", "no hose port")},
    {applies::in_escape_route, QT_TRANSLATE_NOOP("Core", "in an escape route")},
    {applies::not_in_escape_route, QT_TRANSLATE_NOOP("Core", "not in an escape route")},
    {applies::sill_in_frame, QT_TRANSLATE_NOOP("Core", "sill in its frame")},
    {applies::no_sill_in_frame, QT_TRANSLATE_NOOP("Core", "no sill in its frame")},
    {applies::needs_latch, QT_TRANSLATE_NOOP("Core", "needs a latch")},
    {applies::needs_no_latch, QT_TRANSLATE_NOOP("Core", "needs no latch")},
    {applies::watertight, QT_TRANSLATE_NOOP("Core", "watertight")},
    {applies::not_watertight, QT_TRANSLATE_NOOP("Core", "not watertight")},
    {applies::weathertight, QT_TRANSLATE_NOOP("Core", "weathertight")},
    {applies::not_weathertight, QT_TRANSLATE_NOOP("Core", "not weathertight")},
    {applies::escape_trunk, QT_TRANSLATE_NOOP("Core", "emergency escape trunk")},
    {applies::not_of_escape_trunk, QT_TRANSLATE_NOOP("Core", "not of an escape trunk")},
    {applies::special_category_space, QT_TRANSLATE_NOOP("Core", "special category space")},
    {applies::no_special_category_space, QT_TRANSLATE_NOOP("Core", "no special category space")},
    {applies::faces_embarkation, QT_TRANSLATE_NOOP("Core", "faces embarkation or an escape deck")},
    {applies::faces_no_embarkation,
     QT_TRANSLATE_NOOP("Core", "faces no embarkation or escape deck")},
    {applies::bulkhead, QT_TRANSLATE_NOOP("Core", "bulkhead")},
    {applies::deck, QT_TRANSLATE_NOOP("Core", "deck")},
    {applies::in_deck, QT_TRANSLATE_NOOP("Core", "in a deck")},
    {applies::not_in_deck, QT_TRANSLATE_NOOP("Core", "not in a deck")},
    {applies::normally_open, QT_TRANSLATE_NOOP("Core", "normally open")},
    {applies::normally_closed, QT_TRANSLATE_NOOP("Core", "normally closed")},
    {applies::not_normally_locked, QT_TRANSLATE_NOOP("Core", "not normally locked")},
    {applies::every_door, QT_TRANSLATE_NOOP("Core", "every door")},
    {applies::exempt, QT_TRANSLATE_NOOP("Core", "exempt: %1")},
    {applies::installed, QT_TRANSLATE_NOOP("Core", "installed %1")},
    {applies::installed_before, QT_TRANSLATE_NOOP("Core", "installed before %1")},
    {applies::keel_laid, QT_TRANSLATE_NOOP("Core", "keel laid %1")},
    {applies::keel_before,
     QT_TRANSLATE_NOOP("Core", "keel laid before %1: compare with the approved drawing")},
    {applies::keel_unknown,
     QT_TRANSLATE_NOOP("Core", "keel date unknown: compare with the approved drawing")},
    {applies::installation_unknown, QT_TRANSLATE_NOOP("Core", "date of installation unknown")},
    {applies::flag_has_own_text,
     QT_TRANSLATE_NOOP("Core", "the vessel's own flag has its own text")},
    {applies::text_of_other_ships, QT_TRANSLATE_NOOP("Core", "a text of other ships: %1")},
});

} // namespace

const PhraseRows applicability_phrases_rows = applicability_phrases_table;

} // namespace latchround::ui
