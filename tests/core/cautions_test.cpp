#include <numbers>

#include <gtest/gtest.h>

#include "core/evidence/ledger.h"
#include "core/grading/grade.h"
#include "core/safety/cautions.h"
#include "core/safety/shore_figures.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

void confirmAll(DoorEvidence& evidence, const std::string& stamp_prefix) {
    int n = 0;
    for (const Caution& caution : cautionsBeforeRelease())
        evidence.cautions.push_back({Stamp{stamp_prefix + std::to_string(n++), {}, "p", "d", {}},
                                     {"w", "5-32", std::string(caution.id), true}});
}

} // namespace

// 0.2 m/s at 84.5 kg is 1.69 J, the low-energy figure of ANSI/BHMA A156.19-1997.
TEST(LeafEnergy, SlidingLeafPassesTheShoreFigureAbove84Kilograms) {
    EXPECT_NEAR(leafEnergy_J(DoorKind::Sliding, 84.5, 0.2), shore_low_energy_J, 1e-12);
}

// 60 kg, 0.9 m, 90 degrees in 10 s: edge 0.141372 m/s, 0.199859 J (computed, I = m w^2 / 3).
TEST(LeafEnergy, HingedLeafHasAThirdOfASliders) {
    EXPECT_NEAR(leafEnergy_J(DoorKind::SingleLeaf, 60, 0.9 * std::numbers::pi / 20), 0.199859,
                1e-6);
}

TEST(DoorsThatMove, AreTheWholeReleaseGroupThisOneFirst) {
    Arrangement arrangement;
    arrangement.doors = {given::hingedDoor(), given::slidingDoor(), given::hingedDoor()};
    arrangement.doors[2].number = "5-99";
    arrangement.doors[2].release_groups = {"other"};
    const auto moving = doorsThatWillMove(arrangement, arrangement.doors[1], "MVZ2");
    ASSERT_EQ(moving.size(), 2u);
    EXPECT_EQ(moving[0].door->number, "5-32");
    EXPECT_EQ(moving[1].door->number, "5-31");
    EXPECT_NEAR(*moving[0].energy_J, 180 * 0.04 / 2, 1e-12);
}

TEST(ReleaseGroup, UsualOneIsTheSmallest) {
    Arrangement arrangement;
    arrangement.doors = {given::hingedDoor(), given::slidingDoor(), given::hingedDoor()};
    arrangement.doors[0].release_groups = {"ALL", "MVZ2"};
    arrangement.doors[1].release_groups = {"ALL", "MVZ2"};
    arrangement.doors[2].release_groups = {"ALL"};
    EXPECT_EQ(usualGroup(arrangement, arrangement.doors[0]), "MVZ2");
    EXPECT_EQ(usualGroup(arrangement, arrangement.doors[2]), "ALL");
    arrangement.doors[2].release_groups.clear();
    EXPECT_EQ(usualGroup(arrangement, arrangement.doors[2]), "");
}

TEST(Arming, NeedsEveryCautionConfirmed) {
    DoorEvidence evidence;
    EXPECT_FALSE(mayArm(evidence));
    confirmAll(evidence, "10");
    EXPECT_TRUE(mayArm(evidence));
    for (std::size_t i = 0; i < cautionsBeforeRelease().size(); ++i) {
        DoorEvidence without = evidence;
        without.cautions.erase(without.cautions.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_FALSE(mayArm(without));
        DoorEvidence refused = evidence;
        refused.cautions[i].body.confirmed = false;
        EXPECT_FALSE(mayArm(refused));
    }
}

TEST(Arming, IsUsedUpByARemoteRunAndNotByALocalOne) {
    DoorEvidence evidence;
    confirmAll(evidence, "10");
    RunRecord run;
    run.id = "20";
    run.release = Release::LocalSideOne;
    evidence.runs = {run};
    EXPECT_TRUE(mayArm(evidence));
    evidence.remote_starts = {"20"};
    EXPECT_FALSE(mayArm(evidence));
    confirmAll(evidence, "30");
    EXPECT_TRUE(mayArm(evidence));
}

TEST(Arming, NewestAnswerToAQuestionCounts) {
    DoorEvidence evidence;
    confirmAll(evidence, "10");
    evidence.cautions.push_back({Stamp{"15", {}, "p", "d", {}},
                                 {"w", "5-32", std::string(cautionsBeforeRelease()[0].id), false}});
    EXPECT_FALSE(mayArm(evidence));
}

// The door was released, whatever became of the run on record.
TEST(Cautions, AreUsedUpByARunThatIsTakenBackToo) {
    Ledger ledger;
    const auto add = [&](const std::string& id, FactBody body, std::optional<FactId> slip = {}) {
        ledger.add({{id, {}, "p", "d", std::move(slip)}, std::move(body)});
    };
    add("01", WalkdownBegun{});
    int n = 10;
    for (const Caution& caution : cautionsBeforeRelease())
        add(std::to_string(n++), CautionAnswered{"01", "5-32", std::string(caution.id), true});
    EXPECT_TRUE(mayArm(ledger.evidenceOf("01", "5-32")));
    add("30", RunStarted{"01", "5-32", RunKind::Closing, Release::Remote, 0});
    add("31", RunEnded{"30", RunOutcome::Stopped, ""});
    EXPECT_FALSE(mayArm(ledger.evidenceOf("01", "5-32")));
    add("32", TakenBack{"run taken back"}, "30");
    EXPECT_FALSE(mayArm(ledger.evidenceOf("01", "5-32")));
}
