// The uncertainty budget of a figure: every part with its standard uncertainty, how much of it
// reaches the figure, and how well it is itself known. Law of propagation for independent parts:
// JCGM 100:2008 (GUM) 5.1.2; degrees of freedom: GUM G.4.1, Welch-Satterthwaite.
#pragma once

#include <array>
#include <limits>
#include <string_view>
#include <vector>

#include "core/vessel/words.h"

namespace latchround {

/// Where a part of the uncertainty comes from.
enum class Influence {
    SpreadAtStart, ///< the thumb's scatter at the mark that begins the interval
    SpreadAtEnd,
    BiasAtStart, ///< how well the person's own delay is known, from the drill
    BiasAtEnd,
    BiasLeft,   ///< delays of two unlike events that do not cancel
    Resolution, ///< the last digit of clock or rule
    ClockRate,
    Opening, ///< tolerance of the clear opening
    HalfWay  ///< where the half-way point was taken to be
};

inline constexpr std::array<Word<Influence>, 9> influenceWords{
    {{Influence::SpreadAtStart, "spread-at-start"},
     {Influence::SpreadAtEnd, "spread-at-end"},
     {Influence::BiasAtStart, "bias-at-start"},
     {Influence::BiasAtEnd, "bias-at-end"},
     {Influence::BiasLeft, "bias-left"},
     {Influence::Resolution, "resolution"},
     {Influence::ClockRate, "clock-rate"},
     {Influence::Opening, "opening"},
     {Influence::HalfWay, "half-way"}}};

constexpr std::string_view word(Influence value) {
    return wordIn<Influence>(influenceWords, value);
}

inline constexpr double known_exactly = std::numeric_limits<double>::infinity();

/// What one part adds.
struct Component {
    Influence part = Influence::Resolution;
    double input_u = 0;                        ///< standard uncertainty (k = 1), in its own unit
    double sensitivity = 1;                    ///< change of the figure per unit of the part
    double degrees_of_freedom = known_exactly; ///< of input_u; above 0
    bool falls_with_runs = false;              ///< differs from run to run: a mean reduces it

    /// Its share in the unit of the figure.
    double u() const { return sensitivity < 0 ? -sensitivity * input_u : sensitivity * input_u; }
};

using Budget = std::vector<Component>;

/// Rectangular distribution of this half-width as a standard uncertainty: divided by sqrt 3 (GUM
/// 4.3.7).
double rectangular(double half_width);

/// Combined standard uncertainty: root of the sum of squares; 0 for an empty budget.
double combinedUncertainty(const Budget& budget);

/// Effective degrees of freedom by Welch-Satterthwaite from the unrounded parts, not truncated;
/// infinite where every part is exactly known.
double effectiveDegreesOfFreedom(const Budget& budget);

/// Degrees of freedom as they count in Student's t: truncated to a whole number (GUM G.4.1 note 1),
/// at least 1.
double countedDegrees(double degrees_of_freedom);

/// Coverage factor for this level of confidence, two-sided (0 < level < 1): Student's t with the
/// counted degrees of freedom; the normal one where they are infinite.
double coverageFactor(double degrees_of_freedom, double level);

/// Level whose factor is 2 for a normal distribution; tables of t print it as 95.45 % (GUM table
/// G.2).
inline constexpr double level_of_k2 = 0.954499736103641585599;

} // namespace latchround
