// The grade file of the command line: vessel and doors with what was seen and timed go in, a
// verdict for every row comes out. Shapes: resources/schema/grade-input.schema.json and
// grade-output.schema.json.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/door_evidence.h"
#include "core/grading/graded_walkdown.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct GradeInput {
    struct Item {
        Door door;
        Boundary
            boundary; ///< its id is the door's number; without zones, which the file does not know
        DoorEvidence evidence; ///< only what the file says was seen or timed
    };
    Particulars vessel;
    std::vector<Item> doors;
};

/// Every fault by JSON pointer in one pass, or the whole input. `name` stands in errors for the
/// file. The catalogue says which requirement ids there are, which ask for both sides, and their
/// units.
Checked<GradeInput> gradeInputFrom(std::string_view json, const std::string& name,
                                   const Catalogue& catalogue);

/// Every door of the input, graded; what they point to stays in the input and the catalogue.
std::vector<GradedDoor> gradedDoors(const GradeInput& input, const Catalogue& catalogue);

/// The output file, indented, with a line break at its end. `zones`: of a
/// grade file, which names none, an empty one.
std::string gradeOutputJson(const Catalogue& catalogue, const Particulars& vessel,
                            std::span<const GradedDoor> doors, const ZoneIntegrity& zones);

} // namespace latchround
