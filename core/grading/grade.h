// Evidence against requirement: the verdict of every row and of the door. Pure; derived each time,
// never stored.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/grading/door_class.h"
#include "core/grading/reason.h"
#include "core/grading/verdict.h"
#include "core/measure/reading.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct RowGrade {
    /// The row in force, a variant where one fits; into the catalogue, which must outlive the
    /// grade.
    const Requirement* requirement = nullptr;
    Verdict verdict = Verdict::Untested;
    Verdict underlying =
        Verdict::Untested; ///< what it would be if an advice row were asked; else the verdict
    std::optional<Reading> figure; ///< in the row's gaugeUnit, with its budget
    std::optional<double> inside;  ///< probability, 0 to 1, that it lies inside the limits
    Reason reason;                 ///< why this verdict
    bool indicative =
        false; ///< the evidence only indicates (heel): the door still counts as untested here
};

struct DoorGrade {
    std::string door;
    DoorClass asked_class; ///< points into the catalogue's tables
    Verdict verdict =
        Verdict::Untested;      ///< the worst of its rows; NotApplicable where nothing is asked
    std::vector<RowGrade> rows; ///< in the catalogue's order, rows that are not asked included
};

/// What the row is worth to the verdict of its door, which is the worst of them: advice is worth
/// nothing, and what only indicates leaves the door untested.
Verdict countsAs(const RowGrade& row);

/// Neither left out by the row's own conditions nor by the purpose of the walk.
bool isAsked(const RowGrade& row);

/// `boundary` may be null where the register does not know it: the rating row then cannot be
/// settled. `only`: the upkeep that the walk is for; rows that it does not try are asked only where
/// something is recorded about them, so that no failure is hidden. Null: every row.
DoorGrade grade(const Particulars& vessel, const Door& door, const Boundary* boundary,
                const DoorEvidence& evidence, const Catalogue& catalogue,
                const Upkeep* only = nullptr);

/// Rows that are asked, worst first and of those the most severe first, as the door screen and the
/// report list them.
std::vector<const RowGrade*> askedWorstFirst(const DoorGrade& grade);

int countOf(const DoorGrade& grade, Verdict verdict);

/// The row by its id; null where the grade has none. Into the grade.
const RowGrade* findRow(const DoorGrade& grade, std::string_view requirement);

} // namespace latchround
