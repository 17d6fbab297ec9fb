// The views for office people say what the core says of the same vessels.
#include <algorithm>
#include <chrono>
#include <map>

#include <gmock/gmock.h>

#include "core/deficiency/item.h"
#include "core/planning/due.h"
#include "core/requirement/applicability.h"
#include "core/trend/outlook.h"
#include "tests/ashore/ashore_text.h"
#include "tests/ashore/fleet_files.h"
#include "tests/ashore/postgres_server.h"

namespace latchround {
namespace {

using namespace test;
using ::testing::IsEmpty;
using ::testing::Not;

/// What was counted more than once, as rows of text in order.
std::vector<std::string> repeatedIn(const std::map<std::string, std::size_t>& counts) {
    std::vector<std::string> rows;
    for (const auto& [what, count] : counts)
        if (count > 1)
            rows.push_back(what + "\t" + std::to_string(count));
    return rows;
}

std::vector<std::string> inOrder(std::vector<std::string> rows) {
    std::ranges::sort(rows);
    return rows;
}

class Views : public ::testing::Test {
protected:
    Views()
        : lantern(sampleVessel("vellis-lantern"))
        , ternwick(sampleVessel("ternwick-lass")) {
        const DatabaseUrl url = server.database("fleet");
        collect(url, {files.put("1.zip", lantern.give()), files.put("2.zip", ternwick.give())});
        ashore = connected(url);
    }
    std::vector<std::string> said(const std::string& sql) { return rowsOf(*ashore, sql); }

