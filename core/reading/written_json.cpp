#include "core/reading/written_json.h"

#include <nlohmann/json.hpp>

namespace latchround {

namespace {

auto handlerOf(NotUtf8 bytes) {
    using Handler = nlohmann::json::error_handler_t;
    return bytes == NotUtf8::Replaced ? Handler::replace : Handler::strict;
}

} // namespace

nlohmann::json jsonIn(std::string_view text) {
    return nlohmann::json::parse(text, nullptr, false);
}

nlohmann::ordered_json orderedJsonIn(std::string_view text) {
    return nlohmann::ordered_json::parse(text, nullptr, false);
}

std::string onOneLine(const nlohmann::json& value, NotUtf8 bytes) {
    return value.dump(-1, ' ', false, handlerOf(bytes));
}

std::string onOneLine(const nlohmann::ordered_json& value, NotUtf8 bytes) {
    return value.dump(-1, ' ', false, handlerOf(bytes));
}

std::string inLines(const nlohmann::ordered_json& value, NotUtf8 bytes) {
    return value.dump(2, ' ', false, handlerOf(bytes)) + "\n";
}

} // namespace latchround
