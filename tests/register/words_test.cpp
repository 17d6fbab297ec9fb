// SQLite's result codes in the words of the person who has to act on them.
#include <gmock/gmock.h>
#include <sqlite3.h>

#include "app/register/sqlite_words.h"
#include "core/error/register_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

TEST(SqliteWords, AFullDiskSaysWhatToDo) {
    const Error error = errorOf(SQLITE_FULL, "", "ship.db", Doing::Saving);
    EXPECT_EQ(ui::inOneLine(error),
              "ship.db: the disk is full: NOT saved. Free some space and try again.");
}

TEST(SqliteWords, OnlyAWriteSaysNotSaved) {
    for (const Doing doing : {Doing::Opening, Doing::Reading})
        EXPECT_EQ(errorOf(SQLITE_CORRUPT, "", "ship.db", doing).what,
                  errors::register_corrupt(SQLITE_CORRUPT));
}

TEST(SqliteWords, EveryFamilyHasWordsOfItsOwnAndARemedy) {
    std::set<std::string> sentences;
    const std::array codes{SQLITE_FULL,
                           SQLITE_IOERR_FSYNC,
                           SQLITE_BUSY_SNAPSHOT,
                           SQLITE_READONLY_DIRECTORY,
                           SQLITE_CANTOPEN,
                           SQLITE_CORRUPT_INDEX,
                           SQLITE_NOTADB,
                           SQLITE_NOMEM,
                           SQLITE_TOOBIG,
                           SQLITE_CONSTRAINT_FOREIGNKEY,
                           SQLITE_CONSTRAINT_CHECK,
                           SQLITE_CONSTRAINT_DATATYPE,
                           SQLITE_CONSTRAINT_TRIGGER,
                           SQLITE_CONSTRAINT_NOTNULL,
                           SQLITE_CONSTRAINT_PRIMARYKEY,
                           SQLITE_SCHEMA};
    for (const int code : codes) {
        const Error error = errorOf(code, "detail", "ship.db", Doing::Saving);
        const std::string words = ui::phraseWords(error.what).toStdString();
        EXPECT_TRUE(sentences.insert(words).second) << code;
        EXPECT_THAT(words, ::testing::EndsWith(": NOT saved")) << code;
        EXPECT_NE(ui::remedyWords(error.what), "") << code;
    }
}

TEST(SqliteWords, OnlyFaultsOfTheDiskAskForReopening) {
    EXPECT_TRUE(needsReopening(SQLITE_IOERR_FSYNC));
    EXPECT_TRUE(needsReopening(SQLITE_CORRUPT));
    EXPECT_FALSE(needsReopening(SQLITE_FULL));
    EXPECT_FALSE(needsReopening(SQLITE_BUSY));
    EXPECT_FALSE(needsReopening(SQLITE_CONSTRAINT_CHECK));
}

} // namespace
} // namespace latchround
