#include "core/reading/written_json.h"

#include <nlohmann/json.hpp>

namespace latchround {

namespace {

constexpr auto replace = nlohmann::json::error_handler_t::replace;

} // namespace

nlohmann::json jsonIn(std::string_view text) {
    return nlohmann::json::parse(text, nullptr, false);
}

nlohmann::ordered_json orderedJsonIn(std::string_view text) {
    return nlohmann::ordered_json::parse(text, nullptr, false);
}

std::string onOneLine(const nlohmann::json& value) {
    return value.dump(-1, ' ', false, replace);
}

std::string onOneLine(const nlohmann::ordered_json& value) {
    return value.dump(-1, ' ', false, replace);
}

std::string inLines(const nlohmann::ordered_json& value) {
    return value.dump(2, ' ', false, replace) + "\n";
}

} // namespace latchround
