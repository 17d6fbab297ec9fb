#include "core/reading/json_object.h"

#include <nlohmann/json.hpp>

#include "core/near_name.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

const Json& objectOrEmpty(const Json& value) {
    static const Json empty = Json::object();
    return value.is_object() ? value : empty;
}

bool isRemark(std::string_view key) {
    return key.starts_with('$') || key.starts_with("x-");
}

} // namespace

std::string pointerTo(std::string_view parent, std::string_view key) {
    std::string pointer(parent);
    pointer += '/';
    for (const char c : key) {
        if (c == '~')
            pointer += "~0";
        else if (c == '/')
            pointer += "~1";
        else
            pointer += c;
    }
    return pointer;
}

std::string pointerTo(std::string_view parent, std::size_t index) {
    return std::string(parent) + '/' + std::to_string(index);
}

void JsonFaults::add(std::string_view pointer, Phrase what) {
    m_errors.emplace_back(place::inJson(m_file, pointer), std::move(what));
}

JsonObject::JsonObject(const Json& value, std::string pointer, JsonFaults& faults)
    : m_value(objectOrEmpty(value))
    , m_pointer(std::move(pointer))
    , m_faults(faults) {
    if (!value.is_object())
        complain(errors::field_not_an_object());
}

void JsonObject::complain(std::string_view key, Phrase what) {
    m_faults.add(pointerOf(key), std::move(what));
}

void JsonObject::complain(Phrase what) {
    m_faults.add(m_pointer, std::move(what));
}

const Json* JsonObject::field(std::string_view key, Need need) {
    m_asked.emplace(key);
    const auto found = m_value.find(key);
    if (found != m_value.end() && !found->is_null())
        return &*found;
    if (need == Need::Required)
        complain(key, errors::field_missing());
    return nullptr;
}

std::vector<std::string> JsonObject::names() const {
    std::vector<std::string> names;
    for (const auto& [key, value] : m_value.items())
        names.push_back(key);
    return names;
}

bool JsonObject::isEmpty() const {
    for (const auto& [key, value] : m_value.items())
        if (!isRemark(key) && !value.is_null())
            return false;
    return true;
}

std::optional<std::string> JsonObject::text(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_string())
        return value->get<std::string>();
    if (value)
        complain(key, errors::field_not_a_text());
    return std::nullopt;
}

std::optional<std::string> JsonObject::filledText(std::string_view key, Need need) {
    std::optional<std::string> written = text(key, need);
    if (!written || !written->empty())
        return written;
    complain(key, errors::field_empty());
    return std::nullopt;
}

std::optional<double> JsonObject::number(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_number())
        return value->get<double>();
    if (value)
        complain(key, errors::field_not_a_number());
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
    complain(key, errors::field_not_a_whole_number(low, high));
    return std::nullopt;
}

std::optional<bool> JsonObject::truth(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_boolean())
        return value->get<bool>();
    if (value)
        complain(key, errors::field_not_true_or_false());
    return std::nullopt;
}

std::optional<CalendarDate> JsonObject::date(std::string_view key, Need need) {
    const std::optional<std::string> written = text(key, need);
    if (!written)
        return std::nullopt;
    const auto day = calendarDateFrom(*written);
    if (!day)
        complain(key, errors::field_not_a_date(*written));
    return day;
}

std::optional<std::vector<std::string>> JsonObject::texts(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (!value)
        return std::nullopt;
    if (!value->is_array()) {
        complain(key, errors::field_not_a_list_of_texts());
        return std::nullopt;
    }
    std::vector<std::string> found;
    found.reserve(value->size());
    for (std::size_t i = 0; i < value->size(); ++i)
        if ((*value)[i].is_string())
            found.push_back((*value)[i].get<std::string>());
        else
            m_faults.add(pointerTo(pointerOf(key), i), errors::field_not_a_text());
    return found.size() == value->size() ? std::optional(std::move(found)) : std::nullopt;
}

std::vector<JsonObject::ListedText> JsonObject::listedWords(std::string_view key) {
    std::vector<ListedText> found;
    const Json* value = field(key, Need::Optional);
    if (value && !value->is_array())
        complain(key, errors::field_not_a_list_of_texts());
    else if (value && value->empty())
        complain(key, errors::field_list_empty());
    for (std::size_t i = 0; value && value->is_array() && i < value->size(); ++i)
        if ((*value)[i].is_string())
            found.emplace_back(i, (*value)[i].get<std::string>());
        else
            m_faults.add(pointerTo(pointerOf(key), i), errors::field_not_a_text());
    return found;
}

std::optional<JsonObject> JsonObject::object(std::string_view key, Need need) {
    const Json* value = field(key, need);
    if (value && value->is_object())
        return JsonObject(*value, pointerOf(key), m_faults);
    if (value)
        complain(key, errors::field_not_an_object());
    return std::nullopt;
}

std::vector<JsonObject> JsonObject::objects(std::string_view key, Need need, Phrase not_a_list) {
    const Json* value = field(key, need);
    if (value && value->is_array())
        return objectsIn(key, *value);
    if (value)
        complain(key, std::move(not_a_list));
    return {};
}

std::vector<JsonObject> JsonObject::filledObjects(std::string_view key, Need need,
                                                  Phrase not_filled) {
    const Json* value = field(key, need);
    if (value && value->is_array() && !value->empty())
        return objectsIn(key, *value);
    if (value)
        complain(key, std::move(not_filled));
    return {};
}

std::vector<JsonObject> JsonObject::objectsIn(std::string_view key, const Json& list) {
    std::vector<JsonObject> objects;
    objects.reserve(list.size());
    const std::string here = pointerOf(key);
    for (std::size_t i = 0; i < list.size(); ++i) {
        std::string pointer = pointerTo(here, i);
        if (list[i].is_object())
            objects.emplace_back(list[i], std::move(pointer), m_faults);
        else
            m_faults.add(pointer, errors::field_not_an_object());
    }
    return objects;
}

void JsonObject::complainOfTheRest() {
    const std::vector<std::string_view> known(m_asked.begin(), m_asked.end());
    for (const auto& [key, value] : m_value.items()) {
        if (m_asked.contains(key) || isRemark(key))
            continue;
        const Phrase meant = didYouMean(key, known);
        complain(key, errors::field_not_known(meant.empty() ? errors::take_field_out() : meant));
    }
}

} // namespace latchround
