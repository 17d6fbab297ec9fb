// JSON as the commands print it: keys in the order they were set, indented, a line break at the
// end. Bytes that are not UTF-8 (a file name may hold any) become U+FFFD.
#pragma once

#include <string>

#include <nlohmann/json.hpp>

namespace latchround::headless {

using OrderedJson = nlohmann::ordered_json;

inline std::string textOf(const OrderedJson& json) {
    return json.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

} // namespace latchround::headless
