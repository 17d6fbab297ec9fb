// What a grade file says reaches the grade, and nothing that it does not say.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/exchange/grade_sample.h"

namespace latchround::test {
namespace {

GradeInput inputOf(const std::string& json) {
    auto input = readGrade(json);
    if (!input) {
        ADD_FAILURE() << inLines(input.error());
        return {};
    }
    return std::move(*input);
}

std::optional<FireClass> boundaryAfter(std::string_view from, std::string_view to) {
    const GradeInput input = inputOf(replaced(grade_sample, from, to));
    return doorClassAsked(input.vessel, &input.doors.at(0).boundary, solasCatalogue().divisions)
        .division;
}

TEST(GradeInput, VesselAndDoorAreRead) {
    const GradeInput input = inputOf(grade_sample);
    EXPECT_EQ(input.vessel.passengers, 1200);
    EXPECT_EQ(input.vessel.keel_laid, calendarDateFrom("2015-03-01"));
    const Door& door = input.doors.at(0).door;
    EXPECT_EQ(door.number, "5-32");
    EXPECT_EQ(door.kind, DoorKind::Sliding);
    EXPECT_TRUE(isRemotelyReleased(door));
    EXPECT_FALSE(door.sill_in_frame);
    EXPECT_DOUBLE_EQ(door.opening_m, 1.4);
    EXPECT_EQ(input.doors.at(0).boundary.place, Place::ZoneBulkhead);
}

TEST(GradeInput, AbsentFittingsAreNotSaidAndADoorThatIsNotSaidToBeShutStandsOpen) {
    Door door;
    door.number = door.boundary = "6-04";
    door.kind = DoorKind::DoubleLeaf;
    door.fire_class = FireClass::A30;
    for (Said* fitting :
         {&door.power_operated, &door.hold_back, &door.alarm, &door.designed_to_reopen,
          &door.hose_port, &door.escape_route, &door.sill_in_frame, &door.latch, &door.watertight,
          &door.weathertight, &door.escape_trunk, &door.special_category, &door.faces_embarkation,
          &door.remote_release})
        *fitting = Said();
    door.normally = NormalPosition::Open;
    const GradeInput input = inputOf(grade_sample);
    EXPECT_EQ(input.doors.at(1).door, door);
}

// 46 CFR 116.435(c)(7): nine things are asked of a door in a deck.
TEST(GradeInput, OfSubchapterKSaysWhetherADoorStandsInADeck) {
    const std::string door =
        R"("id":"2","kind":"single","class":"A-15","place":"stairway","normally":"closed")";
    const auto read = [&](const std::string& regime, const std::string& rest) {
        return readGrade(R"({"vessel":{"regime":")" + regime + R"(","passengers":300},"doors":[{)" +
                         door + rest + "}]}");
    };
    EXPECT_TRUE(read("us-k", R"(,"division":"deck")"));
    const auto silent = read("us-k", "");
    ASSERT_FALSE(silent);
    EXPECT_THAT(inLines(silent.error()), testing::HasSubstr("division"));
    EXPECT_TRUE(read("us-h", ""));
}

TEST(GradeInput, AFittingIsYesNoOrNotSaid) {
    const Door door = inputOf(grade_sample).doors.at(0).door;
    EXPECT_EQ(door.power_operated, Said(true));
    EXPECT_EQ(door.sill_in_frame, Said(false));
    EXPECT_FALSE(door.watertight.isKnown());
}

TEST(GradeInput, NothingSaidIsNothingTested) {
    const DoorEvidence evidence = inputOf(grade_sample).doors.at(1).evidence;
    EXPECT_EQ(evidence.door, "6-04");
    EXPECT_TRUE(evidence.observations.empty());
    EXPECT_TRUE(evidence.measured.empty());
    EXPECT_TRUE(evidence.runs.empty());
    EXPECT_FALSE(evidence.plate);
}

TEST(GradeInput, OneAnswerStandsForBothSidesAndASideAloneForItself) {
    const auto observations = inputOf(grade_sample).doors.at(0).evidence.observations;
    using Key = std::pair<std::string, Side>;
    std::vector<Key> keys;
    for (const auto& [key, recorded] : observations)
        keys.push_back(key);
    EXPECT_THAT(keys, testing::UnorderedElementsAre(
                          Key{"one-person", Side::One}, Key{"one-person", Side::Two},
                          Key{"no-hook", Side::None}, Key{"reopen-local", Side::One}));
    EXPECT_EQ(observations.at(Key{"no-hook", Side::None}).body.answer, Answer::No);
}

TEST(GradeInput, MeasuredFiguresTakeTheUnitOfTheirRow) {
    const auto measured = inputOf(grade_sample).doors.at(0).evidence.measured;
    EXPECT_EQ(measured.size(), 2u);
    EXPECT_EQ(measured.at("a-gap").body.unit, "mm");
    EXPECT_EQ(measured.at("reopen-distance").body.unit, "m");
    EXPECT_DOUBLE_EQ(measured.at("reopen-distance").body.value, 0.6);
}

TEST(GradeInput, AFigureMayNameTheStepOfItsInstrument) {
    const auto stepAfter = [](std::string_view measured) {
        const GradeInput input = inputOf(replaced(grade_sample, "\"a-gap\": 9", measured));
        return input.doors.at(0).evidence.measured.at("a-gap").body.step;
    };
    EXPECT_EQ(stepAfter("\"a-gap\": {\"value\": 12.5, \"step\": 0.1}"), 0.1);
    EXPECT_FALSE(stepAfter("\"a-gap\": {\"value\": 12.5}"));
    EXPECT_FALSE(stepAfter("\"a-gap\": 12.5"));
}

TEST(GradeInput, MarksAreNanosecondsAfterTheFirstInTheirOrder) {
    const auto runs = inputOf(grade_sample).doors.at(0).evidence.runs;
    ASSERT_EQ(runs.size(), 1u);
    EXPECT_EQ(runs[0].release, Release::Remote);
    EXPECT_DOUBLE_EQ(runs[0].heel_deg, 0.5);
    ASSERT_TRUE(runs[0].end);
    EXPECT_EQ(runs[0].end->outcome, RunOutcome::Complete);
    std::vector<std::pair<MarkKind, std::int64_t>> marks;
    for (const auto& recorded : runs[0].marks)
        marks.emplace_back(recorded.mark.kind, recorded.mark.by_hand_ns.value());
    EXPECT_THAT(marks, testing::ElementsAre(std::pair(MarkKind::AlarmOn, 0),
                                            std::pair(MarkKind::LeafMoves, 6400000000),
                                            std::pair(MarkKind::HalfWay, 10900000000),
                                            std::pair(MarkKind::Shut, 15700000000),
                                            std::pair(MarkKind::AlarmOff, 15800000000)));
}

TEST(GradeInput, RunWithoutItsFirstMovementOrItsLastEventIsNotComplete) {
    const auto outcome = [](const std::string& json) {
        return inputOf(json).doors.at(0).evidence.runs.at(0).end->outcome;
    };
    EXPECT_EQ(outcome(replaced(grade_sample, "\"shut\": 16.7, ", "")), RunOutcome::Void);
    EXPECT_EQ(outcome(replaced(grade_sample, "\"moves\": 7.4, ", "")), RunOutcome::Void);
    EXPECT_EQ(outcome(replaced(grade_sample, "\"heel_deg\": 0.5", "\"outcome\": \"stopped\"")),
              RunOutcome::Stopped);
    EXPECT_EQ(outcome(replaced(grade_sample, "\"sliding\"", "\"double\"")), RunOutcome::Void)
        << "a double leaf is shut when its second leaf is home";
}

TEST(GradeInput, ZoneBulkheadRuleGivesTheBoundaryClass) {
    // SOLAS II-2/9.2.2.1.1.1 first, then tables 9.1 to 9.4; 46 CFR tables 72.05-10(d) and (e).
    EXPECT_EQ(boundaryAfter("\"id\"", "\"id\""), FireClass::A60);
    EXPECT_EQ(boundaryAfter("1200", "37"), FireClass::A60);
    EXPECT_EQ(boundaryAfter("1200", "36"), FireClass::A0) << "C of table 9.3, read as A-0";
    EXPECT_EQ(boundaryAfter("[3, 3]", "[3, 10]"), FireClass::A0);
    EXPECT_EQ(boundaryAfter("zone-bulkhead", "galley"), FireClass::B15);
    EXPECT_EQ(boundaryAfter("\"spaces\": [3, 3]", "\"boundary_class\": \"A-15\""), FireClass::A15);
}

TEST(GradeInput, PlateReadIsAClassOrNoneOrIllegible) {
    const auto plate = [](const std::string& word) {
        return inputOf(replaced(grade_sample, "\"id\": \"5-32\"",
                                "\"id\": \"5-32\", \"plate_read\": \"" + word + "\""))
            .doors.at(0)
            .evidence.plate->body;
    };
    EXPECT_EQ(plate("B-15").fire_class, FireClass::B15);
    EXPECT_EQ(plate("none").state, PlateState::None);
    EXPECT_EQ(plate("illegible").state, PlateState::Illegible);
    EXPECT_EQ(plate("illegible").fire_class, std::nullopt);
}

TEST(GradeInput, NullIsAbsentAndRemarksArePassedOver) {
    const GradeInput input =
        inputOf(replaced(grade_sample, "\"installed\": \"2015-03-01\"",
                         "\"installed\": null, \"x-seen-by\": 7, \"$comment\": \"fine\""));
    EXPECT_EQ(input.doors.at(0).door.installed, std::nullopt);
}

} // namespace
} // namespace latchround::test
