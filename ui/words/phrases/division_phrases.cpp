#include "core/division/division_phrases.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto division_phrases_table = std::to_array<PhraseRow>({
    {division::no_value_printed,
     QT_TRANSLATE_NOOP("Core", "no value printed: ask the Administration")},
    {division::zone_over_36,
     QT_TRANSLATE_NOOP(
         "Core", "A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with "
                 "a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.")},
    {division::zone_36_or_fewer,
     QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead is A class; its insulation is that "
                               "of the table, where B-0, C and * are read as A-0.")},
    {division::special_category,
     QT_TRANSLATE_NOOP("Core", "Boundaries of special category and ro-ro spaces are A-60; A-0 will "
                               "do with a category 5, 9 or 10 space on one side.")},
    {division::special_category_renumbered,
     QT_TRANSLATE_NOOP("Core", "From 2026 MSC.550(108) numbers II-2/9.6 anew; that text was not "
                               "read.")},
    {division::zone_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead has the greater of A-30 and table "
                               "(b); A-0 will do with a type 8, 12 or 13 space on either side.")},
    {division::zone_step_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A step of a main vertical zone is A-60; A-0 will do with a type 8, "
                               "12 or 13 space on either side.")},
    {division::zone_step_size_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "Such a step is at most 20 % of the zone's mean length, and at most "
                               "8 m (26 ft).")},
    {division::zone_size_subchapter_h,
     QT_TRANSLATE_NOOP("Core", "A zone is at most 39.9 m (131 ft) long on the mean of any one deck "
                               "as a rule; no extension is printed, and a ferry may have an "
                               "approved equivalent (46 CFR 72.05-10(b)).")},
    {division::zone_size_subchapter_k,
     QT_TRANSLATE_NOOP(
         "Core", "A zone is at most 40 m (131 ft) long on the mean of any one deck as a rule, the "
                 "vehicle space of a vehicle ferry excepted. By leave of the Marine Safety Center "
                 "44 m (144 ft), between its farthest points too. A balcony is at most 40 m long; "
                 "where that and its area over its mean width come to more, both decks have "
                 "sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).")},
    {division::vehicle_deck_subchapter_k,
     QT_TRANSLATE_NOOP("Core", "A deck that bounds a horizontal zone of a vehicle ferry has the "
                               "greater of A-30 and table (c).")},
    {division::stricter_of_two,
     QT_TRANSLATE_NOOP("Core", "Two values are printed; the stricter is given here.")},
    {division::value_since_2014,
     QT_TRANSLATE_NOOP("Core", "The value of ships built on or after 1 July 2014 is given; the "
                               "date of building is not known.")},
    {division::over_tanks,
     QT_TRANSLATE_NOOP("Core", "Where oil fuel tanks lie below a special category space, A-0 is "
                               "enough for the deck between (II-2/9.6.1).")},
    {division::older_tables,
     QT_TRANSLATE_NOOP("Core", "A ship built before 1 July 2002 keeps the tables of its day, which "
                               "are not here: compare with the approved plan.")},
    {division::tables_not_shown,
     QT_TRANSLATE_NOOP("Core", "Whether the ship goes by these tables is not on record: compare "
                               "with the approved plan.")},
});

} // namespace

const PhraseRows division_phrases_rows = division_phrases_table;

} // namespace latchround::ui
