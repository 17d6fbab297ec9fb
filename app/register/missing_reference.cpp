#include "app/register/missing_reference.h"

#include <array>
#include <set>
#include <string>

#include "app/register/fact_tables.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

class Search {
public:
    Search(SqliteConnection& connection, std::span<const Fact> facts)
        : m_connection(connection) {
        for (const Fact& fact : facts) {
            m_any.insert(fact.stamp.id);
            m_by_kind[fact.body.index()].insert(fact.stamp.id);
        }
    }

    bool has(const FactId& id, std::optional<std::size_t> kind) {
        if (!kind)
            return m_any.contains(id) || stored("SELECT 1 FROM fact WHERE id = ?", id);
        return m_by_kind[*kind].contains(id) ||
               stored("SELECT 1 FROM " + bodyTableOf(*kind) + " WHERE fact = ?", id);
    }
    bool hasDoor(const std::string& number) {
        return stored("SELECT 1 FROM door_number WHERE number = ?", number);
    }

private:
    bool stored(const std::string& sql, const std::string& key) {
        const auto found = m_connection.single(sql, {sqlText(key)});
        return !found || !found->empty(); // no answer is no proof that it is missing
    }

    SqliteConnection& m_connection;
    std::set<FactId> m_any;
    std::array<std::set<FactId>, factKindWords.size()> m_by_kind;
};

std::optional<Error> missingOf(Search& search, const Fact& fact) {
    std::optional<Error> missing;
    eachDoorNamed(fact.body, [&](const std::string& door) {
        if (!missing && !search.hasDoor(door))
            missing = Error{door.empty() ? place::door_without_number() : place::door(door),
                            errors::not_saved(errors::no_such_door())};
    });
    eachReference(
        fact, [&](const PhraseCode<1>& what, const FactId& id, std::optional<std::size_t> kind) {
            if (!missing && !search.has(id, kind))
                missing = Error{place::fact(fact.stamp.id),
                                errors::not_saved(errors::reference_not_here(what(id)))};
        });
    return missing;
}

} // namespace

std::optional<Error> missingReference(SqliteConnection& connection, std::span<const Fact> facts) {
    Search search(connection, facts);
    for (const Fact& fact : facts)
        if (auto error = missingOf(search, fact))
            return error;
    return std::nullopt;
}

} // namespace latchround
