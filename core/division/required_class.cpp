#include "core/division/required_class.h"

#include <algorithm>

#include "core/division/division_phrases.h"

namespace latchround {

namespace {

using Kind = RequiredClass::Kind;

constexpr CalendarDate tables_changed{std::chrono::year(2014), std::chrono::July,
                                      std::chrono::day(1)};
constexpr CalendarDate chapter_renewed{std::chrono::year(2002), std::chrono::July,
                                       std::chrono::day(1)};

template <class... Numbers>
bool oneSideIs(const DivisionQuestion& question, Numbers... numbers) {
    if (!question.spaces)
        return false;
    const auto [one, other] = *question.spaces;
    return ((one == numbers || other == numbers) || ...);
}

/// Spaces of little or no fire risk: categories 5, 9 and 10 of the list of fourteen.
bool isEased(const DivisionQuestion& question) {
    return oneSideIs(question, 5, 9, 10);
}

RequiredClass byRule(DivisionRule rule, FireClass required) {
    RequiredClass answer;
    answer.kind = Kind::Class;
    answer.required = required;
    answer.a_class_by_rule = true;
    answer.rule = rule;
    return answer;
}

void readCell(RequiredClass& answer, const PrintedCell& cell, const DivisionQuestion& question) {
    answer.cell = &cell;
    switch (cell.kind) {
    case PrintedCell::Kind::Class:
    case PrintedCell::Kind::Noncombustible:
        answer.kind = Kind::Class;
        answer.required = cell.lower && cell.lower_with_sprinklers && question.sprinklers
                              ? cell.lower
                              : cell.higher;
        break;
    case PrintedCell::Kind::Steel:
        answer.kind = Kind::Steel;
        break;
    case PrintedCell::Kind::Nothing:
        answer.kind = Kind::Nothing;
        break;
    case PrintedCell::Kind::NotPrinted:
        answer.kind = Kind::NotPrinted;
        break;
    }
}

/// Every cell between this space and one of another category prints an A class.
bool printsAClassBeside(const FireTable& table, int space) {
    return std::ranges::all_of(table.cells, [space](const auto& cell) {
        const auto& [spaces, printed] = cell;
        const bool beside = (spaces.first == space) != (spaces.second == space);
        return !beside || (printed.kind == PrintedCell::Kind::Class && printed.higher &&
                           isAClass(*printed.higher));
    });
}

RequiredClass fromTable(const FireTables& tables, const DivisionQuestion& question,
                        DivisionKind division) {
    RequiredClass answer;
    const FireTable* table = findTable(tables, question.ship, division);
    answer.table = table;
    if (!table)
        return answer;
    if (!question.spaces) {
        answer.a_class_by_table =
            question.one_space && printsAClassBeside(*table, *question.one_space);
        return answer;
    }
    answer.spaces = *question.spaces;
    if (!hasDirection(division) && answer.spaces.first > answer.spaces.second)
        std::swap(answer.spaces.first, answer.spaces.second);
    const bool earlier = question.built && *question.built < tables_changed;
    if (earlier)
        if (const auto old = table->before_2014_07.find(answer.spaces);
            old != table->before_2014_07.end()) {
            readCell(answer, old->second, question);
            return answer;
        }
    if (const auto cell = table->cells.find(answer.spaces); cell != table->cells.end())
        readCell(answer, cell->second, question);
    return answer;
}

DivisionKind plain(DivisionKind division) {
    return hasDirection(division) ? DivisionKind::Deck : DivisionKind::Bulkhead;
}

/// A class; insulation by the table, where B-0 and C (9.3) and * (9.4, save for categories 8 and
/// 10) are read as A-0 (II-2/9.2.2.1.1.2 and notes e and * of the tables).
RequiredClass zone36OrFewer(const FireTables& tables, const DivisionQuestion& question) {
    RequiredClass answer = fromTable(tables, question, plain(question.division));
    answer.rule = DivisionRule::Zone36OrFewer;
    const bool open_side = hasDirection(question.division) && oneSideIs(question, 8, 10);
    answer.a_class_by_rule = !open_side;
    if (answer.kind == Kind::Class || (answer.kind == Kind::Steel && !open_side)) {
        answer.kind = Kind::Class;
        answer.required = std::min(answer.required.value_or(FireClass::A0), FireClass::A0);
    }
    return answer;
}

/// The greater of A-30 and table (b); A-0 where a space of type 8, 12 or 13 lies on a side. Steps:
/// A-60, with the same easing (46 CFR 116.415(d)(1)).
RequiredClass zoneSubchapterK(const FireTables& tables, const DivisionQuestion& question) {
    const bool eased = oneSideIs(question, 8, 12, 13);
    if (hasDirection(question.division))
        return byRule(DivisionRule::ZoneStepSubchapterK, eased ? FireClass::A0 : FireClass::A60);
    RequiredClass answer = fromTable(tables, question, DivisionKind::Bulkhead);
    answer.a_class_by_rule = true;
    answer.rule = DivisionRule::ZoneSubchapterK;
    if (!answer.cell)
        return answer; // the table may ask for more than A-30
    answer.kind = Kind::Class;
    answer.required =
        eased ? FireClass::A0 : std::min(answer.required.value_or(FireClass::A30), FireClass::A30);
    return answer;
}

/// A-60; A-0 with a space of category 5, 9 or 10 on a side, and above oil fuel tanks, which no
/// category tells (SOLAS II-2/9.6.1).
RequiredClass specialCategory(const DivisionQuestion& question) {
    if (isEased(question))
        return byRule(DivisionRule::SpecialCategory, FireClass::A0);
    RequiredClass answer = byRule(DivisionRule::SpecialCategory, FireClass::A60);
    // Both the space and a fuel tank in its own space are of category 11.
    if (question.division == DivisionKind::Deck &&
        (!question.spaces || *question.spaces == SpacePair(11, 11)))
        answer.over_tanks = FireClass::A0;
    return answer;
}

/// A deck that bounds a horizontal zone of vehicle decks: the greater of A-30 and table (c) (46 CFR
/// 116.415(d)(2)).
RequiredClass vehicleDeckSubchapterK(const FireTables& tables, const DivisionQuestion& question) {
    RequiredClass answer = fromTable(tables, question, DivisionKind::Deck);
    answer.a_class_by_rule = true;
    answer.rule = DivisionRule::VehicleDeckSubchapterK;
    if (!answer.cell)
        return answer; // the table may ask for more than A-30
    answer.kind = Kind::Class;
    answer.required = std::min(answer.required.value_or(FireClass::A30), FireClass::A30);
    return answer;
}

/// By its own tables (d) and (f), which print an A class save between spaces of types 4 and 13 (46
/// CFR 72.05-10).
RequiredClass zoneSubchapterH(const FireTables& tables, const DivisionQuestion& question) {
    RequiredClass answer = fromTable(tables, question, question.division);
    answer.a_class_by_rule = !answer.cell || (answer.required && isAClass(*answer.required));
    return answer;
}

RequiredClass zoneBoundary(const FireTables& tables, const DivisionQuestion& question) {
    switch (question.ship) {
    case ShipKind::PassengerOver36:
        return byRule(DivisionRule::ZoneOver36, isEased(question) ? FireClass::A0 : FireClass::A60);
    case ShipKind::Passenger36OrFewer:
        return zone36OrFewer(tables, question);
    case ShipKind::UsK:
        return zoneSubchapterK(tables, question);
    case ShipKind::UsH:
        return zoneSubchapterH(tables, question);
    case ShipKind::Cargo:
    case ShipKind::Tanker:
        break;
    }
    return {};
}

constexpr CalendarDate canada_took_solas{std::chrono::year(2017), std::chrono::February,
                                         std::chrono::day(3)};

/// A Canadian ship without convention certificates that was there before the Regulations may keep
/// its former rule, and its berths decide whether it counts as one of more than 36 passengers
/// (SOR/2017-14, ss. 102(3), 103, 106).
TablesAre tablesOf(const Particulars& vessel) {
    switch (vessel.regime) {
    case Regime::Canada: {
        const bool settled =
            vessel.keel_laid && *vessel.keel_laid >= canada_took_solas && !isOver36(vessel);
        return settled ? TablesAre::Own : TablesAre::NotShown;
    }
    case Regime::CanadaDay:
    case Regime::EuInland:
    case Regime::LargeYacht:
        return TablesAre::None;
    case Regime::SolasPassenger:
    case Regime::UsH:
    case Regime::UsK:
    case Regime::CanadaConvention:
    case Regime::Other:
        break;
    }
    return TablesAre::Own;
}

/// Category of the space that the place of a boundary names: stairways by all tables; galleys by
/// those of 46 CFR.
std::optional<int> spaceAt(ShipKind ship, Place place) {
    if (place == Place::Galley && isOfUs(ship))
        return 9;
    if (place == Place::Stairway)
        return ship == ShipKind::Passenger36OrFewer ? 4 : 2;
    return std::nullopt;
}

bool boundsZone(DivisionKind division) {
    return division == DivisionKind::ZoneBulkhead || division == DivisionKind::ZoneStep;
}

} // namespace

RequiredClass requiredClass(const FireTables& tables, const DivisionQuestion& question) {
    RequiredClass answer;
    if (question.tables == TablesAre::None)
        return answer;
    if (boundsZone(question.division))
        answer = zoneBoundary(tables, question);
    else if (question.special_category && question.ship == ShipKind::PassengerOver36)
        answer = specialCategory(question);
    else if (question.special_category && question.ship == ShipKind::UsK &&
             question.division == DivisionKind::Deck)
        answer = vehicleDeckSubchapterK(tables, question);
    else
        answer = fromTable(tables, question, question.division);
    answer.older_tables =
        question.tables == TablesAre::NotShown ||
        (!isOfUs(question.ship) && (!question.built || *question.built < chapter_renewed));
    return answer;
}

DivisionQuestion questionOf(const Particulars& vessel, const Boundary& boundary) {
    DivisionQuestion question;
    question.ship = shipKindOf(vessel);
    const bool deck = boundary.division == Division::Deck;
    if (boundary.place == Place::ZoneBulkhead)
        question.division = deck ? DivisionKind::ZoneStep : DivisionKind::ZoneBulkhead;
    else
        question.division = deck ? DivisionKind::Deck : DivisionKind::Bulkhead;
    question.spaces = boundary.spaces;
    question.one_space = spaceAt(question.ship, boundary.place);
    question.sprinklers = vessel.sprinklers;
    question.built = vessel.keel_laid;
    question.special_category = boundary.place == Place::SpecialCategory;
    question.tables = tablesOf(vessel);
    return question;
}

std::vector<Phrase> notesOf(const RequiredClass& answer, const DivisionQuestion& question) {
    std::vector<Phrase> notes;
    if (answer.kind == Kind::NotPrinted)
        notes.push_back(division::no_value_printed());
    if (answer.cell)
        for (const std::string& mark : answer.cell->marks)
            if (const auto note = answer.table->notes.find(mark);
                note != answer.table->notes.end() &&
                std::ranges::find(notes, Phrase(note->second)) == notes.end())
                notes.emplace_back(note->second);
    switch (answer.rule) {
    case DivisionRule::ZoneOver36:
        notes.push_back(division::zone_over_36());
        break;
    case DivisionRule::Zone36OrFewer:
        notes.push_back(division::zone_36_or_fewer());
        break;
    case DivisionRule::SpecialCategory:
        notes.push_back(division::special_category());
        notes.push_back(division::special_category_renumbered());
        break;
    case DivisionRule::ZoneSubchapterK:
        notes.push_back(division::zone_subchapter_k());
        break;
    case DivisionRule::ZoneStepSubchapterK:
        notes.push_back(division::zone_step_subchapter_k());
        notes.push_back(division::zone_step_size_subchapter_k());
        break;
    case DivisionRule::VehicleDeckSubchapterK:
        notes.push_back(division::vehicle_deck_subchapter_k());
        break;
    case DivisionRule::Table:
        break;
    }
    if (boundsZone(question.division) && question.ship == ShipKind::UsH)
        notes.push_back(division::zone_size_subchapter_h());
    if (boundsZone(question.division) && question.ship == ShipKind::UsK)
        notes.push_back(division::zone_size_subchapter_k());
    if (answer.cell && answer.cell->lower && !answer.cell->lower_with_sprinklers)
        notes.push_back(division::stricter_of_two());
    if (answer.table && !question.built && answer.table->before_2014_07.contains(answer.spaces))
        notes.push_back(division::value_since_2014());
    if (answer.over_tanks)
        notes.push_back(division::over_tanks());
    if (question.tables == TablesAre::NotShown)
        notes.push_back(division::tables_not_shown());
    else if (answer.older_tables && question.built)
        notes.push_back(division::older_tables());
    return notes;
}

std::string citeOf(const RequiredClass& answer) {
    switch (answer.rule) {
    case DivisionRule::ZoneOver36:
        return "SOLAS II-2/9.2.2.1.1.1";
    case DivisionRule::Zone36OrFewer:
        return "SOLAS II-2/9.2.2.1.1.2" + (answer.table ? "; " + answer.table->cite : "");
    case DivisionRule::SpecialCategory:
        return "SOLAS II-2/9.6.1 (to 31 Dec 2025)";
    case DivisionRule::ZoneSubchapterK:
    case DivisionRule::ZoneStepSubchapterK:
        return "46 CFR 116.415(d)(1)";
    case DivisionRule::VehicleDeckSubchapterK:
        return "46 CFR 116.415(d)(2)";
    case DivisionRule::Table:
        break;
    }
    return answer.table ? answer.table->cite : std::string();
}

FireClass doorClassIn(ShipKind ship, FireClass division) {
    return isOfUs(ship) && division < FireClass::A15 ? FireClass::A15 : division;
}

ShipKind shipKindOf(const Particulars& vessel) {
    switch (vessel.regime) {
    case Regime::UsH:
        return ShipKind::UsH;
    case Regime::UsK:
        return ShipKind::UsK;
    case Regime::SolasPassenger:
    case Regime::CanadaConvention:
    case Regime::Canada:
    case Regime::CanadaDay:
    case Regime::EuInland:
    case Regime::LargeYacht:
    case Regime::Other:
        break;
    }
    return isOver36(vessel) ? ShipKind::PassengerOver36 : ShipKind::Passenger36OrFewer;
}

} // namespace latchround
