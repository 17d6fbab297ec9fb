#include "app/register/missing_reference.h"

#include <array>
#include <set>
#include <string>

#include "app/register/fact_header.h"
#include "core/evidence/references.h"

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

std::optional<Complaint> missingOf(Search& search, const Fact& fact) {
    std::optional<Complaint> missing;
    eachDoorNamed(fact.body, [&](const std::string& door) {
        if (!missing && !search.hasDoor(door))
            missing =
                Complaint{"door " + (door.empty() ? std::string("(no number)") : door),
                          "there is no such door in this vessel's register: NOT saved.",
                          "Check the number, or take in an arrangement that lists the door first."};
    });
    eachReference(fact, [&](const char* what, const FactId& id, std::optional<std::size_t> kind) {
        if (!missing && !search.has(id, kind))
            missing =
                Complaint{"fact " + fact.stamp.id,
                          std::string(what) + " \"" + id + "\" is not in this register: NOT saved.",
                          "Record it first, or both together."};
    });
    return missing;
}

} // namespace

std::optional<Complaint> missingReference(SqliteConnection& connection,
                                          std::span<const Fact> facts) {
    Search search(connection, facts);
    for (const Fact& fact : facts)
        if (auto complaint = missingOf(search, fact))
            return complaint;
    return std::nullopt;
}

} // namespace latchround
