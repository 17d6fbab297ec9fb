#include "app/register/fact_tables.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace latchround {

namespace {

// What fact_rows_read.cpp reads first of every fact. The scan goes by the table of the kind, from
// the few to the many: left to itself SQLite may go through all facts.
constexpr std::string_view header_columns =
    "f.id, f.utc_ms, f.ship_offset_minutes, f.person, f.device, f.supersedes, f.walkdown, f.door";

PartSql partSqlOf(const std::string& table, const BodyTable::Part& part) {
    const std::string name = table + '_' + part.key;
    std::vector<std::string> written{"fact"};
    if (part.is_list)
        written.emplace_back("seq");
    written.insert(written.end(), part.columns.begin(), part.columns.end());
    // With its table before it: SQLite takes a quoted name that it does not know for a text.
    std::string read = "p.fact";
    for (const std::string& column : part.columns)
        read += ", p." + quotedName(column);
    const std::string from = "SELECT " + read + " FROM " + name + " AS p";
    const std::string order = part.is_list ? " ORDER BY p.fact, p.seq" : " ORDER BY p.fact";
    return {insertInto(name, written), from + order, from + " WHERE p.fact = ?" + order};
}

} // namespace

const std::string& bodyTableOf(std::size_t kind) {
    static const auto tables = [] {
        std::array<std::string, factKindWords.size()> all;
        for (std::size_t i = 0; i < all.size(); ++i) {
            all[i] = factKindWords[i];
            std::ranges::replace(all[i], '-', '_');
        }
        return all;
    }();
    return tables[kind];
}

FactSql factSqlOf(std::size_t kind, const BodyTable& table) {
    const std::string& name = bodyTableOf(kind);
    std::vector<std::string> written{"fact"};
    std::string read(header_columns);
    for (const std::string& column : table.columns) {
        written.push_back(column);
        read += ", b." + quotedName(column);
    }
    const std::string from =
        "SELECT " + read + " FROM " + name + " AS b CROSS JOIN fact AS f ON f.id = b.fact";
    FactSql sql{
        insertInto(name, written), from + " ORDER BY b.fact", from + " WHERE b.fact = ?", {}};
    for (const BodyTable::Part& part : table.parts)
        sql.parts.push_back(partSqlOf(name, part));
    return sql;
}

} // namespace latchround
