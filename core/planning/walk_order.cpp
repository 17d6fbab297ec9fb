#include "core/planning/walk_order.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace latchround {

namespace {

bool inScope(const Arrangement& arrangement, const Scope& scope, const Door& door) {
    const Boundary* boundary = findBoundary(arrangement, door.boundary);
    switch (scope.kind) {
    case ScopeKind::AllDoors:
        return true;
    case ScopeKind::OneDeck:
        return door.deck == scope.which;
    case ScopeKind::OneZone:
        return boundary &&
               (boundary->zone_aft == scope.which || boundary->zone_forward == scope.which);
    case ScopeKind::ZoneBulkheads:
        return boundary && boundary->place == Place::ZoneBulkhead;
    case ScopeKind::Chosen:
        break;
    }
    return std::ranges::find(scope.chosen, door.number) != scope.chosen.end();
}

} // namespace

std::vector<std::string> doorsInScope(const Arrangement& arrangement, const Scope& scope) {
    std::vector<std::string> numbers;
    for (const Door& door : arrangement.doors)
        if (inScope(arrangement, scope, door))
            numbers.push_back(door.number);
    return walkOrder(arrangement, numbers);
}

std::vector<std::string> walkOrder(const Arrangement& arrangement,
                                   const std::vector<std::string>& doors) {
    std::vector<const Deck*> decks;
    for (const Deck& deck : arrangement.decks)
        decks.push_back(&deck);
    std::ranges::stable_sort(decks, std::greater{},
                             [](const Deck* deck) { return deck->height_m; });
    std::map<std::string, int> deck_rank;
    for (const Deck* deck : decks)
        deck_rank.emplace(deck->number, static_cast<int>(deck_rank.size()));

    std::vector<const Door*> walk;
    for (const std::string& number : doors)
        if (const Door* door = findDoor(arrangement, number))
            walk.push_back(door);
    std::ranges::stable_sort(walk, {}, [&](const Door* door) {
        const int rank = deck_rank[door->deck];
        const double direction = rank % 2 == 0 ? 1 : -1;
        const Boundary* boundary = findBoundary(arrangement, door->boundary);
        const double along = direction * (boundary ? boundary->x_m : door->x_m);
        return std::tuple(rank, along, door->boundary, direction * door->x_m, door->y_m);
    });
    std::vector<std::string> numbers;
    numbers.reserve(walk.size());
    for (const Door* door : walk)
        numbers.push_back(door->number);
    return numbers;
}

} // namespace latchround
