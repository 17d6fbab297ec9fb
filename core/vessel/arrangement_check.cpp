#include "core/vessel/arrangement_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <numeric>
#include <string_view>

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

std::string inQuotes(std::string_view text) {
    return '"' + std::string(text) + '"';
}

std::string figure(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.6g", value);
    return text.data();
}

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

class Check {
public:
    explicit Check(const Arrangement& arrangement)
        : m_arrangement(arrangement) {}

    std::vector<ArrangementFault> all() {
        checkVessel();
        m_decks = keysOf(Table::Deck, m_arrangement.decks, &Deck::number, "number", "deck");
        for (std::size_t i = 0; i < m_arrangement.decks.size(); ++i)
            checkFinite(Table::Deck, i, "height_m", m_arrangement.decks[i].height_m);
        m_zones = keysOf(Table::Zone, m_arrangement.zones, &Zone::number, "number", "zone");
        checkZones();
        m_boundaries =
            keysOf(Table::Boundary, m_arrangement.boundaries, &Boundary::id, "id", "boundary");
        for (std::size_t i = 0; i < m_arrangement.boundaries.size(); ++i)
            checkBoundary(i, m_arrangement.boundaries[i]);
        keysOf(Table::Door, m_arrangement.doors, &Door::number, "number", "door");
        for (std::size_t i = 0; i < m_arrangement.doors.size(); ++i)
            checkDoor(i, m_arrangement.doors[i]);
        // Zones overlap in the order of frames; the promise is the order of rows.
        std::ranges::stable_sort(m_faults, [](const auto& one, const auto& other) {
            return std::pair(one.table, one.row) < std::pair(other.table, other.row);
        });
        return std::move(m_faults);
    }

private:
    void add(Table table, std::size_t row, std::string field, std::string what,
             std::string remedy) {
        m_faults.push_back({table, row, std::move(field), std::move(what), std::move(remedy)});
    }

