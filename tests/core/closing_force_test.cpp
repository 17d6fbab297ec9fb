// A closing force by spring gauge, where a text asks the door to close against 3.5 degrees: it can
// say that the door could not, and never that it could.
#include <algorithm>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/grading/gauge_check.h"
#include "core/measure/inclination.h"
#include "tests/core/profile_row_cases.h"
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

namespace {

/// 80 kg, 1.0 m: 80 x 9.80665 x sin(3.5 degrees) / 2 = 23.947 N at the edge.
constexpr double needed_N = 23.947;

struct Gauged {
    Site site;
    DoorEvidence evidence{};
    std::string id;

    explicit Gauged(Change change = solasHinged, std::string row = "self-closing")
        : site(of(change))
        , id(std::move(row)) {
        site.door.leaf_mass_kg = 80;
        evidence.door = site.door.number;
    }
    void reads(double force_N, std::optional<double> step_N = 1) {
        evidence.measured[id] = {Stamp{}, {"w", evidence.door, id, force_N, "N", step_N}};
    }
    void run(double heel_deg = 0) {
        evidence.runs = {
            given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 20}}, heel_deg)};
    }
    void say(Answer given) { answer(evidence, id, given); }
    RowGrade graded() const { return rowOf(vesselOf(site), site, id.c_str(), evidence); }
    Verdict verdict() const { return graded().verdict; }
};

Reading newtons(double value) {
    return gaugeReading(row("self-closing"), {"w", "d", "self-closing", value, "N", 1});
}

} // namespace

TEST(Inclination, SaysWhatTheCloserMustOvercome) {
    Door door = hingedDoor(); // 70 kg
    const auto ask = [&](std::optional<Reading> measured) {
        return couldCloseInclined(door, 3.5, std::move(measured));
    };
    EXPECT_EQ(ask({}).could, CloserCould::NotGauged);
    // Half the in-deck part of its weight: 70 x 9.80665 x 0.0610485 / 2 = 20.954 N.
    EXPECT_NEAR(ask({}).needed_N, 20.954, 1e-3);
    EXPECT_EQ(ask(newtons(20)).could, CloserCould::Falls);
    EXPECT_EQ(ask(newtons(20.5)).could, CloserCould::TooClose);
    EXPECT_EQ(ask(newtons(21.5)).could, CloserCould::TooClose);
    EXPECT_EQ(ask(newtons(22)).could, CloserCould::Exceeds);
    door.leaf_mass_kg.reset();
    EXPECT_EQ(ask(newtons(30)).could, CloserCould::NotKnown);
    EXPECT_NEAR(couldCloseInclined(slidingDoor(), 3.5, {}).needed_N, 107.763, 1e-3);
}

// SOLAS II-2/9.4.1.1.5.1: "against an inclination of up to 3.5 degrees opposing closure".
TEST(ClosingForce, BelowWhatTheLeafsWeightTakesLeavesARunToTheInspector) {
    Gauged door;
    door.run();
    EXPECT_EQ(door.verdict(), Verdict::Satisfactory);
    door.reads(5);
    EXPECT_EQ(door.verdict(), Verdict::Judge);
    const Reason why = door.graded().reason;
    EXPECT_EQ(why.kind, ReasonKind::ForceTooLow);
    EXPECT_EQ(why.text.parts, (std::vector<Phrase>{"5 N", "23.9 N", "3.5"}));
    // By more than its uncertainty, U = 0.58 N of a gauge read to 1 N.
    door.reads(needed_N - 0.6);
    EXPECT_EQ(door.verdict(), Verdict::Judge);
    for (const double force_N : {needed_N - 0.5, needed_N, needed_N + 0.5, 500.0}) {
        door.reads(force_N);
        EXPECT_EQ(door.verdict(), Verdict::Satisfactory) << force_N;
        EXPECT_EQ(door.graded().reason.kind, ReasonKind::ShownByRun) << force_N;
    }
    door.reads(needed_N - 0.5, 0.1);
    EXPECT_EQ(door.verdict(), Verdict::Judge) << "a finer gauge";
}

