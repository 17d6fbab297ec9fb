#include "app/ashore/vessel_mirror.h"

#include <utility>

#include <sqlite3.h>

#include "app/register/arrangement_rows.h"
#include "app/register/columns.h"
#include "app/register/fact_rows_read.h"
#include "app/register/migrations.h"
#include "app/register/missing_reference.h"
#include "core/error/ashore_errors.h"

namespace latchround {

namespace {

using nlohmann::json;

/// JSON's true and false are the register's 1 and 0.
Value valueOf(const json& cell) {
    if (cell.is_null())
        return {};
    if (cell.is_boolean())
        return cell.get<bool>() ? 1 : 0;
    if (cell.is_number_integer())
        return cell.get<std::int64_t>();
    if (cell.is_number())
        return cell.get<double>();
    return std::string_view(cell.get_ref<const std::string&>());
}

std::string ownerOf(sqlite3_stmt* row) {
    // Asking a number for its text would change the row.
    if (sqlite3_column_type(row, 0) == SQLITE_INTEGER)
        return std::to_string(sqlite3_column_int64(row, 0));
    return reinterpret_cast<const char*>(sqlite3_column_text(row, 0));
}

json cellOf(sqlite3_stmt* row, int column) {
    switch (sqlite3_column_type(row, column)) {
    case SQLITE_NULL:
        return {};
    case SQLITE_INTEGER:
        return std::int64_t{sqlite3_column_int64(row, column)};
    case SQLITE_FLOAT:
        return sqlite3_column_double(row, column);
    default:
        return std::string(reinterpret_cast<const char*>(sqlite3_column_text(row, column)),
                           static_cast<std::size_t>(sqlite3_column_bytes(row, column)));
    }
}

json rowOf(sqlite3_stmt* row, const MirroredTable& table) {
    json cells = json::object();
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        cells[table.columns[i]] = cellOf(row, static_cast<int>(i));
    return cells;
}

struct StatementCloser {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};

} // namespace

Result<VesselMirror> VesselMirror::make() {
    auto connection =
        SqliteConnection::connect(QStringLiteral(":memory:"), FileMode::Create, {}, 0);
    if (!connection)
        return tl::unexpected(connection.error());
    VesselMirror mirror(std::move(*connection));
    if (Result<> done = migrate(*mirror.m_connection, migrations()); !done)
        return tl::unexpected(done.error());
    // The references are checked ashore.
    if (Result<> done = mirror.m_connection->script("PRAGMA foreign_keys = OFF"); !done)
        return tl::unexpected(done.error());
    auto tables = mirroredTables(*mirror.m_connection);
    if (!tables)
        return tl::unexpected(tables.error());
    mirror.m_tables = std::move(*tables);
    return mirror;
}

Result<> VesselMirror::begin() {
    m_transaction.reset(); // rolls back
    auto transaction = Transaction::begin(*m_connection, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    m_transaction.emplace(std::move(*transaction));
    return loaded();
}

Result<> VesselMirror::load(const MirroredTable& table, const json& row) {
    std::vector<Value> values;
    for (const std::string& column : table.columns)
        values.push_back(valueOf(row.at(column)));
    const auto written = m_connection->run(table.insert, values);
    return written ? Result<>{} : tl::unexpected(written.error());
}

Result<> VesselMirror::loaded() {
    for (const auto& [owners, sql] : {std::pair(&m_facts, "SELECT id FROM fact"),
                                      std::pair(&m_issues, "SELECT id FROM arrangement"),
                                      std::pair(&m_doors, "SELECT number FROM door_number")}) {
        auto found = ownersOf(sql);
        if (!found)
            return tl::unexpected(found.error());
        *owners = std::move(*found);
    }
    return {};
}

Result<Added> VesselMirror::merge(const Incoming& incoming) {
    return latchround::merge(*m_connection, incoming);
}

Result<VesselMirror::Owners> VesselMirror::ownersOf(std::string_view sql) {
    Owners owners;
    const Result<> done =
        m_connection->each(sql, {}, [&](Row& row) { owners.insert(row.text(0)); });
    if (!done)
        return tl::unexpected(done.error());
    return owners;
}

/// Rows come and go with what their first column names.
const VesselMirror::Owners& VesselMirror::ownersOf(const MirroredTable& table) const {
    if (table.name == "arrangement" || table.columns.front() == "arrangement")
        return m_issues;
    return table.name == "door_number" ? m_doors : m_facts;
}

Result<> VesselMirror::eachNew(const MirroredTable& table, std::size_t at_once,
                               const OnRows& on_rows) {
    const std::string sql = "SELECT " + columnList(table.columns) + " FROM " + table.name;
    sqlite3* const handle = m_connection->handle();
    sqlite3_stmt* prepared = nullptr;
    int code = sqlite3_prepare_v2(handle, sql.c_str(), -1, &prepared, nullptr);
    const std::unique_ptr<sqlite3_stmt, StatementCloser> rows(prepared);
    const Owners& known = ownersOf(table);
    json fresh = json::array();
    while (code == SQLITE_OK || code == SQLITE_ROW) {
        code = sqlite3_step(rows.get());
        if (code == SQLITE_ROW && !known.contains(ownerOf(rows.get())))
            fresh.push_back(rowOf(rows.get(), table));
        if (fresh.size() < at_once && code != SQLITE_DONE)
            continue;
        if (!fresh.empty())
            if (Result<> done = on_rows(std::exchange(fresh, json::array())); !done)
                return done;
    }
    return code == SQLITE_DONE
               ? Result<>{}
               : tl::unexpected(Error{table.name, errors::database_said(sqlite3_errmsg(handle))});
}

Result<Arrangement> VesselMirror::arrangement() {
    auto issue = readIssueInForce(*m_connection);
    if (!issue)
        return tl::unexpected(issue.error());
    return *issue ? std::move((*issue)->arrangement) : Arrangement{};
}

Result<Ledger> VesselMirror::ledger() {
    auto facts = readFacts(*m_connection);
    if (!facts)
        return tl::unexpected(facts.error());
    Ledger ledger;
    for (Fact& fact : *facts)
        ledger.add(std::move(fact));
    return ledger;
}

std::optional<Error> VesselMirror::missingReference(std::span<const Fact> facts) {
    return latchround::missingReference(*m_connection, facts);
}

} // namespace latchround
