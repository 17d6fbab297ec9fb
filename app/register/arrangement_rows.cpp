#include "app/register/arrangement_rows.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include <sqlite3.h>

#include "app/register/columns.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "core/vessel/arrangement_fields.h"

namespace latchround {

namespace {

using Spaces = std::optional<std::pair<int, int>>;

/// The columns of a table in the order of the fields of its rows. Two numbers of one field are two
/// columns; a list is a table of its own.
struct IssueColumns {
    std::vector<std::string> names;

    template <class Member>
    void operator()(const ArrangementColumn& column, const Member&) {
        const std::string name(column.name);
        if constexpr (std::is_same_v<Member, Spaces>) {
            names.push_back(name + "_one");
            names.push_back(name + "_other");
        } else if constexpr (!is_part<Member>) {
            names.push_back(name);
        }
    }
};

/// The same of their values. A reference that is empty refers to nothing.
struct IssueValues {
    std::vector<Value> values;

    template <class Member>
    void operator()(const ArrangementColumn&, const Member& member) {
        if constexpr (std::is_same_v<Member, Spaces>) {
            values.push_back(member ? Value(member->first) : Value());
            values.push_back(member ? Value(member->second) : Value());
        } else if constexpr (!is_part<Member>) {
            values.push_back(columnValue(member));
        }
    }
    void operator()(const ArrangementColumn& column, const std::string& text) {
        const bool refers = column.role == ArrangementColumn::Role::Refers;
        values.push_back(refers && text.empty() ? Value() : sqlText(text));
    }
};

/// And back, from this column on.
struct IssueReader {
    Row& row;
    int column;

