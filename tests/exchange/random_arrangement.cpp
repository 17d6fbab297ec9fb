#include "tests/exchange/random_arrangement.h"

#include <algorithm>

#include "core/vessel/arrangement_fields.h"

namespace latchround::test {
namespace {

double centimetres(int low_m, int high_m) {
    return *rc::gen::inRange(low_m * 100, high_m * 100 + 1) / 100.0;
}

template <class E, std::size_t N>
E oneOf(const std::array<Word<E>, N>& words) {
    return words[*rc::gen::inRange<std::size_t>(0, N)].value;
}

bool coin() {
    return *rc::gen::arbitrary<bool>();
}

std::optional<CalendarDate> someDate(int first_year) {
    if (coin())
        return std::nullopt;
    return CalendarDate{std::chrono::year{*rc::gen::inRange(first_year, 2100)},
                        std::chrono::month{*rc::gen::inRange(1u, 13u)},
                        std::chrono::day{*rc::gen::inRange(1u, 29u)}};
}

/// Unique by its count, awkward in the middle.
std::string name(std::size_t count) {
    return std::to_string(count) + *awkwardText() + "/" + std::to_string(count);
}

/// Every yes or no at random.
struct EachCoin {
    void operator()(const ArrangementColumn&, bool& member) const { member = coin(); }
    void operator()(const ArrangementColumn&, const auto&) const {}
};

Door someDoor(const Arrangement& vessel, std::size_t count) {
    Door door;
    door.number = name(count);
    door.deck = vessel.decks[*rc::gen::inRange<std::size_t>(0, vessel.decks.size())].number;
    door.boundary =
        vessel.boundaries[*rc::gen::inRange<std::size_t>(0, vessel.boundaries.size())].id;
    door.x_m = coin() ? centimetres(-20, 400) : centimetres(0, 300) + 1.0 / 3;
    door.y_m = centimetres(-40, 40);
    door.kind = oneOf(doorKindWords);
    door.fire_class = oneOf(fireClassWords);
    door.plate = *awkwardText();
    door.opening_m = *rc::gen::inRange(1, 1001) / 100.0;
    if (coin())
        door.leaf_mass_kg = *rc::gen::inRange(1, 500001) / 100.0;
    eachField(door, EachCoin{});
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i)
        door.release_groups.push_back("G" + std::to_string(i));
    door.normally = oneOf(normalPositionWords);
    door.installed = someDate(1900);
    door.maker = *awkwardText();
    return door;
}

Arrangement someArrangement() {
    Arrangement vessel;
    vessel.particulars = {"V" + *awkwardText(),       *awkwardText(), oneOf(regimeWords),
                          *rc::gen::inRange(0, 9000), someDate(1),    coin(),
                          centimetres(0, 400)};
    const auto decks = *rc::gen::inRange<std::size_t>(1, 4);
    for (std::size_t i = 0; i < decks; ++i)
        vessel.decks.push_back({name(i), *awkwardText(), centimetres(-5, 60)});
    const auto zones = *rc::gen::inRange<std::size_t>(1, 5);
    double aft = centimetres(0, 20);
    for (std::size_t i = 0; i < zones; ++i) {
        const double forward = aft + centimetres(1, 48);
        vessel.zones.push_back({name(i), aft, forward});
        if (coin())
            vessel.zones.back().area_m2 = *rc::gen::inRange(1, 200001) / 100.0;
        aft = forward;
    }
    for (std::size_t i = 0; i < zones; ++i) {
        const bool bulkhead = i + 1 < zones;
        const Zone& zone = vessel.zones[i];
        Boundary boundary{name(i),        bulkhead ? Place::ZoneBulkhead : oneOf(placeWords),
                          zone.number,    vessel.zones[bulkhead ? i + 1 : i].number,
                          zone.forward_m, std::nullopt};
        if (!bulkhead && boundary.place == Place::ZoneBulkhead)
            boundary.place = Place::Galley;
        if (coin())
            boundary.required = oneOf(fireClassWords);
        boundary.division = oneOf(divisionWords);
        if (coin())
            boundary.spaces = std::pair(*rc::gen::inRange(1, 12), *rc::gen::inRange(1, 12));
        vessel.boundaries.push_back(std::move(boundary));
    }
    const auto doors = *rc::gen::inRange<std::size_t>(0, 6);
    for (std::size_t i = 0; i < doors; ++i)
        vessel.doors.push_back(someDoor(vessel, i));
    return vessel;
}

} // namespace

rc::Gen<Arrangement> soundArrangement() {
    return rc::gen::exec(someArrangement);
}

rc::Gen<std::string> awkwardText() {
    const auto piece = rc::gen::element<std::string>(
        "a", "Z", "7", " ", "  ", ",", ";", "\t", "\"", "\"\"", "\n", "\r\n", "\r", "\\", "/", "~",
        "\xC3\xA9", "\xE2\x82\xAC", "\xF0\x9F\x9A\xAA", "'", ":", "=", "-", "door:", "vessel",
        "\xEF\xBB\xBF", "\x01", "\x7F");
    return rc::gen::map(rc::gen::container<std::vector<std::string>>(piece), [](const auto& parts) {
        std::string text;
        for (const std::string& part : parts)
            text += part;
        return text;
    });
}

} // namespace latchround::test
