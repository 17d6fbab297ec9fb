// Text to JSON value, with the line and column of a slip, and no field given twice: a later value
// would silently take the place of the first.
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/error/error.h"
#include "core/reading/json_object.h"

namespace latchround {

/// `name` stands in errors for the file.
Checked<Json> jsonFrom(std::string_view text, const Phrase& name);

/// One line of a file of JSON Lines; `where` names file and line, a slip gets the column beside it.
Checked<Json> jsonFromLine(std::string_view line, const Phrase& where);

} // namespace latchround
