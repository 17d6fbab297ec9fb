#include <algorithm>
#include <map>
#include <random>
#include <tuple>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/planning/walk_order.h"
#include "core/planning/walkways.h"
#include "tests/core/given.h"
#include "tests/long_form.h"

using namespace latchround;
using testing::ElementsAre;

namespace {

Arrangement twoDecks() {
    Arrangement arrangement;
    arrangement.decks = {{"5", "", 12}, {"6", "", 15}};
    arrangement.boundaries = {{"1/2", Place::ZoneBulkhead, "1", "2", 30, FireClass::A60},
                              {"2/3", Place::ZoneBulkhead, "2", "3", 60, FireClass::A60},
                              {"stair", Place::Stairway, "2", "2", 45, FireClass::A60}};
    const auto add = [&](const char* number, const char* deck, const char* boundary, double x) {
        Door door = given::hingedDoor();
        door.number = number;
        door.deck = deck;
        door.boundary = boundary;
        door.x_m = x;
        arrangement.doors.push_back(door);
    };
    add("5-1", "5", "1/2", 30);
    add("5-2", "5", "2/3", 60);
    add("6-1", "6", "1/2", 30);
    add("6-2", "6", "2/3", 60);
    add("6-3", "6", "stair", 45);
    return arrangement;
}

} // namespace

TEST(WalkOrder, GoesThereOnOneDeckAndBackOnTheNext) {
    EXPECT_THAT(walkRoute(twoDecks(), doorsInScope(twoDecks(), {})).doors,
                ElementsAre("6-2", "6-3", "6-1", "5-1", "5-2"));
}

TEST(Scope, TakesADeckAZoneOrTheZoneBulkheads) {
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::OneDeck, "5", {}}), ElementsAre("5-1", "5-2"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::OneZone, "3", {}}), ElementsAre("5-2", "6-2"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::ZoneBulkheads, "", {}}),
                ElementsAre("5-1", "5-2", "6-1", "6-2"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::Chosen, "", {"5-1"}}), ElementsAre("5-1"));
}

namespace {

/// Some doors on two decks with two stairs, at places made from `seed`.
Arrangement someShip(unsigned seed, int doors, bool groups) {
    std::mt19937 chance(seed);
    Arrangement ship;
    ship.decks = {{"5", "", 0}, {"6", "", 2.8}};
    for (int i = 0; i < 4; ++i)
        ship.boundaries.push_back({"b" + std::to_string(i), Place::Other, "", "", 20.0 * i, {}});
    for (int i = 0; i < 2; ++i) {
        const std::string name = "stair " + std::to_string(i);
        ship.boundaries.push_back({name, Place::Stairway, "", "", 15.0 + 40 * i, {}});
        for (const char* deck : {"5", "6"}) {
            Door door = given::hingedDoor();
            door.number = name + deck;
            door.deck = deck;
            door.boundary = name;
            door.x_m = 15.0 + 40 * i;
            ship.doors.push_back(door);
        }
    }
    for (int i = 0; i < doors; ++i) {
        Door door = given::hingedDoor();
        door.number = std::to_string(i + 1);
        door.deck = chance() % 2 ? "5" : "6";
        door.boundary = "b" + std::to_string(chance() % 4);
        door.x_m = static_cast<double>(chance() % 600) / 10;
        door.y_m = static_cast<double>(chance() % 200) / 10 - 10;
        if (groups)
            door.release_groups = {chance() % 2 ? "A" : "B"};
        ship.doors.push_back(door);
    }
    return ship;
}

/// From one door to the next: what is left on the way, and how far it is.
struct Step {
    int bulkheads = 0;
    int groups = 0;
    double metres = 0;
};

using Steps = std::vector<std::vector<Step>>;

Steps stepsBetween(const Arrangement& ship, const std::vector<const Door*>& doors) {
    const auto distance = walkingDistances(ship, doors);
    Steps steps(doors.size(), std::vector<Step>(doors.size()));
    for (std::size_t i = 0; i < doors.size(); ++i)
        for (std::size_t j = 0; j < doors.size(); ++j) {
            const Door& one = *doors[i];
            const Door& other = *doors[j];
            const bool same_bulkhead = one.deck == other.deck && one.boundary == other.boundary;
            const std::string group = usualGroup(ship, one);
            const bool same_group =
                group.empty() ? same_bulkhead
                              : one.deck == other.deck && group == usualGroup(ship, other);
            steps[i][j] = {same_bulkhead ? 0 : 1, same_group ? 0 : 1, distance[i][j]};
        }
    return steps;
}

/// How often bulkheads and groups are left over the walk, and how far it is: what must be least.
std::pair<int, double> costOf(const Steps& steps, const std::vector<std::size_t>& walk) {
    int changes = 0;
    double metres = 0;
    for (std::size_t i = 1; i < walk.size(); ++i) {
        const Step& step = steps[walk[i - 1]][walk[i]];
        changes += step.bulkheads + step.groups;
        metres += step.metres;
    }
    return {changes, metres};
}

} // namespace

