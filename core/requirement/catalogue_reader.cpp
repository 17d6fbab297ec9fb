#include "core/requirement/catalogue_reader.h"

#include <algorithm>

namespace latchround {

void CatalogueReader::complain(const std::string& pointer, std::string what, std::string remedy) {
    m_complaints.push_back({m_name + " at " + (pointer.empty() ? "its top" : pointer),
                            std::move(what), std::move(remedy)});
}

void CatalogueReader::onlyKnown(const Json& object, const std::string& at,
                                std::initializer_list<std::string_view> known) {
    for (const auto& [key, value] : object.items())
        if (std::ranges::find(known, key) == known.end())
            complain(at + "/" + key, "is not a field of this place", "Check its spelling.");
}

std::string CatalogueReader::text(const Json& object, const std::string& at, const char* key,
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

std::optional<double> CatalogueReader::number(const Json& object, const std::string& at,
                                              const char* key) {
    if (!object.contains(key))
        return std::nullopt;
    if (!object[key].is_number()) {
        complain(at + "/" + key, "must be a number", "Write it without quotes, with a point.");
        return std::nullopt;
    }
    return object[key].get<double>();
}

std::optional<bool> CatalogueReader::truth(const Json& object, const std::string& at,
                                           const char* key) {
    if (!object.contains(key))
        return std::nullopt;
    if (!object[key].is_boolean()) {
        complain(at + "/" + key, "must be true or false", "Write it without quotes.");
        return std::nullopt;
    }
    return object[key].get<bool>();
}

std::optional<CalendarDate> CatalogueReader::date(const Json& object, const std::string& at,
                                                  const char* key) {
    const std::string written = text(object, at, key, false);
    if (written.empty())
        return std::nullopt;
    const auto day = calendarDateFrom(written);
    if (!day)
        complain(at + "/" + key, "'" + written + "' is not a date", "Write YYYY-MM-DD.");
    return day;
}

DoorCondition CatalogueReader::condition(const Json& object, const std::string& at) {
    DoorCondition result;
    if (!object.is_object() || object.empty()) {
        complain(at, "a condition must be an object with at least one field", "");
        return result;
    }
    onlyKnown(object, at,
              {"kinds", "places", "listed", "class", "power_operated", "remote_release",
               "hold_back", "designed_to_reopen", "hose_port", "escape_route", "sill_in_frame",
               "latch", "watertight", "locked", "installed_from"});
    words<DoorKind>(object, at, "kinds", doorKindWords, result.kinds);
    words<Place>(object, at, "places", placeWords, result.places);
    word<ClassFamily>(object, at, "class", classFamilyWords, result.family, false);
    result.listed = truth(object, at, "listed");
    result.power_operated = truth(object, at, "power_operated");
    result.remote_release = truth(object, at, "remote_release");
    result.hold_back = truth(object, at, "hold_back");
    result.designed_to_reopen = truth(object, at, "designed_to_reopen");
    result.hose_port = truth(object, at, "hose_port");
    result.escape_route = truth(object, at, "escape_route");
    result.sill_in_frame = truth(object, at, "sill_in_frame");
    result.latch = truth(object, at, "latch");
    result.watertight = truth(object, at, "watertight");
    result.locked = truth(object, at, "locked");
    result.installed_from = date(object, at, "installed_from");
    return result;
}

} // namespace latchround
