#include "core/phrase/places.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto places_table = std::to_array<PhraseRow>({
    {place::line, QT_TRANSLATE_NOOP("Core", "%1 line %2")},
    {place::cell, QT_TRANSLATE_NOOP("Core", "%1 line %2, column %3")},
    {place::column, QT_TRANSLATE_NOOP("Core", "%1, column %2")},
    {place::field_of_cell, QT_TRANSLATE_NOOP("Core", "%1 line %2, column %3 (%4)")},
    {place::field_of_line, QT_TRANSLATE_NOOP("Core", "%1 line %2 (%3)")},
    {place::field_of_file, QT_TRANSLATE_NOOP("Core", "%1 (%2)")},
    {place::pointer, QT_TRANSLATE_NOOP("Core", "%1 at %2")},
    {place::top, QT_TRANSLATE_NOOP("Core", "%1 at the top")},
    {place::built_in, QT_TRANSLATE_NOOP("Core", "built-in %1")},
    {place::within, QT_TRANSLATE_NOOP("Core", "%1, %2")},
    {place::door, QT_TRANSLATE_NOOP("Core", "door %1")},
    {place::door_without_number, QT_TRANSLATE_NOOP("Core", "door (no number)")},
    {place::deck, QT_TRANSLATE_NOOP("Core", "deck %1")},
    {place::zone, QT_TRANSLATE_NOOP("Core", "zone %1")},
    {place::boundary, QT_TRANSLATE_NOOP("Core", "boundary %1")},
    {place::vessel, QT_TRANSLATE_NOOP("Core", "vessel")},
    {place::vessel_called, QT_TRANSLATE_NOOP("Core", "vessel %1")},
    {place::vessel_named, QT_TRANSLATE_NOOP("Core", "vessel %1 %2")},
    {place::fact, QT_TRANSLATE_NOOP("Core", "entry %1")},
    {place::signature, QT_TRANSLATE_NOOP("Core", "signature %1")},
    {place::report_made, QT_TRANSLATE_NOOP("Core", "report %1")},
    {place::photograph, QT_TRANSLATE_NOOP("Core", "photograph %1")},
    {place::device, QT_TRANSLATE_NOOP("Core", "device %1")},
    {place::device_named, QT_TRANSLATE_NOOP("Core", "device %1 (%2)")},
    {place::key, QT_TRANSLATE_NOOP("Core", "key %1")},
    {place::own_key, QT_TRANSLATE_NOOP("Core", "this device's key")},
    {place::this_register, QT_TRANSLATE_NOOP("Core", "register")},
    {place::handover_file, QT_TRANSLATE_NOOP("Core", "handover file")},
    {place::handover, QT_TRANSLATE_NOOP("Core", "handover")},
    {place::practice, QT_TRANSLATE_NOOP("Core", "practice")},
    {place::picture, QT_TRANSLATE_NOOP("Core", "photograph")},
    {place::walkdown, QT_TRANSLATE_NOOP("Core", "walkdown %1")},
    {place::report, QT_TRANSLATE_NOOP("Core", "document")},
    {place::door_record, QT_TRANSLATE_NOOP("Core", "door record")},
    {place::blank_form, QT_TRANSLATE_NOOP("Core", "blank form")},
    {place::rule_book, QT_TRANSLATE_NOOP("Core", "rule book")},
    {place::attempt, QT_TRANSLATE_NOOP("Core", "attempt")},
    {place::password, QT_TRANSLATE_NOOP("Core", "the password")},
});

} // namespace

const PhraseRows place_rows = places_table;

} // namespace latchround::ui
