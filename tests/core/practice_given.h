// A practice vessel with a door of every kind, and exercises over it.
#pragma once

#include "core/practice/debrief.h"
#include "core/practice/exercise.h"
#include "core/practice/stage.h"
#include "tests/core/given.h"

namespace latchround::given {

inline Arrangement practiceVessel() {
    Arrangement vessel;
    vessel.particulars = solasVessel();
    vessel.particulars.keel_laid = calendarDateFrom("2014-03-01");
    vessel.decks = {{"5", "Promenade", 2.8}};
    vessel.zones = {{"2", 30, 70}, {"3", 70, 110}};
    vessel.boundaries = {zoneBulkhead(),
                         {"stair", Place::Stairway, "2", "2", 50, FireClass::A30},
                         {"galley", Place::Galley, "2", "2", 60, FireClass::A60},
                         {"cabins", Place::Cabin, "2", "2", 40, FireClass::B15}};
    Door sliding = slidingDoor();
    sliding.number = "P-01";
    sliding.latch = false;
    sliding.sill_in_frame = false;
    Door held = hingedDoor();
    held.number = "P-02";
    held.boundary = "stair";
    held.fire_class = FireClass::A30;
    held.sill_in_frame = false;
    Door both = hingedDoor(DoorKind::DoubleLeaf);
    both.number = "P-03";
    both.opening_m = 1.6;
    Door swing = hingedDoor(DoorKind::DoubleSwing);
    swing.number = "P-04";
    swing.boundary = "galley";
    swing.latch = false;
    swing.hold_back = false;
    swing.release_groups.clear();
    swing.normally = NormalPosition::Closed;
    Door cabin = hingedDoor();
    cabin.number = "P-05";
    cabin.boundary = "cabins";
    cabin.fire_class = FireClass::B15;
    cabin.hold_back = false;
    cabin.release_groups.clear();
    cabin.hose_port = false;
    cabin.sill_in_frame = false;
    cabin.normally = NormalPosition::Closed;
    vessel.doors = {sliding, held, both, swing, cabin};
    return vessel;
}

inline practice::Exercise exerciseOver(const Arrangement& vessel) {
    practice::Exercise exercise;
    exercise.id = "all-doors";
    exercise.title = "All doors";
    for (const Door& door : vessel.doors)
        exercise.doors.push_back({door.number, {}});
    return exercise;
}

inline DoorGrade gradeOf(const Arrangement& vessel, const Door& door,
                         const practice::DoorTruth& truth) {
    const Boundary* boundary = findBoundary(vessel, door.boundary);
    return grade(vessel.particulars, door, boundary,
                 practice::perfectEvidence(truth, vessel.particulars, door, boundary, catalogue()),
                 catalogue());
}

} // namespace latchround::given
