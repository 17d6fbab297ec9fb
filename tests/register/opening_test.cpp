// What is opened, what is refused, and that a refused file keeps every byte.
#include <functional>
#include <string>

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/register/migrations.h"
#include "app/register/open_sequence.h"
#include "app/register/register_format.h"
#include "app/register/sqlite_register.h"
#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/recorded_walk.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

const std::vector<std::string_view> damaged{errors::register_damaged.code,
                                            errors::register_corrupt.code};
const std::string newer = "PRAGMA user_version=" + std::to_string(currentVersion() + 1);

QByteArray bytesOf(const QString& file) {
    QFile opened(file);
    return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray("not readable");
}

void putBytes(const QString& file, const QByteArray& bytes) {
    QFile opened(file);
    ASSERT_TRUE(opened.open(QIODevice::WriteOnly));
    ASSERT_EQ(opened.write(bytes), bytes.size());
}

class Opening : public ::testing::Test {
protected:
    void SetUp() override { makeRegister(m_file); }

    /// Refused for one of these reasons; file and folder are as they were.
    void expectRefused(const std::vector<std::string_view>& why) {
        const QByteArray before = bytesOf(m_file);
        const QByteArray log = bytesOf(m_file + QStringLiteral("-wal"));
        const auto opened = SqliteRegister::open(m_file);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().where, m_file.toStdString());
        EXPECT_THAT(why, ::testing::Contains(opened.error().what.code));
        EXPECT_NE(ui::remedyWords(opened.error().what), "");
        EXPECT_EQ(bytesOf(m_file), before) << "the file is as it was";
        EXPECT_EQ(bytesOf(m_file + QStringLiteral("-wal")), log) << "so is its log";
    }
    void damage(qsizetype from, qsizetype count) {
        QByteArray bytes = bytesOf(m_file);
        for (qsizetype i = from; i < from + count; ++i)
            bytes[i] = static_cast<char>(~bytes[i]);
        putBytes(m_file, bytes);
    }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(QStringLiteral("ship.db"));
};

TEST_F(Opening, AsksForEverythingThatDurabilityNeeds) {
    std::vector<std::string> answers;
    OpenOptions options;
    options.busy_timeout_ms = 1234;
    options.after_open = [&](sqlite3* handle) {
        for (const char* question :
             {"PRAGMA journal_mode", "PRAGMA synchronous", "PRAGMA foreign_keys",
              "PRAGMA trusted_schema", "PRAGMA busy_timeout", "PRAGMA user_version"})
            sqlite3_exec(
                handle, question,
                [](void* list, int, char** values, char**) {
                    static_cast<std::vector<std::string>*>(list)->emplace_back(values[0]);
                    return 0;
                },
                &answers, nullptr);
    };
    ASSERT_TRUE(SqliteRegister::open(m_file, options));
    EXPECT_THAT(answers, ::testing::ElementsAre("wal", "2", "1", "0", "1234",
                                                std::to_string(currentVersion())));
}

TEST_F(Opening, LeavesOneFileBehindWhenClosed) {
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files), QStringList{QStringLiteral("ship.db")});
    EXPECT_EQ(RawSqlite(m_file).single("PRAGMA application_id"),
              std::to_string(register_application_id));
}

TEST_F(Opening, AFileOfAnotherKindIsRefused) {
    putBytes(m_file, QByteArray("door,5-32,sliding\n").repeated(40));
    expectRefused({errors::register_of_others.code});
    putBytes(m_file, "short");
    expectRefused({errors::register_of_others.code});
    putBytes(m_file, {});
    expectRefused({errors::register_empty.code});
}

TEST_F(Opening, AnotherProgramsDatabaseIsRefused) {
    QFile::remove(m_file);
    {
        RawSqlite raw(m_file);
        ASSERT_EQ(raw.run("CREATE TABLE cargo (id INTEGER); PRAGMA user_version=1"), SQLITE_OK);
    }
    expectRefused({errors::register_of_others.code});
    ASSERT_EQ(RawSqlite(m_file).run("PRAGMA application_id=1196444487"), SQLITE_OK);
    expectRefused({errors::register_of_others.code});
}

TEST_F(Opening, ARegisterOfANewerProgramIsRefused) {
    ASSERT_EQ(RawSqlite(m_file).run(newer), SQLITE_OK);
    expectRefused({errors::register_newer.code});
}

TEST_F(Opening, ANewerVersionThatStillLiesInTheLogIsRefusedAndTheLogKept) {
    // A newer program crashed right after it had brought the file to its form.
    const QString crashed = m_folder.filePath(QStringLiteral("crashed.db"));
    {
        RawSqlite raw(m_file);
        ASSERT_EQ(raw.run(newer), SQLITE_OK);
        ASSERT_TRUE(QFile::copy(m_file, crashed));
        ASSERT_TRUE(QFile::copy(m_file + QStringLiteral("-wal"), crashed + QStringLiteral("-wal")));
    }
    m_file = crashed;
    expectRefused({errors::register_newer.code});
}

TEST_F(Opening, ATruncatedRegisterIsRefusedAsDamaged) {
    putBytes(m_file, bytesOf(m_file).left(bytesOf(m_file).size() / 2));
    expectRefused(damaged);
    putBytes(m_file, bytesOf(m_file).left(700));
    expectRefused(damaged);
}

