#include <gtest/gtest.h>

#include "core/deficiency/compare.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

struct Ship : given::RecordedShip {
    std::vector<GradedDoor> graded(const FactId& walkdown) const {
        return gradeWalkdown(arrangement, ledger, *ledger.walkdown(walkdown), given::catalogue());
    }
    void close(const FactId& walkdown, double seconds) {
        const FactId run =
            add(surveyor, RunStarted{walkdown, door, RunKind::Closing, Release::LetGo, 0});
        const auto ms = static_cast<std::uint32_t>(seconds * 1000 + 0.5);
        add(surveyor, Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}});
        add(surveyor, Mark{run, MarkKind::Shut, 1000 + ms, {}, InputDevice::Key, {}});
        add(surveyor, RunEnded{run, RunOutcome::Complete, {}});
    }
    std::vector<RowChange> changes(const FactId& before, const FactId& after) {
        m_before = graded(before);
        m_after = graded(after);
        return compare(m_before, m_after);
    }

private:
    std::vector<GradedDoor> m_before, m_after;
};

} // namespace

TEST(Compare, RowsThatFailOnlyNowAndNoLonger) {
    Ship ship;
    const FactId first = ship.begin();
    ship.answer(first, Answer::No, ship.surveyor);
    const FactId second = ship.begin();
    ship.answer(second, Answer::Yes, ship.surveyor);
    const auto mended = ship.changes(first, second);
    ASSERT_EQ(mended.size(), 1u);
    EXPECT_EQ(mended[0].change, Change::Gone);
    EXPECT_EQ(mended[0].after->requirement->id, ship.row);
    const auto broken = ship.changes(second, first);
    ASSERT_EQ(broken.size(), 1u);
    EXPECT_EQ(broken[0].change, Change::New);
}

// SOLAS II-2/9.4.1.1.5.2: approximately 10 to 40 s.
TEST(Compare, AFigureThatMovesByMoreThanTheThumbExplains) {
    Ship ship;
    const FactId first = ship.begin();
    ship.close(first, 14.0);
    const FactId second = ship.begin();
    ship.close(second, 11.5);
    const FactId third = ship.begin();
    ship.close(third, 11.6);
    const auto faster = ship.changes(first, second);
    ASSERT_EQ(faster.size(), 1u);
    EXPECT_EQ(faster[0].change, Change::Worse);
    EXPECT_NEAR(faster[0].before->figure->value, 14.0, 0.2);
    const auto slower = ship.changes(second, first);
    ASSERT_EQ(slower.size(), 1u);
    EXPECT_EQ(slower[0].change, Change::Better);
    EXPECT_TRUE(ship.changes(second, third).empty());
}

TEST(Compare, WhatOneWalkDidNotTestIsNotCompared) {
    Ship ship;
    const FactId first = ship.begin();
    const FactId second = ship.begin();
    ship.answer(second, Answer::Yes, ship.surveyor);
    EXPECT_TRUE(ship.changes(first, second).empty());
    const FactId third = ship.begin();
    ship.answer(third, Answer::No, ship.surveyor);
    const auto fresh = ship.changes(first, third);
    ASSERT_EQ(fresh.size(), 1u) << "a failure is new whatever was tested before";
    EXPECT_EQ(fresh[0].change, Change::New);
}
