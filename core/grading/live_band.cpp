#include "core/grading/live_band.h"

#include "core/measure/interval.h"

namespace latchround {

namespace {

bool speaksOf(const Requirement& row, MarkKind since) {
    if (since == MarkKind::AlarmOn)
        return row.source == Source::AlarmLead;
    return since == MarkKind::LeafMoves &&
           (row.source == Source::ClosingTime || row.source == Source::ClosingRate);
}

/// U of a time from this mark to the one that follows, near 0 s: clock rate adds nothing to see.
double expandedEdge(MarkKind since, const ReactionModel& thumb) {
    const MarkKind until = since == MarkKind::AlarmOn ? MarkKind::LeafMoves : MarkKind::Shut;
    return expanded(timed(Interval{}, since, until, thumb));
}

} // namespace

std::optional<LiveBand> liveBand(const Catalogue& catalogue, const Particulars& vessel,
                                 const Door& door, DoorLocation location, MarkKind since,
                                 const ReactionModel& thumb) {
    for (const Requirement& base : catalogue.rows) {
        if (!speaksOf(base, since))
            continue;
        const Requirement& row = inForce(base, vessel, door, location);
        const Asked asked = howAsked(row, vessel, door, location);
        if (asked == Asked::No)
            continue;
        LiveBand band{&row, row.low, row.high, expandedEdge(since, thumb),
                      asked == Asked::Advice || row.status == Status::Advice};
        if (row.source == Source::ClosingRate) {
            if (!(door.opening_m > 0))
                continue;
            // The fastest rate allowed is the shortest time allowed.
            band.low_s = row.high ? std::optional(door.opening_m / *row.high) : std::nullopt;
            band.high_s = row.low ? std::optional(door.opening_m / *row.low) : std::nullopt;
        }
        return band;
    }
    return std::nullopt;
}

} // namespace latchround