// Every order of seven doors is tried: none leaves bulkheads and groups less often, and of those
// that leave them as seldom none is shorter.
TEST(WalkOrder, IsTheBestOfAllOrdersOnSmallVessels) {
    const auto seeds = static_cast<unsigned>(24 * test::timesAsMany());
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        const Arrangement ship = someShip(seed, 7, seed % 2 == 0);
        const std::vector<std::string> numbers{"1", "2", "3", "4", "5", "6", "7"};
        std::vector<const Door*> doors;
        std::map<std::string, std::size_t> place;
        for (const std::string& number : numbers) {
            place[number] = doors.size();
            doors.push_back(findDoor(ship, number));
        }
        const Steps steps = stepsBetween(ship, doors);
        const WalkRoute route = walkRoute(ship, numbers);
        std::vector<std::size_t> walk;
        for (const std::string& number : route.doors)
            walk.push_back(place.at(number));
        const auto [changes, best] = costOf(steps, walk);
        EXPECT_NEAR(best, route.length_m, 1e-9);
        int fewest = changes;
        double shortest = best;
        std::ranges::sort(walk);
        do {
            const auto [c, metres] = costOf(steps, walk);
            if (c < fewest || (c == fewest && metres < shortest)) {
                fewest = c;
                shortest = metres;
            }
        } while (std::ranges::next_permutation(walk).found);
        EXPECT_EQ(changes, fewest) << "seed " << seed;
        EXPECT_NEAR(best, shortest, 1e-6) << "seed " << seed;
    }
}

TEST(WalkOrder, SaysHowFarTheDoorNumbersWouldLead) {
    const Arrangement ship = someShip(3, 40, true);
    std::vector<std::string> numbers;
    for (int i = 1; i <= 40; ++i)
        numbers.push_back(std::to_string(i));
    const WalkRoute route = walkRoute(ship, numbers);
    EXPECT_EQ(route.doors.size(), 40u);
    EXPECT_GT(route.length_m, 0);
    EXPECT_LT(route.length_m, route.by_number_m * 0.6);
}

TEST(Walkways, GoByTheStairsThatTheRegisterKnows) {
    Arrangement ship = someShip(1, 0, false);
    const auto add = [&](const char* number, const char* deck, double x, double y) {
        Door door = given::hingedDoor();
        door.number = number;
        door.deck = deck;
        door.boundary = "b0";
        door.x_m = x;
        door.y_m = y;
        ship.doors.push_back(door);
        return number;
    };
    add("low", "5", 20, 3);
    add("high", "6", 25, -2);
    add("level", "5", 25, -2);
    const auto distance = walkingDistances(
        ship, {findDoor(ship, "low"), findDoor(ship, "high"), findDoor(ship, "level")});
    EXPECT_NEAR(distance[0][2], 5 + 5, 1e-9);
    // Back to the stairs at 15 m on the centreline, up 2.8 m, and out again.
    EXPECT_NEAR(distance[0][1], 5 + 3 + 2.8 * flight_per_height + 10 + 2, 1e-9);
    EXPECT_EQ(distance[0][1], distance[1][0]);
    EXPECT_EQ(stairsOf(ship).size(), 2u);
}

TEST(Walkways, WithoutStairsTheyAreWhereTheyAreNeeded) {
    const Arrangement ship = twoDecks(); // its stairway has one door
    EXPECT_TRUE(stairsOf(ship).empty());
    const auto distance = walkingDistances(ship, {findDoor(ship, "5-1"), findDoor(ship, "6-2")});
    EXPECT_NEAR(distance[0][1], 30 + 3 * flight_per_height, 1e-9);
}

TEST(DoorNumbers, AreOrderedAsPeopleCount) {
    EXPECT_TRUE(comesBefore("5-9", "5-10"));
    EXPECT_TRUE(comesBefore("5-09", "5-10"));
    EXPECT_FALSE(comesBefore("5-10", "5-9"));
    EXPECT_TRUE(comesBefore("5-10", "5-10A"));
    EXPECT_TRUE(comesBefore("4-99", "10-1"));
    EXPECT_FALSE(comesBefore("5-7", "5-7"));
}
