// A row of a catalogue file as JSON, read into a Requirement; complaints go to the reader.
#pragma once

#include <string>
#include <vector>

#include "core/reading/json_reader.h"
#include "core/requirement/requirement.h"

namespace latchround {

/// A whole row, its variants included. `also`: one more field that the file's rows may have.
Requirement requirementFrom(JsonReader& reader, const nlohmann::json& row, const std::string& at,
                            const char* also = nullptr);

/// The conditions under `key`; none where it is not there.
std::vector<DoorCondition> conditionsFrom(JsonReader& reader, const nlohmann::json& row,
                                          const std::string& at, const char* key);

/// Says of a row and its variants whose it is and, where it does not say so itself, its edition.
void stamp(Requirement& row, const std::string& issuer, const std::string& edition);

/// What a row must have for its kind of check, and that its limits make sense.
void checkRequirement(JsonReader& reader, const Requirement& row, const std::string& at);

} // namespace latchround
