// Reads the cells of a JSON file of ours and keeps every complaint with its JSON pointer.
#pragma once

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/complaint.h"
#include "core/reading/written_json.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/words.h"

namespace latchround {

class JsonReader {
public:
    using Json = nlohmann::json;

    explicit JsonReader(std::string name)
        : m_name(std::move(name)) {}

    void complain(const std::string& pointer, std::string what, std::string remedy);
    const Complaints& complaints() const { return m_complaints; }

    void onlyKnown(const Json& object, const std::string& at,
                   std::initializer_list<std::string_view> known);
    std::string text(const Json& object, const std::string& at, const char* key, bool required);
    std::optional<double> number(const Json& object, const std::string& at, const char* key);
    std::optional<bool> truth(const Json& object, const std::string& at, const char* key);
    std::optional<CalendarDate> date(const Json& object, const std::string& at, const char* key);

    template <class E>
    void word(const Json& object, const std::string& at, const char* key,
              std::span<const Word<E>> table, E& into, bool required) {
        const std::string written = text(object, at, key, required);
        if (written.empty())
            return;
        if (const auto value = valueIn<E>(table, written))
            into = *value;
        else
            unknownWord<E>(at + "/" + key, written, table);
    }

    template <class E>
    void words(const Json& object, const std::string& at, const char* key,
               std::span<const Word<E>> table, std::vector<E>& into) {
        if (!object.contains(key))
            return;
        const std::string here = at + "/" + key;
        if (!object[key].is_array() || object[key].empty()) {
            complain(here, "must be a list of words", "");
            return;
        }
        for (std::size_t i = 0; i < object[key].size(); ++i) {
            const Json& cell = object[key][i];
            const std::string written =
                cell.is_string() ? cell.get<std::string>() : onOneLine(cell);
            if (const auto value = valueIn<E>(table, written))
                into.push_back(*value);
            else
                unknownWord<E>(here + "/" + std::to_string(i), written, table);
        }
    }

private:
    template <class E>
    void unknownWord(const std::string& pointer, const std::string& written,
                     std::span<const Word<E>> table) {
        std::string known;
        for (const auto& entry : table)
            known += (known.empty() ? "" : ", ") + std::string(entry.word);
        complain(pointer, "'" + written + "' is not known here", "Use one of: " + known + ".");
    }

    std::string m_name;
    Complaints m_complaints;
};

} // namespace latchround
