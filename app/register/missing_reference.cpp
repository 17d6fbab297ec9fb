#include "app/register/missing_reference.h"

#include <array>
#include <set>
#include <string>

#include "app/register/fact_header.h"

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

    template <class Body>
    bool has(const FactId& id) {
        const std::size_t kind = FactBody(Body{}).index();
        return m_by_kind[kind].contains(id) ||
               stored("SELECT 1 FROM " + bodyTableOf(kind) + " WHERE fact = ?", id);
    }
    bool hasFact(const FactId& id) {
        return m_any.contains(id) || stored("SELECT 1 FROM fact WHERE id = ?", id);
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

std::optional<Complaint> doorMissing(Search& search, const std::string& door) {
    if (search.hasDoor(door))
        return std::nullopt;
    return Complaint{"door " + (door.empty() ? std::string("(no number)") : door),
                     "there is no such door in this vessel's register: NOT saved.",
                     "Check the number, or take in an arrangement that lists the door first."};
}

std::optional<Complaint> missingOf(Search& search, const Fact& fact) {
    const auto complain = [&](const std::string& what, const std::string& id) {
        return Complaint{"fact " + fact.stamp.id,
                         what + " \"" + id + "\" is not in this register: NOT saved.",
                         "Record it first, or both together."};
    };
    const FactReferences references = referencesOf(fact.body);
    if (references.door)
        if (auto complaint = doorMissing(search, *references.door))
            return complaint;
    if (const auto* begun = std::get_if<WalkdownBegun>(&fact.body))
        for (const std::string& door : begun->doors)
            if (auto complaint = doorMissing(search, door))
                return complaint;
    if (references.walkdown && !search.has<WalkdownBegun>(*references.walkdown))
        return complain("the walkdown", *references.walkdown);
    if (references.run && !search.has<RunStarted>(*references.run))
        return complain("the run", *references.run);
    if (!search.has<PersonJoined>(fact.stamp.person))
        return complain("the person", fact.stamp.person);
    if (fact.stamp.supersedes && !search.hasFact(*fact.stamp.supersedes))
        return complain("the fact it replaces,", *fact.stamp.supersedes);
    return std::nullopt;
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
