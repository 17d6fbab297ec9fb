// The practice vessel and the exercises that ship: sound, compiled in as their files are, from
// first steps to exam.
#include <set>

#include <QDir>
#include <gmock/gmock.h>

#include "app/exchange/register_csv.h"
#include "app/practice/built_in.h"
#include "app/practice/exercise_files.h"
#include "app/practice/practice_vessel.h"
#include "app/register/register_kind.h"
#include "tests/practice/practice_world.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::Contains;
using ::testing::IsEmpty;

QDir resources() {
    return QDir(QStringLiteral(LATCHROUND_SOURCE "/resources/practice"));
}

std::vector<ExerciseFile> shipped() {
    const test::DataFolder no_others;
    return exerciseFiles();
}

TEST(PracticeVessel, IsCompiledInAsItsFileIs) {
    EXPECT_EQ(csvFrom(practiceVessel()),
              test::bytesOfFile(resources().filePath(QStringLiteral("vessel.csv"))));
}

TEST(PracticeVessel, CanBeTakenForNoVessel) {
    const Particulars& vessel = practiceVessel().particulars;
    EXPECT_EQ(vessel.name, "Practice vessel");
    EXPECT_EQ(vessel.number, practice_vessel_number);
    for (const Door& door : practiceVessel().doors)
        EXPECT_TRUE(door.number.starts_with("P-")) << door.number;
}

TEST(PracticeVessel, HasDoorsOfAllKindsOnAShipThatTheTextsBind) {
    const Particulars& vessel = practiceVessel().particulars;
    EXPECT_EQ(vessel.regime, Regime::SolasPassenger);
    EXPECT_GT(vessel.passengers, 36);
    std::set<DoorKind> kinds;
    int sliding = 0;
    for (const Door& door : practiceVessel().doors) {
        kinds.insert(door.kind);
        sliding += door.kind == DoorKind::Sliding && door.power_operated && door.hold_back &&
                           door.alarm && door.designed_to_reopen && !door.release_groups.empty()
                       ? 1
                       : 0;
    }
    EXPECT_EQ(kinds.size(), doorKindWords.size());
    EXPECT_GE(sliding, 3);
}

TEST(PracticeVessel, EveryFaultFindsADoor) {
    for (const auto& fault : faultWords) {
        const bool found = std::ranges::any_of(practiceVessel().doors, [&](const Door& door) {
            return fits(fault.value, door, findBoundary(practiceVessel(), door.boundary));
        });
        EXPECT_TRUE(found) << fault.word;
    }
}

TEST(ShippedExercises, EveryFileIsCompiledInAsItIs) {
    std::set<std::string> in_folder;
    const QDir folder(resources().filePath(QStringLiteral("exercises")));
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files))
        in_folder.insert(test::bytesOfFile(folder.filePath(name)));
    std::set<std::string> built_in;
    for (const BuiltInExercise& exercise : builtInExercises())
        built_in.insert(std::string(exercise.json));
    EXPECT_EQ(in_folder, built_in);
}

TEST(ShippedExercises, AreSoundAndKnownByTheIdInTheirFile) {
    for (const ExerciseFile& file : shipped()) {
        ASSERT_THAT(file.errors, IsEmpty()) << ui::inOneLine(file.errors.front());
        EXPECT_EQ(file.place.toStdString(), file.front.id);
        EXPECT_FALSE(file.is_locked);
        EXPECT_EQ(openExercise(file.place).value(), file.front);
    }
}

TEST(ShippedExercises, LeadFromFirstStepsToAnExam) {
    const auto files = shipped();
    EXPECT_GE(files.size(), 6u);
    EXPECT_EQ(files.front().front.level, Level::First);
    EXPECT_EQ(files.back().front.level, Level::Exam);
    for (std::size_t i = 1; i < files.size(); ++i)
        EXPECT_LE(files[i - 1].front.level, files[i].front.level) << files[i].front.id;
}

TEST(ShippedExercises, TheFirstAreTheSameEveryTimeAndTheLaterOnesAreDrawn) {
    for (const ExerciseFile& file : shipped())
        EXPECT_EQ(file.front.drawn == 0, file.front.level == Level::First) << file.front.id;
}

TEST(ShippedExercises, TellNoFaultToTheTrainee) {
    for (const ExerciseFile& file : shipped())
        for (const auto& fault : faultWords)
            EXPECT_EQ(file.front.words.find(fault.word), std::string::npos)
                << file.front.id << " says " << fault.word;
}

TEST(ShippedExercises, TogetherTheyCanShowEveryFault) {
    std::set<Fault> shown;
    for (const ExerciseFile& file : shipped()) {
        for (const DoorTask& task : file.front.doors)
            shown.insert(task.faults.begin(), task.faults.end());
        if (file.front.drawn > 0 && file.front.drawn_from.empty())
            for (const auto& fault : faultWords)
                shown.insert(fault.value);
    }
    EXPECT_EQ(shown.size(), faultWords.size());
}

TEST(ShippedExercises, OneSeedIsOneSetOfDoors) {
    for (const ExerciseFile& file : shipped()) {
        const Arrangement vessel = vesselFor(file.front, practiceVessel());
        EXPECT_EQ(vessel.doors.size(), file.front.doors.size());
        const auto doors = doorsOf(file.front, vessel, 7);
        EXPECT_EQ(doors, doorsOf(file.front, vessel, 7));
        std::size_t faults = 0;
        for (const auto& [number, truth] : doors)
            faults += truth.faults.size();
        std::size_t expected = std::size_t(file.front.drawn);
        for (const DoorTask& task : file.front.doors)
            expected += task.faults.size();
        EXPECT_EQ(faults, expected) << file.front.id;
    }
}

} // namespace
} // namespace latchround::practice
