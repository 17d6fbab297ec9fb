// One object of a JSON file, read field by field; what does not fit is complained of by its JSON
// pointer, and so is a field nobody asked for. In every file null counts as absent, and a field
// whose name begins with "$" or "x-" is a remark.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/error/error.h"
#include "core/error/reading_errors.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/words.h"

namespace latchround {

using Json = nlohmann::json;

/// One step further down a JSON pointer (RFC 6901): "/" becomes "~1", "~" becomes "~0".
std::string pointerTo(std::string_view parent, std::string_view key);
std::string pointerTo(std::string_view parent, std::size_t index);

class JsonFaults {
public:
    explicit JsonFaults(Phrase file)
        : m_file(std::move(file)) {}

    void add(std::string_view pointer, Phrase what);
    bool empty() const { return m_errors.empty(); }
    Errors take() { return std::move(m_errors); }

private:
    Phrase m_file;
    Errors m_errors;
};

enum class Need { Required, Optional };

class JsonObject {
public:
    /// Complains where `value` is no object, and reads as an empty one then.
    JsonObject(const Json& value, std::string pointer, JsonFaults& faults);

    /// Nothing where the field is absent or of another type (complained of).
    std::optional<std::string> text(std::string_view key, Need need);
    /// The same of a text that must not be empty.
    std::optional<std::string> filledText(std::string_view key, Need need);
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
        complain(key, notOneOf(*written, table));
        return std::nullopt;
    }

    /// Those of a list that are known, the others complained of one by one. A list that is there
    /// must name at least one.
    template <class E>
    std::vector<E> words(std::string_view key, std::span<const Word<E>> table) {
        std::vector<E> values;
        for (const auto& [index, written] : listedWords(key))
            if (const auto value = valueIn<E>(table, written))
                values.push_back(*value);
            else
                m_faults.add(pointerTo(pointerOf(key), index), notOneOf(written, table));
        return values;
    }

    std::optional<JsonObject> object(std::string_view key, Need need);
    /// The objects of a list; an entry that is none is complained of and left out.
    std::vector<JsonObject> objects(std::string_view key, Need need,
                                    Phrase not_a_list = errors::field_not_a_list());
    /// The same of a list that must have an entry; else this is complained of.
    std::vector<JsonObject> filledObjects(std::string_view key, Need need, Phrase not_filled);

    /// The field as it is.
    const Json* field(std::string_view key, Need need);
    /// Every name in it, asked for or not.
    std::vector<std::string> names() const;
    /// Whether nothing but remarks and nulls stands in it.
    bool isEmpty() const;

    void complain(std::string_view key, Phrase what);
    /// Of the object itself.
    void complain(Phrase what);
    const std::string& pointer() const { return m_pointer; }
    std::string pointerOf(std::string_view key) const { return pointerTo(m_pointer, key); }

    /// Complains of every field that was not asked for and is no remark.
    void complainOfTheRest();

private:
    using ListedText = std::pair<std::size_t, std::string>; ///< index, text

    template <class E>
    static Phrase notOneOf(const std::string& written, std::span<const Word<E>> table) {
        std::string allowed;
        for (const Word<E>& entry : table)
            allowed += (allowed.empty() ? "" : ", ") + std::string(entry.word);
        return errors::not_one_of(written, allowed);
    }

    std::vector<ListedText> listedWords(std::string_view key);
    std::vector<JsonObject> objectsIn(std::string_view key, const Json& list);

    const Json& m_value;
    std::string m_pointer;
    JsonFaults& m_faults;
    std::set<std::string, std::less<>> m_asked;
};

} // namespace latchround