TEST_F(Opening, FlippedBytesInThePagesOrderAreRefusedAsDamaged) {
    const QByteArray sound = bytesOf(m_file);
    int refused = 0;
    for (qsizetype page = 1; page < sound.size() / 4096; ++page) {
        putBytes(m_file, sound);
        damage(page * 4096, 8); // the head of the page: its kind, its number of rows
        expectRefused(damaged);
        ++refused;
    }
    EXPECT_GT(refused, 20);
    putBytes(m_file, sound);
    damage(100, 8); // the head of the schema itself
    expectRefused(damaged);
}

TEST_F(Opening, AFolderIsRefused) {
    const auto opened = SqliteRegister::open(m_folder.path());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().what, errors::register_is_no_file());
}

TEST_F(Opening, InAFolderThatIsNotThereIsRefused) {
    const auto opened = SqliteRegister::open(m_folder.filePath(QStringLiteral("none/ship.db")));
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().what, errors::register_folder_missing());
}

TEST_F(Opening, ALogWithoutItsRegisterIsNotPlayedIntoANewOne) {
    const QString lost = m_folder.filePath(QStringLiteral("lost.db"));
    putBytes(lost + QStringLiteral("-wal"), "entries");
    const auto opened = SqliteRegister::open(lost);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().what, errors::register_missing_beside("lost.db-wal"));
    EXPECT_FALSE(QFile::exists(lost));
    EXPECT_EQ(bytesOf(lost + QStringLiteral("-wal")), QByteArray("entries"));
}

TEST_F(Opening, AFailedReopeningIsToldAndTheNextOneWorks) {
    auto opened = SqliteRegister::open(m_file);
    ASSERT_TRUE(opened);
    const QString away = m_folder.filePath(QStringLiteral("away.db"));
    // Moved while open: the disk was unplugged.
    ASSERT_TRUE(QFile::rename(m_file, away));
    ASSERT_FALSE((*opened)->reopen());
    EXPECT_FALSE(QFile::exists(m_file)) << "no empty register takes its place";
    EXPECT_FALSE((*opened)->facts());
    const Result<> refused = (*opened)->record(samplePersonAndWalkdown());
    ASSERT_FALSE(refused);
    EXPECT_TRUE(errors::not_saved.isOf(refused.error().what));
    ASSERT_TRUE(QFile::rename(away, m_file));
    ASSERT_TRUE((*opened)->reopen());
    EXPECT_TRUE((*opened)->record(samplePersonAndWalkdown()));
}

/// Runs in a process without the rights of the superuser, for whom nothing is read-only.
std::string asAnOrdinaryPerson(const std::function<std::string()>& act) {
    int ends[2];
    if (::pipe(ends) != 0)
        return "no pipe";
    const pid_t child = ::fork();
    if (child == 0) {
        constexpr unsigned nobody = 65534;
        if (::geteuid() == 0 && (::setgid(nobody) != 0 || ::setuid(nobody) != 0))
            _exit(1);
        const std::string said = act();
        _exit(::write(ends[1], said.data(), said.size()) < 0 ? 1 : 0);
    }
    ::close(ends[1]);
    std::string said;
    char byte = 0;
    while (::read(ends[0], &byte, 1) == 1)
        said += byte;
    ::close(ends[0]);
    ::waitpid(child, nullptr, 0);
    return said;
}

std::string openingAnswer(const QString& file) {
    const auto opened = SqliteRegister::open(file);
    return opened ? "opened" : std::string(opened.error().what.code);
}

TEST_F(Opening, AReadOnlyPlaceIsRefusedAndLeftAsItIs) {
    const QByteArray before = bytesOf(m_file);
    const auto folder = QFile::encodeName(m_folder.path());
    const auto file = QFile::encodeName(m_file);
    // A read-only file in a folder one may write to.
    ASSERT_EQ(::chmod(folder.constData(), 0777), 0);
    ASSERT_EQ(::chmod(file.constData(), 0444), 0);
    EXPECT_EQ(asAnOrdinaryPerson([&] { return openingAnswer(m_file); }),
              errors::register_read_only.code);
    // A writable file in a read-only folder: the log could not be made beside it.
    ASSERT_EQ(::chmod(file.constData(), 0666), 0);
    ASSERT_EQ(::chmod(folder.constData(), 0555), 0);
    EXPECT_EQ(asAnOrdinaryPerson([&] { return openingAnswer(m_file); }),
              errors::register_read_only.code);
    EXPECT_EQ(asAnOrdinaryPerson(
                  [&] { return openingAnswer(m_folder.filePath(QStringLiteral("new.db"))); }),
              errors::register_folder_read_only.code);
    ASSERT_EQ(::chmod(file.constData(), 0), 0);
    EXPECT_EQ(asAnOrdinaryPerson([&] { return openingAnswer(m_file); }),
              errors::register_unreadable.code);
    ASSERT_EQ(::chmod(folder.constData(), 0777), 0);
    ASSERT_EQ(::chmod(file.constData(), 0666), 0);
    EXPECT_EQ(bytesOf(m_file), before);
    EXPECT_EQ(asAnOrdinaryPerson([&] { return openingAnswer(m_file); }), "opened");
}

} // namespace
} // namespace latchround
