#include "app/ashore/vessel_rows.h"

#include "app/register/columns.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

/// Rows of one statement: a few megabytes at most.
constexpr std::size_t rows_at_once = 5000;

Result<> loadTable(PostgresConnection& ashore, const std::string& number, VesselMirror& mirror,
                   const MirroredTable& table) {
    Result<> loaded;
    const Result<> read =
        ashore.each("SELECT row_to_json(r) FROM (SELECT " + columnList(table.columns) + " FROM " +
                        table.name + " WHERE vessel = ?) AS r",
                    {pgText(number)}, [&](const QSqlQuery& row) {
                        if (loaded)
                            loaded =
                                mirror.load(table, jsonIn(row.value(0).toString().toStdString()));
                    });
    return read ? loaded : read;
}

} // namespace

Result<> loadVessel(PostgresConnection& ashore, const std::string& number, VesselMirror& mirror) {
    const auto known =
        ashore.single("SELECT 1 FROM arrangement WHERE vessel = ? LIMIT 1", {pgText(number)});
    if (!known)
        return tl::unexpected(known.error());
    if (!*known)
        return {};
    for (const MirroredTable& table : mirror.tables())
        if (Result<> done = loadTable(ashore, number, mirror, table); !done)
            return done;
    return mirror.loaded();
}

Result<> insertRows(PostgresConnection& ashore, const std::string& number, const std::string& table,
                    const std::vector<std::string>& columns, const nlohmann::json& rows) {
    const std::string names = columnList(columns);
    const auto written = ashore.run("INSERT INTO " + table + " (vessel, " + names + ") SELECT ?, " +
                                        names + " FROM json_populate_recordset(CAST(NULL AS " +
                                        table + "), CAST(? AS json))",
                                    {pgText(number), pgText(onOneLine(rows, NotUtf8::Refused))});
    return written ? Result<>{} : tl::unexpected(written.error());
}

Result<> writeNewRows(PostgresConnection& ashore, const std::string& number, VesselMirror& mirror) {
    for (const MirroredTable& table : mirror.tables()) {
        Result<> done = mirror.eachNew(table, rows_at_once, [&](const nlohmann::json& rows) {
            return insertRows(ashore, number, table.name, table.columns, rows);
        });
        if (!done)
            return done;
    }
    return {};
}

} // namespace latchround
