// A row of a catalogue file as JSON, read into a Requirement.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/reading/json_object.h"
#include "core/requirement/requirement.h"

namespace latchround {

/// A whole row, its variants included. Of fields that it does not know the caller complains.
Requirement requirementFrom(JsonObject& row);

/// A variant of another text's row for ships of its own: check, limits and words are that row's
/// where it does not say otherwise; conditions, dates and what is left open are its own alone.
Requirement variantFrom(JsonObject& object, Requirement row);

/// The conditions under `key`; none where it is not there.
std::vector<DoorCondition> conditionsFrom(JsonObject& row, std::string_view key);

/// What lies under "approximate"; nothing where it is not there.
std::optional<Approximate> approximateFrom(JsonObject& row);

/// Says of a row and its variants whose it is and, where it does not say so itself, its edition.
void stamp(Requirement& row, const std::string& issuer, const std::string& edition);

/// What a row must have for its kind of check, and that its limits make sense.
void checkRequirement(const Requirement& row, const std::string& pointer, JsonFaults& faults);

} // namespace latchround
