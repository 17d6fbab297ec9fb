#include "core/division/division_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto division_phrases_table = std::to_array<PhraseRow>({
    {division::no_value_printed,
     QT_TRANSLATE_NOOP("Core", "no value printed: ask the Administration")},
    {division::zone_over_36,
     QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead, its steps and recesses are A-60; "
                               "A-0 is enough with a category 5, 9 or 10 space on one side, or "
                               "with oil fuel tanks on both.")},
    {division::zone_36_or_fewer,
     QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead is A class; its insulation follows "
                               "the table, with B-0, C and * read as A-0.")},
    {division::special_category,
     QT_TRANSLATE_NOOP("Core", "Boundaries of special category and ro-ro spaces are A-60; A-0 is "
                               "enough with a category 5, 9 or 10 space on one side.")},
    {division::special_category_renumbered,
     QT_TRANSLATE_NOOP("Core", "From 2026 MSC.550(108) renumbers II-2/9.6; that text has not been "
                               "read.")},
    {division::zone_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead is the higher of A-30 and table (b); "
                               "A-0 is enough with a type 8, 12 or 13 space on either side.")},
    {division::zone_step_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A step in a main vertical zone is A-60; A-0 is enough with a type "
                               "8, 12 or 13 space on either side.")},
    {division::zone_step_size_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "Such a step is at most 20 % of the zone's mean length, and at most "
                               "8 m (26 ft).")},
    {division::zone_size_subchapter_h,
     QT_TRANSLATE_NOOP("Core", "As a rule the mean length of a zone on any one deck is at most "
                               "39.9 m (131 ft); no extension is printed, and a ferry may have an "
                               "approved equivalent (46 CFR 72.05-10(b)).")},
    {division::zone_size_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "As a rule the mean length of a zone on any one deck is at most 40 "
                               "m (131 ft), except the vehicle space of a vehicle ferry. With "
                               "Marine Safety Center approval it is at most 44 m (144 ft), and so "
                               "is the distance between the zone's farthest points. With a balcony "
                               "the actual length is at most 40 m; if that length plus the balcony "
                               "area divided by the mean width is more than 40 m, both decks have "
                               "sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).")},
    {division::vehicle_deck_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A deck that bounds a horizontal zone of a vehicle ferry is the "
                               "higher of A-30 and table (c).")},
    {division::stricter_of_two,
     QT_TRANSLATE_NOOP("Core", "Two values are printed; the stricter is given here.")},
    {division::value_since_2014,
     QT_TRANSLATE_NOOP("Core", "The value for ships built on or after 1 July 2014 is given; the "
                               "build date is not known.")},
    {division::over_tanks,
     QT_TRANSLATE_NOOP("Core", "Where oil fuel tanks are below a special category space, A-0 is "
                               "enough for the deck between (II-2/9.6.1).")},
    {division::older_tables,
     QT_TRANSLATE_NOOP("Core", "A ship built before 1 July 2002 follows the tables of its time, "
                               "which are not included: compare with the approved plan.")},
    {division::tables_not_shown,
     QT_TRANSLATE_NOOP("Core", "Whether these tables apply to the ship is not on record: compare "
                               "with the approved plan.")},
});

} // namespace

const PhraseRows division_phrases_rows = division_phrases_table;

} // namespace latchround::ui
