#include "core/vessel/arrangement_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <numeric>
#include <string_view>

#include "core/error/arrangement_errors.h"
#include "core/near_name.h"

namespace latchround {

namespace {

// Dimensions no door or passenger vessel leaves: no source, they only catch slips of the decimal
// point.
constexpr double aftmost_x_m = -20;
constexpr double foremost_x_m = 400;
constexpr double widest_y_m = 40;
constexpr double widest_opening_m = 10;
constexpr double heaviest_leaf_kg = 5000;
constexpr std::chrono::year first_year{1900};
/// A stepped bulkhead may stand this far from the frame its zone is listed by.
constexpr double boundary_slack_m = 3;
/// Limits closer than this are the same frame.
constexpr double same_frame_m = 0.001;

using Table = ArrangementTable;
using Index = std::map<std::string_view, std::size_t>;

std::string figure(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.6g", value);
    return text.data();
}

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

/// What can be wrong with the name of a row of one table.
struct KeyErrors {
    PhraseCode<0> missing;
    PhraseCode<1> blanks;
    PhraseCode<1> twice;
};
constexpr KeyErrors deck_key{errors::deck_without_number, errors::blanks_around_deck,
                             errors::deck_twice};
constexpr KeyErrors zone_key{errors::zone_without_number, errors::blanks_around_zone,
                             errors::zone_twice};
constexpr KeyErrors boundary_key{errors::boundary_without_id, errors::blanks_around_boundary,
                                 errors::boundary_twice};
constexpr KeyErrors door_key{errors::door_without_number, errors::blanks_around_door,
                             errors::door_twice};

/// What can be wrong with a reference to a row of one table.
struct ReferenceErrors {
    PhraseCode<0> missing;
    PhraseCode<2> unknown;
    PhraseCode<0> correct_or_add;
};
constexpr ReferenceErrors to_deck{errors::names_no_deck, errors::unknown_deck,
                                  errors::correct_or_add_deck};
constexpr ReferenceErrors to_zone{errors::names_no_zone, errors::unknown_zone,
                                  errors::correct_or_add_zone};
constexpr ReferenceErrors to_boundary{errors::names_no_boundary, errors::unknown_boundary,
                                      errors::correct_or_add_boundary};

class Check {
public:
    explicit Check(const Arrangement& arrangement)
        : m_arrangement(arrangement) {}

    std::vector<ArrangementFault> all() {
        checkVessel();
        m_decks = keysOf(Table::Deck, m_arrangement.decks, &Deck::number, "number", deck_key);
        for (std::size_t i = 0; i < m_arrangement.decks.size(); ++i)
            checkFinite(Table::Deck, i, "height_m", m_arrangement.decks[i].height_m);
        m_zones = keysOf(Table::Zone, m_arrangement.zones, &Zone::number, "number", zone_key);
        checkZones();
        m_boundaries =
            keysOf(Table::Boundary, m_arrangement.boundaries, &Boundary::id, "id", boundary_key);
        for (std::size_t i = 0; i < m_arrangement.boundaries.size(); ++i)
            checkBoundary(i, m_arrangement.boundaries[i]);
        keysOf(Table::Door, m_arrangement.doors, &Door::number, "number", door_key);
        for (std::size_t i = 0; i < m_arrangement.doors.size(); ++i)
            checkDoor(i, m_arrangement.doors[i]);
        // Zones overlap in the order of frames; the promise is the order of rows.
        std::ranges::stable_sort(m_faults, [](const auto& one, const auto& other) {
            return std::pair(one.table, one.row) < std::pair(other.table, other.row);
        });
        return std::move(m_faults);
    }

private:
    void add(Table table, std::size_t row, std::string field, Phrase what) {
        m_faults.push_back({table, row, std::move(field), std::move(what)});
    }

