#include "core/error/arrangement_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr auto arrangement_errors_table = std::to_array<PhraseRow>({
    {errors::vessel_without_name, QT_TRANSLATE_NOOP("Core", "the vessel has no name"),
     QT_TRANSLATE_NOOP("Core", "Give the vessel's name.")},
    {errors::passengers_negative, QT_TRANSLATE_NOOP("Core", "%1 passengers is not possible"),
     QT_TRANSLATE_NOOP("Core", "Give the number on the certificate, 0 or more.")},
    {errors::length_negative, QT_TRANSLATE_NOOP("Core", "a length cannot be negative"),
     QT_TRANSLATE_NOOP("Core", "Give the length on the drawing, in metres.")},
    {errors::day_does_not_exist, QT_TRANSLATE_NOOP("Core", "this date does not exist"),
     QT_TRANSLATE_NOOP("Core", "Write dates as YYYY-MM-DD.")},
    {errors::date_before_1900, QT_TRANSLATE_NOOP("Core", "%1 is before 1900"),
     QT_TRANSLATE_NOOP("Core", "Check the year, or leave it empty if the date is unknown.")},
    {errors::figure_missing, QT_TRANSLATE_NOOP("Core", "this is not a number"),
     QT_TRANSLATE_NOOP("Core", "Give the figure.")},
    {errors::metres_out_of_range, QT_TRANSLATE_NOOP("Core", "%1 m is outside %2 to %3 m"),
     QT_TRANSLATE_NOOP("Core", "Give metres, and check the decimal point.")},

    {errors::deck_without_number, QT_TRANSLATE_NOOP("Core", "the deck has no number"),
     QT_TRANSLATE_NOOP("Core", "Give every deck its own number.")},
    {errors::zone_without_number, QT_TRANSLATE_NOOP("Core", "the zone has no number"),
     QT_TRANSLATE_NOOP("Core", "Give every zone its own number.")},
    {errors::boundary_without_id, QT_TRANSLATE_NOOP("Core", "the boundary has no id"),
     QT_TRANSLATE_NOOP("Core", "Give every boundary its own id.")},
    {errors::door_without_number, QT_TRANSLATE_NOOP("Core", "the door has no number"),
     QT_TRANSLATE_NOOP("Core", "Give every door its own number.")},
    {errors::blanks_around_deck,
     QT_TRANSLATE_NOOP("Core", "deck \"%1\" has blanks around its number"),
     QT_TRANSLATE_NOOP("Core", "Remove the blanks.")},
    {errors::blanks_around_zone,
     QT_TRANSLATE_NOOP("Core", "zone \"%1\" has blanks around its number"),
     QT_TRANSLATE_NOOP("Core", "Remove the blanks.")},
    {errors::blanks_around_boundary,
     QT_TRANSLATE_NOOP("Core", "boundary \"%1\" has blanks around its id"),
     QT_TRANSLATE_NOOP("Core", "Remove the blanks.")},
    {errors::blanks_around_door,
     QT_TRANSLATE_NOOP("Core", "door \"%1\" has blanks around its number"),
     QT_TRANSLATE_NOOP("Core", "Remove the blanks.")},
    {errors::deck_twice, QT_TRANSLATE_NOOP("Core", "deck \"%1\" is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Give every deck its own number, or remove one row.")},
    {errors::zone_twice, QT_TRANSLATE_NOOP("Core", "zone \"%1\" is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Give every zone its own number, or remove one row.")},
    {errors::boundary_twice, QT_TRANSLATE_NOOP("Core", "boundary \"%1\" is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Give every boundary its own id, or remove one row.")},
    {errors::door_twice, QT_TRANSLATE_NOOP("Core", "door \"%1\" is listed twice"),
     QT_TRANSLATE_NOOP("Core", "Give every door its own number, or remove one row.")},

    {errors::names_no_deck, QT_TRANSLATE_NOOP("Core", "no deck is named"),
     QT_TRANSLATE_NOOP("Core", "Name the deck.")},
    {errors::names_no_zone, QT_TRANSLATE_NOOP("Core", "no zone is named"),
     QT_TRANSLATE_NOOP("Core", "Name the zone.")},
    {errors::names_no_boundary, QT_TRANSLATE_NOOP("Core", "no boundary is named"),
     QT_TRANSLATE_NOOP("Core", "Name the boundary.")},
    {errors::unknown_deck, QT_TRANSLATE_NOOP("Core", "there is no deck \"%1\""), "%2"},
    {errors::unknown_zone, QT_TRANSLATE_NOOP("Core", "there is no zone \"%1\""), "%2"},
    {errors::unknown_boundary, QT_TRANSLATE_NOOP("Core", "there is no boundary \"%1\""), "%2"},
    {errors::correct_or_add_deck, QT_TRANSLATE_NOOP("Core", "Correct the name, or add the deck.")},
    {errors::correct_or_add_zone, QT_TRANSLATE_NOOP("Core", "Correct the name, or add the zone.")},
    {errors::correct_or_add_boundary,
     QT_TRANSLATE_NOOP("Core", "Correct the name, or add the boundary.")},

    {errors::zone_without_area, QT_TRANSLATE_NOOP("Core", "an area must be more than 0"),
     QT_TRANSLATE_NOOP("Core", "Give square metres, or leave it empty if not known.")},
    {errors::zone_limits_reversed,
     QT_TRANSLATE_NOOP("Core", "the forward limit, %1 m, is not forward of the after limit, %2 m"),
     QT_TRANSLATE_NOOP("Core", "Measure in metres from the aft perpendicular, positive forward.")},
    {errors::zones_overlap,
     QT_TRANSLATE_NOOP("Core",
                       "zone \"%1\" begins at %2 m, inside zone \"%3\", which ends at %4 m"),
     QT_TRANSLATE_NOOP("Core", "Zones may touch but not overlap.")},

    {errors::no_such_spaces,
     QT_TRANSLATE_NOOP("Core", "this vessel's fire tables have no such category of space"),
     QT_TRANSLATE_NOOP("Core", "Write two numbers from 1 to %1, or leave it empty.")},
    {errors::both_zones_the_same,
     QT_TRANSLATE_NOOP("Core", "a zone bulkhead is between two zones; here both are \"%1\""),
     QT_TRANSLATE_NOOP("Core", "Name the zone aft of it and the zone forward of it.")},
    {errors::zones_exchanged, QT_TRANSLATE_NOOP("Core", "zone \"%1\" is aft of zone \"%2\""),
     QT_TRANSLATE_NOOP("Core", "Swap zone_aft and zone_forward.")},
    {errors::outside_its_zones,
     QT_TRANSLATE_NOOP("Core", "%1 m is more than 3 m outside its zones, %2 to %3 m"),
     QT_TRANSLATE_NOOP("Core", "Check the position of the boundary, or the zones it names.")},

    {errors::opening_impossible,
     QT_TRANSLATE_NOOP("Core", "a clear opening of %1 m is not possible"),
     QT_TRANSLATE_NOOP("Core", "Give the clear width in metres, more than 0 and at most 10.")},
    {errors::leaf_mass_impossible, QT_TRANSLATE_NOOP("Core", "a leaf of %1 kg is not possible"),
     QT_TRANSLATE_NOOP("Core", "Give kilograms, more than 0 and at most 5000, or leave it empty.")},
    {errors::release_group_blank,
     QT_TRANSLATE_NOOP("Core", "release group \"%1\" is empty or has a blank in its name"),
     QT_TRANSLATE_NOOP("Core", "Name release groups without blanks.")},
});

} // namespace

const PhraseRows arrangement_errors_rows = arrangement_errors_table;

} // namespace latchround::ui
