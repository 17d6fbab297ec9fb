// The vessel as built: particulars, decks, main vertical zones, boundaries and doors, as one value.
// A register adopts a whole arrangement or none of it; what is found on board is evidence and lives
// apart.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/vessel/calendar_date.h"
#include "core/vessel/door.h"
#include "core/vessel/fire_class.h"
#include "core/vessel/words.h"

namespace latchround {

/// Whose text governs. Canada (SOR/2017-14): a ship that holds convention certificates, one that
/// does not, and one of 24 m or more without berths, for fewer than 100 passengers, in sheltered
/// waters or on near coastal voyages class 2, limited (its part 2). EuInland: Directive 2006/87/EC.
/// LargeYacht: LY3, of 500 gross tons and over. Other: another domestic flag, no text of which is
/// in the catalogue.
enum class Regime {
    SolasPassenger,
    UsH,
    UsK,
    CanadaConvention,
    Canada,
    CanadaDay,
    EuInland,
    LargeYacht,
    Other
};

/// What kind of boundary it is; decides which doors SOLAS II-2/9.4.1.1.5 lists.
enum class Place {
    ZoneBulkhead,
    Stairway,
    Galley,
    Machinery,
    SpecialCategory,
    Cabin,
    Exterior,
    Other
};

inline constexpr std::array<Word<Regime>, 9> regimeWords{
    {{Regime::SolasPassenger, "solas-passenger"},
     {Regime::UsH, "us-h"},
     {Regime::UsK, "us-k"},
     {Regime::CanadaConvention, "canada-convention"},
     {Regime::Canada, "canada"},
     {Regime::CanadaDay, "canada-day"},
     {Regime::EuInland, "eu-inland"},
     {Regime::LargeYacht, "large-yacht"},
     {Regime::Other, "other"}}};
inline constexpr std::array<Word<Place>, 8> placeWords{
    {{Place::ZoneBulkhead, "zone-bulkhead"},
     {Place::Stairway, "stairway"},
     {Place::Galley, "galley"},
     {Place::Machinery, "machinery"},
     {Place::SpecialCategory, "special-category"},
     {Place::Cabin, "cabin"},
     {Place::Exterior, "exterior"},
     {Place::Other, "other"}}};

constexpr std::string_view word(Regime value) {
    return wordIn<Regime>(regimeWords, value);
}
constexpr const auto& wordsFor(Regime) {
    return regimeWords;
}
constexpr std::string_view word(Place value) {
    return wordIn<Place>(placeWords, value);
}
constexpr const auto& wordsFor(Place) {
    return placeWords;
}

/// Whether a boundary stands upright or lies between decks.
enum class Division { Bulkhead, Deck };

inline constexpr std::array<Word<Division>, 2> divisionWords{
    {{Division::Bulkhead, "bulkhead"}, {Division::Deck, "deck"}}};

constexpr std::string_view word(Division value) {
    return wordIn<Division>(divisionWords, value);
}
constexpr const auto& wordsFor(Division) {
    return divisionWords;
}

struct Particulars {
    std::string name;
    std::string number; ///< the vessel's identification number as its certificate prints it
    Regime regime = Regime::SolasPassenger;
    int passengers = 0;                    ///< certified to carry
    std::optional<CalendarDate> keel_laid; ///< unknown is a value of its own: limits become advice
    bool sprinklers = false;
    double length_m = 0; ///< the drawing's length, aft perpendicular to stem

    bool operator==(const Particulars&) const = default;
};

struct Deck {
    std::string number;  ///< as painted: "5", "B"
    std::string name;    ///< "Car deck"; may be empty
    double height_m = 0; ///< of the deck above the baseline, metres

    bool operator==(const Deck&) const = default;
};

/// Main vertical zone between two frames (SOLAS II-2/3.32, 9.2.2.1.2).
struct Zone {
    std::string number;
    double aft_m = 0;     ///< after limit along the ship, metres from the aft perpendicular
    double forward_m = 0; ///< forward limit, metres
    std::optional<double> area_m2{}; ///< on its largest deck, square metres; unknown if absent
    bool operator==(const Zone&) const = default;
};

struct Boundary {
    std::string id; ///< "3/4", "stair 2 port"
    Place place = Place::Other;
    std::string zone_aft;     ///< Zone number on the after (or only) side
    std::string zone_forward; ///< Zone number on the forward side; same as zone_aft inside a zone
    double x_m = 0;           ///< where it stands along the ship, metres from the aft perpendicular
    std::optional<FireClass>
        required{}; ///< class the approved fire plan asks of it; unknown if absent
    Division division = Division::Bulkhead;
    /// Categories of the two spaces, as the ship's fire tables number them (1 to 14); of a deck the
    /// space below it, then the one above.
    std::optional<std::pair<int, int>> spaces{};

    bool operator==(const Boundary&) const = default;
};

struct Arrangement {
    Particulars particulars;
    std::vector<Deck> decks;
    std::vector<Zone> zones;
    std::vector<Boundary> boundaries;
    std::vector<Door> doors;

    bool operator==(const Arrangement&) const = default;
};

const Door* findDoor(const Arrangement& arrangement, std::string_view number);
const Boundary* findBoundary(const Arrangement& arrangement, std::string_view id);
const Zone* findZone(const Arrangement& arrangement, std::string_view number);
const Deck* findDeck(const Arrangement& arrangement, std::string_view number);

/// Decides between the fire tables and binds or frees of some rows (SOLAS II-2).
inline bool isOver36(const Particulars& vessel) {
    return vessel.passengers > 36;
}

/// A ship of more than 36 passengers that may all the same count as one of fewer, or whose text has
/// no fire tables that were read: which list numbers its spaces is not shown. Without convention
/// certificates berths and voyage decide (SOR/2017-14, s. 102(3)).
bool mayCountAs36OrFewer(const Particulars& vessel);

/// How many categories of spaces the vessel's fire tables tell apart: SOLAS II-2 tables 9.1 and 9.2
/// fourteen, 9.3 and 9.4 eleven, those of 46 CFR 72.05-10 and 116.415 thirteen.
int spaceCategories(const Particulars& vessel);

/// The doors that one release group sets in motion.
std::vector<const Door*> doorsOfGroup(const Arrangement& arrangement, std::string_view group);

/// The group a door is tested with: the smallest it belongs to, so that as few doors as possible
/// move at once (common practice, no published source). Empty where it belongs to none.
std::string usualGroup(const Arrangement& arrangement, const Door& door);

} // namespace latchround
