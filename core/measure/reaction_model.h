// What a person's thumb is worth: how late it answers to each kind of event and how much that
// scatters. Published figures until the person has done the thumb drill on this tablet, then the
// person's own.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/evidence/fact.h"
#include "core/measure/budget.h"

namespace latchround {

/// Delay from an event to the mark, seconds.
struct Reaction {
    double bias_s = 0;   ///< mean delay
    double spread_s = 0; ///< standard deviation of one delay
    int trials = 0;      ///< that counted; degrees of freedom are one less

    bool operator==(const Reaction&) const = default;
};

/// One cue of a drill put through the sieve.
struct Sifted {
    std::optional<Reaction> reaction; ///< nothing where fewer than min_trials counted
    int too_early = 0;                ///< marked before the event: guessed, not seen
    int set_aside = 0;                ///< out of line with the rest
};

/// Fewer than this many give no usable spread (our choice, no source).
inline constexpr int min_trials = 8;

/// Guesses go first: a mark before the event, or less than 0.1 s after one that comes without
/// warning (nobody answers faster: false starts in athletics are called below 0.100 s, World
/// Athletics technical rule 16, from memory). A leaf that is seen to arrive may be met early and
/// counts. Then outliers by the modified z score 0.6745 |x - median| / MAD above 3.5 (Iglewicz and
/// Hoaglin, in NIST/SEMATECH e-Handbook 1.3.5.17; from memory).
Sifted rejectOutliers(Cue cue, const ThumbDrill& drill);

/// How the reading of an interval is corrected and what its uncertainty is made of.
class ReactionModel {
public:
    /// Published figures.
    ReactionModel() = default;
    /// The person's own, for every cue that the drill settled.
    explicit ReactionModel(const ThumbDrill& drill);
    /// Published where there is no drill.
    static ReactionModel of(const ThumbDrill* drill);

    const std::optional<Reaction>& own(Cue cue) const;

    /// Seconds to add to what was read, for an interval that begins and ends with these events; 0
    /// unless the person's own delay to both is known.
    double correction(Cue start, Cue end) const;
    /// Spread and bias of that interval, seconds.
    Budget budget(Cue start, Cue end) const;

private:
    std::array<std::optional<Reaction>, cueWords.size()> m_own;
};

/// Standard deviation of a start-stop pair by one person: 0.10 s; of one mark: that over sqrt 2
/// (published: 0.07 s). Am. J. Phys. 87, 110 (2019), abstract.
inline constexpr double published_pair_spread_s = 0.10;

/// Mean delay of a stop that is seen to come: 0.11 s, same source. It cancels between two like
/// events. Between one that is heard and one that is seen all of it may be left, either way.
inline constexpr double published_bias_s = 0.11;

/// Between a leaf that starts unannounced and one that is seen to arrive this much may be left,
/// either way (our choice, no source).
inline constexpr double bias_left_seen_s = 0.05;

/// A door is not the drill: the tablet's own delay belongs to the drill and not to the door. Half
/// width of what that leaves: one picture of the screen, or the loudspeaker's delay (our choice, no
/// source).
inline constexpr double drill_left_seen_s = 0.02;
inline constexpr double drill_left_heard_s = 0.05;

/// Months after which the drill is proposed again (our choice, no source).
inline constexpr int drill_every_months = 3;

/// The day on which a drill done on this day is proposed again.
CalendarDate drillDueAfter(CalendarDate done);

} // namespace latchround
