#include "core/reading/json_reader.h"

#include <algorithm>

namespace latchround {

void JsonReader::complain(const std::string& pointer, std::string what, std::string remedy) {
    m_complaints.push_back({m_name + " at " + (pointer.empty() ? "its top" : pointer),
                            std::move(what), std::move(remedy)});
}

void JsonReader::onlyKnown(const Json& object, const std::string& at,
                           std::initializer_list<std::string_view> known) {
    for (const auto& [key, value] : object.items())
        if (std::ranges::find(known, key) == known.end())
            complain(std::string(at).append("/").append(key), "is not a field of this place",
                     "Check its spelling.");
}

std::string JsonReader::text(const Json& object, const std::string& at, const char* key,
                             bool required) {
    if (!object.contains(key)) {
        if (required)
            complain(at + "/" + key, "is missing", "Add it.");
        return {};
    }
    if (!object[key].is_string() || object[key].get<std::string>().empty()) {
        complain(at + "/" + key, "must be a text that is not empty", "");
        return {};
    }
    return object[key].get<std::string>();
}

std::optional<double> JsonReader::number(const Json& object, const std::string& at,
                                         const char* key) {
    if (!object.contains(key))
        return std::nullopt;
    if (!object[key].is_number()) {
        complain(at + "/" + key, "must be a number", "Write it without quotes, with a point.");
        return std::nullopt;
    }
    return object[key].get<double>();
}

std::optional<bool> JsonReader::truth(const Json& object, const std::string& at, const char* key) {
    if (!object.contains(key))
        return std::nullopt;
    if (!object[key].is_boolean()) {
        complain(at + "/" + key, "must be true or false", "Write it without quotes.");
        return std::nullopt;
    }
    return object[key].get<bool>();
}

std::optional<CalendarDate> JsonReader::date(const Json& object, const std::string& at,
                                             const char* key) {
    const std::string written = text(object, at, key, false);
    if (written.empty())
        return std::nullopt;
    const auto day = calendarDateFrom(written);
    if (!day)
        complain(at + "/" + key, "'" + written + "' is not a date", "Write YYYY-MM-DD.");
    return day;
}

} // namespace latchround
