#include "core/measure/reaction_model.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/measure/spread.h"

namespace latchround {

namespace {

constexpr double quickest_answer_s = 0.1;
constexpr double modified_z_scale = 0.6745;
constexpr double modified_z_limit = 3.5;

bool isGuess(const ThumbTrial& trial) {
    return trial.cue != Cue::LeafStops && trial.delay_s < quickest_answer_s;
}

bool isHeard(Cue cue) {
    return cue == Cue::AlarmHeard;
}

std::size_t placeOf(Cue cue) {
    return static_cast<std::size_t>(cue);
}

Component scatter(Influence part, double spread_s, double degrees_of_freedom) {
    return {part, spread_s, 1, degrees_of_freedom, true};
}

Component bias(Influence part, double u_s, double degrees_of_freedom) {
    return {part, u_s, 1, degrees_of_freedom, false};
}

} // namespace

Sifted rejectOutliers(Cue cue, const ThumbDrill& drill) {
    Sifted result;
    std::vector<double> delays;
    for (const ThumbTrial& trial : drill.trials) {
        if (trial.cue != cue)
            continue;
        if (isGuess(trial))
            ++result.too_early;
        else
            delays.push_back(trial.delay_s);
    }
    if (delays.empty())
        return result;
    const double middle = medianOf(delays);
    std::vector<double> distances;
    distances.reserve(delays.size());
    for (const double delay : delays)
        distances.push_back(std::abs(delay - middle));
    const double typical = medianOf(std::move(distances));
    const auto outlying = [&](double delay) {
        return modified_z_scale * std::abs(delay - middle) > modified_z_limit * typical;
    };
    result.set_aside = static_cast<int>(std::erase_if(delays, outlying));
    if (static_cast<int>(delays.size()) >= min_trials)
        result.reaction =
            Reaction{meanOf(delays), standardDeviation(delays), static_cast<int>(delays.size())};
    return result;
}

CalendarDate drillDueAfter(CalendarDate done) {
    return monthsLater(done, drill_every_months);
}

ReactionModel::ReactionModel(const ThumbDrill& drill) {
    for (const Word<Cue>& entry : cueWords)
        m_own[placeOf(entry.value)] = rejectOutliers(entry.value, drill).reaction;
}

ReactionModel ReactionModel::of(const ThumbDrill* drill) {
    return drill ? ReactionModel(*drill) : ReactionModel();
}

const std::optional<Reaction>& ReactionModel::own(Cue cue) const {
    return m_own[placeOf(cue)];
}

double ReactionModel::correction(Cue start, Cue end) const {
    const auto& first = own(start);
    const auto& last = own(end);
    return first && last ? first->bias_s - last->bias_s : 0;
}

Budget ReactionModel::budget(Cue start, Cue end) const {
    Budget parts;
    const auto& first = own(start);
    const auto& last = own(end);
    const auto addScatter = [&](Influence part, const std::optional<Reaction>& reaction) {
        parts.push_back(
            reaction ? scatter(part, reaction->spread_s, reaction->trials - 1)
                     : scatter(part, published_pair_spread_s / std::numbers::sqrt2, known_exactly));
    };
    addScatter(Influence::SpreadAtStart, first);
    addScatter(Influence::SpreadAtEnd, last);
    const bool sound = isHeard(start) != isHeard(end);
    if (!first || !last) {
        const double left = sound ? published_bias_s : bias_left_seen_s;
        parts.push_back(bias(Influence::BiasLeft, rectangular(left), known_exactly));
        return parts;
    }
    if (start != end) {
        const auto addMean = [&](Influence part, const Reaction& reaction) {
            parts.push_back(
                bias(part, reaction.spread_s / std::sqrt(reaction.trials), reaction.trials - 1));
        };
        addMean(Influence::BiasAtStart, *first);
        addMean(Influence::BiasAtEnd, *last);
    }
    const double left = sound ? drill_left_heard_s : drill_left_seen_s;
    parts.push_back(bias(Influence::BiasLeft, rectangular(left), known_exactly));
    return parts;
}

} // namespace latchround
