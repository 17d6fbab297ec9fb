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

/// The mark without which a run shows nothing.
MarkKind lastMark(RunKind kind, const Door& door);
/// Why a run without it is spoiled.
Wording notMarked(MarkKind last);

/// "observations", "measured", "plate_read" and "runs" of one entry of "doors". A run counts as
/// complete only where its last event is marked: shut, second-home on a double leaf, stopped after
/// contact.
void readEvidence(JsonObject& object, const Door& door, const Catalogue& catalogue,
                  JsonFaults& faults, DoorEvidence& evidence);

} // namespace latchround
