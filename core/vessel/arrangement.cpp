#include "core/vessel/arrangement.h"

#include <algorithm>

namespace latchround {

namespace {

template <class T, class Key>
const T* findBy(const std::vector<T>& rows, Key key, std::string_view wanted) {
    const auto found = std::ranges::find(rows, wanted, key);
    return found == rows.end() ? nullptr : &*found;
}

bool belongsTo(const Door& door, std::string_view group) {
    return std::ranges::find(door.release_groups, group) != door.release_groups.end();
}

} // namespace

const Door* findDoor(const Arrangement& arrangement, std::string_view number) {
    return findBy(arrangement.doors, &Door::number, number);
}

const Boundary* findBoundary(const Arrangement& arrangement, std::string_view id) {
    return findBy(arrangement.boundaries, &Boundary::id, id);
}

const Zone* findZone(const Arrangement& arrangement, std::string_view number) {
    return findBy(arrangement.zones, &Zone::number, number);
}

const Deck* findDeck(const Arrangement& arrangement, std::string_view number) {
    return findBy(arrangement.decks, &Deck::number, number);
}

bool mayCountAs36OrFewer(const Particulars& vessel) {
    switch (vessel.regime) {
    case Regime::Canada:
    case Regime::CanadaDay:
    case Regime::EuInland:
    case Regime::LargeYacht:
        return isOver36(vessel);
    case Regime::SolasPassenger:
    case Regime::UsH:
    case Regime::UsK:
    case Regime::CanadaConvention:
    case Regime::Other:
        break;
    }
    return false;
}

int spaceCategories(const Particulars& vessel) {
    if (vessel.regime == Regime::UsH || vessel.regime == Regime::UsK)
        return 13;
    return isOver36(vessel) ? 14 : 11;
}

std::vector<const Door*> doorsOfGroup(const Arrangement& arrangement, std::string_view group) {
    std::vector<const Door*> moving;
    for (const Door& door : arrangement.doors)
        if (belongsTo(door, group))
            moving.push_back(&door);
    return moving;
}

std::string usualGroup(const Arrangement& arrangement, const Door& door) {
    std::string smallest;
    std::size_t fewest = arrangement.doors.size() + 1;
    for (const std::string& group : door.release_groups)
        if (const std::size_t size = doorsOfGroup(arrangement, group).size(); size < fewest) {
            fewest = size;
            smallest = group;
        }
    return smallest;
}

} // namespace latchround
