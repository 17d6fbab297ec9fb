// A vessel's register in memory, between a handover file and the tables ashore: what is ashore is
// read into it, the file is merged by the very code that merges on a tablet, and the rows that are
// new go ashore. So there is one way to write a fact and one rule of what may be added.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include <nlohmann/json.hpp>

#include "app/ashore/mirrored_tables.h"
#include "app/register/merge.h"
#include "app/register/sqlite_connection.h"
#include "app/register/transaction.h"
#include "core/evidence/ledger.h"

namespace latchround {

class VesselMirror {
public:
    static Result<VesselMirror> make();

    /// In an order in which rows may be written.
    const std::vector<MirroredTable>& tables() const { return m_tables; }

    /// Forgets the vessel before.
    Result<> begin();
    /// A row from ashore, by column.
    Result<> load(const MirroredTable& table, const nlohmann::json& row);
    /// What is here now is what is known ashore.
    Result<> loaded();
    Result<Added> merge(const Incoming& incoming);
    /// Rows that came after loaded(), so many at once.
    using OnRows = std::function<Result<>(nlohmann::json rows)>;
    Result<> eachNew(const MirroredTable& table, std::size_t at_once, const OnRows& on_rows);

    /// The arrangement in force.
    Result<Arrangement> arrangement();
    Result<Ledger> ledger();
    /// Why the server would not have these facts.
    std::optional<Error> missingReference(std::span<const Fact> facts);

private:
    explicit VesselMirror(std::unique_ptr<SqliteConnection> connection)
        : m_connection(std::move(connection)) {}
    using Owners = std::unordered_set<std::string>;
    Result<Owners> ownersOf(std::string_view sql);
    const Owners& ownersOf(const MirroredTable& table) const;

    std::unique_ptr<SqliteConnection> m_connection;
    std::vector<MirroredTable> m_tables;
    std::optional<Transaction> m_transaction;
    Owners m_facts;
    Owners m_issues;
    Owners m_doors;
};

} // namespace latchround
