#include "core/practice/fault.h"

#include "core/evidence/run_sequence.h"
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

std::string_view sentence(Fault fault) {
    switch (fault) {
    case Fault::TooFast:
        return "It shuts faster than the text allows.";
    case Fault::TooSlow:
        return "It shuts more slowly than the text allows.";
    case Fault::NearLimit:
        return "It shuts within a hair of the limit: no thumb can pass or fail it.";
    case Fault::AlarmShort:
        return "It moves less than 5 s after the alarm begins.";
    case Fault::AlarmStops:
        return "The alarm stops before the leaf is home.";
    case Fault::ReopensTooFar:
        return "On contact it re-opens more than 1 m.";
    case Fault::LeavesReversed:
        return "The selector fails: the leaf that must wait comes home first.";
    case Fault::NoLatch:
        return "It shuts but does not latch: it gives way when it is pushed.";
    case Fault::MagnetLate:
        return "The magnet holds on for half a minute after the control station's release, which "
               "is "
               "taken as not released (common practice, no source).";
    case Fault::MagnetOneSide:
        return "It cannot be released from one of its sides.";
    case Fault::Hook:
        return "A hook can hold it open that the control station cannot release.";
    case Fault::Wedge:
        return "A wedge holds it open.";
    case Fault::PocketLitter:
        return "Litter lies in the pocket.";
    case Fault::SillMissing:
        return "The sill is missing.";
    case Fault::Gap:
        return "The gap under the leaf is wider than the text allows.";
    case Fault::WrongPlate:
        return "The plate names a lower class than the boundary asks for.";
    case Fault::PaintedSeal:
        return "The seal is painted over.";
    case Fault::IndicatorLies:
        return "The control station's panel shows it open when it is shut.";
    case Fault::HosePortStuck:
        return "The cover of the hose port does not shut by itself.";
    case Fault::StaysOpen:
        return "Opened again at the door after remote closing, it stays open.";
    case Fault::PeopleInPath:
        return "Somebody was in the way of the leaf: the run has to be stopped.";
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
