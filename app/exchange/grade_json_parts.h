// The parts of a grade file, each read by the file of its name: door and boundary, evidence. The
// answers of an exercise say what was seen in the same form.
#pragma once

#include <utility>
#include <vector>

#include "app/exchange/grade_json.h"
#include "core/reading/json_object.h"

namespace latchround {

/// Door and boundary of one entry of "doors".
void readDoor(JsonObject& object, const Particulars& vessel, GradeInput::Item& item);

/// Under which names what was seen stands.
struct SeenFields {
    const char* answers = "observations";
    const char* measured = "measured";
    const char* plate = "plate_read";
};
/// Answers by row, figures taken with rule or gauge, and what the plate reads. Answers
/// "row": "yes" count for both sides of a row that asks for both.
void readSeen(JsonObject& object, const SeenFields& fields, const Catalogue& catalogue,
              JsonFaults& faults, DoorEvidence& evidence);

/// An object of marks: seconds on any clock, in the order of time.
std::vector<std::pair<double, MarkKind>> markTimes(JsonObject& marks);

/// Why a run without the mark of this event is void.
Wording notMarked(MarkKind event);

/// "observations", "measured", "plate_read" and "runs" of one entry of "doors". A run counts as
/// complete only where its first movement and its last event are marked (unmarkedEvent).
void readEvidence(JsonObject& object, const Door& door, const Catalogue& catalogue,
                  JsonFaults& faults, DoorEvidence& evidence);

} // namespace latchround
