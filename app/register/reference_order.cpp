#include "app/register/reference_order.h"

#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "core/error/register_errors.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

using Kind = std::optional<std::size_t>;

/// What the register holds already; asked once for each id or number.
class Held {
public:
    explicit Held(SqliteConnection& connection)
        : m_connection(connection) {}

    Result<bool> fact(const FactId& id, Kind kind) {
        auto known = m_kinds.find(id);
        if (known == m_kinds.end()) {
            auto word = m_connection.single("SELECT kind FROM fact WHERE id = ?", {sqlText(id)});
            if (!word)
                return tl::unexpected(word.error());
            known = m_kinds.emplace(id, std::move(*word)).first;
        }
        return kind ? known->second == factKindWords[*kind] : !known->second.empty();
    }
    Result<bool> door(const std::string& number) {
        if (m_doors.contains(number))
            return true;
        const auto found =
            m_connection.single("SELECT 1 FROM door_number WHERE number = ?", {sqlText(number)});
        if (!found)
            return tl::unexpected(found.error());
        if (!found->empty())
            m_doors.insert(number);
        return !found->empty();
    }

private:
    SqliteConnection& m_connection;
    std::unordered_map<FactId, std::string> m_kinds;
    std::unordered_set<std::string> m_doors;
};

class Ordering {
public:
    Ordering(SqliteConnection& connection, const std::vector<const Fact*>& fresh)
        : m_held(connection)
        , m_fresh(fresh)
        , m_states(fresh.size(), State::Waits) {
        m_places.reserve(fresh.size());
        for (std::size_t i = 0; i < fresh.size(); ++i)
            m_places.emplace(fresh[i]->stamp.id, i);
        m_ordered.reserve(fresh.size());
    }

    Result<> run() {
        for (std::size_t i = 0; i < m_fresh.size(); ++i)
            if (Result<> done = place(i); !done)
                return done;
        return {};
    }
    std::vector<const Fact*> take() { return std::move(m_ordered); }

private:
    enum class State : char { Waits, Entered, Placed };

    /// Without recursion: a chain of corrections may be as long as somebody cares to make it.
    Result<> place(std::size_t first) {
        if (m_states[first] == State::Placed)
            return {};
        std::vector<std::size_t> path{first};
        while (!path.empty()) {
            const std::size_t at = path.back();
            m_states[at] = State::Entered;
            Result<std::optional<std::size_t>> before = waitsFor(*m_fresh[at]);
            if (!before)
                return tl::unexpected(before.error());
            if (*before) {
                path.push_back(**before);
                continue;
            }
            if (Result<> done = knowsDoors(*m_fresh[at]); !done)
                return done;
            m_states[at] = State::Placed;
            m_ordered.push_back(m_fresh[at]);
            path.pop_back();
        }
        return {};
    }

    /// The first fact that has to be placed before this one.
    Result<std::optional<std::size_t>> waitsFor(const Fact& fact) {
        std::optional<std::size_t> before;
        Result<> done;
        eachReference(fact, [&](const PhraseCode<1>& what, const FactId& id, Kind kind) {
            if (!done || before || id == fact.stamp.id)
                return;
            const auto place = m_places.find(id);
            if (place == m_places.end()) {
                const Result<bool> held = m_held.fact(id, kind);
                if (!held)
                    done = tl::unexpected(held.error());
                else if (!*held)
                    done = refused(fact, errors::reference_nowhere(what(id)));
                return;
            }
            const State state = m_states[place->second];
            if (kind && m_fresh[place->second]->body.index() != *kind)
                done = refused(fact, errors::reference_nowhere(what(id)));
            else if (state == State::Entered)
                done = refused(fact, errors::refers_back(what(id)));
            else if (state == State::Waits)
                before = place->second;
        });
        if (!done)
            return tl::unexpected(done.error());
        return before;
    }

    Result<> knowsDoors(const Fact& fact) {
        Result<> done;
        eachDoorNamed(fact.body, [&](const std::string& door) {
            if (!done)
                return;
            const Result<bool> held = m_held.door(door);
            if (!held)
                done = tl::unexpected(held.error());
            else if (!*held)
                done = refused(fact, errors::no_issue_has_door(door));
        });
        return done;
    }

    static Result<> refused(const Fact& fact, Phrase why) {
        return tl::unexpected(
            Error{place::fact(fact.stamp.id), errors::not_taken_in(std::move(why))});
    }

    Held m_held;
    const std::vector<const Fact*>& m_fresh;
    std::unordered_map<std::string_view, std::size_t> m_places;
    std::vector<State> m_states;
    std::vector<const Fact*> m_ordered;
};

} // namespace

Result<std::vector<const Fact*>> inOrderOfReference(SqliteConnection& connection,
                                                    const std::vector<const Fact*>& fresh) {
    Ordering ordering(connection, fresh);
    if (Result<> done = ordering.run(); !done)
        return tl::unexpected(done.error());
    return ordering.take();
}

} // namespace latchround
