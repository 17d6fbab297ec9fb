// What each fault does to a practice door: it changes the rows it should, and no other.
#include <algorithm>
#include <set>

#include <gmock/gmock.h>

#include "tests/core/practice_given.h"
#include "tests/long_form.h"

namespace latchround::practice {
namespace {

using given::gradeOf;
using given::practiceVessel;

constexpr std::array<std::uint32_t, 6> seeds{1, 2, 3, 77, 4096, 4000000000U};

std::set<std::string> rowsThatDiffer(const DoorGrade& one, const DoorGrade& other) {
    std::set<std::string> rows;
    for (std::size_t i = 0; i < one.rows.size(); ++i)
        if (one.rows[i].verdict != other.rows[i].verdict)
            rows.insert(one.rows[i].requirement->id);
    return rows;
}

std::set<std::string> askedRowsOf(Fault fault, const Door& door, const DoorGrade& graded) {
    std::set<std::string> rows;
    for (const std::string_view id : rowsChangedBy(fault, door))
        if (const RowGrade* row = findRow(graded, id); row != nullptr && isAsked(*row))
            rows.insert(std::string(id));
    return rows;
}

TEST(PracticeDoor, ASoundOneIsSatisfactoryInEveryRowThatIsAsked) {
    const Arrangement vessel = practiceVessel();
    for (const std::uint32_t seed : seeds)
        for (const Door& door : vessel.doors)
            for (const RowGrade& row : gradeOf(vessel, door, soundDoor(door, seed)).rows) {
                if (isAsked(row)) {
                    EXPECT_EQ(row.verdict, Verdict::Satisfactory)
                        << door.number << " " << row.requirement->id << " seed " << seed;
                }
            }
}

class EachFault : public ::testing::TestWithParam<Word<Fault>> {};

TEST_P(EachFault, ChangesExactlyTheRowsItShould) {
    const Fault fault = GetParam().value;
    const Arrangement vessel = practiceVessel();
    int doors = 0;
    for (const Door& door : vessel.doors) {
        const Boundary* boundary = findBoundary(vessel, door.boundary);
        if (!fits(fault, door, boundary))
            continue;
        ++doors;
        for (const std::uint32_t seed : seeds) {
            const DoorTruth sound = soundDoor(door, seed);
            const DoorGrade before = gradeOf(vessel, door, sound);
            const DoorGrade after =
                gradeOf(vessel, door, withFault(sound, fault, door, boundary, seed));
            EXPECT_EQ(rowsThatDiffer(before, after), askedRowsOf(fault, door, before))
                << door.number << " seed " << seed;
        }
    }
    EXPECT_GT(doors, 0) << "no door of the practice vessel can have it";
}

TEST_P(EachFault, HasASentenceOfItsOwnAndShowsSomewhere) {
    const Fault fault = GetParam().value;
    EXPECT_NE(sentence(fault).code, "");
    EXPECT_TRUE(std::ranges::none_of(faultWords, [&](const auto& other) {
        return other.value != fault && sentence(other.value) == sentence(fault);
    })) << "another is said in the same";
    const Arrangement vessel = practiceVessel();
    for (const Door& door : vessel.doors) {
        if (fits(fault, door, findBoundary(vessel, door.boundary)) &&
            fault != Fault::PeopleInPath) {
            EXPECT_FALSE(
                askedRowsOf(fault, door, gradeOf(vessel, door, soundDoor(door, 1))).empty())
                << door.number;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Practice, EachFault, ::testing::ValuesIn(faultWords),
                         [](const auto& instance) {
                             std::string name(instance.param.word);
                             std::erase(name, '-');
                             return name;
                         });

TEST(PracticeFaults, OfAHairAreNeitherPassedNorFailed) {
    const Arrangement vessel = practiceVessel();
    for (const std::uint32_t seed : seeds)
        for (const char* number : {"P-01", "P-02", "P-03"}) {
            const Door& door = *findDoor(vessel, number);
            const Boundary* boundary = findBoundary(vessel, door.boundary);
            const DoorGrade graded =
                gradeOf(vessel, door,
                        withFault(soundDoor(door, seed), Fault::NearLimit, door, boundary, seed));
            const RowGrade& row = *findRow(graded, rowsChangedBy(Fault::NearLimit, door).front());
            EXPECT_TRUE(row.verdict == Verdict::TimeAgain || row.verdict == Verdict::Judge)
                << number << " " << word(row.verdict);
        }
}

TEST(PracticeFaults, TheSameSeedGivesTheSameDoorsAndAnotherOthers) {
    const Arrangement vessel = practiceVessel();
    Exercise exercise = given::exerciseOver(vessel);
    exercise.drawn = 6;
    EXPECT_EQ(doorsOf(exercise, vessel, 5), doorsOf(exercise, vessel, 5));
    EXPECT_NE(doorsOf(exercise, vessel, 5), doorsOf(exercise, vessel, 6));
}

TEST(PracticeFaults, DrawnByLotAreSpreadFitAndHideNothing) {
    const Arrangement vessel = practiceVessel();
    Exercise exercise = given::exerciseOver(vessel);
    exercise.drawn = 9;
    std::set<Fault> drawn;
    const auto how_many = static_cast<std::uint32_t>(40 * test::timesAsMany());
    for (std::uint32_t seed = 1; seed <= how_many; ++seed) {
        std::size_t all = 0;
        std::size_t fewest = SIZE_MAX;
        std::size_t most = 0;
        for (const auto& [number, truth] : doorsOf(exercise, vessel, seed)) {
            const Door& door = *findDoor(vessel, number);
            all += truth.faults.size();
            fewest = std::min(fewest, truth.faults.size());
            most = std::max(most, truth.faults.size());
            for (std::size_t i = 0; i < truth.faults.size(); ++i) {
                drawn.insert(truth.faults[i]);
                EXPECT_TRUE(fits(truth.faults[i], door, findBoundary(vessel, door.boundary)));
                for (std::size_t j = 0; j < i; ++j)
                    EXPECT_FALSE(exclude(truth.faults[i], truth.faults[j]));
            }
        }
        EXPECT_EQ(all, 9U);
        EXPECT_LE(most - fewest, 1U);
    }
    EXPECT_EQ(drawn.size(), faultWords.size()) << "some fault is never drawn";
}

TEST(PracticeFaults, AreDrawnOnlyFromThoseNamed) {
    const Arrangement vessel = practiceVessel();
    Exercise exercise = given::exerciseOver(vessel);
    exercise.drawn = 50;
    exercise.drawn_from = {Fault::Hook, Fault::PaintedSeal};
    std::size_t all = 0;
    for (const auto& [number, truth] : doorsOf(exercise, vessel, 3))
        all += truth.faults.size();
    EXPECT_EQ(all, 4U + 5U); // four doors are listed, all have seals
}

} // namespace
} // namespace latchround::practice
