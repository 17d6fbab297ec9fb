// An issue of the arrangement comes into force while marks go on: what takes long is done before
// others are kept from writing, and what they recorded meanwhile counts.
#include <functional>
#include <string>
#include <vector>

#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <sqlite3.h>

#include "app/register/sqlite_register.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

struct Adopting : testing::Test {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("ship.db"));
    std::unique_ptr<SqliteRegister> screen; ///< which records marks
    std::unique_ptr<SqliteRegister> worker; ///< which adopts
    std::function<void()> just_before_writing;
    std::vector<std::string> while_writing; ///< what the worker asked under the lock
    bool is_writing = false;

    void SetUp() override {
        screen = std::move(SqliteRegister::open(file).value());
        ASSERT_TRUE(screen->adopt(sampleArrangement(), sampleMoment()));
        ASSERT_TRUE(screen->record(samplePersonAndWalkdown()));
        OpenOptions options;
        options.after_open = [this](sqlite3* handle) {
            sqlite3_trace_v2(
                handle, SQLITE_TRACE_STMT,
                [](unsigned, void* self, void*, void* sql) {
                    static_cast<Adopting*>(self)->hear(static_cast<const char*>(sql));
                    return 0;
                },
                this);
        };
        worker = std::move(SqliteRegister::open(file, options).value());
    }
    void hear(const std::string& sql) {
        if (sql == "BEGIN IMMEDIATE" && just_before_writing)
            std::exchange(just_before_writing, nullptr)();
        if (is_writing)
            while_writing.push_back(sql);
        if (sql == "BEGIN IMMEDIATE")
            is_writing = true;
        else if (sql == "COMMIT" || sql == "ROLLBACK")
            is_writing = false;
    }
    void recordMeanwhile(int n, const std::string& door) {
        just_before_writing = [this, fact = sampleFact(n, Note{sampleId(1), door, "dry"})] {
            const Result<> done = screen->record({&fact, 1});
            EXPECT_TRUE(done) << ui::inOneLine(done.error());
        };
    }
    /// The sample without its first door.
    static Arrangement oneDoorLess() {
        Arrangement less = sampleArrangement();
        less.doors.erase(less.doors.begin());
        return less;
    }
    std::string firstDoor() const { return sampleArrangement().doors.front().number; }
    std::string lastDoor() const { return sampleArrangement().doors.back().number; }
};

TEST_F(Adopting, WhatWasRecordedMeanwhileAtADoorLeftOutRefusesIt) {
    recordMeanwhile(5, firstDoor());
    const Result<> adopted = worker->adopt(oneDoorLess(), sampleMoment());
    ASSERT_FALSE(just_before_writing) << "it went as far as writing";
    ASSERT_FALSE(adopted);
    EXPECT_EQ(adopted.error().where, place::door(firstDoor()));
    EXPECT_EQ(adopted.error().what, errors::not_adopted(errors::door_with_fact_dropped()));
    EXPECT_EQ(worker->obstacle(), Register::Obstacle::Refused);
    EXPECT_EQ(*screen->arrangement(), sampleArrangement());
    EXPECT_EQ(screen->issues()->size(), 1u);
}

TEST_F(Adopting, WhatWasRecordedMeanwhileAtAnotherDoorHindersNothing) {
    recordMeanwhile(5, lastDoor());
    ASSERT_TRUE(worker->adopt(oneDoorLess(), sampleMoment()));
    EXPECT_EQ(*screen->arrangement(), oneDoorLess());
    EXPECT_EQ(screen->facts()->size(), samplePersonAndWalkdown().size() + 1);
}

TEST_F(Adopting, FactsAreNotGoneThroughWhileOthersAreKeptFromWriting) {
    ASSERT_TRUE(worker->adopt(oneDoorLess(), sampleMoment()));
    EXPECT_THAT(while_writing, Contains(HasSubstr("INTO door")));
    EXPECT_THAT(while_writing, Not(Contains(HasSubstr("FROM fact"))));
}

/// As most issues do.
TEST_F(Adopting, AnIssueWithEveryDoorAsksNothingOfFactsEvenWhereOneWasRecordedMeanwhile) {
    recordMeanwhile(5, firstDoor());
    ASSERT_TRUE(worker->adopt(sampleArrangement(), sampleMoment()));
    EXPECT_THAT(while_writing, Not(Contains(HasSubstr("FROM fact"))));
    EXPECT_EQ(screen->issues()->size(), 2u);
}

TEST_F(Adopting, ADoorThatAnEarlierIssueLeftOutStillHasNoFactsAfterwards) {
    ASSERT_TRUE(worker->adopt(oneDoorLess(), sampleMoment()));
    ASSERT_TRUE(worker->adopt(oneDoorLess(), sampleMoment()));
    ASSERT_TRUE(worker->adopt(sampleArrangement(), sampleMoment()));
    EXPECT_EQ(screen->issues()->size(), 4u);
    EXPECT_EQ(*screen->arrangement(), sampleArrangement());
}

} // namespace
} // namespace latchround
