#include <gtest/gtest.h>

#include "core/evidence/basis.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

std::vector<FactId> idsOf(const std::vector<const Fact*>& facts) {
    std::vector<FactId> ids;
    for (const Fact* fact : facts)
        ids.push_back(fact->stamp.id);
    return ids;
}

} // namespace

TEST(Basis, TakesInWhatAWalkdownRestsOnAndNothingElse) {
    given::RecordedShip ship;
    std::vector<FactId> expected{ship.surveyor, ship.mate};
    const FactId other = ship.begin();
    ship.find(other);
    const FactId walkdown = ship.begin();
    expected.push_back(walkdown);
    const auto add = [&](FactBody body, std::optional<FactId> supersedes = {}) {
        expected.push_back(ship.add(ship.surveyor, std::move(body), "tablet-1", supersedes));
        return expected.back();
    };
    const FactId run = add(RunStarted{walkdown, "5-31", RunKind::Closing, Release::LetGo, 0});
    const FactId mark = add(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}});
    add(TakenBack{"slip"}, mark);
    add(RunEnded{run, RunOutcome::Complete, {}});
    const FactId found = add(Deficiency{walkdown, "5-31", "path-clear", "cart"});
    add(Rectification{found, "gone", "Ove Brandlund"});
    add(DifferenceSettled{found, {}, "so"});
    add(DecisionLimits{});
    add(ThumbDrill{});
    add(WalkdownEnded{walkdown, ""});
    ship.add(ship.surveyor, UpkeepDone{"weekly", ""});
    ship.add(ship.surveyor, WalkdownSigned{walkdown, {}, {}, "", "", ""});
    ship.add(ship.surveyor, ReportMade{walkdown, {}, "", "", {}, "", ""});
    EXPECT_EQ(idsOf(basisOf(ship.ledger, walkdown)), expected);
    EXPECT_EQ(vesselBasisOf(ship.ledger).size(), ship.ledger.size() - 2)
        << "all but the signature and the report";
}

TEST(Basis, WhatIsAddedLaterByAnyDeviceIsLater) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    ship.answer(walkdown, Answer::Yes, ship.surveyor, "tablet-1");
    const auto before = basisOf(ship.ledger, walkdown);
    const auto covers = coverOf(before);
    ASSERT_EQ(covers.size(), 1u);
    EXPECT_EQ(covers[0].facts, 4);
    const FactId on_same = ship.answer(walkdown, Answer::No, ship.surveyor, "tablet-1");
    // Made before the signature on a tablet that had not handed over yet.
    ship.ledger.add({{"0001", {}, ship.mate, "tablet-2", {}},
                     Note{walkdown, ship.door, "seen from the other side"}});
    const auto after = basisOf(ship.ledger, walkdown);
    const Split split = splitBy(after, covers);
    EXPECT_EQ(idsOf(split.covered), idsOf(before));
    EXPECT_EQ(idsOf(split.later), (std::vector<FactId>{"0001", on_same}));
}
