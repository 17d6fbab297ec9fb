// Registers of exercises: what they are, where they lie, and that their folder does not grow.
#include <QDir>
#include <gmock/gmock.h>

#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "tests/practice/practice_world.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

Moment minutesLater(int minutes) {
    Moment when = sampleMoment();
    when.utc_ms += std::int64_t{minutes} * 60'000;
    return when;
}

QStringList practiceFiles() {
    return QDir(practice::practiceFolder())
        .entryList({QStringLiteral("*.practice")}, QDir::Files, QDir::Name);
}

TEST(PracticeRegister, HoldsThePracticeVesselAndWhatIsRecorded) {
    const DataFolder folder;
    const auto file = practisedRegister();
    EXPECT_EQ(file->kind(), RegisterKind::Practice);
    EXPECT_EQ(file->arrangement().value(), practice::practiceVessel());
    EXPECT_EQ(file->facts().value(), practisedFacts());
    EXPECT_TRUE(file->examine());
}

TEST(PracticeRegister, IsReadAgainAsWhatItIs) {
    const DataFolder folder;
    practisedRegister().reset();
    OpenOptions options;
    options.kind = RegisterKind::Practice;
    const auto again = SqliteRegister::open(practicePath(), options);
    ASSERT_TRUE(again) << ui::inOneLine(again.error());
    EXPECT_EQ((*again)->facts().value(), practisedFacts());
    EXPECT_TRUE((*again)->reopen());
    EXPECT_EQ((*again)->kind(), RegisterKind::Practice);
}

TEST(PracticeRegister, TakesTheDoorsOfOneExerciseOnly) {
    const DataFolder folder;
    Arrangement two = practice::practiceVessel();
    two.doors.resize(2);
    const auto opened = practice::newPracticeRegister(two, sampleMoment());
    ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
    EXPECT_EQ((*opened)->arrangement().value().doors.size(), 2u);
}

TEST(PracticeRegister, IsNotListedAmongTheVesselsOfTheMachine) {
    const DataFolder folder;
    practisedRegister().reset();
    EXPECT_THAT(registersOnThisMachine(), ::testing::IsEmpty());
}

TEST(PracticeRegister, OnlyTheNewestAreKept) {
    const DataFolder folder;
    for (int i = 0; i < practice::registers_kept + 3; ++i)
        ASSERT_TRUE(practice::newPracticeRegister(practice::practiceVessel(), minutesLater(i)));
    const QStringList kept = practiceFiles();
    EXPECT_EQ(kept.size(), practice::registers_kept);
    // The first was begun at 09:42:13 UTC; three went.
    EXPECT_TRUE(kept.front().startsWith(QStringLiteral("20261127-094513-120-")))
        << kept.front().toStdString();
    const QStringList others =
        QDir(practice::practiceFolder()).entryList({QStringLiteral("*-wal")}, QDir::Files);
    EXPECT_THAT(others, ::testing::IsEmpty()) << "a log outlived its register";
}

TEST(PracticeRegister, TheOneJustBegunIsKeptThoughTheClockWasSetBack) {
    const DataFolder folder;
    for (int i = 0; i < practice::registers_kept; ++i)
        ASSERT_TRUE(practice::newPracticeRegister(practice::practiceVessel(), minutesLater(i)));
    const auto back = practice::newPracticeRegister(practice::practiceVessel(), minutesLater(-600));
    ASSERT_TRUE(back);
    EXPECT_EQ(practiceFiles().size(), practice::registers_kept);
    EXPECT_TRUE((*back)->record(practisedFacts())) << "its file is gone";
    EXPECT_LT(practiceFiles().front().left(15), practiceFiles().back().left(15));
}

} // namespace
} // namespace latchround::test
