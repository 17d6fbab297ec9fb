#include "app/ashore/ashore_schema.h"

#include <cstdlib>
#include <iterator>
#include <set>
#include <string>
#include <vector>

#include "ashore_sql.h"
#include "core/error/ashore_errors.h"

namespace latchround {

namespace {

/// Anything that somebody made, what extensions bring along aside.
constexpr const char* foreign_things =
    "SELECT count(*) FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace"
    " WHERE n.nspname <> 'information_schema' AND n.nspname NOT LIKE 'pg\\_%'"
    " AND NOT EXISTS (SELECT FROM pg_depend AS d WHERE d.objid = c.oid AND d.deptype = 'e')";

/// 0: the tables are not there. Nothing where the schema of our name is somebody else's.
Result<std::optional<int>> versionAshore(PostgresConnection& connection) {
    const auto ours =
        connection.single("SELECT count(*) FROM pg_namespace WHERE nspname = 'latchround'");
    if (!ours)
        return tl::unexpected(ours.error());
    if (*ours == "0")
        return std::optional(0);
    const auto numbered =
        connection.single("SELECT to_regclass('latchround.ashore_form') IS NOT NULL");
    if (!numbered)
        return tl::unexpected(numbered.error());
    if (*numbered != "true")
        return std::optional<int>();
    const auto version = connection.single("SELECT max(version) FROM latchround.ashore_form");
    if (!version)
        return tl::unexpected(version.error());
    return *version ? std::optional(std::atoi((*version)->c_str())) : std::nullopt;
}

Result<> refuseForeign(PostgresConnection& connection) {
    const auto things = connection.single(foreign_things);
    if (!things)
        return tl::unexpected(things.error());
    if (*things == "0")
        return {};
    return tl::unexpected(Error{connection.where(), errors::database_of_others()});
}

/// Names and remarks are written in any language.
Result<> refuseOtherEncoding(PostgresConnection& connection) {
    const auto encoding = connection.single("SELECT current_setting('server_encoding')");
    if (!encoding)
        return tl::unexpected(encoding.error());
    if (*encoding == "UTF8")
        return {};
    return tl::unexpected(Error{connection.where(), errors::database_without_utf8()});
}

Result<> judgeAshore(PostgresConnection& connection, std::optional<int> version) {
    if (!version)
        return tl::unexpected(Error{connection.where(), errors::schema_of_others()});
    if (*version > ashoreVersion())
        return tl::unexpected(
            Error{connection.where(), errors::newer_tables(*version, ashoreVersion())});
    if (*version > 0)
        return {};
    const Result<> ours = refuseForeign(connection);
    return ours ? refuseOtherEncoding(connection) : ours;
}

Result<std::vector<MirroredTable>> notAshore(PostgresConnection& connection,
                                             std::span<const MirroredTable> of_register) {
    std::set<std::string> there;
    const Result<> done = connection.each(
        "SELECT tablename FROM pg_tables WHERE schemaname = 'latchround'", {},
        [&](const QSqlQuery& row) { there.insert(row.value(0).toString().toStdString()); });
    if (!done)
        return tl::unexpected(done.error());
    std::vector<MirroredTable> missing;
    for (const MirroredTable& table : of_register)
        if (!there.contains(table.name))
            missing.push_back(table);
    return missing;
}

Result<> bringToForm(PostgresConnection& connection, std::span<const MirroredTable> of_register) {
    auto transaction = PostgresTransaction::begin(connection);
    if (!transaction)
        return tl::unexpected(transaction.error());
    // Asked again while nobody else may: two programs may have found the database empty.
    Result<> done =
        connection.script("SELECT pg_advisory_xact_lock(hashtext('latchround schema'))");
    if (!done)
        return done;
    const auto version = versionAshore(connection);
    if (!version)
        return tl::unexpected(version.error());
    if (done = judgeAshore(connection, *version); !done)
        return done;
    if (**version == 0)
        done = connection.script("CREATE SCHEMA latchround");
    if (done)
        done = connection.script("SET LOCAL search_path TO latchround");
    if (!done)
        return done;
    const auto missing = notAshore(connection, of_register);
    if (!missing)
        return tl::unexpected(missing.error());
    if (!missing->empty())
        done = connection.script(sqlToMake(*missing));
    for (int step = **version + 1; done && step <= ashoreVersion(); ++step) {
        done = connection.script(ashore_sql[step - 1]);
        if (done)
            done = connection.script("INSERT INTO ashore_form (version) VALUES (" +
                                     std::to_string(step) + ")");
    }
    if (done && !missing->empty())
        done = connection.script(sqlToGuard(*missing));
    return done ? transaction->commit() : done;
}

} // namespace

int ashoreVersion() {
    return int(std::size(ashore_sql));
}

Result<> readyAshore(PostgresConnection& connection, std::span<const MirroredTable> of_register) {
    const auto version = versionAshore(connection);
    if (!version)
        return tl::unexpected(version.error());
    if (*version != ashoreVersion()) {
        if (Result<> done = judgeAshore(connection, *version); !done)
            return done;
        if (Result<> done = bringToForm(connection, of_register); !done)
            return done;
    }
    return connection.script("SET search_path TO latchround");
}

} // namespace latchround
