// One object of a JSON file, read field by field; what does not fit is complained of by its JSON
// pointer, and so is a field nobody asked for.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "app/exchange/json_text.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/words.h"

namespace latchround {

class JsonFaults {
public:
    explicit JsonFaults(std::string file)
        : m_file(std::move(file)) {}

    void add(std::string_view pointer, std::string what, std::string remedy);
    bool empty() const { return m_complaints.empty(); }
    Complaints take() { return std::move(m_complaints); }

private:
    std::string m_file;
    Complaints m_complaints;
};

enum class Need { Required, Optional };

class JsonObject {
public:
    /// Complains where `value` is no object, and reads as an empty one then.
    JsonObject(const Json& value, std::string pointer, JsonFaults& faults);

    /// Nothing where the field is absent or of another type (complained of).
    std::optional<std::string> text(std::string_view key, Need need);
    std::optional<double> number(std::string_view key, Need need);
    std::optional<std::int64_t> wholeNumber(std::string_view key, Need need, std::int64_t low,
                                            std::int64_t high);
    std::optional<bool> truth(std::string_view key, Need need);
    std::optional<CalendarDate> date(std::string_view key, Need need);
    std::optional<std::vector<std::string>> texts(std::string_view key, Need need);

    template <class E>
    std::optional<E> word(std::string_view key, Need need, std::span<const Word<E>> table) {
        const std::optional<std::string> written = text(key, need);
        if (!written)
            return std::nullopt;
        if (const auto value = valueIn<E>(table, *written))
            return value;
        std::string allowed;
        for (const Word<E>& entry : table)
            allowed += (allowed.empty() ? "" : ", ") + std::string(entry.word);
        complain(key, '"' + *written + "\" is not known here", "Write one of: " + allowed + ".");
        return std::nullopt;
    }

    /// The field as it is; null counts as absent.
    const Json* field(std::string_view key, Need need);
    void complain(std::string_view key, std::string what, std::string remedy);
    std::string pointerOf(std::string_view key) const { return pointerTo(m_pointer, key); }

    /// Complains of every field that was not asked for. Fields that begin with "$" or "x-" are
    /// remarks.
    void complainOfTheRest();

private:
    const Json& m_value;
    std::string m_pointer;
    JsonFaults& m_faults;
    std::set<std::string, std::less<>> m_asked;
};

} // namespace latchround