TEST(ClosingForce, TooLowDoubtsAYesAndAnNaAndLeavesANoAsItIs) {
    Gauged door;
    door.reads(5);
    EXPECT_EQ(door.verdict(), Verdict::Judge) << "nothing else on record";
    door.say(Answer::Yes);
    EXPECT_EQ(door.graded().reason.kind, ReasonKind::ForceTooLow);
    door.say(Answer::NotApplicable);
    EXPECT_EQ(door.verdict(), Verdict::Judge);
    door.say(Answer::No);
    EXPECT_EQ(door.verdict(), Verdict::Unsatisfactory);
}

// Hinges, seals and latch take more than the weight alone.
TEST(ClosingForce, ShowsNothingByItself) {
    Gauged door;
    door.reads(500);
    EXPECT_EQ(door.verdict(), Verdict::Untested);
    door.run(3.5);
    EXPECT_EQ(door.graded().reason.kind, ReasonKind::ShipNotUpright);
    door.reads(5);
    EXPECT_EQ(door.verdict(), Verdict::Judge) << "whatever way the ship helped";
}

TEST(ClosingForce, OfALeafOfUnknownMassSaysNothing) {
    Gauged door;
    door.site.door.leaf_mass_kg.reset();
    door.run();
    door.reads(5);
    EXPECT_EQ(door.verdict(), Verdict::Satisfactory);
}

TEST(ClosingForce, IsShownWhateverItSays) {
    Gauged door;
    for (const double force_N : {5.0, needed_N, 500.0}) {
        door.reads(force_N);
        for (const Answer each : {Answer::Yes, Answer::No, Answer::NotApplicable}) {
            door.say(each);
            ASSERT_TRUE(door.graded().figure) << force_N;
            EXPECT_EQ(door.graded().figure->value, force_N);
        }
    }
}

TEST(ClosingForce, IsTheInspectorsToDecide) {
    Gauged door;
    door.run();
    door.reads(5);
    door.evidence.judgements["self-closing"] = {
        Stamp{}, {"w", door.evidence.door, "self-closing", true, "certificate seen"}};
    EXPECT_EQ(door.verdict(), Verdict::Satisfactory);
    EXPECT_TRUE(door.graded().figure);
}

// 46 CFR 72.05-25(b)(9)(i), 116.435(c)(6)(i), (c)(7)(i); SOLAS II-2/9.5.2.5.
TEST(ClosingForce, IsWeighedWhereverATextAsksAgainstAnInclination) {
    const std::pair<Change, const char*> asked[] = {{solasHinged, "self-closing"},
                                                    {usA<H, stair>, "h-self-closing"},
                                                    {usA<K, zone>, "k-self-closing"},
                                                    {deckDoor, "k-horizontal-list"},
                                                    {on<Regime::LargeYacht>, "self-closing"},
                                                    {engineRoom, "machinery-closes"}};
    for (const auto& [site, id] : asked) {
        Gauged door(site, id);
        door.run();
        EXPECT_EQ(door.verdict(), Verdict::Satisfactory) << id;
        door.reads(5);
        EXPECT_EQ(door.verdict(), Verdict::Judge) << id;
    }
    for (const Requirement& each : catalogue().rows)
        EXPECT_EQ(each.incline_deg.has_value(),
                  std::ranges::find(asked, each.id,
                                    [](const auto& one) { return std::string(one.second); }) !=
                      std::end(asked))
            << each.id;
}

RC_GTEST_PROP(WorseFact, ALowerClosingForceBringsNoBetterVerdict, ()) {
    Gauged door;
    door.site.door.kind = *rc::gen::element(DoorKind::SingleLeaf, DoorKind::DoubleLeaf,
                                            DoorKind::Sliding, DoorKind::DoubleSwing);
    if (*rc::gen::arbitrary<bool>())
        door.run();
    if (*rc::gen::arbitrary<bool>())
        door.say(*rc::gen::element(Answer::Yes, Answer::No, Answer::NotApplicable));
    const int force_N = *rc::gen::inRange(1, 200);
    door.reads(force_N);
    const Verdict was = door.verdict();
    door.reads(*rc::gen::inRange(0, force_N));
    RC_ASSERT(!isWorse(was, door.verdict()));
}
