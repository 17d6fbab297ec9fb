#include "app/register/migrations.h"

#include <array>
#include <cstdlib>
#include <string>

#include "app/register/transaction.h"
#include "core/error/register_errors.h"
#include "register_sql.h"

namespace latchround {

namespace {

constexpr auto shipped = [] {
    std::array<Migration, std::size(register_sql)> steps{};
    for (std::size_t i = 0; i < steps.size(); ++i)
        steps[i] = {int(i) + 1, register_sql[i]};
    return steps;
}();

/// References are not followed row by row while tables are made anew: with no index on the
/// referring side that would take the square of the rows. They are checked all together before the
/// commit. Can only be switched outside a transaction.
class ReferencesUnwatched {
public:
    explicit ReferencesUnwatched(SqliteConnection& connection)
        : m_connection(connection)
        , m_done(connection.script("PRAGMA foreign_keys = OFF")) {}
    ~ReferencesUnwatched() { (void)m_connection.script("PRAGMA foreign_keys = ON"); }
    ReferencesUnwatched(const ReferencesUnwatched&) = delete;
    ReferencesUnwatched& operator=(const ReferencesUnwatched&) = delete;

    const Result<>& done() const { return m_done; }

private:
    SqliteConnection& m_connection;
    Result<> m_done;
};

Result<> runStep(SqliteConnection& connection, const Migration& step) {
    const ReferencesUnwatched unwatched(connection);
    if (!unwatched.done())
        return unwatched.done();
    Result<Transaction> transaction = Transaction::begin(connection, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    // Asked again under the write lock: another program may have done the step meanwhile.
    const Result<std::string> version = connection.single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (std::atoi(version->c_str()) >= step.version)
        return {};
    const std::string numbered = "PRAGMA user_version=" + std::to_string(step.version);
    if (Result<> done = connection.script(step.sql); !done)
        return done;
    if (Result<> done = connection.script(numbered.c_str()); !done)
        return done;
    const Result<std::string> dangling = connection.single("PRAGMA foreign_key_check");
    if (!dangling)
        return tl::unexpected(dangling.error());
    if (!dangling->empty())
        return tl::unexpected(Error{connection.where(), errors::rows_would_dangle(*dangling)});
    return transaction->commit();
}

} // namespace

std::span<const Migration> migrations() {
    return shipped;
}

int currentVersion() {
    return shipped.back().version;
}

Result<> migrate(SqliteConnection& connection, std::span<const Migration> steps) {
    const Result<std::string> version = connection.single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    for (const Migration& step : steps) {
        if (step.version <= std::atoi(version->c_str()))
            continue;
        if (Result<> done = runStep(connection, step); !done)
            return done;
    }
    return {};
}

} // namespace latchround
