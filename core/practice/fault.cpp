#include "core/practice/fault.h"

#include "core/evidence/run_sequence.h"
#include "core/practice/fault_phrases.h"
#include "core/practice/lower_class.h"
#include "core/requirement/applicability.h"

namespace latchround::practice {

namespace {

constexpr CalendarDate sill_rule_from{std::chrono::year{2010}, std::chrono::month{7},
                                      std::chrono::day{1}};

/// Narrower, there is no room to re-open more than 1 m.
constexpr double roomy_opening_m = 1.3;

bool listed(const Door& door, const Boundary* boundary) {
    return boundary != nullptr && isListed(door, boundary->place);
}

bool hasHosePort(const Door& door, const Boundary* boundary) {
    const bool place = boundary != nullptr &&
                       (boundary->place == Place::ZoneBulkhead ||
                        boundary->place == Place::Stairway || boundary->place == Place::Other);
    return place && door.hose_port && isAClass(door.fire_class) && door.escape_route &&
           !door.watertight && !door.weathertight;
}

bool gapIsAsked(const Door& door) {
    return !door.sill_in_frame && door.installed && *door.installed >= sill_rule_from &&
           door.fire_class != FireClass::C;
}

bool isOfFigure(Fault fault) {
    return fault == Fault::TooFast || fault == Fault::TooSlow || fault == Fault::NearLimit ||
           fault == Fault::LeavesReversed;
}

bool isOfSill(Fault fault) {
    return fault == Fault::SillMissing || fault == Fault::Gap;
}

bool isOfMagnet(Fault fault) {
    return fault == Fault::MagnetLate || fault == Fault::MagnetOneSide;
}

} // namespace

Phrase sentence(Fault fault) {
    switch (fault) {
    case Fault::TooFast:
        return practice_fault::too_fast();
    case Fault::TooSlow:
        return practice_fault::too_slow();
    case Fault::NearLimit:
        return practice_fault::near_limit();
    case Fault::AlarmShort:
        return practice_fault::alarm_short();
    case Fault::AlarmStops:
        return practice_fault::alarm_stops();
    case Fault::ReopensTooFar:
        return practice_fault::reopens_too_far();
    case Fault::LeavesReversed:
        return practice_fault::leaves_reversed();
    case Fault::NoLatch:
        return practice_fault::no_latch();
    case Fault::MagnetLate:
        return practice_fault::magnet_late();
    case Fault::MagnetOneSide:
        return practice_fault::magnet_one_side();
    case Fault::Hook:
        return practice_fault::hook();
    case Fault::Wedge:
        return practice_fault::wedge();
    case Fault::PocketLitter:
        return practice_fault::pocket_litter();
    case Fault::SillMissing:
        return practice_fault::sill_missing();
    case Fault::Gap:
        return practice_fault::gap();
    case Fault::WrongPlate:
        return practice_fault::wrong_plate();
    case Fault::PaintedSeal:
        return practice_fault::painted_seal();
    case Fault::IndicatorLies:
        return practice_fault::indicator_lies();
    case Fault::HosePortStuck:
        return practice_fault::hose_port_stuck();
    case Fault::StaysOpen:
        return practice_fault::stays_open();
    case Fault::PeopleInPath:
        return practice_fault::people_in_path();
    }
    return {};
}

bool fits(Fault fault, const Door& door, const Boundary* boundary) {
    switch (fault) {
    case Fault::TooFast:
    case Fault::TooSlow:
    case Fault::NearLimit:
    case Fault::Hook:
        return listed(door, boundary);
    case Fault::AlarmShort:
    case Fault::AlarmStops:
        return listed(door, boundary) && soundsAlarm(door);
    case Fault::ReopensTooFar:
        return listed(door, boundary) && door.designed_to_reopen &&
               door.kind == DoorKind::Sliding && door.opening_m >= roomy_opening_m;
    case Fault::LeavesReversed:
        return door.kind == DoorKind::DoubleLeaf;
    case Fault::NoLatch:
        return door.latch;
    case Fault::MagnetLate:
        return listed(door, boundary) && door.hold_back && isRemotelyReleased(door) &&
               !soundsAlarm(door);
    case Fault::MagnetOneSide:
        return listed(door, boundary) && (door.hold_back || door.power_operated);
    case Fault::PocketLitter:
        return door.kind == DoorKind::Sliding;
    case Fault::Gap:
        return gapIsAsked(door);
    case Fault::WrongPlate: {
        const auto lower = nextLowerClass(door.fire_class);
        return lower && boundary != nullptr && boundary->required &&
               !suits(*lower, *boundary->required) && !door.watertight;
    }
    case Fault::IndicatorLies:
    case Fault::StaysOpen:
        return listed(door, boundary) && isRemotelyReleased(door);
    case Fault::HosePortStuck:
        return hasHosePort(door, boundary);
    case Fault::PeopleInPath:
        return isRemotelyReleased(door);
    case Fault::Wedge:
    case Fault::SillMissing:
    case Fault::PaintedSeal:
        return true;
    }
    return false;
}

std::vector<std::string_view> rowsChangedBy(Fault fault, const Door& door) {
    switch (fault) {
    case Fault::TooFast:
    case Fault::TooSlow:
    case Fault::NearLimit:
        return {isHinged(door.kind) ? "hinged-time" : "sliding-rate"};
    case Fault::AlarmShort:
        return {"alarm-lead"};
    case Fault::AlarmStops:
        return {"alarm-holds"};
    case Fault::ReopensTooFar:
        return {"reopen-distance"};
    case Fault::LeavesReversed:
        return {"leaf-order"};
    case Fault::NoLatch:
        return {"latches", "auto-latch"};
    case Fault::MagnetLate:
        return {"remote-release"};
    case Fault::MagnetOneSide:
        return {"local-release"};
    case Fault::Hook:
        return {"no-hook"};
    case Fault::Wedge:
        return {"not-held"};
    case Fault::PocketLitter:
        return {"pocket-clear"};
    case Fault::SillMissing:
        return {"sill-sound", "a-sill"};
    case Fault::Gap:
        return {isAClass(door.fire_class) ? "a-gap" : "b-gap"};
    case Fault::WrongPlate:
        return {"rating", "plate"};
    case Fault::PaintedSeal:
        return {"seals-whole"};
    case Fault::IndicatorLies:
        return {"indicator"};
    case Fault::HosePortStuck:
        return {"hose-port"};
    case Fault::StaysOpen:
        return {"reopen-local"};
    case Fault::PeopleInPath:
        return {};
    }
    return {};
}

bool exclude(Fault one, Fault other) {
    return one == other || (isOfFigure(one) && isOfFigure(other)) ||
           (isOfSill(one) && isOfSill(other)) || (isOfMagnet(one) && isOfMagnet(other));
}

} // namespace latchround::practice
