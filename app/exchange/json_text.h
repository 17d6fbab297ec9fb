// Text to JSON value, with the line and column of a slip, and no field given twice: a later value
// would silently take the place of the first.
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/complaint.h"

namespace latchround {

using Json = nlohmann::json;

/// `name` stands in complaints for the file.
Checked<Json> jsonFrom(std::string_view text, const std::string& name);

/// One line of a file of JSON Lines; `where` names file and line, a slip gets the column beside it.
Checked<Json> jsonFromLine(std::string_view line, const std::string& where);

/// One step further down a JSON pointer (RFC 6901): "/" becomes "~1", "~" becomes "~0".
std::string pointerTo(std::string_view parent, std::string_view key);
std::string pointerTo(std::string_view parent, std::size_t index);

/// "grade.json at /doors/0/kind"; the whole document is "its top".
std::string placeInJson(std::string_view name, std::string_view pointer);

} // namespace latchround