    PostgresServer server;
    Files files;
    Tablet lantern;
    Tablet ternwick;
    std::unique_ptr<PostgresConnection> ashore;
};

TEST_F(Views, OpenItemsAreTheOpenItemsOfTheCore) {
    for (const Tablet* tablet : {&lantern, &ternwick}) {
        const Arrangement arrangement = tablet->file().arrangement().value();
        std::vector<std::string> open;
        for (const Item& item : itemsOf(arrangement, tablet->ledger(), shipped()))
            if (item.isOpen())
                open.push_back(item.id + "\t" + std::string(word(item.state)) + "\t" +
                               std::string(word(item.severity)) + "\t" +
                               (item.due ? isoText(*item.due) : ""));
        EXPECT_THAT(open, Not(IsEmpty()));
        EXPECT_EQ(said("SELECT id, state, severity, due FROM open_items WHERE vessel = '" +
                       arrangement.particulars.number + "'"),
                  open);
    }
}

TEST_F(Views, OverdueTestsAreThoseOfTheCoreOnTheServersDay) {
    const auto day = calendarDateFrom(said("SELECT current_date").front()).value();
    for (const Tablet* tablet : {&lantern, &ternwick}) {
        const Arrangement arrangement = tablet->file().arrangement().value();
        std::vector<std::string> overdue;
        for (const DueItem& item : whatFallsDue(arrangement, tablet->ledger(), shipped(), day)) {
            const std::string id = item.upkeep ? item.upkeep->id : "certificate";
            for (const std::string& door : item.overdue)
                overdue.push_back(id + "\t" + door);
            if (item.doors == 0 && item.is_overdue)
                overdue.push_back(id + "\t");
        }
        std::ranges::sort(overdue);
        EXPECT_THAT(overdue, Not(IsEmpty()));
        auto view = said("SELECT upkeep, door FROM overdue_tests WHERE vessel = '" +
                         arrangement.particulars.number + "'");
        std::ranges::sort(view);
        EXPECT_EQ(view, overdue);
    }
}

TEST_F(Views, TheLineOfADoorIsTheCoresLineThroughTheSamePoints) {
    const Arrangement arrangement = lantern.file().arrangement().value();
    const Ledger ledger = lantern.ledger();
    int compared = 0;
    for (const std::string& row : said("SELECT door, requirement, points, per_year FROM "
                                       "door_closing_line WHERE vessel = 'VC-0060'")) {
        std::istringstream cells(row);
        std::string door_number;
        std::string requirement;
        int points = 0;
        double per_year = 0;
        std::getline(cells, door_number, '\t');
        std::getline(cells, requirement, '\t');
        cells >> points >> per_year;
        const Door& door = *findDoor(arrangement, door_number);
        const Requirement& timed =
            inForce(*findRequirement(shipped(), requirement), arrangement.particulars, door,
                    locationOf(arrangement.particulars, findBoundary(arrangement, door.boundary),
                               shipped().divisions));
        const Outlook outlook =
            outlookOf(timedDays(ledger, ledger.walkdowns(), door, timed), timed.low, timed.high,
                      {std::chrono::year(2026), std::chrono::November, std::chrono::day(1)});
        ASSERT_TRUE(outlook.line) << door_number;
        EXPECT_EQ(points, outlook.line->count) << door_number;
        EXPECT_NEAR(per_year, outlook.line->slope, 1e-9) << door_number;
        ++compared;
    }
    EXPECT_GT(compared, 5);
}

/// One slope for all doors of a maker and kind: each door from its own mean, worked out here from
/// the points.
TEST_F(Views, DriftOfAMakersKindIsTheSlopeThroughAllItsDoorsEachFromItsOwnMean) {
    struct Sums {
        double xx = 0;
        double xy = 0;
        int points = 0;
    };
    std::map<std::string, Sums> by_kind;
    std::map<std::string, std::vector<Point>> by_door; // "maker kind class requirement|vessel door"
    for (const std::string& row :
         said("SELECT maker || ' ' || kind || ' ' || fire_class || ' ' || requirement || '|' ||"
              " vessel || door,"
              " (day - date '2000-01-01')::text, value::text FROM closing JOIN door_in_force USING"
              " (vessel, door) WHERE present_line ORDER BY day")) {
        const auto tab = row.find('\t');
        const auto next = row.find('\t', tab + 1);
        by_door[row.substr(0, tab)].push_back(
            {std::stod(row.substr(tab + 1, next - tab)) / 365.25, std::stod(row.substr(next))});
    }
    for (const auto& [key, points] : by_door) {
        const auto line = lineThrough(points);
        if (!line)
            continue;
        Sums& sums = by_kind[key.substr(0, key.find('|'))];
        sums.xx += line->sum_xx;
        sums.xy += line->slope * line->sum_xx;
        sums.points += line->count;
    }
    const auto rows = said("SELECT maker || ' ' || kind || ' ' || fire_class || ' ' || requirement,"
                           " points::text, per_year::text FROM closing_drift");
    ASSERT_EQ(rows.size(), by_kind.size());
    EXPECT_THAT(rows, Not(IsEmpty()));
    for (const std::string& row : rows) {
        const auto tab = row.find('\t');
        const auto next = row.find('\t', tab + 1);
        const Sums& sums = by_kind.at(row.substr(0, tab));
        EXPECT_EQ(std::stoi(row.substr(tab + 1)), sums.points);
        EXPECT_NEAR(std::stod(row.substr(next)), sums.xy / sums.xx, 1e-9) << row;
    }
}

TEST_F(Views, ARepeatedDefectIsCountedAsTheCoreCountsItsFindings) {
    std::map<std::string, std::size_t> times;
    const Arrangement arrangement = lantern.file().arrangement().value();
    for (const Item& item : itemsOf(arrangement, lantern.ledger(), shipped()))
        if (item.state != ItemState::Withdrawn)
            times[item.door + "\t" + item.requirement] += item.findings.size();
    const std::vector<std::string> repeated = repeatedIn(times);
    EXPECT_THAT(repeated, Not(IsEmpty()));
    EXPECT_EQ(said("SELECT door, requirement, times_found::text FROM repeat_defects WHERE vessel ="
                   " 'VC-0060' ORDER BY door, requirement"),
              repeated);
}

TEST_F(Views, RepeatsOfAKindAndOfAMakerAreCountedOverAllVessels) {
    std::map<std::string, std::size_t> of_kind;
    std::map<std::string, std::size_t> of_maker;
    for (const Tablet* tablet : {&lantern, &ternwick}) {
        const Arrangement arrangement = tablet->file().arrangement().value();
        for (const Item& item : itemsOf(arrangement, tablet->ledger(), shipped())) {
            const Door& door = *findDoor(arrangement, item.door);
            if (item.state == ItemState::Withdrawn)
                continue;
            const std::string kind(word(door.kind));
            of_kind[kind + "\t" + std::string(word(door.fire_class)) + "\t" + item.requirement] +=
                item.findings.size();
            of_maker[door.maker + "\t" + kind + "\t" + item.requirement] += item.findings.size();
        }
    }
    EXPECT_THAT(repeatedIn(of_kind), Not(IsEmpty()));
    EXPECT_THAT(inOrder(said("SELECT kind, fire_class, requirement, times_found::text FROM"
                             " repeat_defects_by_kind")),
                repeatedIn(of_kind));
    EXPECT_THAT(inOrder(said("SELECT maker, kind, requirement, times_found::text FROM"
                             " repeat_defects_by_maker")),
                repeatedIn(of_maker));
}

TEST_F(Views, AnOfficeRoleThatMayOnlyReadCanReadThemAll) {
    EXPECT_TRUE(ashore->script("CREATE ROLE reader; GRANT USAGE ON SCHEMA latchround TO reader;"
                               "GRANT SELECT ON ALL TABLES IN SCHEMA latchround TO reader;"
                               "SET ROLE reader"));
    for (const char* view :
         {"open_items", "overdue_tests", "repeat_defects", "repeat_defects_by_kind",
          "repeat_defects_by_maker", "door_closing_line", "closing_drift"})
        EXPECT_THAT(said(std::string("SELECT * FROM ") + view + " LIMIT 1"), Not(IsEmpty()));
}

} // namespace
} // namespace latchround