    template <class T>
    Index keysOf(Table table, const std::vector<T>& rows, std::string T::*key,
                 const std::string& field, const KeyErrors& wrong) {
        Index first;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const std::string& name = rows[i].*key;
            if (name.empty())
                add(table, i, field, wrong.missing());
            else if (isBlank(name.front()) || isBlank(name.back()))
                add(table, i, field, wrong.blanks(name));
            else if (!first.emplace(name, i).second)
                add(table, i, field, wrong.twice(name));
        }
        return first;
    }

    bool checkFinite(Table table, std::size_t row, const char* field, double value) {
        if (std::isfinite(value))
            return true;
        add(table, row, field, errors::figure_missing());
        return false;
    }

    void checkWithin(Table table, std::size_t row, const char* field, double value, double low,
                     double high) {
        if (checkFinite(table, row, field, value) && (value < low || value > high))
            add(table, row, field,
                errors::metres_out_of_range(figure(value), figure(low), figure(high)));
    }

    /// Whether `name` is in `index`; where not, says so on the row that refers to it.
    const std::size_t* checkReference(Table table, std::size_t row, const char* field,
                                      const std::string& name, const Index& index,
                                      const ReferenceErrors& wrong) {
        if (const auto found = index.find(name); found != index.end())
            return &found->second;
        if (name.empty()) {
            add(table, row, field, wrong.missing());
            return nullptr;
        }
        std::vector<std::string_view> known;
        for (const auto& entry : index)
            known.push_back(entry.first);
        const Phrase meant = didYouMean(name, known);
        add(table, row, field, wrong.unknown(name, meant.empty() ? wrong.correct_or_add() : meant));
        return nullptr;
    }

    void checkDate(Table table, std::size_t row, const char* field,
                   const std::optional<CalendarDate>& date) {
        if (date && !date->ok())
            add(table, row, field, errors::day_does_not_exist());
        else if (date && date->year() < first_year)
            add(table, row, field, errors::date_before_1900(isoText(*date)));
    }

    void checkVessel() {
        const Particulars& vessel = m_arrangement.particulars;
        if (std::ranges::all_of(vessel.name, isBlank))
            add(Table::Vessel, 0, "name", errors::vessel_without_name());
        if (vessel.passengers < 0)
            add(Table::Vessel, 0, "passengers", errors::passengers_negative(vessel.passengers));
        if (vessel.keel_laid && !vessel.keel_laid->ok())
            add(Table::Vessel, 0, "keel_laid", errors::day_does_not_exist());
        if (checkFinite(Table::Vessel, 0, "length_m", vessel.length_m) && vessel.length_m < 0)
            add(Table::Vessel, 0, "length_m", errors::length_negative());
    }

    void checkZones() {
        const std::vector<Zone>& zones = m_arrangement.zones;
        std::vector<std::size_t> from_aft(zones.size());
        std::iota(from_aft.begin(), from_aft.end(), std::size_t{0});
        for (std::size_t i = 0; i < zones.size(); ++i) {
            checkWithin(Table::Zone, i, "aft_m", zones[i].aft_m, aftmost_x_m, foremost_x_m);
            checkWithin(Table::Zone, i, "forward_m", zones[i].forward_m, aftmost_x_m, foremost_x_m);
            if (zones[i].area_m2 && !(*zones[i].area_m2 > 0 && std::isfinite(*zones[i].area_m2)))
                add(Table::Zone, i, "area_m2", errors::zone_without_area());
            if (zones[i].forward_m <= zones[i].aft_m)
                add(Table::Zone, i, "forward_m",
                    errors::zone_limits_reversed(figure(zones[i].forward_m),
                                                 figure(zones[i].aft_m)));
        }
        std::erase_if(from_aft,
                      [&](std::size_t i) { return !(zones[i].forward_m > zones[i].aft_m); });
        std::ranges::stable_sort(from_aft, {}, [&](std::size_t i) { return zones[i].aft_m; });
        std::size_t reaching = 0; // place in from_aft of the zone that reaches furthest forward
        for (std::size_t k = 1; k < from_aft.size(); ++k) {
            const Zone& before = zones[from_aft[reaching]];
            const Zone& zone = zones[from_aft[k]];
            if (zone.aft_m < before.forward_m - same_frame_m)
                add(Table::Zone, from_aft[k], "aft_m",
                    errors::zones_overlap(zone.number, figure(zone.aft_m), before.number,
                                          figure(before.forward_m)));
            if (zone.forward_m > before.forward_m)
                reaching = k;
        }
    }

