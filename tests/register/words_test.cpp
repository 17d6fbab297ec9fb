// SQLite's result codes in the words of the person who has to act on them.
#include <gmock/gmock.h>
#include <sqlite3.h>

#include "app/register/sqlite_words.h"

namespace latchround {
namespace {

TEST(SqliteWords, AFullDiskSaysWhatToDo) {
    const Complaint complaint = complaintOf(SQLITE_FULL, "", "ship.db", Doing::Saving);
    EXPECT_EQ(inOneLine(complaint),
              "ship.db: the disk is full: NOT saved. Free some space and try again.");
}

TEST(SqliteWords, OnlyAWriteSaysNotSaved) {
    for (const Doing doing : {Doing::Opening, Doing::Reading})
        EXPECT_THAT(complaintOf(SQLITE_CORRUPT, "", "ship.db", doing).what,
                    ::testing::Not(::testing::HasSubstr("NOT saved")));
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
        const Complaint complaint = complaintOf(code, "detail", "ship.db", Doing::Saving);
        EXPECT_TRUE(sentences.insert(complaint.what).second) << code;
        EXPECT_THAT(complaint.what, ::testing::EndsWith("NOT saved.")) << code;
        EXPECT_NE(complaint.remedy, "") << code;
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
