#include "app/register/sql_values.h"

#include <sqlite3.h>

#include "app/exchange/utf8.h"

namespace latchround {

namespace {

struct Binding {
    sqlite3_stmt* statement;
    int place;

    int operator()(std::monostate) const { return sqlite3_bind_null(statement, place); }
    int operator()(std::int64_t value) const { return sqlite3_bind_int64(statement, place, value); }
    int operator()(double value) const { return sqlite3_bind_double(statement, place, value); }
    int operator()(std::string_view text) const {
        // A null pointer would be bound as NULL.
        const char* begin = text.data() == nullptr ? "" : text.data();
        if (firstByteNotUtf8(text))
            return sqlite3_bind_blob64(statement, place, begin, text.size(), SQLITE_STATIC);
        return sqlite3_bind_text64(statement, place, begin, text.size(), SQLITE_STATIC,
                                   SQLITE_UTF8);
    }
    int operator()(std::span<const std::byte> bytes) const {
        return sqlite3_bind_blob64(statement, place,
                                   bytes.empty() ? "" : static_cast<const void*>(bytes.data()),
                                   bytes.size(), SQLITE_STATIC);
    }
};

} // namespace

int Value::bindTo(sqlite3_stmt* statement, int place) const {
    return std::visit(Binding{statement, place}, m_value);
}

} // namespace latchround
