#include "app/ashore/mirrored_tables.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/register/columns.h"

namespace latchround {

namespace {

/// What belongs to one tablet, what is the same in every register, and what goes ashore as bytes.
const std::set<std::string> kept_aboard{"this_device", "this_device_key", "fact_kind",
                                        "photograph_bytes"};

/// SQLite knows neither flags nor days; its checks tell them from other numbers and texts.
std::string typeAshore(const std::string& column, const std::string& type,
                       const std::string& checks) {
    const auto isChecked = [&](const std::string& check) {
        return checks.find("CHECK (" + check) != checks.npos;
    };
    if (type == "INTEGER")
        return isChecked(column + " IN (0, 1)") ? "boolean" : "bigint";
    if (type == "REAL")
        return "double precision";
    const std::string is_day = column + " IS date(" + column + ")";
    return isChecked(is_day) || isChecked(column + " IS NULL OR " + is_day) ? "date" : "text";
}

using Places = std::map<std::string, std::size_t>;

Result<> readColumns(SqliteConnection& connection, std::vector<MirroredTable>& tables) {
    std::map<int, std::string> key; // of the table that is read just now
    const auto finish = [&] {
        for (const auto& [place, column] : key)
            tables.back().key.push_back(column);
        key.clear();
    };
    const Result<> done = connection.each(
        "SELECT t.name, c.name, c.type, c.\"notnull\", c.pk, t.sql"
        " FROM sqlite_schema AS t, pragma_table_info(t.name) AS c"
        " WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite%' ORDER BY t.rowid, c.cid",
        {}, [&](Row& row) {
            const std::string name = row.text(0);
            if (kept_aboard.contains(name))
                return;
            if (tables.empty() || tables.back().name != name) {
                finish();
                tables.emplace_back().name = name;
            }
            const std::string column = row.text(1);
            const int place_in_key = row.smallWhole(4);
            const bool required = row.flag(3) || place_in_key > 0;
            tables.back().columns.push_back(column);
            tables.back().types.push_back(typeAshore(column, row.text(2), row.text(5)) +
                                          (required ? " NOT NULL" : ""));
            if (place_in_key > 0)
                key.emplace(place_in_key, column);
        });
    finish();
    return done;
}

Result<> readUnique(SqliteConnection& connection, std::vector<MirroredTable>& tables,
                    const Places& places) {
    std::string index;
    return connection.each(
        "SELECT t.name, i.name, c.name FROM sqlite_schema AS t, pragma_index_list(t.name) AS i,"
        " pragma_index_info(i.name) AS c WHERE t.type = 'table' AND i.origin = 'u'"
        " ORDER BY t.rowid, i.seq, c.seqno",
        {}, [&](Row& row) {
            const auto place = places.find(row.text(0));
            if (place == places.end())
                return;
            auto& unique = tables[place->second].unique;
            if (std::string name = row.text(1); name != index) {
                unique.emplace_back();
                index = std::move(name);
            }
            unique.back().push_back(row.text(2));
        });
}

Result<> readReferences(SqliteConnection& connection, std::vector<MirroredTable>& tables,
                        const Places& places) {
    return connection.each(
        "SELECT t.name, f.\"table\", f.\"from\", f.\"to\", f.seq"
        " FROM sqlite_schema AS t, pragma_foreign_key_list(t.name) AS f WHERE t.type = 'table'"
        " ORDER BY t.rowid, f.id, f.seq",
        {}, [&](Row& row) {
            const auto place = places.find(row.text(0));
            if (place == places.end() || !places.contains(row.text(1)))
                return;
            auto& references = tables[place->second].references;
            if (row.whole(4) == 0)
                references.push_back({{}, row.text(1), {}});
            references.back().columns.push_back(row.text(2));
            references.back().keys.push_back(row.text(3));
        });
}

std::string withVessel(const std::vector<std::string>& columns) {
    return "(vessel, " + columnList(columns) + ")";
}

bool isBody(const MirroredTable& table) {
    return std::ranges::any_of(table.references, [](const MirroredTable::Reference& reference) {
        return reference.table == "fact" && reference.columns == std::vector<std::string>{"fact"};
    });
}

} // namespace

Result<std::vector<MirroredTable>> mirroredTables(SqliteConnection& connection) {
    std::vector<MirroredTable> tables;
    Result<> done = readColumns(connection, tables);
    Places places;
    for (std::size_t i = 0; i < tables.size(); ++i)
        places.emplace(tables[i].name, i);
    if (done)
        done = readUnique(connection, tables, places);
    if (done)
        done = readReferences(connection, tables, places);
    if (!done)
        return tl::unexpected(done.error());
    for (MirroredTable& table : tables)
        table.insert = insertInto(table.name, table.columns);
    // A body is refused where its fact is not there yet; all other references wait for the end.
    std::stable_partition(tables.begin(), tables.end(),
                          [](const MirroredTable& table) { return table.name == "fact"; });
    return tables;
}

std::string sqlToMake(std::span<const MirroredTable> tables) {
    std::string sql;
    for (const MirroredTable& table : tables) {
        sql += "CREATE TABLE " + table.name + " (vessel text NOT NULL";
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            sql += ", " + quotedName(table.columns[i]) + " " + table.types[i];
        sql += ", PRIMARY KEY " + withVessel(table.key);
        for (const auto& columns : table.unique)
            sql += ", UNIQUE " + withVessel(columns);
        sql += ");\n";
    }
    // References go both ways between fact and its people and walkdowns.
    for (const MirroredTable& table : tables)
        for (const MirroredTable::Reference& reference : table.references)
            sql += "ALTER TABLE " + table.name + " ADD FOREIGN KEY " +
                   withVessel(reference.columns) + " REFERENCES " + reference.table + " " +
                   withVessel(reference.keys) + " DEFERRABLE INITIALLY DEFERRED;\n";
    return sql;
}

std::string sqlToGuard(std::span<const MirroredTable> tables) {
    std::string sql;
    for (const MirroredTable& table : tables) {
        sql += "CREATE TRIGGER only_added BEFORE UPDATE OR DELETE OR TRUNCATE ON " + table.name +
               " FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();\n";
        if (isBody(table))
            sql += "CREATE TRIGGER of_its_kind AFTER INSERT ON " + table.name +
                   " REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT"
                   " EXECUTE FUNCTION refuse_other_kind();\n";
    }
    return sql;
}

} // namespace latchround
