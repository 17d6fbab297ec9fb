#include <gtest/gtest.h>

#include "core/planning/due.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

CalendarDate day(const char* text) {
    return calendarDateFrom(text).value();
}

struct Ship {
    Arrangement arrangement;
    Ledger ledger;
    int next = 10;

    Ship() {
        arrangement.particulars = given::solasVessel();
        arrangement.boundaries = {given::zoneBulkhead()};
        arrangement.doors = {given::slidingDoor(), given::hingedDoor()};
    }

    std::string add(const char* when, FactBody body) {
        const auto utc = std::chrono::sys_days(day(when)).time_since_epoch();
        const std::string id = std::to_string(next++);
        ledger.add(
            {{id, {std::chrono::milliseconds(utc).count(), 0}, "p", "d", {}}, std::move(body)});
        return id;
    }

    void answered(const char* when, const std::string& walkdown, const char* door,
                  const char* row) {
        add(when, Observation{walkdown, door, row, Side::None, Answer::Yes});
    }

    std::vector<DueItem> due(const char* today) const {
        return whatFallsDue(arrangement, ledger, given::catalogue(), day(today));
    }
    DueItem item(const char* today, const char* id) const {
        for (DueItem& one : due(today))
            if (one.upkeep && one.upkeep->id == id)
                return one;
        return {};
    }
};

} // namespace

// MSC.1/Circ.1432: weekly, quarterly, annual.
TEST(Due, WhatWasNeverDoneIsOverdue) {
    const Ship ship;
    const auto due = ship.due("2026-11-26");
    ASSERT_EQ(due.size(), 5u);
    for (const DueItem& item : due) {
        EXPECT_TRUE(item.is_overdue);
        EXPECT_FALSE(item.due);
    }
    EXPECT_EQ(ship.item("2026-11-26", "quarterly").overdue.size(), 2u);
    EXPECT_EQ(ship.item("2026-11-26", "weekly").doors, 0);
}

TEST(Due, QuarterlyTestIsNotDoneByRunsThatLackTheirEnd) {
    const auto overdue = [](std::vector<MarkKind> marks) {
        Ship ship;
        WalkdownBegun begun;
        begun.purpose = Purpose::Quarterly;
        const std::string walk = ship.add("2026-11-20", begun);
        for (const Release release : {Release::LocalSideOne, Release::LocalSideTwo}) {
            const std::string run =
                ship.add("2026-11-20", RunStarted{walk, "5-31", RunKind::Closing, release, 0});
            std::uint32_t ms = 1000;
            for (const MarkKind mark : marks)
                ship.add("2026-11-20", Mark{run, mark, ms += 9000, {}, InputDevice::Key, {}});
            ship.add("2026-11-20", RunEnded{run, RunOutcome::Complete, ""});
        }
        return ship.item("2026-11-26", "quarterly").overdue;
    };
    EXPECT_EQ(overdue({MarkKind::LeafMoves}).size(), 2u);
    EXPECT_EQ(overdue({MarkKind::LeafMoves, MarkKind::Shut}), (std::vector<std::string>{"5-32"}));
}

TEST(Due, WeeklyLampsByTheirOwnRecord) {
    Ship ship;
    ship.add("2026-11-20", UpkeepDone{"weekly", ""});
    EXPECT_EQ(ship.item("2026-11-26", "weekly").due, day("2026-11-27"));
    EXPECT_FALSE(ship.item("2026-11-27", "weekly").is_overdue);
    EXPECT_TRUE(ship.item("2026-11-28", "weekly").is_overdue);
}

// SOLAS III/19.3.5.2.5: every fire drill; III/30.2: weekly.
TEST(Due, FireDrillTriesTheDoorsOfItsAreaEveryWeek) {
    Ship ship;
    EXPECT_TRUE(ship.item("2026-11-26", "drill-check").is_overdue);
    ship.add("2026-11-20", UpkeepDone{"drill-check", ""});
    EXPECT_EQ(ship.item("2026-11-26", "drill-check").due, day("2026-11-27"));
    EXPECT_FALSE(ship.item("2026-11-27", "drill-check").is_overdue);
    EXPECT_TRUE(ship.item("2026-11-28", "drill-check").is_overdue);
    EXPECT_EQ(ship.item("2026-11-28", "drill-check").doors, 0);
}