    void checkSpaces(std::size_t row, const Boundary& boundary) {
        const int last = spaceCategories(m_arrangement.particulars);
        const auto known = [last](int category) { return category >= 1 && category <= last; };
        if (boundary.spaces && !(known(boundary.spaces->first) && known(boundary.spaces->second)))
            add(Table::Boundary, row, "spaces", errors::no_such_spaces(last));
    }

    void checkBoundary(std::size_t row, const Boundary& boundary) {
        const std::size_t* aft =
            checkReference(Table::Boundary, row, "zone_aft", boundary.zone_aft, m_zones, to_zone);
        const std::size_t* forward = checkReference(Table::Boundary, row, "zone_forward",
                                                    boundary.zone_forward, m_zones, to_zone);
        checkWithin(Table::Boundary, row, "x_m", boundary.x_m, aftmost_x_m, foremost_x_m);
        checkSpaces(row, boundary);
        if (!aft || !forward)
            return;
        const Zone& aft_zone = m_arrangement.zones[*aft];
        const Zone& forward_zone = m_arrangement.zones[*forward];
        if (boundary.place == Place::ZoneBulkhead && aft == forward)
            add(Table::Boundary, row, "zone_forward",
                errors::both_zones_the_same(boundary.zone_aft));
        else if (boundary.place == Place::ZoneBulkhead && aft_zone.aft_m > forward_zone.aft_m)
            add(Table::Boundary, row, "zone_forward",
                errors::zones_exchanged(boundary.zone_forward, boundary.zone_aft));
        const double low = std::min(aft_zone.aft_m, forward_zone.aft_m);
        const double high = std::max(aft_zone.forward_m, forward_zone.forward_m);
        if (boundary.x_m < low - boundary_slack_m || boundary.x_m > high + boundary_slack_m)
            add(Table::Boundary, row, "x_m",
                errors::outside_its_zones(figure(boundary.x_m), figure(low), figure(high)));
    }

    void checkDoor(std::size_t row, const Door& door) {
        checkReference(Table::Door, row, "deck", door.deck, m_decks, to_deck);
        checkWithin(Table::Door, row, "x_m", door.x_m, aftmost_x_m, foremost_x_m);
        checkWithin(Table::Door, row, "y_m", door.y_m, -widest_y_m, widest_y_m);
        checkReference(Table::Door, row, "boundary", door.boundary, m_boundaries, to_boundary);
        if (checkFinite(Table::Door, row, "opening_m", door.opening_m) &&
            (door.opening_m <= 0 || door.opening_m > widest_opening_m))
            add(Table::Door, row, "opening_m", errors::opening_impossible(figure(door.opening_m)));
        if (door.leaf_mass_kg &&
            checkFinite(Table::Door, row, "leaf_mass_kg", *door.leaf_mass_kg) &&
            (*door.leaf_mass_kg <= 0 || *door.leaf_mass_kg > heaviest_leaf_kg))
            add(Table::Door, row, "leaf_mass_kg",
                errors::leaf_mass_impossible(figure(*door.leaf_mass_kg)));
        for (const std::string& group : door.release_groups)
            if (group.empty() || std::ranges::any_of(group, isBlank))
                add(Table::Door, row, "release_groups", errors::release_group_blank(group));
        checkDate(Table::Door, row, "installed", door.installed);
    }

    const Arrangement& m_arrangement;
    std::vector<ArrangementFault> m_faults;
    Index m_decks;
    Index m_zones;
    Index m_boundaries;
};

} // namespace

std::vector<ArrangementFault> faultsOf(const Arrangement& arrangement) {
    return Check(arrangement).all();
}

} // namespace latchround
