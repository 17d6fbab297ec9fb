#include <gtest/gtest.h>

#include "core/trend/outlook.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

CalendarDate day(const char* text) {
    return calendarDateFrom(text).value();
}

/// One time a quarter from January 2020: first, first + step, ... with a scatter of 0.05 s.
std::vector<TimedDay> drifting(int count, double first, double step, double u = 0.02) {
    std::vector<TimedDay> days;
    for (int i = 0; i < count; ++i) {
        TimedDay one;
        one.day = std::chrono::sys_days(day("2020-01-15")) + std::chrono::days(91 * i);
        one.value = first + step * i + (i % 2 ? 0.05 : -0.05);
        one.u = u;
        days.push_back(one);
    }
    return days;
}

} // namespace

TEST(Outlook, FewPointsSayNothing) {
    const Outlook four = outlookOf(drifting(4, 12, -0.1), 10, 40, day("2021-01-01"));
    EXPECT_EQ(four.prospect, Prospect::TooFew);
    EXPECT_TRUE(four.line);
    EXPECT_FALSE(four.crosses);
    EXPECT_EQ(outlookOf({}, 10, 40, day("2021-01-01")).prospect, Prospect::TooFew);
    // Six in one month are no history either.
    std::vector<TimedDay> close = drifting(6, 12, -0.1);
    for (std::size_t i = 0; i < close.size(); ++i)
        close[i].day = std::chrono::sys_days(day("2020-01-01")) + std::chrono::days(i * 5);
    EXPECT_EQ(outlookOf(close, 10, 40, day("2020-02-01")).prospect, Prospect::TooFew);
}

// A spring that loses 0.1 s a quarter from 14 s: the line meets 10 s after 40 quarters, in January
// 2030; the interval some time earlier.
TEST(Outlook, NamesTheDayTheIntervalMeetsALimit) {
    const Outlook outlook = outlookOf(drifting(24, 14, -0.1), 10, 40, day("2026-01-01"));
    ASSERT_EQ(outlook.prospect, Prospect::InSight);
    EXPECT_FALSE(outlook.over_high);
    EXPECT_GT(*outlook.crosses, day("2029-01-01"));
    EXPECT_LT(*outlook.crosses, day("2030-01-15"));
    const Prediction prediction(*outlook.line, outlook_confidence);
    const double at = yearsBetween(day("2020-01-15"), *outlook.crosses);
    EXPECT_LT(prediction.at(at).low, 10);
    EXPECT_GE(prediction.at(at - 1.01 / 365.25).low, 10);
}

TEST(Outlook, UpperLimitAsWell) {
    const Outlook outlook = outlookOf(drifting(24, 36, 0.1), 10, 40, day("2026-01-01"));
    ASSERT_EQ(outlook.prospect, Prospect::InSight);
    EXPECT_TRUE(outlook.over_high);
}

TEST(Outlook, SteadyTimesShowNoLimitAsFarAsTheyReach) {
    const Outlook outlook = outlookOf(drifting(24, 20, 0), 10, 40, day("2026-01-01"));
    EXPECT_EQ(outlook.prospect, Prospect::NotInSight);
    EXPECT_FALSE(outlook.crosses);
    // 23 quarters back are 23 quarters ahead.
    EXPECT_EQ(*outlook.looked_until,
              CalendarDate(std::chrono::sys_days(day("2026-01-01")) + std::chrono::days(23 * 91)));
}

TEST(Outlook, SaysWhereALimitIsReachedAlready) {
    const Outlook outlook = outlookOf(drifting(24, 12.4, -0.1), 10, 40, day("2026-01-01"));
    EXPECT_EQ(outlook.prospect, Prospect::AlreadyOver);
    EXPECT_EQ(*outlook.crosses, day("2026-01-01"));
}

TEST(Outlook, ARepairBeginsANewLine) {
    std::vector<TimedDay> days = drifting(24, 14, -0.1);
    for (std::size_t i = 12; i < days.size(); ++i)
        days[i].value = 20;
    days[12].after_repair = true;
    const Outlook outlook = outlookOf(days, 10, 40, day("2026-01-01"));
    EXPECT_EQ(outlook.line_from, 12u);
    EXPECT_EQ(outlook.line->count, 12);
    EXPECT_EQ(outlook.prospect, Prospect::NotInSight);
}

TEST(Outlook, AFailureThatPassesLaterWasRepaired) {
    std::vector<TimedDay> days = drifting(10, 14, -0.1);
    days[4].value = 8;
    days[4].outside = true;
    EXPECT_EQ(outlookOf(days, 10, 40, day("2026-01-01")).line_from, 5u);
}

// Points on one line by luck do not make thumbs finer than they are.
TEST(Outlook, ScatterIsNeverLessThanTheTiming) {
    std::vector<TimedDay> days = drifting(12, 20, 0, 0.1);
    for (TimedDay& one : days)
        one.value = 20;
    const Outlook outlook = outlookOf(days, 10, 40, day("2026-01-01"));
    EXPECT_NEAR(outlook.line->residual_sd, 0.1, 1e-12);
}

TEST(TimedDays, ComeFromTheUprightRunsOfEveryWalkdown) {
    const auto fact = [](std::string id, const char* when, FactBody body) {
        const auto utc = std::chrono::sys_days(day(when)).time_since_epoch();
        return Fact{{std::move(id), {std::chrono::milliseconds(utc).count(), 0}, "p", "d", {}},
                    std::move(body)};
    };
    Ledger ledger;
    const auto walk = [&](const std::string& id, const char* when, std::uint32_t ms, double heel,
                          Purpose purpose) {
        WalkdownBegun plan;
        plan.purpose = purpose;
        ledger.add(fact(id, when, plan));
        ledger.add(
            fact(id + "a", when, RunStarted{id, "5-31", RunKind::Closing, Release::LetGo, heel}));
        ledger.add(fact(id + "b", when,
                        Mark{id + "a", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}}));
        ledger.add(fact(id + "c", when,
                        Mark{id + "a", MarkKind::Shut, 1000 + ms, {}, InputDevice::Key, {}}));
        ledger.add(fact(id + "d", when, RunEnded{id + "a", RunOutcome::Complete, {}}));
    };
    walk("1", "2024-03-01", 8'000, 0, Purpose::Quarterly);
    walk("2", "2024-06-01", 12'000, 2, Purpose::Quarterly); // heeled
    walk("3", "2024-06-02", 14'000, 0, Purpose::AfterRepair);
    const auto days =
        timedDays(ledger, ledger.walkdowns(), given::hingedDoor(), given::row("hinged-time"));
    ASSERT_EQ(days.size(), 2u);
    EXPECT_EQ(days[0].day, day("2024-03-01"));
    EXPECT_NEAR(days[0].value, 8, 1e-9);
    EXPECT_TRUE(days[0].outside);
    EXPECT_NEAR(days[1].value, 14, 1e-9);
    EXPECT_TRUE(days[1].after_repair);
    EXPECT_FALSE(days[1].outside);
}
