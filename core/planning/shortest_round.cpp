#include "core/planning/shortest_round.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <random>

namespace latchround {

namespace {

using Round = std::vector<std::size_t>;
using Lengths = std::vector<std::vector<double>>;

constexpr double worth_it = 1e-9; // less is rounding

/// Leaving a group costs more than any walk could save, so that no group is left twice.
Lengths withTies(const Places& places) {
    double longest = 0;
    for (const auto& row : places.distance)
        for (const double way : row)
            longest = std::max(longest, way);
    const double dear = 4 * (longest + 1);
    Lengths cost = places.distance;
    for (const std::vector<int>& level : places.together)
        for (std::size_t one = 0; one < cost.size(); ++one)
            for (std::size_t other = 0; other < cost.size(); ++other)
                if (level[one] != level[other])
                    cost[one][other] += dear;
    return cost;
}

class Search {
public:
    Search(const Lengths& cost, const Places& places, Round start)
        : m_cost(cost)
        , m_places(places)
        , m_round(std::move(start)) {}

    void improve() {
        while (exchangeLegs() || shiftRuns()) {
        }
    }

    const Round& round() const { return m_round; }
    double length() const { return lengthOf(m_round, m_cost); }

    /// Swaps two neighbouring stretches at random places.
    void kick(std::mt19937& generator) {
        const std::size_t n = m_round.size();
        std::array<std::size_t, 3> cut{};
        for (std::size_t& each : cut)
            each = generator() % (n + 1);
        std::ranges::sort(cut);
        const auto at = [&](std::size_t place) {
            return m_round.begin() + static_cast<std::ptrdiff_t>(place);
        };
        std::rotate(at(cut[0]), at(cut[1]), at(cut[2]));
    }

private:
    double leg(std::size_t from, std::size_t to) const { return m_cost[from][to]; }

    bool exchangeLegs() {
        bool better = false;
        const std::size_t n = m_round.size();
        for (std::size_t first = 0; first + 1 < n; ++first)
            for (std::size_t last = first + 1; last < n; ++last) {
                double gain = 0;
                if (first > 0)
                    gain += leg(m_round[first - 1], m_round[first]) -
                            leg(m_round[first - 1], m_round[last]);
                if (last + 1 < n)
                    gain += leg(m_round[last], m_round[last + 1]) -
                            leg(m_round[first], m_round[last + 1]);
                if (gain <= worth_it)
                    continue;
                std::reverse(m_round.begin() + static_cast<std::ptrdiff_t>(first),
                             m_round.begin() + static_cast<std::ptrdiff_t>(last) + 1);
                better = true;
            }
        return better;
    }

    /// Ends of the runs that begin at this position: one place, and the rest of its group at every
    /// level.
    std::vector<std::size_t> runEnds(std::size_t begin) const {
        std::vector<std::size_t> ends{begin + 1};
        for (const std::vector<int>& level : m_places.together) {
            std::size_t end = begin + 1;
            while (end < m_round.size() && level[m_round[end]] == level[m_round[begin]])
                ++end;
            ends.push_back(end);
        }
        return ends;
    }

    bool shiftRuns() {
        for (std::size_t begin = 0; begin < m_round.size(); ++begin)
            for (const std::size_t end : runEnds(begin))
                if (shiftRun(begin, end))
                    return true;
        return false;
    }

    /// Puts [begin, end) where it costs least, turned round if that is better.
    bool shiftRun(std::size_t begin, std::size_t end) {
        const std::size_t n = m_round.size();
        if (end - begin == n)
            return false;
        const std::size_t head = m_round[begin];
        const std::size_t tail = m_round[end - 1];
        double taken_out = 0;
        if (begin > 0)
            taken_out += leg(m_round[begin - 1], head);
        if (end < n)
            taken_out += leg(tail, m_round[end]);
        if (begin > 0 && end < n)
            taken_out -= leg(m_round[begin - 1], m_round[end]);
        double best = worth_it;
        std::size_t best_at = n + 1;
        bool best_turned = false;
        for (std::size_t at = 0; at <= n; ++at) {
            if (at >= begin && at <= end)
                continue;
            const bool has_before = at > 0;
            const bool has_after = at < n;
            for (const bool turned : {false, true}) {
                double put_in = 0;
                if (has_before)
                    put_in += leg(m_round[at - 1], turned ? tail : head);
                if (has_after)
                    put_in += leg(turned ? head : tail, m_round[at]);
                if (has_before && has_after)
                    put_in -= leg(m_round[at - 1], m_round[at]);
                if (taken_out - put_in > best) {
                    best = taken_out - put_in;
                    best_at = at;
                    best_turned = turned;
                }
            }
        }
        if (best_at > n)
            return false;
        const auto place = [&](std::size_t index) {
            return m_round.begin() + static_cast<std::ptrdiff_t>(index);
        };
        if (best_turned)
            std::reverse(place(begin), place(end));
        if (best_at < begin)
            std::rotate(place(best_at), place(begin), place(end));
        else
            std::rotate(place(begin), place(end), place(best_at));
        return true;
    }

    const Lengths& m_cost;
    const Places& m_places;
    Round m_round;
};

/// Groups in the order they come in, at every level, so that none is split to begin with.
Round groupedStart(const Places& places) {
    Round round(places.distance.size());
    std::iota(round.begin(), round.end(), std::size_t{0});
    std::vector<std::vector<std::size_t>> keys(round.size());
    for (const std::vector<int>& level : places.together)
        for (std::size_t place = 0; place < round.size(); ++place) {
            const auto first = std::ranges::find(level, level[place]);
            keys[place].push_back(static_cast<std::size_t>(first - level.begin()));
        }
    std::ranges::stable_sort(round, {}, [&](std::size_t place) { return keys[place]; });
    return round;
}

} // namespace

double lengthOf(const std::vector<std::size_t>& round,
                const std::vector<std::vector<double>>& distance) {
    double length = 0;
    for (std::size_t i = 1; i < round.size(); ++i)
        length += distance[round[i - 1]][round[i]];
    return length;
}

std::vector<std::size_t> shortestRound(const Places& places) {
    const std::size_t n = places.distance.size();
    if (n < 2)
        return groupedStart(places);
    const Lengths cost = withTies(places);
    Search first(cost, places, groupedStart(places));
    first.improve();
    Round best = first.round();
    std::mt19937 generator(1);
    const std::size_t kicks = std::clamp<std::size_t>(12000 / n, 24, 100);
    for (std::size_t i = 0; i < kicks; ++i) {
        Search next(cost, places, best);
        next.kick(generator);
        next.improve();
        if (next.length() < lengthOf(best, cost) - worth_it)
            best = next.round();
    }
    return best;
}

} // namespace latchround