TEST(Due, BlackoutTrialOfDoorsThatAreHeldOrDriven) {
    Ship ship;
    const std::string walk = ship.add("2026-01-10", WalkdownBegun{});
    ship.answered("2026-01-10", walk, "5-32", "blackout");
    EXPECT_EQ(ship.item("2026-11-26", "blackout").overdue, std::vector<std::string>{"5-31"});
    ship.arrangement.doors[1].hold_back = false;
    EXPECT_EQ(ship.item("2026-11-26", "blackout").doors, 1);
    EXPECT_EQ(ship.item("2026-11-26", "blackout").due, day("2027-01-10"));
}

TEST(Due, ACampaignNeverFallsDueByItself) {
    for (const DueItem& item : Ship().due("2026-11-26"))
        EXPECT_NE(item.upkeep->id, "door-campaign");
}

TEST(Due, ADoorThatWasWorkedLocallyIsDueAQuarterLater) {
    Ship ship;
    const std::string walk = ship.add("2026-09-01", WalkdownBegun{});
    ship.answered("2026-09-01", walk, "5-32", "local-release");
    DueItem item = ship.item("2026-11-26", "quarterly");
    EXPECT_EQ(item.doors, 2);
    EXPECT_EQ(item.overdue, std::vector<std::string>{"5-31"});
    EXPECT_FALSE(item.due); // the other was never worked
    ship.answered("2026-09-01", walk, "5-31", "local-release");
    item = ship.item("2026-11-26", "quarterly");
    EXPECT_TRUE(item.overdue.empty());
    EXPECT_EQ(item.due, day("2026-12-01"));
    EXPECT_FALSE(item.is_overdue);
    EXPECT_EQ(ship.item("2026-12-02", "quarterly").overdue.size(), 2u);
}

TEST(Due, RemoteReleaseOnceAYear) {
    Ship ship;
    const std::string walk = ship.add("2025-12-01", WalkdownBegun{});
    for (const char* door : {"5-32", "5-31"})
        ship.answered("2025-12-01", walk, door, "remote-release");
    EXPECT_EQ(ship.item("2026-11-26", "annually").due, day("2026-12-01"));
    ship.arrangement.doors[1].release_groups.clear();
    EXPECT_EQ(ship.item("2026-11-26", "annually").doors, 1);
}

// SOLAS I/14: the renewal survey may be completed up to 3 months early (read in summaries).
TEST(Due, TheCertificateHasItsWindow) {
    Ship ship;
    ship.add("2026-01-10", CertificateSeen{day("2027-01-31")});
    const auto certificate = [&](const char* today) {
        for (DueItem& item : ship.due(today))
            if (!item.upkeep)
                return item;
        return DueItem{};
    };
    EXPECT_EQ(certificate("2026-11-26").due, day("2027-01-31"));
    EXPECT_EQ(certificate("2026-11-26").opens, day("2026-10-31"));
    EXPECT_FALSE(certificate("2027-01-31").is_overdue);
    EXPECT_TRUE(certificate("2027-02-01").is_overdue);
}

TEST(Due, OverdueFirstThenByDay) {
    Ship ship;
    ship.add("2026-11-25", UpkeepDone{"weekly", ""});           // due 2 December
    ship.add("2026-01-10", CertificateSeen{day("2026-12-31")}); // due 31 December
    const auto due = ship.due("2026-11-26");
    ASSERT_EQ(due.size(), 6u);
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_TRUE(due[i].is_overdue) << i;
    EXPECT_EQ(due[4].upkeep->id, "weekly");
    EXPECT_EQ(due[5].upkeep, nullptr);
}
