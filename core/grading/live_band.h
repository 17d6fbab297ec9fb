// The limits that the running stopwatch shows: seconds allowed from one mark to the next, from the
// same catalogue rows that will grade the run.
#pragma once

#include <optional>

#include "core/evidence/fact_words.h"
#include "core/measure/reaction_model.h"
#include "core/requirement/applicability.h"
#include "core/requirement/catalogue.h"

namespace latchround {

struct LiveBand {
    const Requirement* requirement = nullptr;
    std::optional<double> low_s;
    std::optional<double> high_s;
    double expanded_s = 0; ///< width of the uncertain edge at a limit: U of one hand-timed run
    bool advice = false;   ///< the row does not bind this vessel or door
};

/// Limits on the time since `since` until the leaf moves (alarm on) or is home (leaf moves). A rate
/// becomes times by the clear opening. Nothing where no row asks for that interval of this door.
std::optional<LiveBand> liveBand(const Catalogue& catalogue, const Particulars& vessel,
                                 const Door& door, DoorLocation location, MarkKind since,
                                 const ReactionModel& thumb = {});

} // namespace latchround
