#include "app/register/register_front.h"

#include <QFileInfo>
#include <sqlite3.h>

#include "app/register/open_sequence.h"

namespace latchround {

namespace {

/// Of an issue's list; nobody writes meanwhile that would matter to a list of vessels.
Result<std::size_t> countIn(SqliteConnection& connection, const char* sql, std::int64_t issue) {
    const auto count = connection.single(sql, {Value(issue)});
    if (!count)
        return tl::unexpected(count.error());
    return std::size_t(std::stoull(count->empty() ? "0" : *count));
}

} // namespace

Result<RegisterFront> frontOf(const QString& file) {
    auto connection = lookInto(file);
    if (!connection)
        return tl::unexpected(connection.error());
    RegisterFront front;
    std::int64_t issue = 0;
    const Result<> read = (*connection)
                              ->each("SELECT id, name FROM arrangement"
                                     " ORDER BY adopted_utc_ms DESC, id DESC LIMIT 1",
                                     {}, [&](Row& row) {
                                         issue = row.whole(0);
                                         front.vessel = row.text(1);
                                     });
    if (!read)
        return tl::unexpected(read.error());
    const auto doors =
        countIn(**connection, "SELECT count(*) FROM door WHERE arrangement = ?", issue);
    const auto zones =
        countIn(**connection, "SELECT count(*) FROM zone WHERE arrangement = ?", issue);
    if (!doors || !zones)
        return tl::unexpected(doors ? zones.error() : doors.error());
    front.doors = *doors;
    front.zones = *zones;
    return front;
}

} // namespace latchround
