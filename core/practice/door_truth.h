// A practice door as it really is: what the eye would find, how it moves, when its alarm sounds,
// who walks by. Sound unless faults were put into it.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/practice/fault.h"
#include "core/practice/mechanism.h"
#include "core/requirement/catalogue.h"

namespace latchround::practice {

/// Somebody who walks into the opening, so many seconds after the leaf's first movement, and on
/// through it once the leaf stands.
struct PasserBy {
    double steps_in_s = 0;
    bool from_side_two = false;

    bool operator==(const PasserBy&) const = default;
};

struct DoorTruth {
    std::vector<Fault> faults; ///< that were put in

    // What the eye finds.
    PlateState plate_state = PlateState::Read;
    FireClass plate = FireClass::A60; ///< where it is read
    bool sill = true;
    double gap_mm = 6; ///< under the shut leaf
    bool pocket_litter = false;
    bool wedge = false; ///< until it is taken away
    bool hook = false;
    bool painted_seal = false;
    bool hose_port_stuck = false;

    // How it moves.
    std::variant<HingedLeaf, DoubleLeaf, SlidingLeaf> mechanism;
    double alarm_lead_s = 7;         ///< alarm to first movement, where one is fitted
    double alarm_stops_before_s = 0; ///< so long before the leaf is home; 0: it holds
    double alarm_after_s = 1;        ///< it goes on so long after the leaf is home
    double reopens_m = 0.4;          ///< from the point of contact
    double station_takes_s = 2;      ///< from the start word to the control station's release
    double hold_back_takes_s = 0.3;  ///< from that release to the hold-back letting go
    bool lets_go_side_one = true;
    bool lets_go_side_two = true;
    bool latches = true;
    bool indicator_lies = false;
    bool shuts_again = true;             ///< by itself, after it was opened again locally
    std::optional<PasserBy> passer_by{}; ///< during the first closing from the control station
    bool somebody_waits = false;         ///< in the opening, until asked aside

    bool operator==(const DoorTruth&) const = default;
};

/// A sound door of this kind, a little different from its neighbours by `seed` and number.
DoorTruth soundDoor(const Door& door, std::uint32_t seed);

/// The same with a fault put in. The fault must fit the door.
DoorTruth withFault(DoorTruth truth, Fault fault, const Door& door, const Boundary* boundary,
                    std::uint32_t seed);

/// One run as it really goes. Seconds from the release; what never happens has no event.
struct TrueEvent {
    MarkKind mark = MarkKind::LeafMoves;
    double t_s = 0;

    bool operator==(const TrueEvent&) const = default;
};
std::vector<TrueEvent> trueEvents(const DoorTruth& truth, const Door& door, Release release,
                                  RunKind kind);

/// What somebody would record who sees everything and whose thumb is never late: each row that is
/// asked answered, each way of release timed once.
DoorEvidence perfectEvidence(const DoorTruth& truth, const Particulars& vessel, const Door& door,
                             const Boundary* boundary, const Catalogue& catalogue);

} // namespace latchround::practice
