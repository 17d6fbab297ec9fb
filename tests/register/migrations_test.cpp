// A step of the schema is done with its number or not at all.
#include <array>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/migrations.h"
#include "app/register/sqlite_connection.h"
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
    const Done done = migrate(*m_connection, two_good_one_bad);
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
    const Done done = migrate(*m_connection, dangling);
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error().what, ::testing::HasSubstr("leaf"));
    EXPECT_EQ(m_connection->single("PRAGMA user_version"), "0");
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
