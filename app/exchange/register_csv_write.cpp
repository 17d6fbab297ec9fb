#include <array>
#include <charconv>
#include <cmath>
#include <initializer_list>
#include <string_view>

#include "app/exchange/register_columns.h"
#include "app/exchange/register_csv.h"

namespace latchround {

namespace {

/// Shortest decimal text that reads back as the same number, never with an exponent.
std::string figure(double value) {
    if (value == 0)
        return "0"; // and not "-0"
    std::array<char, 400> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return {text.data(), end.ptr};
}

std::string metres(double value) {
    std::string text = figure(value);
    const std::size_t point = text.find('.');
    if (point == std::string::npos)
        return text + ".00";
    const std::size_t decimals = text.size() - point - 1;
    return decimals < 2 ? text + "0" : text;
}

std::string_view yesNo(bool value) {
    return value ? "yes" : "no";
}

template <class E>
std::string_view wordOrNothing(const std::optional<E>& value) {
    return value ? word(*value) : std::string_view{};
}

std::string dateOrNothing(const std::optional<CalendarDate>& date) {
    return date ? isoText(*date) : std::string{};
}

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : " ") + name;
    return text;
}

/// With a blank between: a spreadsheet takes 3-7 for a date.
std::string spacesText(const std::optional<std::pair<int, int>>& spaces) {
    return spaces ? std::to_string(spaces->first) + " " + std::to_string(spaces->second)
                  : std::string{};
}

/// Blanks at an end would be taken off on reading if they stood outside quotes.
bool needsQuotes(std::string_view cell) {
    constexpr std::string_view blanks = " \t";
    return cell.find_first_of(",\"\r\n") != cell.npos ||
           (!cell.empty() &&
            (blanks.find(cell.front()) != blanks.npos || blanks.find(cell.back()) != blanks.npos));
}

void appendCell(std::string& csv, std::string_view cell) {
    csv += ',';
    if (!needsQuotes(cell)) {
        csv += cell;
        return;
    }
    csv += '"';
    for (const char c : cell)
        csv.append(c == '"' ? 2 : 1, c);
    csv += '"';
}

void appendHeader(std::string& csv, ArrangementTable table) {
    if (!csv.empty())
        csv += '\n';
    csv += word(table);
    csv += ':';
    for (const ColumnSpec& column : columnsOf(table))
        appendCell(csv, column.name);
    csv += '\n';
}

void appendRow(std::string& csv, ArrangementTable table,
               std::initializer_list<std::string_view> cells) {
    csv += word(table);
    for (const std::string_view cell : cells)
        appendCell(csv, cell);
    csv += '\n';
}

void appendDoor(std::string& csv, const Door& door) {
    appendRow(csv, ArrangementTable::Door,
              {door.number,
               door.deck,
               metres(door.x_m),
               metres(door.y_m),
               door.boundary,
               word(door.kind),
               word(door.fire_class),
               door.plate,
               metres(door.opening_m),
               door.leaf_mass_kg ? figure(*door.leaf_mass_kg) : std::string{},
               yesNo(door.power_operated),
               yesNo(door.hold_back),
               joined(door.release_groups),
               yesNo(door.alarm),
               yesNo(door.designed_to_reopen),
               yesNo(door.hose_port),
               yesNo(door.escape_route),
               yesNo(door.sill_in_frame),
               yesNo(door.latch),
               yesNo(door.watertight),
               yesNo(door.weathertight),
               yesNo(door.escape_trunk),
               yesNo(door.special_category),
               yesNo(door.faces_embarkation),
               word(door.normally),
               dateOrNothing(door.installed),
               door.maker});
}

} // namespace

std::string csvFrom(const Arrangement& arrangement) {
    std::string csv;
    const Particulars& vessel = arrangement.particulars;
    appendHeader(csv, ArrangementTable::Vessel);
    appendRow(csv, ArrangementTable::Vessel,
              {vessel.name, vessel.number, word(vessel.regime), std::to_string(vessel.passengers),
               dateOrNothing(vessel.keel_laid), yesNo(vessel.sprinklers), metres(vessel.length_m)});
    appendHeader(csv, ArrangementTable::Deck);
    for (const Deck& deck : arrangement.decks)
        appendRow(csv, ArrangementTable::Deck, {deck.number, deck.name, metres(deck.height_m)});
    appendHeader(csv, ArrangementTable::Zone);
    for (const Zone& zone : arrangement.zones)
        appendRow(csv, ArrangementTable::Zone,
                  {zone.number, metres(zone.aft_m), metres(zone.forward_m),
                   zone.area_m2 ? figure(*zone.area_m2) : std::string{}});
    appendHeader(csv, ArrangementTable::Boundary);
    for (const Boundary& boundary : arrangement.boundaries)
        appendRow(csv, ArrangementTable::Boundary,
                  {boundary.id, word(boundary.place), boundary.zone_aft, boundary.zone_forward,
                   metres(boundary.x_m), wordOrNothing(boundary.required), word(boundary.division),
                   spacesText(boundary.spaces)});
    appendHeader(csv, ArrangementTable::Door);
    for (const Door& door : arrangement.doors)
        appendDoor(csv, door);
    return csv;
}

} // namespace latchround
