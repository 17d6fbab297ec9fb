// A step of the schema is done with its number or not at all.
#include <array>
#include <vector>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/migrations.h"
#include "app/register/sqlite_connection.h"
#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"

namespace latchround {
namespace {

constexpr std::array<Migration, 3> two_good_one_bad{
    {{1, "CREATE TABLE leaf (id INTEGER) STRICT; INSERT INTO leaf VALUES (1);"},
     {2, "ALTER TABLE leaf ADD COLUMN sill TEXT;"},
     {3, "CREATE TABLE pocket (id INTEGER) STRICT; UPDATE leaf SET sill = 'x'; "
         "INSERT INTO nowhere VALUES (1);"}}};

class Migrations : public ::testing::Test {
protected:
    void SetUp() override {
        auto connected = SqliteConnection::connect(m_file, FileMode::Create, {}, 100);
        ASSERT_TRUE(connected);
        m_connection = std::move(*connected);
        ASSERT_TRUE(m_connection->script("PRAGMA foreign_keys=ON"));
    }
    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(QStringLiteral("steps.db"));
    std::unique_ptr<SqliteConnection> m_connection;
};

TEST_F(Migrations, AFailingStepLeavesTheVersionBeforeIt) {
    const Result<> done = migrate(*m_connection, two_good_one_bad);
    ASSERT_FALSE(done);
    m_connection.reset();
    RawSqlite raw(m_file);
    EXPECT_EQ(raw.single("PRAGMA user_version"), "2");
    EXPECT_EQ(raw.single("SELECT count(*) FROM sqlite_schema WHERE name = 'pocket'"), "0");
    EXPECT_EQ(raw.single("SELECT count(*) FROM leaf WHERE sill IS NULL"), "1");
}

TEST_F(Migrations, OnlyTheStepsAboveTheFilesVersionAreRun) {
    ASSERT_TRUE(migrate(*m_connection, std::span(two_good_one_bad).first(1)));
    ASSERT_TRUE(migrate(*m_connection, std::span(two_good_one_bad).first(2)));
    ASSERT_TRUE(migrate(*m_connection, std::span(two_good_one_bad).first(2)));
    EXPECT_EQ(m_connection->single("PRAGMA user_version"), "2");
    EXPECT_EQ(m_connection->single("SELECT count(*) FROM leaf"), "1");
}

TEST_F(Migrations, AStepThatLeavesAReferenceDanglingIsRefused) {
    constexpr std::array<Migration, 1> dangling{
        {{1, "PRAGMA defer_foreign_keys=ON; CREATE TABLE door (id INTEGER PRIMARY KEY) STRICT;"
             "CREATE TABLE leaf (door INTEGER REFERENCES door (id)) STRICT;"
             "INSERT INTO leaf VALUES (7);"}}};
    const Result<> done = migrate(*m_connection, dangling);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().what, errors::rows_would_dangle("leaf"));
    EXPECT_EQ(m_connection->single("PRAGMA user_version"), "0");
}

/// As after a first release: the steps that ship, and the next.
TEST_F(Migrations, ARegisterKeepsWhatItHoldsThroughTheNextStep) {
    ASSERT_TRUE(migrate(*m_connection, migrations()));
    ASSERT_TRUE(m_connection->script(
        "BEGIN;"
        "INSERT INTO fact VALUES ('p','person-joined',1,60,'p','tablet',NULL,NULL,NULL);"
        "INSERT INTO person_joined (fact, name, role) VALUES ('p','Maren Tollefsby','surveyor');"
        "INSERT INTO door_number VALUES ('5-01');"
        "INSERT INTO fact VALUES ('w','walkdown-begun',2,60,'p','tablet',NULL,NULL,NULL);"
        "INSERT INTO walkdown_begun VALUES "
        "('w','annual','all',NULL,0,'bridge','bridge','8',NULL,'go','stop','all',NULL,1);"
        "INSERT INTO fact VALUES ('n','note',3,60,'p','tablet',NULL,'w','5-01');"
        "INSERT INTO note (fact, text) VALUES ('n','a note');"
        "INSERT INTO fact VALUES ('t','taken-back',4,60,'p','tablet','n',NULL,NULL);"
        "INSERT INTO taken_back (fact, reason) VALUES ('t','a slip');"
        "COMMIT"));
    const int next = currentVersion() + 1;
    const std::vector<Migration> steps{
        {next, "ALTER TABLE note ADD COLUMN seen TEXT NOT NULL DEFAULT 'aboard';"
               "INSERT INTO fact_kind (word, of_walkdown, of_door) VALUES ('gossip', 0, 0);"}};
    ASSERT_TRUE(migrate(*m_connection, steps));
    const auto single = [&](const char* question) {
        return m_connection->single(question).value();
    };
    EXPECT_EQ(single("PRAGMA user_version"), std::to_string(next));
    EXPECT_EQ(single("SELECT count(*) FROM fact"), "4");
    EXPECT_EQ(single("SELECT supersedes FROM fact WHERE id = 't'"), "n");
    EXPECT_EQ(single("SELECT text || ' ' || seen FROM note"), "a note aboard");
    EXPECT_EQ(single("SELECT count(*) FROM fact_without_body"), "0");
    EXPECT_EQ(single("PRAGMA foreign_keys"), "1") << "watched again";
}

TEST_F(Migrations, RowsStayAndHangOnWhatTheirKindHangsOn) {
    ASSERT_TRUE(migrate(*m_connection, migrations()));
    ASSERT_TRUE(m_connection->script(
        "BEGIN;"
        "INSERT INTO fact VALUES ('p','person-joined',1,60,'p','tablet',NULL,NULL,NULL);"
        "INSERT INTO person_joined (fact, name, role) VALUES ('p','Maren Tollefsby','surveyor');"
        "COMMIT"));
    EXPECT_FALSE(m_connection->script("UPDATE fact SET utc_ms = 9"));
    EXPECT_FALSE(m_connection->script("DELETE FROM fact"));
    EXPECT_FALSE(m_connection->script(
        "INSERT INTO fact VALUES ('x','gossip',5,60,'p','tablet',NULL,NULL,NULL)"));
    EXPECT_FALSE(m_connection->script(
        "INSERT INTO fact VALUES ('x','note',5,60,'p','tablet',NULL,NULL,NULL)"));
    EXPECT_FALSE(m_connection->script(
        "INSERT INTO fact VALUES ('x','thumb-drill',5,60,'p','tablet',NULL,'w',NULL)"));
}

TEST_F(Migrations, TheShippedStepsAreNumberedFromOneWithoutGaps) {
    int expected = 1;
    for (const Migration& step : migrations())
        EXPECT_EQ(step.version, expected++);
    EXPECT_EQ(currentVersion(), expected - 1);
    ASSERT_TRUE(migrate(*m_connection, migrations()));
    EXPECT_EQ(m_connection->single("PRAGMA user_version"), std::to_string(currentVersion()));
}

} // namespace
} // namespace latchround
