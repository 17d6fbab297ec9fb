#include "core/vessel/arrangement.h"

#include <algorithm>

namespace latchround {

namespace {

template <class T, class Key>
const T* findBy(const std::vector<T>& rows, Key key, std::string_view wanted) {
    const auto found = std::ranges::find(rows, wanted, key);
    return found == rows.end() ? nullptr : &*found;
}

bool shareGroup(const Door& one, const Door& other) {
    return std::ranges::any_of(one.release_groups, [&](const std::string& group) {
        return std::ranges::find(other.release_groups, group) != other.release_groups.end();
    });
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

std::vector<const Door*> doorsReleasedWith(const Arrangement& arrangement, const Door& door) {
    std::vector<const Door*> moving;
    if (const Door* self = findDoor(arrangement, door.number))
        moving.push_back(self);
    for (const Door& other : arrangement.doors)
        if (other.number != door.number && shareGroup(other, door))
            moving.push_back(&other);
    return moving;
}

} // namespace latchround
