#include "app/exchange/json_object.h"

#include <cmath>

#include "core/near_name.h"

namespace latchround {

namespace {

const Json& objectOrEmpty(const Json& value) {
    static const Json empty = Json::object();
    return value.is_object() ? value : empty;
}

} // namespace

void JsonFaults::add(std::string_view pointer, std::string what, std::string remedy) {
    m_complaints.push_back({placeInJson(m_file, pointer), std::move(what), std::move(remedy)});
}

JsonObject::JsonObject(const Json& value, std::string pointer, JsonFaults& faults)
    : m_value(objectOrEmpty(value))
    , m_pointer(std::move(pointer))
    , m_faults(faults) {
    if (!value.is_object())
        m_faults.add(m_pointer, "this must be an object",
                     "Write it in braces: {\"field\": value}.");
}

void JsonObject::complain(std::string_view key, std::string what, std::string remedy) {
    m_faults.add(pointerOf(key), std::move(what), std::move(remedy));
}

const Json* JsonObject::field(std::string_view key, Need need) {
    m_asked.emplace(key);
    const auto found = m_value.find(key);
    if (found != m_value.end() && !found->is_null())
        return &*found;
    if (need == Need::Required)
        complain(key, "this field is missing", "Add it.");
    return nullptr;
}

std::optional<std::string> JsonObject::text(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_string())
        return value->get<std::string>();
    if (value)
        complain(key, "this must be a text", "Write it in quotes.");
    return std::nullopt;
}

std::optional<double> JsonObject::number(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_number())
        return value->get<double>();
    if (value)
        complain(key, "this must be a number", "Write it without quotes, with a point.");
    return std::nullopt;
}

std::optional<std::int64_t> JsonObject::wholeNumber(std::string_view key, Need need,
                                                    std::int64_t low, std::int64_t high) {
    const Json* value = field(key, need);
    if (!value)
        return std::nullopt;
    const bool fits = value->is_number_integer() &&
                      !(value->is_number_unsigned() && value->get<std::uint64_t>() > INT64_MAX);
    if (fits && value->get<std::int64_t>() >= low && value->get<std::int64_t>() <= high)
        return value->get<std::int64_t>();
    complain(key,
             "this must be a whole number from " + std::to_string(low) + " to " +
                 std::to_string(high),
             "Write digits only, without quotes.");
    return std::nullopt;
}

std::optional<bool> JsonObject::truth(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_boolean())
        return value->get<bool>();
    if (value)
        complain(key, "this must be true or false", "Write it without quotes.");
    return std::nullopt;
}

std::optional<CalendarDate> JsonObject::date(std::string_view key, Need need) {
    const std::optional<std::string> written = text(key, need);
    if (!written)
        return std::nullopt;
    const auto day = calendarDateFrom(*written);
    if (!day)
        complain(key, '"' + *written + "\" is not a date", "Write YYYY-MM-DD.");
    return day;
}

std::optional<std::vector<std::string>> JsonObject::texts(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (!value)
        return std::nullopt;
    std::vector<std::string> found;
    if (!value->is_array()) {
        complain(key, "this must be a list of texts", "Write it in brackets: [\"one\", \"two\"].");
        return std::nullopt;
    }
    for (std::size_t i = 0; i < value->size(); ++i)
        if ((*value)[i].is_string())
            found.push_back((*value)[i].get<std::string>());
        else
            m_faults.add(pointerTo(pointerOf(key), i), "this must be a text",
                         "Write it in quotes.");
    return found.size() == value->size() ? std::optional(std::move(found)) : std::nullopt;
}

void JsonObject::complainOfTheRest() {
    const std::vector<std::string_view> known(m_asked.begin(), m_asked.end());
    for (const auto& [key, value] : m_value.items()) {
        if (m_asked.contains(key) || key.starts_with('$') || key.starts_with("x-"))
            continue;
        const std::string remedy = didYouMean(key, known);
        complain(key, "this field is not known here",
                 remedy.empty() ? "Take it out, or begin its name with \"x-\"." : remedy);
    }
}

} // namespace latchround
