#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/planning/walk_order.h"
#include "tests/core/given.h"

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
    EXPECT_THAT(doorsInScope(twoDecks(), {}), ElementsAre("6-1", "6-3", "6-2", "5-2", "5-1"));
}

TEST(Scope, TakesADeckAZoneOrTheZoneBulkheads) {
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::OneDeck, "5", {}}), ElementsAre("5-2", "5-1"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::OneZone, "3", {}}), ElementsAre("6-2", "5-2"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::ZoneBulkheads, "", {}}),
                ElementsAre("6-1", "6-2", "5-2", "5-1"));
    EXPECT_THAT(doorsInScope(twoDecks(), {ScopeKind::Chosen, "", {"5-1"}}), ElementsAre("5-1"));
}
