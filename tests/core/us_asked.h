// What is asked of a door of a United States vessel, and what comes of an answer.
#pragma once

#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "tests/core/us_row_cases.h"

namespace latchround::given {

inline Particulars vesselOf(const Site& made) {
    Particulars vessel = solasVessel();
    vessel.regime = made.regime;
    return vessel;
}

inline RowGrade rowOf(const Particulars& vessel, const Site& made, const char* id,
                      const DoorEvidence& evidence) {
    const DoorGrade all = grade(vessel, made.door, &made.boundary, evidence, catalogue());
    if (const RowGrade* found = findRow(all, id))
        return *found;
    ADD_FAILURE() << "no row " << id;
    return {};
}

inline DoorEvidence said(const Site& made, const char* id, Answer what) {
    DoorEvidence evidence;
    evidence.door = made.door.number;
    answer(evidence, id, what);
    return evidence;
}

inline Verdict whenNo(const Particulars& vessel, const Site& made, const char* id) {
    return rowOf(vessel, made, id, said(made, id, Answer::No)).verdict;
}

inline Verdict whenNo(const Site& made, const char* id) {
    return whenNo(vesselOf(made), made, id);
}

/// Rows of 46 CFR that are asked of the door.
inline std::set<std::string> asked(const Site& made) {
    std::set<std::string> ids;
    for (const RowGrade& row :
         grade(vesselOf(made), made.door, &made.boundary, {}, catalogue()).rows)
        if (isAsked(row) && row.requirement->issuer == "46 CFR" && row.verdict != Verdict::Advice)
            ids.insert(row.requirement->id);
    return ids;
}

inline Site of(Change change) {
    Site made;
    change(made);
    return made;
}

inline bool isAskedOf(const Site& made, const char* id) {
    return asked(made).contains(id);
}

} // namespace latchround::given
