#include "app/register/open_sequence.h"

#include <cstdlib>
#include <utility>
#include <vector>

#include <QDateTime>
#include <QFileInfo>
#include <sqlite3.h>

#include "app/register/file_header.h"
#include "app/register/migrations.h"
#include "app/register/register_format.h"
#include "app/register/watched_log.h"
#include "core/error/register_errors.h"

namespace latchround {

namespace {

tl::unexpected<Error> refusal(const std::string& where, Phrase what) {
    return tl::unexpected(Error{where, std::move(what)});
}

Result<> judgeVersion(const std::string& where, std::int64_t version) {
    if (version > currentVersion())
        return refusal(where, errors::register_newer(version, currentVersion()));
    if (version < 1)
        return refusal(where, errors::register_unfinished());
    return {};
}

Result<> judgeKind(const std::string& where, const FileHeader& header, RegisterKind kind) {
    if (header.is_sqlite && header.application_id == applicationIdOf(kind))
        return {};
    if (header.is_sqlite && header.application_id == practice_application_id)
        return refusal(where, errors::practice_register());
    if (header.is_sqlite && header.application_id == register_application_id)
        return refusal(where, errors::vessel_register());
    return refusal(where, errors::register_of_others());
}

Result<> judgeHeader(const std::string& where, const FileHeader& header, RegisterKind kind) {
    if (header.size == 0)
        return refusal(where, errors::register_empty());
    if (Result<> done = judgeKind(where, header, kind); !done)
        return done;
    return judgeVersion(where, header.user_version);
}

Result<> judgePlace(const QString& file) {
    const QFileInfo info(file);
    const QFileInfo folder(info.absolutePath());
    if (!info.isFile())
        return refusal(file.toStdString(), errors::register_is_no_file());
    if (!info.isReadable())
        return refusal(file.toStdString(), errors::register_unreadable());
    if (!info.isWritable() || !folder.isWritable())
        return refusal(file.toStdString(), errors::register_read_only());
    return {};
}

/// Sets a pragma and believes only what SQLite says when asked again.
Result<> insist(SqliteConnection& connection, const char* set, const char* ask,
                const char* expected) {
    if (const auto answer = connection.single(set); !answer)
        return tl::unexpected(answer.error());
    const auto answer = connection.single(ask);
    if (!answer)
        return tl::unexpected(answer.error());
    if (*answer != expected)
        return refusal(connection.where(), errors::setting_not_accepted(set, *answer));
    return {};
}

/// A file that was made to look like the other kind still holds its vessel.
Result<> judgeVessels(SqliteConnection& connection, RegisterKind kind) {
    Result<> judged;
    const Result<> read = connection.each("SELECT number FROM arrangement", {}, [&](Row& row) {
        if (judged)
            judged = refuseForeignVessel(kind, row.text(0), connection.where());
    });
    return read ? judged : read;
}

Result<> judgeWhole(SqliteConnection& connection) {
    const auto sound = connection.single("PRAGMA quick_check(1)");
    if (!sound)
        return tl::unexpected(sound.error());
    if (*sound != "ok")
        return refusal(connection.where(), errors::register_damaged(*sound));
    return {};
}

/// Once, from beginning to end, so that it lies in memory: only this can say how far it is. What
/// cannot be read is found by SQLite.
void readThrough(SqliteConnection& connection, const ProgressRange& pace) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(connection.handle(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    sqlite3_int64 size = 0;
    if (file == nullptr || file->pMethods == nullptr ||
        file->pMethods->xFileSize(file, &size) != SQLITE_OK)
        return;
    std::vector<char> bytes(1 << 20);
    for (sqlite3_int64 at = 0; at < size && pace.at(std::size_t(at), std::size_t(size));
         at += sqlite3_int64(bytes.size()))
        (void)file->pMethods->xRead(file, bytes.data(), int(bytes.size()), at);
}

Result<> judgeContent(SqliteConnection& connection, const OpenOptions& options) {
    const auto version = connection.single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (Result<> done = judgeVersion(connection.where(), std::atoll(version->c_str())); !done)
        return done;
    if (!options.is_checked)
        if (Result<> done = judgeWhole(connection); !done)
            return done;
    return judgeVessels(connection, options.kind);
}

Result<> demandDurability(SqliteConnection& connection) {
    if (const auto mode = connection.single("PRAGMA journal_mode=WAL"); !mode)
        return tl::unexpected(mode.error());
    if (Result<> done = insist(connection, "PRAGMA synchronous=FULL", "PRAGMA synchronous", "2");
        !done)
        return done;
    if (Result<> done = insist(connection, "PRAGMA foreign_keys=ON", "PRAGMA foreign_keys", "1");
        !done)
        return done;
    const auto mode = connection.single("PRAGMA journal_mode");
    if (!mode)
        return tl::unexpected(mode.error());
    if (*mode != "wal")
        return refusal(connection.where(), errors::no_write_ahead_log());
    return {};
}

Result<> checkAll(SqliteConnection& connection, const OpenOptions& options) {
    sqlite3* handle = connection.handle();
    if (Result<> done =
            insist(connection, "PRAGMA trusted_schema=OFF", "PRAGMA trusted_schema", "0");
        !done)
        return done;
    const std::string timeout = std::to_string(options.busy_timeout_ms);
    if (Result<> done = insist(connection, ("PRAGMA busy_timeout=" + timeout).c_str(),
                               "PRAGMA busy_timeout", timeout.c_str());
        !done)
        return done;
    if (Result<> done = judgeContent(connection, options); !done)
        return done;
    // Asked only now: SQLite may fall back to reading when the file is opened.
    if (sqlite3_db_readonly(handle, "main") != 0)
        return refusal(connection.where(), errors::register_read_only());
    if (Result<> done = demandDurability(connection); !done)
        return done;
    return migrate(connection, migrations());
}

/// Who only reads brings nothing up to date.
Result<> judgeOldVersion(SqliteConnection& connection) {
    const auto version = connection.single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (std::atoll(version->c_str()) != currentVersion())
        return refusal(connection.where(), errors::other_version_writes());
    return {};
}

/// What a log left by a crash or a fault holds can be read, but it may never have been flushed: a
/// fact that failed to be saved could lie there and pass for saved. A checkpoint flushes the log
/// before all else.
Result<> flushLog(SqliteConnection& connection) {
    if (const auto flushed = connection.single("PRAGMA wal_checkpoint(PASSIVE)"); !flushed)
        return tl::unexpected(flushed.error());
    return {};
}

/// By which it is seen that somebody has written.
struct FileStand {
    bool has_log = false;
    qint64 size = 0;
    QDateTime changed;

    bool operator==(const FileStand&) const = default;
    /// A log beside the file holds what the file lacks, and has to be read with it; without one the
    /// file is taken to stand still.
    FileMode mode() const { return has_log ? FileMode::Read : FileMode::Still; }
};

FileStand standOf(const QString& file) {
    const QFileInfo info(file);
    return {QFileInfo(logFileOf(file)).size() > 0, info.size(), info.lastModified()};
}

Result<std::unique_ptr<SqliteConnection>> lookIntoBy(FileMode mode, const QString& file) {
    const Result<FileHeader> header = readHeader(file, {});
    if (!header)
        return tl::unexpected(header.error());
    if (const Result<> judged = judgeHeader(file.toStdString(), *header, RegisterKind::Vessel);
        !judged)
        return tl::unexpected(judged.error());
    auto connection = SqliteConnection::connect(file, mode, {}, OpenOptions().busy_timeout_ms);
    if (!connection)
        return connection;
    sqlite3_db_config((*connection)->handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    (*connection)->setDoing(Doing::Reading);
    return connection;
}

Result<> checkWholeBy(FileMode mode, const QString& file, const ProgressRange& pace) {
    constexpr double read = 70;   // of the time that all of it takes, in hundredths
    constexpr int steps = 50'000; // of SQLite's own, between two questions
    const auto connection = lookIntoBy(mode, file);
    if (!connection)
        return tl::unexpected(connection.error());
    readThrough(**connection, pace.part(0, read));
    ProgressRange rest = pace.part(read, 100);
    const auto stops = [](void* asked) {
        return static_cast<ProgressRange*>(asked)->at(0, 1) ? 0 : 1;
    };
    sqlite3_progress_handler((*connection)->handle(), steps, stops, &rest);
    return rest.at(0, 1) ? judgeWhole(**connection) : Result<>();
}

} // namespace

Result<std::unique_ptr<SqliteConnection>> openRegisterFile(const QString& file,
                                                           const OpenOptions& options) {
    if (const Result<> place = judgePlace(file); !place && !options.only_read)
        return tl::unexpected(place.error());
    const Result<FileHeader> header = readHeader(file, options.vfs);
    if (!header)
        return tl::unexpected(header.error());
    if (const Result<> judged = judgeHeader(file.toStdString(), *header, options.kind); !judged)
        return tl::unexpected(judged.error());
    const bool log_waits = !options.is_open_already && QFileInfo(logFileOf(file)).size() > 0;
    auto connection =
        SqliteConnection::connect(file, options.only_read ? FileMode::Read : FileMode::ReadWrite,
                                  options.vfs, options.busy_timeout_ms);
    if (!connection)
        return connection;
    sqlite3* handle = (*connection)->handle();
    if (options.only_read) {
        sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
        if (Result<> done = judgeOldVersion(**connection); !done)
            return tl::unexpected(done.error());
        (*connection)->setDoing(Doing::Reading);
        return connection;
    }
    // A refused file keeps its log as it was: closing would otherwise copy the log into it.
    if (log_waits)
        sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    if (Result<> done = checkAll(**connection, options); !done)
        return tl::unexpected(done.error());
    if (log_waits)
        if (const Result<> flushed = flushLog(**connection); !flushed)
            return tl::unexpected(flushed.error());
    sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
    (*connection)->setDoing(Doing::Reading);
    if (options.after_open)
        options.after_open(handle);
    return connection;
}

Result<std::unique_ptr<SqliteConnection>> lookInto(const QString& file) {
    return lookIntoBy(standOf(file).mode(), file);
}

Result<> checkWhole(const QString& file, const Progress& progress) {
    const ProgressRange pace(progress);
    const FileStand before = standOf(file);
    Result<> sound = checkWholeBy(before.mode(), file, pace);
    // Somebody who wrote meanwhile makes a sound file look damaged to whoever takes it to stand
    // still.
    if (!sound && !pace.isStopped() && before.mode() == FileMode::Still && standOf(file) != before)
        sound = checkWholeBy(FileMode::Read, file, pace);
    if (pace.isStopped() || !pace.at(1, 1))
        return tl::unexpected(stoppedAsAsked(file.toStdString()));
    return sound;
}

} // namespace latchround
