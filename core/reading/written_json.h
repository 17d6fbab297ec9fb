// JSON as it is written, and back. The library's parser and writer are compiled here, once, for all
// but the reader that names line and column (app/exchange/json_text): they are most of what it
// costs to compile a source that uses them.
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

namespace latchround {

/// The value of a text; a text that is no JSON gives one that `is_discarded()`.
nlohmann::json jsonIn(std::string_view text);
/// The same with the keys in the order in which they stand.
nlohmann::ordered_json orderedJsonIn(std::string_view text);

/// What becomes of bytes that are not UTF-8 (a file name may hold any): they are written as U+FFFD,
/// or nothing is written and nlohmann::json::type_error is thrown, as for what is signed or stored.
enum class NotUtf8 { Replaced, Refused };

/// On one line.
std::string onOneLine(const nlohmann::json& value, NotUtf8 bytes = NotUtf8::Replaced);
std::string onOneLine(const nlohmann::ordered_json& value, NotUtf8 bytes = NotUtf8::Replaced);
/// Indented by two spaces a level, with a line break at the end.
std::string inLines(const nlohmann::ordered_json& value, NotUtf8 bytes = NotUtf8::Replaced);

} // namespace latchround
