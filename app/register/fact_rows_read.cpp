#include "app/register/fact_rows_read.h"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "app/register/fact_tables.h"

namespace latchround {

namespace {

// Columns of the header, as fact_tables.cpp asks for them.
constexpr int walkdown_column = 6;
constexpr int door_column = 7;
constexpr int first_of_body = 8;

Stamp stampOf(Row& row) {
    Stamp stamp{
        row.text(0), {row.whole(1), row.smallWhole(2)}, row.text(3), row.text(4), std::nullopt};
    readColumn(row, 5, stamp.supersedes);
    return stamp;
}

struct BodyReader {
    RowReader columns;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role> key, Member& member) {
        if constexpr (Role == FieldRole::Walkdown)
            member = columns.row.text(walkdown_column);
        else if constexpr (Role == FieldRole::Door)
            member = columns.row.text(door_column);
        else
            (*this)(key.name, member);
    }
    template <class Member>
    void operator()(const char* key, Member& member) {
        if constexpr (!is_part<Member>)
            columns(key, member);
    }
};

/// Of which facts of a kind rows are asked for: one, or all.
class Wanted {
public:
    explicit Wanted(const FactId* one)
        : m_is_one(one)
        , m_id(one ? sqlText(*one) : Value()) {}

    template <class Sql>
    const std::string& of(const Sql& sql) const {
        return m_is_one ? sql.select_one : sql.select;
    }
    Values values() const { return m_is_one ? Values(&m_id, 1) : Values(); }

private:
    bool m_is_one;
    Value m_id;
};

template <class Element>
void takeRow(Row& row, std::vector<Element>& list) {
    eachColumnOfPart(list.emplace_back(), RowReader{row, 1});
}
template <Described Whole>
void takeRow(Row& row, std::optional<Whole>& part) {
    eachColumnOfPart(part.emplace(), RowReader{row, 1});
}

/// Facts that have parts are few, a handful a year.
template <class Body>
Result<> fillParts(SqliteConnection& connection, const Wanted& wanted, std::span<Fact> facts) {
    const std::vector<PartSql>& parts = factSql<Body>().parts;
    if (parts.empty() || facts.empty())
        return {};
    std::unordered_map<std::string_view, Body*> bodies;
    for (Fact& fact : facts)
        bodies.emplace(fact.stamp.id, std::get_if<Body>(&fact.body));
    Result<> done;
    for (std::size_t i = 0; i < parts.size() && done; ++i)
        done = connection.each(wanted.of(parts[i]), wanted.values(), [&](Row& row) {
            const auto body = bodies.find(row.text(0));
            if (body == bodies.end())
                return;
            std::size_t at = 0;
            eachPart(*body->second, [&](const char*, auto& part) {
                if (at++ == i)
                    takeRow(row, part);
            });
        });
    return done;
}

template <class Body>
Result<> collect(SqliteConnection& connection, const FactId* one, std::vector<Fact>& facts) {
    const Wanted wanted(one);
    const std::size_t before = facts.size();
    const Result<> done =
        connection.each(wanted.of(factSql<Body>()), wanted.values(), [&](Row& row) {
            Fact& fact = facts.emplace_back();
            fact.stamp = stampOf(row);
            eachField(fact.body.emplace<Body>(), BodyReader{{row, first_of_body}});
        });
    return done ? fillParts<Body>(connection, wanted, std::span(facts).subspan(before)) : done;
}

template <std::size_t... Kind>
constexpr auto collectorsOf(std::index_sequence<Kind...>) {
    return std::array{&collect<std::variant_alternative_t<Kind, FactBodies>>...};
}

constexpr auto collectors = collectorsOf(std::make_index_sequence<factKindWords.size()>{});

} // namespace

Result<std::vector<Fact>> readFacts(SqliteConnection& connection) {
    std::vector<Fact> facts;
    for (const auto& ofKind : collectors)
        if (Result<> done = ofKind(connection, nullptr, facts); !done)
            return tl::unexpected(done.error());
    std::sort(facts.begin(), facts.end(),
              [](const Fact& left, const Fact& right) { return left.stamp.id < right.stamp.id; });
    return facts;
}

Result<std::vector<Fact>> readFactsOfKind(SqliteConnection& connection, std::size_t kind) {
    std::vector<Fact> facts;
    if (Result<> done = collectors[kind](connection, nullptr, facts); !done)
        return tl::unexpected(done.error());
    return facts;
}

Result<std::optional<Fact>> readFact(SqliteConnection& connection, const FactId& id) {
    const auto word = connection.single("SELECT kind FROM fact WHERE id = ?", {sqlText(id)});
    if (!word)
        return tl::unexpected(word.error());
    const auto kind = std::ranges::find(factKindWords, *word);
    if (kind == factKindWords.end())
        return std::optional<Fact>();
    std::vector<Fact> facts;
    const auto index = static_cast<std::size_t>(kind - factKindWords.begin());
    if (Result<> done = collectors[index](connection, &id, facts); !done)
        return tl::unexpected(done.error());
    return facts.empty() ? std::optional<Fact>() : std::optional(std::move(facts.front()));
}

} // namespace latchround
