#include "core/planning/draw.h"

#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <random>
#include <utility>

#include "core/planning/choose.h"

namespace latchround {

namespace {

int sizeOf(const Stratum& stratum) {
    return static_cast<int>(stratum.doors.size());
}

int populationOf(const std::vector<Stratum>& strata) {
    return std::accumulate(strata.begin(), strata.end(), 0,
                           [](int sum, const Stratum& stratum) { return sum + sizeOf(stratum); });
}

/// Ways to draw from a stratum with 0, 1, 2 ... defective doors and take in none of them, as far as
/// there are any.
std::vector<Whole> cleanWays(const Stratum& stratum, int most) {
    const int size = sizeOf(stratum);
    std::vector<Whole> ways{choose(size, stratum.drawn)};
    for (int defective = 0; defective < std::min(most, size - stratum.drawn); ++defective)
        ways.push_back(ways.back() * (size - stratum.drawn - defective) / (size - defective));
    return ways;
}

/// Whether a clean result is ruled out at this confidence however `defective` doors are spread.
bool isRuledOutEverywhere(const std::vector<Stratum>& strata, int defective,
                          ConfidencePpm confidence) {
    std::vector<Whole> most(static_cast<std::size_t>(defective) + 1);
    most[0] = 1;
    Whole all_ways = 1;
    for (const Stratum& stratum : strata) {
        const std::vector<Whole> here = cleanWays(stratum, defective);
        all_ways *= here[0];
        for (std::size_t all = most.size(); all-- > 0;) {
            Whole best = most[all] * here[0];
            for (std::size_t in = 1; in < here.size() && in <= all; ++in)
                best = std::max(best, Whole(most[all - in] * here[in]));
            most[all] = std::move(best);
        }
    }
    return most.back() * certain_ppm <= all_ways * (certain_ppm - confidence);
}

/// Below `limit`; by rejection, since std::uniform_int_distribution differs between libraries.
std::size_t below(std::mt19937& generator, std::size_t limit) {
    const std::uint64_t range = std::uint64_t{1} << 32;
    const std::uint64_t fair = range - range % limit;
    std::uint64_t value = generator();
    while (value >= fair)
        value = generator();
    return static_cast<std::size_t>(value % limit);
}

bool isOffered(const std::vector<SampleOffer>& offers, int at_most, ConfidencePpm confidence) {
    return std::ranges::any_of(offers, [&](const SampleOffer& offer) {
        return offer.at_most == at_most && offer.confidence == confidence;
    });
}

} // namespace

std::vector<Stratum> strataOf(const Arrangement& arrangement,
                              const std::vector<std::string>& doors) {
    std::map<std::pair<std::string, DoorKind>, Stratum> strata;
    for (const std::string& number : doors) {
        const Door* door = findDoor(arrangement, number);
        if (!door)
            continue;
        const Boundary* boundary = findBoundary(arrangement, door->boundary);
        const std::string zone = boundary ? boundary->zone_aft : std::string();
        Stratum& stratum = strata[{zone, door->kind}];
        stratum.zone = zone;
        stratum.kind = door->kind;
        stratum.doors.push_back(number);
    }
    std::vector<Stratum> sorted;
    for (auto& [key, stratum] : strata)
        sorted.push_back(std::move(stratum));
    return sorted;
}

void shareOut(std::vector<Stratum>& strata, int sample) {
    const int all = populationOf(strata);
    int given = 0;
    std::vector<std::pair<int, Stratum*>> remainders;
    for (Stratum& stratum : strata) {
        stratum.drawn = sample * sizeOf(stratum) / all;
        given += stratum.drawn;
        remainders.emplace_back(sample * sizeOf(stratum) % all, &stratum);
    }
    std::ranges::stable_sort(remainders, std::greater{}, &std::pair<int, Stratum*>::first);
    for (int i = 0; i < sample - given; ++i)
        ++remainders[static_cast<std::size_t>(i)].second->drawn;
}

std::optional<int> stratifiedSample(std::vector<Stratum>& strata, int defective,
                                    ConfidencePpm confidence) {
    const int all = populationOf(strata);
    const auto least = sampleForAtMost(all, defective, confidence);
    if (!least)
        return std::nullopt;
    for (int sample = *least; sample < all; ++sample) {
        shareOut(strata, sample);
        if (isRuledOutEverywhere(strata, defective + 1, confidence))
            return sample;
    }
    shareOut(strata, all);
    return all;
}

std::vector<SampleOffer> sampleOffers(const Arrangement& arrangement,
                                      const std::vector<std::string>& doors) {
    constexpr std::array<std::pair<int, ConfidencePpm>, 6> claims{{{10, usual_confidence_ppm},
                                                                   {5, 900'000},
                                                                   {5, usual_confidence_ppm},
                                                                   {5, 990'000},
                                                                   {2, usual_confidence_ppm},
                                                                   {0, usual_confidence_ppm}}};
    std::vector<Stratum> strata = strataOf(arrangement, doors);
    const int all = static_cast<int>(doors.size());
    std::vector<SampleOffer> offers;
    for (const auto& [percent, confidence] : claims) {
        const int at_most = all * percent / 100;
        if (isOffered(offers, at_most, confidence))
            continue;
        const auto sample = stratifiedSample(strata, at_most, confidence);
        if (sample && *sample < all)
            offers.push_back({*sample, at_most, confidence});
    }
    std::ranges::stable_sort(offers, {}, &SampleOffer::doors);
    return offers;
}

std::vector<std::string> drawn(const std::vector<Stratum>& strata, std::uint32_t random_seed) {
    std::mt19937 generator(random_seed);
    std::vector<std::string> doors;
    for (const Stratum& stratum : strata) {
        std::vector<std::string> rest = stratum.doors;
        for (int i = 0; i < stratum.drawn; ++i) {
            const std::size_t place = below(generator, rest.size());
            doors.push_back(std::move(rest[place]));
            rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(place));
        }
    }
    return doors;
}

} // namespace latchround
