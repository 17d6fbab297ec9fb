#include <gtest/gtest.h>

#include "core/deficiency/grouping.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

CalendarDate day(const char* text) {
    return calendarDateFrom(text).value();
}

Item item(const std::string& id, const char* found, std::optional<CalendarDate> due = {},
          Severity severity = Severity::Serious, const std::string& assigned = {}) {
    Item one;
    one.id = id;
    one.door = "5-31";
    const auto at = std::chrono::milliseconds(std::chrono::sys_days(day(found)).time_since_epoch());
    one.findings.push_back({Stamp{id, {at.count(), 0}, "p", "d", {}}, {}});
    one.due = due;
    one.severity = severity;
    one.assigned = assigned;
    return one;
}

std::vector<std::string> idsOf(const ItemGroup& group) {
    std::vector<std::string> ids;
    for (const Item* one : group.items)
        ids.push_back(one->id);
    return ids;
}

} // namespace

TEST(Grouping, ByDayDueOverdueFirstAndNoDayLast) {
    const given::RecordedShip ship;
    const std::vector<Item> items{
        item("a", "2026-11-01"), item("b", "2026-11-01", day("2026-12-03")),
        item("c", "2026-11-01", day("2026-11-25")), item("d", "2026-11-01", day("2026-11-26"))};
    const auto groups = grouped(items, GroupBy::Due, ship.arrangement, day("2026-11-26"));
    ASSERT_EQ(groups.size(), 3u);
    EXPECT_EQ(groups[0].band, int(DueBand::Overdue));
    EXPECT_EQ(idsOf(groups[0]), std::vector<std::string>{"c"});
    EXPECT_EQ(idsOf(groups[1]), (std::vector<std::string>{"d", "b"}));
    EXPECT_EQ(groups[2].band, int(DueBand::NoDay));
}

TEST(Grouping, ByAgeOldestFirst) {
    const given::RecordedShip ship;
    const std::vector<Item> items{item("new", "2026-11-20"), item("old", "2026-08-01"),
                                  item("month", "2026-10-26")};
    EXPECT_EQ(daysOpen(items[0], day("2026-11-26")), 6);
    const auto groups = grouped(items, GroupBy::Age, ship.arrangement, day("2026-11-26"));
    ASSERT_EQ(groups.size(), 3u);
    EXPECT_EQ(idsOf(groups[0]), std::vector<std::string>{"old"});
    EXPECT_EQ(groups[1].band, int(AgeBand::OverMonth));
    EXPECT_EQ(groups[2].band, int(AgeBand::ThisWeek));
}

TEST(Grouping, BySeverityAndPersonAndZone) {
    given::RecordedShip ship;
    ship.arrangement.boundaries.push_back(
        {"stair", Place::Stairway, "3", "3", 80, FireClass::A60, {}, {}});
    Door stair = given::hingedDoor();
    stair.number = "5-40";
    stair.boundary = "stair";
    ship.arrangement.doors.push_back(stair);
    std::vector<Item> items{item("a", "2026-11-01", {}, Severity::Minor, "Ove Brandlund"),
                            item("b", "2026-11-02", {}, Severity::Critical),
                            item("c", "2026-11-03", day("2026-12-01"), Severity::Critical)};
    items[1].door = "5-40";
    const auto by_severity = grouped(items, GroupBy::Severity, ship.arrangement, day("2026-11-26"));
    ASSERT_EQ(by_severity.size(), 2u);
    EXPECT_EQ(idsOf(by_severity[0]), (std::vector<std::string>{"c", "b"})) << "due before not due";
    const auto by_person = grouped(items, GroupBy::Person, ship.arrangement, day("2026-11-26"));
    ASSERT_EQ(by_person.size(), 2u);
    EXPECT_EQ(by_person[0].name, "Ove Brandlund");
    EXPECT_EQ(by_person[1].name, "");
    const auto by_zone = grouped(items, GroupBy::Zone, ship.arrangement, day("2026-11-26"));
    ASSERT_EQ(by_zone.size(), 2u);
    EXPECT_EQ(by_zone[0].name, "2/3");
    EXPECT_EQ(by_zone[1].name, "3");
}
