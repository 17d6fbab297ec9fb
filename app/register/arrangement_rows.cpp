#include "app/register/arrangement_rows.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include <sqlite3.h>

namespace latchround {

namespace {

Value dateOrNull(const std::optional<CalendarDate>& date) {
    return date ? sqlText(isoText(*date)) : Value();
}

Value classOrNull(const std::optional<FireClass>& value) {
    return value ? sqlText(word(*value)) : Value();
}

Done added(const Result<int>& result) {
    if (!result)
        return tl::unexpected(result.error());
    return {};
}

std::array<Value, 28> doorValues(std::int64_t issue, std::int64_t seq, const Door& door) {
    return {sqlWhole(issue),
            sqlWhole(seq),
            sqlText(door.number),
            sqlReference(door.deck),
            door.x_m,
            door.y_m,
            sqlReference(door.boundary),
            sqlText(word(door.kind)),
            sqlText(word(door.fire_class)),
            sqlText(door.plate),
            door.opening_m,
            door.leaf_mass_kg ? Value(*door.leaf_mass_kg) : Value(),
            sqlFlag(door.power_operated),
            sqlFlag(door.hold_back),
            sqlFlag(door.alarm),
            sqlFlag(door.designed_to_reopen),
            sqlFlag(door.hose_port),
            sqlFlag(door.escape_route),
            sqlFlag(door.sill_in_frame),
            sqlFlag(door.latch),
            sqlFlag(door.watertight),
            sqlText(word(door.normally)),
            dateOrNull(door.installed),
            sqlFlag(door.weathertight),
            sqlFlag(door.escape_trunk),
            sqlFlag(door.special_category),
            sqlFlag(door.faces_embarkation),
            sqlText(door.maker)};
}

Done writeDoor(SqliteConnection& connection, std::int64_t issue, std::int64_t seq,
               const Door& door) {
    if (Done done = added(
            connection.run("INSERT INTO door_number (number) VALUES (?) ON CONFLICT DO NOTHING",
                           {sqlText(door.number)}));
        !done)
        return done;
    if (Done done = added(connection.run(
            "INSERT INTO door (arrangement, seq, number, deck, x_m, y_m, boundary, "
            "kind, fire_class, plate,"
            " opening_m, leaf_mass_kg, power_operated, hold_back, alarm, "
            "designed_to_reopen, hose_port,"
            " escape_route, sill_in_frame, latch, watertight, normally, installed,"
            " weathertight, escape_trunk, special_category, faces_embarkation, maker)"
            " VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)",
            doorValues(issue, seq, door)));
        !done)
        return done;
    for (std::size_t i = 0; i < door.release_groups.size(); ++i)
        if (Done done = added(connection.run("INSERT INTO door_release_group (arrangement, "
                                             "door_seq, seq, name) VALUES (?,?,?,?)",
                                             {sqlWhole(issue), sqlWhole(seq),
                                              sqlWhole(static_cast<std::int64_t>(i)),
                                              sqlText(door.release_groups[i])}));
            !done)
            return done;
    return {};
}

/// Writes each element with its place in the list; stops at the first complaint.
template <class T, class Write>
Done writeList(const std::vector<T>& list, const Write& write) {
    for (std::size_t i = 0; i < list.size(); ++i)
        if (Done done = write(static_cast<std::int64_t>(i), list[i]); !done)
            return done;
    return {};
}

Door doorOf(Row& row) {
    Door door;
    door.number = row.text(1);
    door.deck = row.text(2);
    door.x_m = row.real(3);
    door.y_m = row.real(4);
    door.boundary = row.text(5);
    door.kind = row.word(6, doorKindFrom);
    door.fire_class = row.word(7, fireClassFrom);
    door.plate = row.text(8);
    door.opening_m = row.real(9);
    door.leaf_mass_kg = row.realIfAny(10);
    door.power_operated = row.flag(11);
    door.hold_back = row.flag(12);
    door.alarm = row.flag(13);
    door.designed_to_reopen = row.flag(14);
    door.hose_port = row.flag(15);
    door.escape_route = row.flag(16);
    door.sill_in_frame = row.flag(17);
    door.latch = row.flag(18);
    door.watertight = row.flag(19);
    door.normally = row.word(20, normalPositionFrom);
    door.installed = row.dateIfAny(21);
    door.weathertight = row.flag(22);
    door.escape_trunk = row.flag(23);
    door.special_category = row.flag(24);
    door.faces_embarkation = row.flag(25);
    door.maker = row.text(26);
    return door;
}

Done readDoors(SqliteConnection& connection, std::int64_t issue, std::vector<Door>& doors) {
    std::map<std::int64_t, std::vector<std::string>> groups;
    if (Done done = connection.each(
            "SELECT door_seq, name FROM door_release_group WHERE arrangement = ?"
            " ORDER BY door_seq, seq",
            {issue}, [&](Row& row) { groups[row.whole(0)].push_back(row.text(1)); });
        !done)
        return done;
    return connection.each(
        "SELECT seq, number, deck, x_m, y_m, boundary, kind, fire_class, plate, opening_m, "
        "leaf_mass_kg,"
        " power_operated, hold_back, alarm, designed_to_reopen, hose_port, escape_route, "
        "sill_in_frame,"
        " latch, watertight, normally, installed, weathertight, escape_trunk, special_category, "
        "faces_embarkation, maker "
        "FROM door WHERE arrangement = ? ORDER BY seq",
        {issue}, [&](Row& row) {
            doors.push_back(doorOf(row));
            doors.back().release_groups = std::move(groups[row.whole(0)]);
        });
}

std::optional<std::pair<int, int>> spacesOf(Row& row) {
    const auto one = row.wholeIfAny<int>(7);
    const auto other = row.wholeIfAny<int>(8);
    return one && other ? std::optional(std::pair(*one, *other)) : std::nullopt;
}

Done readPlaces(SqliteConnection& connection, std::int64_t issue, Arrangement& arrangement) {
    if (Done done = connection.each(
            "SELECT number, name, height_m FROM deck WHERE arrangement = ? ORDER BY seq", {issue},
            [&](Row& row) {
                arrangement.decks.push_back({row.text(0), row.text(1), row.real(2)});
            });
        !done)
        return done;
    if (Done done = connection.each(
            "SELECT number, aft_m, forward_m, area_m2 FROM zone WHERE arrangement = ? ORDER BY seq",
            {issue},
            [&](Row& row) {
                arrangement.zones.push_back(
                    {row.text(0), row.real(1), row.real(2), row.realIfAny(3)});
            });
        !done)
        return done;
    return connection.each("SELECT id, place, zone_aft, zone_forward, x_m, required, division, "
                           "space_one, space_other FROM boundary WHERE arrangement = ?"
                           " ORDER BY seq",
                           {issue}, [&](Row& row) {
                               arrangement.boundaries.push_back(
                                   {row.text(0), row.word(1, placeFrom), row.text(2), row.text(3),
                                    row.real(4), row.wordIfAny(5, fireClassFrom),
                                    row.word(6, divisionFrom), spacesOf(row)});
                           });
}

Result<std::vector<Issue>> readWhere(SqliteConnection& connection, const std::string& condition) {
    std::vector<Issue> issues;
    std::vector<std::int64_t> rows;
    Done done = connection.each(
        "SELECT id, name, number, regime, passengers, keel_laid, sprinklers, length_m,"
        " adopted_utc_ms, ship_offset_minutes FROM arrangement" +
            condition,
        {}, [&](Row& row) {
            rows.push_back(row.whole(0));
            Issue& issue = issues.emplace_back();
            issue.arrangement.particulars = {
                row.text(1),       row.text(2),      row.word(3, regimeFrom),
                row.smallWhole(4), row.dateIfAny(5), row.flag(6),
                row.real(7)};
            issue.adopted = {row.whole(8), row.smallWhole(9)};
        });
    for (std::size_t i = 0; i < issues.size() && done; ++i) {
        done = readPlaces(connection, rows[i], issues[i].arrangement);
        if (done)
            done = readDoors(connection, rows[i], issues[i].arrangement.doors);
    }
    if (!done)
        return tl::unexpected(done.error());
    std::ranges::sort(issues, isEarlier);
    return issues;
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

Done writeIssue(SqliteConnection& connection, const Issue& issued) {
    const auto& [when, arrangement] = issued;
    const Particulars& vessel = arrangement.particulars;
    if (Done done = added(connection.run(
            "INSERT INTO arrangement (adopted_utc_ms, ship_offset_minutes, name, number, regime, "
            "passengers,"
            " keel_laid, sprinklers, length_m) VALUES (?,?,?,?,?,?,?,?,?)",
            {sqlWhole(when.utc_ms), when.ship_offset_minutes, sqlText(vessel.name),
             sqlText(vessel.number), sqlText(word(vessel.regime)), vessel.passengers,
             dateOrNull(vessel.keel_laid), sqlFlag(vessel.sprinklers), vessel.length_m}));
        !done)
        return done;
    const std::int64_t issue = sqlite3_last_insert_rowid(connection.handle());
    Done done = writeList(arrangement.decks, [&](std::int64_t seq, const Deck& deck) {
        return added(connection.run(
            "INSERT INTO deck (arrangement, seq, number, name, height_m) VALUES (?,?,?,?,?)",
            {sqlWhole(issue), sqlWhole(seq), sqlText(deck.number), sqlText(deck.name),
             deck.height_m}));
    });
    if (done)
        done = writeList(arrangement.zones, [&](std::int64_t seq, const Zone& zone) {
            return added(connection.run(
                "INSERT INTO zone (arrangement, seq, number, aft_m, forward_m, area_m2)"
                " VALUES (?,?,?,?,?,?)",
                {sqlWhole(issue), sqlWhole(seq), sqlText(zone.number), zone.aft_m, zone.forward_m,
                 zone.area_m2 ? Value(*zone.area_m2) : Value()}));
        });
    if (done)
        done = writeList(arrangement.boundaries, [&](std::int64_t seq, const Boundary& boundary) {
            return added(
                connection.run("INSERT INTO boundary (arrangement, seq, id, place, zone_aft, "
                               "zone_forward, x_m, required, division, space_one, space_other)"
                               " VALUES (?,?,?,?,?,?,?,?,?,?,?)",
                               {sqlWhole(issue), sqlWhole(seq), sqlText(boundary.id),
                                sqlText(word(boundary.place)), sqlReference(boundary.zone_aft),
                                sqlReference(boundary.zone_forward), boundary.x_m,
                                classOrNull(boundary.required), sqlText(word(boundary.division)),
                                boundary.spaces ? Value(boundary.spaces->first) : Value(),
                                boundary.spaces ? Value(boundary.spaces->second) : Value()}));
        });
    if (done)
        done = writeList(arrangement.doors, [&](std::int64_t seq, const Door& door) {
            return writeDoor(connection, issue, seq, door);
        });
    return done;
}

Result<LostDoors> lostDoors(SqliteConnection& connection, const Arrangement& arrangement) {
    LostDoors lost;
    const Done done = connection.each(
        "SELECT door, count(*) FROM ("
        " SELECT door FROM fact WHERE door IS NOT NULL"
        " UNION ALL SELECT run.door FROM mark JOIN fact AS run ON run.id = mark.run"
        " UNION ALL SELECT run.door FROM run_ended JOIN fact AS run ON run.id = run_ended.run)"
        " GROUP BY door ORDER BY door",
        {}, [&](Row& row) {
            if (findDoor(arrangement, row.text(0)) == nullptr)
                lost.emplace_back(row.text(0), row.whole(1));
        });
    if (!done)
        return tl::unexpected(done.error());
    return lost;
}

Done refuseLostDoors(SqliteConnection& connection, const Arrangement& arrangement) {
    const Result<LostDoors> found = lostDoors(connection, arrangement);
    if (!found)
        return tl::unexpected(found.error());
    const LostDoors& lost = *found;
    if (lost.empty())
        return {};
    const auto& [number, facts] = lost.front();
    std::string what = "the new arrangement has no such door, but " + std::to_string(facts) +
                       (facts == 1 ? " fact is" : " facts are") + " recorded about it";
    if (lost.size() > 1)
        what += " (and " + std::to_string(lost.size() - 1) + " more such doors)";
    return tl::unexpected(
        Complaint{"door " + number, what + ": NOT adopted.",
                  "Keep the door in the arrangement, under the number it was tested by."});
}

} // namespace latchround
