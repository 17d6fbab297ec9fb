#include "app/register/recording.h"

#include <map>
#include <string>

#include "app/register/fact_rows_read.h"
#include "app/register/fact_rows_write.h"
#include "core/error/register_errors.h"
#include "core/evidence/admission.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// What the register knows, and what comes along in the same action.
OnRecord onRecord(SqliteConnection& connection, std::span<const Fact> facts) {
    std::map<FactId, const Fact*> along;
    for (const Fact& fact : facts)
        along.emplace(fact.stamp.id, &fact);
    OnRecord known;
    known.walkdownOf = [&connection, along](const FactId& run) {
        const auto found = along.find(run);
        if (found == along.end())
            return connection.single("SELECT walkdown FROM fact WHERE id = ?", {sqlText(run)})
                .value_or(FactId());
        const auto* started = std::get_if<RunStarted>(&found->second->body);
        return started ? started->walkdown : FactId();
    };
    known.find = [&connection, along = std::move(along)](const FactId& id) {
        const auto found = along.find(id);
        return found != along.end() ? std::optional(*found->second)
                                    : readFact(connection, id).value_or(std::nullopt);
    };
    // Asked before each fact is written. CROSS JOIN keeps SQLite to this order, from the few to the
    // many: left to itself it goes through all facts.
    known.hasEnded = [&connection](const FactId& walkdown) {
        const auto ended = connection.single(
            "SELECT 1 FROM walkdown_ended AS last CROSS JOIN fact AS ending ON ending.id = "
            "last.fact"
            " WHERE ending.walkdown = ?1 AND NOT EXISTS ("
            "  SELECT 1 FROM (SELECT fact FROM taken_back UNION ALL SELECT fact FROM undone) AS "
            "slip"
            "  CROSS JOIN fact AS back ON back.id = slip.fact"
            "  WHERE back.supersedes = last.fact AND NOT EXISTS ("
            "   SELECT 1 FROM undone AS redo CROSS JOIN fact AS again ON again.id = redo.fact"
            "   WHERE again.supersedes = back.id AND NOT EXISTS ("
            "    SELECT 1 FROM undone AS once_more CROSS JOIN fact AS third ON third.id = "
            "once_more.fact"
            "    WHERE third.supersedes = again.id))) LIMIT 1",
            {sqlText(walkdown)});
        return ended && !ended->empty();
    };
    return known;
}

} // namespace

Result<> writeEach(SqliteConnection& connection, std::span<const Fact> facts) {
    for (const Fact& fact : facts) {
        const Result<Written> written = writeFact(connection, fact);
        if (!written)
            return tl::unexpected(written.error());
        if (*written == Written::New)
            continue;
        const auto stored = readFact(connection, fact.stamp.id);
        if (!stored)
            return tl::unexpected(stored.error());
        if (*stored != fact)
            return tl::unexpected(
                Error{place::fact(fact.stamp.id), errors::not_saved(errors::fact_id_taken())});
    }
    return {};
}

Result<> recordEach(SqliteConnection& connection, std::span<const Fact> facts) {
    const OnRecord known = onRecord(connection, facts);
    for (const Fact& fact : facts) {
        const std::optional<Error> refusal = refusalOf(fact, known);
        if (!refusal)
            continue;
        const auto stored = readFact(connection, fact.stamp.id);
        if (!stored)
            return tl::unexpected(stored.error());
        if (!*stored) // what is there already was allowed when it was recorded
            return tl::unexpected(*refusal);
    }
    return writeEach(connection, facts);
}

} // namespace latchround
