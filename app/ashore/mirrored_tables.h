// The tables of a register as they lie ashore: the same names and columns, with the vessel before
// every key. Read off a register itself, so that a new table or column there needs nothing here.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "app/register/sqlite_connection.h"

namespace latchround {

struct MirroredTable {
    struct Reference {
        std::vector<std::string> columns;
        std::string table;
        std::vector<std::string> keys; ///< of that table
    };
    std::string name;
    std::vector<std::string> columns;
    std::vector<std::string> types;               ///< of the columns, in the words of PostgreSQL
    std::vector<std::string> key;                 ///< in its order
    std::vector<std::vector<std::string>> unique; ///< what else is given once only
    std::vector<Reference> references;            ///< to tables that are ashore as well
    std::string insert;                           ///< of a row into a register
};

/// In an order in which rows may be written.
Result<std::vector<MirroredTable>> mirroredTables(SqliteConnection& connection);

/// What makes these tables in PostgreSQL.
std::string sqlToMake(std::span<const MirroredTable> tables);

/// What keeps their rows as they are, once the functions of ashore_1.sql are there.
std::string sqlToGuard(std::span<const MirroredTable> tables);

} // namespace latchround
