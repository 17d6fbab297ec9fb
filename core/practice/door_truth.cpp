#include "core/practice/door_truth.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/practice/chance.h"
#include "core/practice/lower_class.h"
#include "core/practice/true_run.h"

namespace latchround::practice {

namespace {

constexpr double usual_leaf_kg = 45; // where the register knows no mass
constexpr double narrowest_m = 0.5;  // less is no opening anybody walks through

/// Limits of SOLAS II-2/9.4.1.1.5.2.
constexpr double hinged_least_s = 10;
constexpr double hinged_most_s = 40;
constexpr double sliding_least_m_s = 0.1;
constexpr double sliding_most_m_s = 0.2;

HingedLeaf leafOf(const Door& door) {
    HingedLeaf leaf;
    leaf.width_m = door.opening_m > narrowest_m ? door.opening_m : 0.9;
    if (door.kind == DoorKind::DoubleLeaf)
        leaf.width_m /= 2;
    leaf.mass_kg = door.leaf_mass_kg.value_or(usual_leaf_kg);
    if (!door.latch)
        leaf.latch_Nm = 0;
    return leaf;
}

std::variant<HingedLeaf, DoubleLeaf, SlidingLeaf> mechanismOf(const Door& door, double figure) {
    if (door.kind == DoorKind::Sliding) {
        SlidingLeaf leaf;
        leaf.travel_m = door.opening_m;
        leaf.mass_kg = door.leaf_mass_kg.value_or(leaf.mass_kg);
        return adjusted(leaf, figure).value();
    }
    if (door.kind == DoorKind::DoubleLeaf)
        return adjusted(DoubleLeaf{leafOf(door), leafOf(door)}, figure).value();
    return adjusted(leafOf(door), figure).value();
}

/// Seconds of a hinged door, metres a second of a sliding one.
double soundFigure(const Door& door, Chance& chance) {
    return door.kind == DoorKind::Sliding ? chance.between(0.12, 0.17) : chance.between(13, 26);
}

double faultyFigure(Fault fault, const Door& door, Chance& chance) {
    const bool sliding = door.kind == DoorKind::Sliding;
    switch (fault) {
    case Fault::TooFast:
        return sliding ? chance.between(0.23, 0.29) : chance.between(5, 8.5);
    case Fault::TooSlow:
        return sliding ? chance.between(0.06, 0.085) : chance.between(45, 52);
    default:
        break;
    }
    // Within a hair: far less than any thumb can tell, on either side of either limit.
    const double hair = chance.between(0.002, 0.015) * (chance.coin() ? 1 : -1);
    const bool upper = chance.coin();
    if (sliding)
        return (upper ? sliding_most_m_s : sliding_least_m_s) * (1 + hair / hinged_least_s);
    return (upper ? hinged_most_s : hinged_least_s) + hair;
}

/// The selector fails, and the leaf that must wait has the quicker closer.
DoubleLeaf reversed(DoubleLeaf leaves, double closing_s) {
    leaves.selector_works = false;
    leaves.first = adjusted(leaves.first, closing_s).value();
    leaves.second = adjusted(leaves.second, closing_s * 0.7).value();
    return leaves;
}

} // namespace

DoorTruth soundDoor(const Door& door, std::uint32_t seed) {
    Chance chance(seed, "sound " + door.number);
    DoorTruth truth;
    truth.plate = door.fire_class;
    truth.gap_mm = static_cast<double>(4 + chance.below(5));
    truth.alarm_lead_s = chance.between(6, 8.5);
    truth.alarm_after_s = chance.between(0.6, 1.6);
    truth.reopens_m = static_cast<double>(25 + chance.below(46)) / 100;
    truth.station_takes_s = chance.between(1.2, 3);
    truth.hold_back_takes_s = chance.between(0.2, 0.5);
    truth.mechanism = mechanismOf(door, soundFigure(door, chance));
    return truth;
}

DoorTruth withFault(DoorTruth truth, Fault fault, const Door& door, const Boundary* boundary,
                    std::uint32_t seed) {
    assert(fits(fault, door, boundary));
    (void)boundary;
    Chance chance(seed, std::string(word(fault)) + " " + door.number);
    truth.faults.push_back(fault);
    switch (fault) {
    case Fault::TooFast:
    case Fault::TooSlow:
    case Fault::NearLimit:
        truth.mechanism = mechanismOf(door, faultyFigure(fault, door, chance));
        break;
    case Fault::LeavesReversed:
        truth.mechanism =
            reversed(std::get<DoubleLeaf>(truth.mechanism), soundFigure(door, chance));
        break;
    case Fault::AlarmShort:
        truth.alarm_lead_s = chance.between(2, 4.3);
        break;
    case Fault::AlarmStops:
        truth.alarm_stops_before_s = chance.between(1.5, 3);
        break;
    case Fault::ReopensTooFar:
        truth.reopens_m =
            std::round(chance.between(1.06, door.opening_m * (1 - block_at_open) - 0.05) * 100) /
            100;
        break;
    case Fault::NoLatch:
        truth.latches = false;
        break;
    case Fault::MagnetLate:
        truth.hold_back_takes_s = chance.between(25, 35);
        break;
    case Fault::MagnetOneSide:
        (chance.coin() ? truth.lets_go_side_one : truth.lets_go_side_two) = false;
        break;
    case Fault::Hook:
        truth.hook = true;
        break;
    case Fault::Wedge:
        truth.wedge = true;
        break;
    case Fault::PocketLitter:
        truth.pocket_litter = true;
        break;
    case Fault::SillMissing:
        truth.sill = false;
        break;
    case Fault::Gap:
        truth.gap_mm = static_cast<double>((isAClass(door.fire_class) ? 15 : 29) + chance.below(6));
        break;
    case Fault::WrongPlate:
        truth.plate = nextLowerClass(truth.plate).value();
        break;
    case Fault::PaintedSeal:
        truth.painted_seal = true;
        break;
    case Fault::IndicatorLies:
        truth.indicator_lies = true;
        break;
    case Fault::HosePortStuck:
        truth.hose_port_stuck = true;
        break;
    case Fault::StaysOpen:
        truth.shuts_again = false;
        break;
    case Fault::PeopleInPath: {
        const double steps_in_s = chance.between(2, 4);
        truth.passer_by = PasserBy{steps_in_s, chance.coin()};
        truth.somebody_waits = chance.coin();
        break;
    }
    }
    return truth;
}

} // namespace latchround::practice