    template <class Member>
    void operator()(const ArrangementColumn&, Member& member) {
        if constexpr (std::is_same_v<Member, Spaces>) {
            if (!row.isNull(column) && !row.isNull(column + 1))
                member.emplace(row.smallWhole(column), row.smallWhole(column + 1));
            column += 2;
        } else if constexpr (!is_part<Member>) {
            readColumn(row, column++, member);
        }
    }
};

/// What is said to SQLite of one table of an issue, written once.
struct ListedSql {
    std::string insert;
    std::string select; ///< the columns of keys first
};

template <class Listed>
ListedSql listedSqlOf(const std::string& table, const std::vector<std::string>& keys,
                      const std::vector<std::string>& read_first) {
    IssueColumns columns;
    Listed row{};
    eachField(row, columns);
    std::vector<std::string> written = keys;
    written.insert(written.end(), columns.names.begin(), columns.names.end());
    std::vector<std::string> read = read_first;
    read.insert(read.end(), columns.names.begin(), columns.names.end());
    // With its table before it: SQLite takes a quoted name that it does not know for a text.
    std::string list;
    for (const std::string& column : read)
        list += (list.empty() ? "t." : ", t.") + quotedName(column);
    return {insertInto(table, written), "SELECT " + list + " FROM " + table + " AS t"};
}

const ListedSql& issueSql() {
    static const std::vector<std::string> moment{"adopted_utc_ms", "ship_offset_minutes"};
    static const ListedSql sql = listedSqlOf<Particulars>(
        "arrangement", moment, {"id", "adopted_utc_ms", "ship_offset_minutes"});
    return sql;
}

constexpr const char* tableOf(const Deck&) {
    return "deck";
}
constexpr const char* tableOf(const Zone&) {
    return "zone";
}
constexpr const char* tableOf(const Boundary&) {
    return "boundary";
}
constexpr const char* tableOf(const Door&) {
    return "door";
}

template <class Listed>
const ListedSql& listedSql() {
    static const ListedSql sql = [] {
        ListedSql made = listedSqlOf<Listed>(tableOf(Listed{}), {"arrangement", "seq"}, {"seq"});
        made.select += " WHERE t.arrangement = ? ORDER BY t.seq";
        return made;
    }();
    return sql;
}

Result<> added(const Result<int>& result) {
    if (!result)
        return tl::unexpected(result.error());
    return {};
}

Result<> writeGroups(SqliteConnection& connection, std::int64_t issue, std::int64_t seq,
                     const Door& door) {
    for (std::size_t i = 0; i < door.release_groups.size(); ++i)
        if (Result<> done = added(
                connection.run("INSERT INTO door_release_groups (arrangement, door_seq, seq, value)"
                               " VALUES (?,?,?,?)",
                               {Value(issue), Value(seq), Value(static_cast<std::int64_t>(i)),
                                sqlText(door.release_groups[i])}));
            !done)
            return done;
    return {};
}

Result<> writeNumber(SqliteConnection& connection, const Door& door) {
    return added(
        connection.run("INSERT INTO door_number (number) VALUES (?) ON CONFLICT DO NOTHING",
                       {sqlText(door.number)}));
}

/// Writes each row with its place in the list; stops at the first error.
template <class Listed>
Result<> writeRows(SqliteConnection& connection, std::int64_t issue,
                   const std::vector<Listed>& list) {
    Result<> done;
    for (std::size_t i = 0; i < list.size() && done; ++i) {
        const auto seq = static_cast<std::int64_t>(i);
        if constexpr (std::is_same_v<Listed, Door>)
            done = writeNumber(connection, list[i]);
        IssueValues row{{Value(issue), Value(seq)}};
        eachField(list[i], row);
        if (done)
            done = added(connection.run(listedSql<Listed>().insert, row.values));
        if constexpr (std::is_same_v<Listed, Door>)
            if (done)
                done = writeGroups(connection, issue, seq, list[i]);
    }
    return done;
}

template <class Listed>
Result<> readRows(SqliteConnection& connection, std::int64_t issue, std::vector<Listed>& list) {
    return connection.each(listedSql<Listed>().select, {Value(issue)}, [&](Row& row) {
        eachField(list.emplace_back(), IssueReader{row, 1});
    });
}

/// `doors`: of that issue, in the order of their seq, whatever numbers these are.
Result<> readGroups(SqliteConnection& connection, std::int64_t issue, std::vector<Door>& doors) {
    auto door = doors.begin();
    std::optional<std::int64_t> seq;
    return connection.each("SELECT d.seq, g.value FROM door AS d LEFT JOIN door_release_groups AS g"
                           " ON g.arrangement = d.arrangement AND g.door_seq = d.seq"
                           " WHERE d.arrangement = ? ORDER BY d.seq, g.seq",
                           {Value(issue)}, [&](Row& row) {
                               if (const auto before = std::exchange(seq, row.whole(0));
                                   before && before != seq)
                                   ++door;
                               if (!row.isNull(1))
                                   door->release_groups.push_back(row.text(1));
                           });
}

Result<> readLists(SqliteConnection& connection, std::int64_t issue, Arrangement& arrangement) {
    Result<> done = readRows(connection, issue, arrangement.decks);
    if (done)
        done = readRows(connection, issue, arrangement.zones);
    if (done)
        done = readRows(connection, issue, arrangement.boundaries);
    if (done)
        done = readRows(connection, issue, arrangement.doors);
    return done ? readGroups(connection, issue, arrangement.doors) : done;
}

Result<std::vector<Issue>> readWhere(SqliteConnection& connection, const std::string& condition) {
    std::vector<Issue> issues;
    std::vector<std::int64_t> rows;
    Result<> done = connection.each(issueSql().select + condition, {}, [&](Row& row) {
        rows.push_back(row.whole(0));
        Issue& issue = issues.emplace_back();
        issue.adopted = {row.whole(1), row.smallWhole(2)};
        eachField(issue.arrangement.particulars, IssueReader{row, 3});
    });
    for (std::size_t i = 0; i < issues.size() && done; ++i)
        done = readLists(connection, rows[i], issues[i].arrangement);
    if (!done)
        return tl::unexpected(done.error());
    std::ranges::sort(issues, isEarlier);
    return issues;
}

/// Doors that some issue has known and this arrangement does not list: facts name no others.
Result<std::set<std::string>> doorsLeftOut(SqliteConnection& connection,
                                           const Arrangement& arrangement) {
    std::set<std::string_view> listed;
    for (const Door& door : arrangement.doors)
        listed.insert(door.number);
    std::set<std::string> left_out;
    const Result<> done = connection.each("SELECT number FROM door_number", {}, [&](Row& row) {
        if (!listed.contains(row.text(0)))
            left_out.insert(row.text(0));
    });
    if (!done)
        return tl::unexpected(done.error());
    return left_out;
}

/// Marks and ends of a run need not be asked for: the start of their run names the door.
Result<bool> isAnythingRecordedOf(SqliteConnection& connection,
                                  const std::set<std::string>& doors) {
    if (doors.empty())
        return false;
    std::string places;
    std::vector<Value> numbers;
    for (const std::string& number : doors) {
        places += places.empty() ? "?" : ",?";
        numbers.push_back(sqlText(number));
    }
    bool found = false;
    const Result<> done =
        connection.each("SELECT 1 FROM fact WHERE door IN (" + places + ") LIMIT 1", numbers,
                        [&](Row&) { found = true; });
    if (!done)
        return tl::unexpected(done.error());
    return found;
}

} // namespace

Result<std::vector<Issue>> readIssues(SqliteConnection& connection) {
    return readWhere(connection, "");
}

Result<std::optional<Issue>> readIssueInForce(SqliteConnection& connection) {
    Result<std::vector<Issue>> latest = readWhere(
        connection, " WHERE adopted_utc_ms = (SELECT max(adopted_utc_ms) FROM arrangement)");
    if (!latest)
        return tl::unexpected(latest.error());
    return latest->empty() ? std::nullopt : std::optional(std::move(latest->back()));
}

Result<> writeIssue(SqliteConnection& connection, const Issue& issued) {
    const auto& [when, arrangement] = issued;
    IssueValues row{{Value(when.utc_ms), Value(when.ship_offset_minutes)}};
    eachField(arrangement.particulars, row);
    Result<> done = added(connection.run(issueSql().insert, row.values));
    const std::int64_t issue = sqlite3_last_insert_rowid(connection.handle());
    if (done)
        done = writeRows(connection, issue, arrangement.decks);
    if (done)
        done = writeRows(connection, issue, arrangement.zones);
    if (done)
        done = writeRows(connection, issue, arrangement.boundaries);
    if (done)
        done = writeRows(connection, issue, arrangement.doors);
    return done;
}

Result<LostDoors> lostDoors(SqliteConnection& connection, const Arrangement& arrangement) {
    const auto left_out = doorsLeftOut(connection, arrangement);
    if (!left_out)
        return tl::unexpected(left_out.error());
    LostDoors lost;
    const auto tested = isAnythingRecordedOf(connection, *left_out);
    if (tested && !*tested)
        return lost;
    const Result<> done = connection.each(
        "SELECT door, count(*) FROM ("
        " SELECT door FROM fact WHERE door IS NOT NULL"
        " UNION ALL SELECT run.door FROM mark JOIN fact AS run ON run.id = mark.run"
        " UNION ALL SELECT run.door FROM run_ended JOIN fact AS run ON run.id = run_ended.run)"
        " GROUP BY door ORDER BY door",
        {}, [&](Row& row) {
            if (left_out->contains(row.text(0)))
                lost.emplace_back(row.text(0), row.whole(1));
        });
    if (!tested || !done)
        return tl::unexpected(tested ? done.error() : tested.error());
    return lost;
}

Result<> refuseLostDoors(SqliteConnection& connection, const Arrangement& arrangement) {
    const Result<LostDoors> found = lostDoors(connection, arrangement);
    if (!found)
        return tl::unexpected(found.error());
    const LostDoors& lost = *found;
    if (lost.empty())
        return {};
    const auto& [number, facts] = lost.front();
    Phrase what =
        facts == 1 ? errors::door_with_fact_dropped() : errors::door_with_facts_dropped(facts);
    if (lost.size() == 2)
        what = errors::and_one_more_door(std::move(what));
    else if (lost.size() > 2)
        what = errors::and_more_doors(std::move(what), lost.size() - 1);
    return tl::unexpected(Error{place::door(number), errors::not_adopted(std::move(what))});
}

} // namespace latchround
