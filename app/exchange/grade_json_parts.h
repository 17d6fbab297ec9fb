// The parts of a grade file, each read by the file of its name: door and boundary, evidence.
#pragma once

#include "app/exchange/grade_json.h"
#include "app/exchange/json_object.h"

namespace latchround {

/// Door and boundary of one entry of "doors".
void readDoor(JsonObject& object, const Particulars& vessel, GradeInput::Item& item);

/// "observations", "measured", "plate_read" and "runs" of one entry of "doors". A run counts as
/// complete only where its last event is marked: shut, second-home on a double leaf, stopped after
/// contact.
void readEvidence(JsonObject& object, const Door& door, const Catalogue& catalogue,
                  JsonFaults& faults, DoorEvidence& evidence);

} // namespace latchround
