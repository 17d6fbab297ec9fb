// JSON as it is written, and back. The library's parser and writer are compiled here, once: they
// are most of what it costs to compile a source that uses them.
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

namespace latchround {

/// The value of a text; a text that is no JSON gives one that `is_discarded()`.
nlohmann::json jsonIn(std::string_view text);
/// The same with the keys in the order in which they stand.
nlohmann::ordered_json orderedJsonIn(std::string_view text);

/// On one line. Bytes that are not UTF-8 (a file name may hold any) become U+FFFD.
std::string onOneLine(const nlohmann::json& value);
std::string onOneLine(const nlohmann::ordered_json& value);
/// Indented by two spaces a level, with a line break at the end; else as on one line.
std::string inLines(const nlohmann::ordered_json& value);

} // namespace latchround
