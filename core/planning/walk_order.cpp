#include "core/planning/walk_order.h"

#include <algorithm>
#include <map>

#include "core/digit.h"
#include "core/planning/shortest_round.h"
#include "core/planning/walkways.h"

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
    case ScopeKind::Retest:
        break;
    }
    return std::ranges::find(scope.chosen, door.number) != scope.chosen.end();
}

/// Takes the leading digits, leading noughts left out.
std::string_view takeNumber(std::string_view& text) {
    while (text.size() > 1 && text[0] == '0' && isDigit(text[1]))
        text.remove_prefix(1);
    std::size_t length = 0;
    while (length < text.size() && isDigit(text[length]))
        ++length;
    const std::string_view number = text.substr(0, length);
    text.remove_prefix(length);
    return number;
}

/// A number for every different text, in the order they come.
class Numbering {
public:
    int of(const std::string& text) {
        return m_known.emplace(text, static_cast<int>(m_known.size())).first->second;
    }

private:
    std::map<std::string, int> m_known;
};

/// What stays together: release groups of one deck, and within them bulkheads of one deck.
std::vector<std::vector<int>> ties(const Arrangement& arrangement,
                                   const std::vector<const Door*>& doors) {
    Numbering groups;
    Numbering bulkheads;
    std::vector<std::vector<int>> levels(2);
    for (const Door* door : doors) {
        const std::string group = usualGroup(arrangement, *door);
        const std::string bulkhead = door->deck + '\n' + door->boundary;
        levels[0].push_back(groups.of(group.empty() ? bulkhead : door->deck + "\n\n" + group));
        levels[1].push_back(bulkheads.of(bulkhead));
    }
    return levels;
}

double heightOf(const Arrangement& arrangement, const Door& door) {
    const Deck* deck = findDeck(arrangement, door.deck);
    return deck ? deck->height_m : 0;
}

/// From the top down; on one deck from the lower number.
bool beginsAtTheWrongEnd(const Arrangement& arrangement, const Door& first, const Door& last) {
    const double first_m = heightOf(arrangement, first);
    const double last_m = heightOf(arrangement, last);
    return first_m < last_m || (first_m == last_m && comesBefore(last.number, first.number));
}

} // namespace

bool comesBefore(std::string_view one, std::string_view other) {
    while (!one.empty() && !other.empty()) {
        if (isDigit(one.front()) && isDigit(other.front())) {
            const std::string_view left = takeNumber(one);
            const std::string_view right = takeNumber(other);
            if (left.size() != right.size())
                return left.size() < right.size();
            if (left != right)
                return left < right;
        } else if (one.front() != other.front()) {
            return one.front() < other.front();
        } else {
            one.remove_prefix(1);
            other.remove_prefix(1);
        }
    }
    return one.empty() && !other.empty();
}

std::vector<std::string> doorsInScope(const Arrangement& arrangement, const Scope& scope) {
    std::vector<std::string> numbers;
    for (const Door& door : arrangement.doors)
        if (inScope(arrangement, scope, door))
            numbers.push_back(door.number);
    return numbers;
}

WalkRoute walkRoute(const Arrangement& arrangement, const std::vector<std::string>& doors) {
    std::vector<const Door*> known;
    for (const std::string& number : doors)
        if (const Door* door = findDoor(arrangement, number))
            known.push_back(door);
    std::ranges::stable_sort(known, [](const Door* one, const Door* other) {
        return comesBefore(one->number, other->number);
    });
    WalkRoute route;
    const Places places{walkingDistances(arrangement, known), ties(arrangement, known)};
    for (std::size_t i = 1; i < known.size(); ++i)
        route.by_number_m += places.distance[i - 1][i];
    std::vector<std::size_t> round = shortestRound(places);
    if (!round.empty() &&
        beginsAtTheWrongEnd(arrangement, *known[round.front()], *known[round.back()]))
        std::ranges::reverse(round);
    route.length_m = lengthOf(round, places.distance);
    for (const std::size_t place : round)
        route.doors.push_back(known[place]->number);
    return route;
}

} // namespace latchround
