// Instructors' files in the practice folder: listed with those that ship, taken in, locked.
#include <QFileInfo>
#include <gmock/gmock.h>

#include "app/practice/built_in.h"
#include "app/practice/exercise_files.h"
#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "tests/practice/practice_world.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr const char* password = "seven grey herons";

class ExerciseFiles : public ::testing::Test {
protected:
    static Exercise sample(const std::string& id = "ours") {
        return {id, "Ours", "Two doors.", Level::Easy, {{"P-01", {Fault::Hook}}, {"P-12", {}}}, 0,
                {}, 0};
    }
    QString put(const char* name, const Exercise& exercise) const {
        return folder.put(QString::fromLatin1(name), jsonFrom(exercise));
    }
    static std::vector<ExerciseFile> own() {
        auto files = exerciseFiles();
        files.erase(files.begin(),
                    files.begin() + static_cast<std::ptrdiff_t>(builtInExercises().size()));
        return files;
    }
    static std::string whyNotKept(const QString& path) {
        const auto kept = keepExerciseFile(path);
        return kept ? "it was kept" : ui::inOneLine(kept.error().front());
    }

    test::DataFolder folder;
};

TEST_F(ExerciseFiles, AnInstructorsFileIsKeptListedAndOpened) {
    const auto kept = keepExerciseFile(put("from-the-mail.json", sample()));
    ASSERT_TRUE(kept) << ui::inOneLine(kept.error().front());
    const auto files = own();
    ASSERT_THAT(files, SizeIs(1));
    EXPECT_EQ(files[0].place, *kept);
    EXPECT_EQ(files[0].front, sample());
    EXPECT_EQ(openExercise(*kept).value(), sample());
    EXPECT_EQ(openExercise(QStringLiteral("ours")).value(), sample()) << "by its id";
}

TEST_F(ExerciseFiles, IsOpenedWhereverItLies) {
    EXPECT_EQ(openExercise(put("mine.json", sample())).value(), sample());
    EXPECT_FALSE(openExercise(folder.at(QStringLiteral("none.json"))));
}

TEST_F(ExerciseFiles, KeepingTheSameAgainChangesNothingAndAnotherOfItsIdIsRefused) {
    const QString path = put("mine.json", sample());
    const QString kept = keepExerciseFile(path).value();
    EXPECT_EQ(keepExerciseFile(path).value(), kept);
    Exercise other = sample();
    other.title = "Another";
    EXPECT_THAT(whyNotKept(put("other.json", other)), HasSubstr("already here"));
    EXPECT_EQ(openExercise(kept).value(), sample());
    EXPECT_THAT(whyNotKept(put("exam.json", sample("exam"))), HasSubstr("comes with the program"));
}

TEST_F(ExerciseFiles, AFaultyFileIsNotKept) {
    EXPECT_THAT(whyNotKept(folder.put(QStringLiteral("bad.json"), "{}")),
                HasSubstr("not an exercise"));
    EXPECT_THAT(own(), IsEmpty());
}

TEST_F(ExerciseFiles, AFaultyFileInTheFolderIsListedWithItsErrors) {
    ASSERT_TRUE(keepExerciseFile(put("mine.json", sample())));
    QFile bad(exerciseFolder() + QStringLiteral("/bad.json"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write(R"({"exercise": 1, "id": "bad", "level": "easy", "doors": []})");
    bad.close();
    const auto files = own();
    ASSERT_THAT(files, SizeIs(2));
    EXPECT_THAT(files[0].errors, SizeIs(3)) << "title, words and doors";
    EXPECT_THAT(files[1].errors, IsEmpty());
}

TEST_F(ExerciseFiles, ALockedFileIsKeptAndOpensByThePasswordOnly) {
    const QString to = folder.at(QStringLiteral("locked.json"));
    const auto locked = lockExerciseFile(put("mine.json", sample()), to, password);
    ASSERT_TRUE(locked) << ui::inOneLine(locked.error().front());
    EXPECT_TRUE(locked->is_locked);
    const QString kept = keepExerciseFile(to).value();
    ASSERT_THAT(own(), SizeIs(1));
    EXPECT_TRUE(own()[0].is_locked);
    EXPECT_THAT(own()[0].front.doors[0].faults, IsEmpty());
    EXPECT_EQ(openExercise(kept, password).value(), sample());
    EXPECT_THAT(ui::inOneLine(openExercise(kept).error().front()), HasSubstr("with a password"));
    EXPECT_THAT(ui::inOneLine(openExercise(kept, "another password").error().front()),
                HasSubstr("does not open it"));
}

TEST_F(ExerciseFiles, ALockedFileIsNotLockedAgain) {
    const QString to = folder.at(QStringLiteral("locked.json"));
    ASSERT_TRUE(lockExerciseFile(put("mine.json", sample()), to, password));
    EXPECT_FALSE(lockExerciseFile(to, folder.at(QStringLiteral("twice.json")), password));
    EXPECT_FALSE(QFileInfo::exists(folder.at(QStringLiteral("twice.json"))));
}

} // namespace
} // namespace latchround::practice
