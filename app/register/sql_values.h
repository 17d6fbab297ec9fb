// Values of core on their way into a statement. Whole numbers, reals, words; absent is NULL.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

struct sqlite3_stmt;

namespace latchround {

/// Looks at the text or bytes it was made from; keeps them only where they were a temporary.
class Value {
public:
    Value() = default; ///< NULL
    Value(int value)
        : m_value(std::int64_t{value}) {}
    Value(std::int64_t value)
        : m_value(value) {}
    Value(double value)
        : m_value(value) {}
    Value(std::string_view text)
        : m_value(text) {}
    Value(std::string&& text)
        : m_value(std::move(text)) {}
    Value(std::span<const std::byte> bytes)
        : m_value(bytes) {}

    /// The answer is SQLite's result code. What it looks at must stay until the statement is reset.
    int bindTo(sqlite3_stmt* statement, int place) const;

private:
    std::variant<std::monostate, std::int64_t, double, std::string_view, std::string,
                 std::span<const std::byte>>
        m_value;
};

using Values = std::span<const Value>;

/// Text as Unicode. Bytes that are no UTF-8 are handed on as bytes, which a TEXT column of a STRICT
/// table refuses: silently replaced characters would be another text than the one recorded.
inline Value sqlText(std::string_view text) {
    return Value(text);
}
inline Value sqlText(const std::string& text) {
    return Value(std::string_view(text));
}
inline Value sqlText(std::string&& text) {
    return Value(std::move(text));
}

} // namespace latchround
