#include "core/planning/walkways.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

namespace latchround {

namespace {

constexpr double no_way = std::numeric_limits<double>::infinity();

struct Landing {
    std::size_t stairs;
    std::size_t deck;
};

std::optional<std::size_t> deckOf(const Arrangement& arrangement, const Door& door) {
    const auto found = std::ranges::find(arrangement.decks, door.deck, &Deck::number);
    return found == arrangement.decks.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(found - arrangement.decks.begin()));
}

double across(double x, double y, double other_x, double other_y) {
    return std::abs(x - other_x) + std::abs(y - other_y);
}

/// Shortest ways between landings (Floyd and Warshall).
class StairNet {
public:
    explicit StairNet(const Arrangement& arrangement)
        : m_arrangement(arrangement)
        , m_stairs(stairsOf(arrangement)) {
        for (std::size_t stairs = 0; stairs < m_stairs.size(); ++stairs)
            for (const std::size_t deck : m_stairs[stairs].decks)
                m_landings.push_back({stairs, deck});
        const std::size_t count = m_landings.size();
        m_ways.assign(count, std::vector<double>(count, no_way));
        for (std::size_t from = 0; from < count; ++from)
            for (std::size_t to = 0; to < count; ++to)
                m_ways[from][to] = step(m_landings[from], m_landings[to]);
        for (std::size_t by = 0; by < count; ++by)
            for (std::size_t from = 0; from < count; ++from)
                for (std::size_t to = 0; to < count; ++to)
                    m_ways[from][to] =
                        std::min(m_ways[from][to], m_ways[from][by] + m_ways[by][to]);
    }

    /// From a door to every landing of the ship.
    std::vector<double> waysFrom(const Door& door, std::size_t deck) const {
        std::vector<double> ways(m_landings.size(), no_way);
        for (std::size_t near = 0; near < m_landings.size(); ++near) {
            if (m_landings[near].deck != deck)
                continue;
            const double first = toLanding(door, near);
            for (std::size_t far = 0; far < ways.size(); ++far)
                ways[far] = std::min(ways[far], first + m_ways[near][far]);
        }
        return ways;
    }

    double shortest(const std::vector<double>& ways, const Door& door, std::size_t deck) const {
        double best = no_way;
        for (std::size_t near = 0; near < m_landings.size(); ++near)
            if (m_landings[near].deck == deck)
                best = std::min(best, ways[near] + toLanding(door, near));
        return best;
    }

private:
    double toLanding(const Door& door, std::size_t landing) const {
        const Stairs& stairs = m_stairs[m_landings[landing].stairs];
        return across(door.x_m, door.y_m, stairs.x_m, stairs.y_m);
    }

    double step(const Landing& from, const Landing& to) const {
        const Stairs& one = m_stairs[from.stairs];
        const Stairs& other = m_stairs[to.stairs];
        if (from.stairs == to.stairs)
            return flight_per_height * std::abs(m_arrangement.decks[from.deck].height_m -
                                                m_arrangement.decks[to.deck].height_m);
        return from.deck == to.deck ? across(one.x_m, one.y_m, other.x_m, other.y_m) : no_way;
    }

    const Arrangement& m_arrangement;
    std::vector<Stairs> m_stairs;
    std::vector<Landing> m_landings;
    std::vector<std::vector<double>> m_ways;
};

} // namespace

std::vector<Stairs> stairsOf(const Arrangement& arrangement) {
    std::map<std::string, std::vector<const Door*>> doors;
    for (const Door& door : arrangement.doors)
        doors[door.boundary].push_back(&door);
    std::vector<Stairs> all;
    for (const Boundary& boundary : arrangement.boundaries) {
        const auto found = doors.find(boundary.id);
        if (boundary.place != Place::Stairway || found == doors.end())
            continue;
        Stairs stairs{boundary.id, boundary.x_m, 0, {}};
        double lowest = no_way;
        double highest = -no_way;
        for (const Door* door : found->second) {
            stairs.y_m += door->y_m / static_cast<double>(found->second.size());
            if (const auto deck = deckOf(arrangement, *door)) {
                lowest = std::min(lowest, arrangement.decks[*deck].height_m);
                highest = std::max(highest, arrangement.decks[*deck].height_m);
            }
        }
        for (std::size_t deck = 0; deck < arrangement.decks.size(); ++deck)
            if (arrangement.decks[deck].height_m >= lowest &&
                arrangement.decks[deck].height_m <= highest)
                stairs.decks.push_back(deck);
        std::ranges::sort(stairs.decks, {},
                          [&](std::size_t deck) { return arrangement.decks[deck].height_m; });
        if (stairs.decks.size() > 1)
            all.push_back(std::move(stairs));
    }
    return all;
}

std::vector<std::vector<double>> walkingDistances(const Arrangement& arrangement,
                                                  const std::vector<const Door*>& doors) {
    const StairNet net(arrangement);
    std::vector<std::vector<double>> table(doors.size(), std::vector<double>(doors.size()));
    for (std::size_t from = 0; from < doors.size(); ++from) {
        const Door& one = *doors[from];
        const auto deck = deckOf(arrangement, one);
        const std::vector<double> ways = deck ? net.waysFrom(one, *deck) : std::vector<double>();
        for (std::size_t to = from + 1; to < doors.size(); ++to) {
            const Door& other = *doors[to];
            const double level = across(one.x_m, one.y_m, other.x_m, other.y_m);
            const auto other_deck = deckOf(arrangement, other);
            double way = level;
            if (deck && other_deck && *deck != *other_deck) {
                way = net.shortest(ways, other, *other_deck);
                if (!std::isfinite(way))
                    way = level +
                          flight_per_height * std::abs(arrangement.decks[*deck].height_m -
                                                       arrangement.decks[*other_deck].height_m);
            }
            table[from][to] = table[to][from] = way;
        }
    }
    return table;
}

} // namespace latchround