    template <class T>
    Index keysOf(Table table, const std::vector<T>& rows, std::string T::*key,
                 const std::string& field, const std::string& noun) {
        Index first;
        const std::string missing = "the " + noun + " has no " + field;
        const std::string own = "Give every " + noun + " its own " + field;
        const std::string with_blanks = " has blanks around its " + field;
        const auto named = [&](const std::string& name) { return noun + " " + inQuotes(name); };
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const std::string& name = rows[i].*key;
            if (name.empty())
                add(table, i, field, missing, own + ".");
            else if (isBlank(name.front()) || isBlank(name.back()))
                add(table, i, field, named(name) + with_blanks, "Take the blanks away.");
            else if (!first.emplace(name, i).second)
                add(table, i, field, named(name) + " is there twice",
                    own + ", or take one row out.");
        }
        return first;
    }

    bool checkFinite(Table table, std::size_t row, const char* field, double value) {
        if (std::isfinite(value))
            return true;
        add(table, row, field, "this is not a number", "Give the figure.");
        return false;
    }

    void checkWithin(Table table, std::size_t row, const char* field, double value, double low,
                     double high) {
        if (checkFinite(table, row, field, value) && (value < low || value > high))
            add(table, row, field,
                figure(value) + " m lies outside " + figure(low) + " to " + figure(high) + " m",
                "Give metres, and check the decimal point.");
    }

    /// Whether `name` is in `index`; where not, says so on the row that refers to it.
    const std::size_t* checkReference(Table table, std::size_t row, const char* field,
                                      const std::string& name, const Index& index,
                                      const std::string& noun) {
        if (const auto found = index.find(name); found != index.end())
            return &found->second;
        if (name.empty()) {
            add(table, row, field, "no " + noun + " is named", "Name the " + noun + ".");
            return nullptr;
        }
        std::vector<std::string_view> known;
        for (const auto& entry : index)
            known.push_back(entry.first);
        std::string remedy = didYouMean(name, known);
        if (remedy.empty())
            remedy = "Correct the name, or add the " + noun + ".";
        add(table, row, field, noun + " " + inQuotes(name) + " is not there", std::move(remedy));
        return nullptr;
    }

    void checkDate(Table table, std::size_t row, const char* field,
                   const std::optional<CalendarDate>& date) {
        if (date && !date->ok())
            add(table, row, field, "this day does not exist", "Write dates as YYYY-MM-DD.");
        else if (date && date->year() < first_year)
            add(table, row, field, isoText(*date) + " lies before 1900",
                "Check the year; leave it empty where the date is unknown.");
    }

    void checkVessel() {
        const Particulars& vessel = m_arrangement.particulars;
        if (std::ranges::all_of(vessel.name, isBlank))
            add(Table::Vessel, 0, "name", "the vessel has no name", "Give the vessel's name.");
        if (vessel.passengers < 0)
            add(Table::Vessel, 0, "passengers",
                std::to_string(vessel.passengers) + " passengers cannot be carried",
                "Give the number on the certificate, 0 or more.");
        if (vessel.keel_laid && !vessel.keel_laid->ok())
            add(Table::Vessel, 0, "keel_laid", "this day does not exist",
                "Write dates as YYYY-MM-DD.");
        if (checkFinite(Table::Vessel, 0, "length_m", vessel.length_m) && vessel.length_m < 0)
            add(Table::Vessel, 0, "length_m", "a length cannot be negative",
                "Give the drawing's length in metres.");
    }

    void checkZones() {
        const std::vector<Zone>& zones = m_arrangement.zones;
        std::vector<std::size_t> from_aft(zones.size());
        std::iota(from_aft.begin(), from_aft.end(), std::size_t{0});
        for (std::size_t i = 0; i < zones.size(); ++i) {
            checkWithin(Table::Zone, i, "aft_m", zones[i].aft_m, aftmost_x_m, foremost_x_m);
            checkWithin(Table::Zone, i, "forward_m", zones[i].forward_m, aftmost_x_m, foremost_x_m);
            if (zones[i].area_m2 && !(*zones[i].area_m2 > 0 && std::isfinite(*zones[i].area_m2)))
                add(Table::Zone, i, "area_m2", "an area must be more than 0",
                    "Give square metres, or leave it empty where it is not known.");
            if (zones[i].forward_m <= zones[i].aft_m)
                add(Table::Zone, i, "forward_m",
                    "the forward limit, " + figure(zones[i].forward_m) +
                        " m, is not forward of the after limit, " + figure(zones[i].aft_m) + " m",
                    "Count metres from the aft perpendicular, forward positive.");
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
                    "zone " + inQuotes(zone.number) + " begins at " + figure(zone.aft_m) +
                        " m, inside zone " + inQuotes(before.number) + ", which ends at " +
                        figure(before.forward_m) + " m",
                    "Zones may touch, not overlap.");
            if (zone.forward_m > before.forward_m)
                reaching = k;
        }
    }

    void checkSpaces(std::size_t row, const Boundary& boundary) {
        const int last = spaceCategories(m_arrangement.particulars);
        const auto known = [last](int category) { return category >= 1 && category <= last; };
        if (boundary.spaces && !(known(boundary.spaces->first) && known(boundary.spaces->second)))
            add(Table::Boundary, row, "spaces",
                "the fire tables of this vessel know no such category of space",
                "Write two numbers from 1 to " + std::to_string(last) + ", or leave it empty.");
    }

    void checkBoundary(std::size_t row, const Boundary& boundary) {
        const std::size_t* aft =
            checkReference(Table::Boundary, row, "zone_aft", boundary.zone_aft, m_zones, "zone");
        const std::size_t* forward = checkReference(Table::Boundary, row, "zone_forward",
                                                    boundary.zone_forward, m_zones, "zone");
        checkWithin(Table::Boundary, row, "x_m", boundary.x_m, aftmost_x_m, foremost_x_m);
        checkSpaces(row, boundary);
        if (!aft || !forward)
            return;
        const Zone& aft_zone = m_arrangement.zones[*aft];
        const Zone& forward_zone = m_arrangement.zones[*forward];
        if (boundary.place == Place::ZoneBulkhead && aft == forward)
            add(Table::Boundary, row, "zone_forward",
                "a zone bulkhead stands between two zones, here both are " +
                    inQuotes(boundary.zone_aft),
                "Name the zone aft of it and the zone forward of it.");
        else if (boundary.place == Place::ZoneBulkhead && aft_zone.aft_m > forward_zone.aft_m)
            add(Table::Boundary, row, "zone_forward",
                "zone " + inQuotes(boundary.zone_forward) + " lies aft of zone " +
                    inQuotes(boundary.zone_aft),
                "Exchange zone_aft and zone_forward.");
        const double low = std::min(aft_zone.aft_m, forward_zone.aft_m);
        const double high = std::max(aft_zone.forward_m, forward_zone.forward_m);
        if (boundary.x_m < low - boundary_slack_m || boundary.x_m > high + boundary_slack_m)
            add(Table::Boundary, row, "x_m",
                figure(boundary.x_m) + " m lies more than 3 m outside its zones, " + figure(low) +
                    " to " + figure(high) + " m",
                "Check the place of the boundary, or the zones it names.");
    }

    void checkDoor(std::size_t row, const Door& door) {
        checkReference(Table::Door, row, "deck", door.deck, m_decks, "deck");
        checkWithin(Table::Door, row, "x_m", door.x_m, aftmost_x_m, foremost_x_m);
        checkWithin(Table::Door, row, "y_m", door.y_m, -widest_y_m, widest_y_m);
        checkReference(Table::Door, row, "boundary", door.boundary, m_boundaries, "boundary");
        if (checkFinite(Table::Door, row, "opening_m", door.opening_m) &&
            (door.opening_m <= 0 || door.opening_m > widest_opening_m))
            add(Table::Door, row, "opening_m",
                "a clear opening of " + figure(door.opening_m) + " m cannot be",
                "Give the clear width in metres, more than 0 and at most 10.");
        if (door.leaf_mass_kg &&
            checkFinite(Table::Door, row, "leaf_mass_kg", *door.leaf_mass_kg) &&
            (*door.leaf_mass_kg <= 0 || *door.leaf_mass_kg > heaviest_leaf_kg))
            add(Table::Door, row, "leaf_mass_kg",
                "a leaf of " + figure(*door.leaf_mass_kg) + " kg cannot be",
                "Give kilograms, more than 0 and at most 5000, or leave it empty.");
        for (const std::string& group : door.release_groups)
            if (group.empty() || std::ranges::any_of(group, isBlank))
                add(Table::Door, row, "release_groups",
                    "release group " + inQuotes(group) + " is empty or has a blank in its name",
                    "Name release groups without blanks.");
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
