#include "app/register/create_file.h"

#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <sqlite3.h>

#include "app/exchange/durable_file.h"
#include "app/register/migrations.h"
#include "app/register/register_format.h"
#include "app/register/sqlite_connection.h"
#include "app/register/transaction.h"
#include "core/error/register_errors.h"

namespace latchround {

namespace {

Result<> fill(SqliteConnection& connection, RegisterKind kind) {
    // What is cut short is never looked at again, so it needs no journal and is flushed once, at
    // the end: a mark elsewhere waits for each flush of this disk. WAL comes with the first
    // opening: this way application_id stands in the file itself from its first byte on.
    const std::string preamble = "PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF; "
                                 "PRAGMA foreign_keys=ON; PRAGMA application_id=" +
                                 std::to_string(applicationIdOf(kind));
    if (Result<> done = connection.script(preamble.c_str()); !done)
        return done;
    if (Result<> done = migrate(connection, migrations()); !done)
        return done;
    const QString id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    const Result<int> device = connection.run(
        "INSERT INTO this_device (only_row, id) VALUES (1, ?)", {sqlText(id.toStdString())});
    if (!device)
        return tl::unexpected(device.error());
    return {};
}

Result<> flush(SqliteConnection& connection) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(connection.handle(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    const int code = file == nullptr || file->pMethods == nullptr
                         ? SQLITE_IOERR
                         : file->pMethods->xSync(file, SQLITE_SYNC_FULL);
    if (code != SQLITE_OK)
        return tl::unexpected(connection.error(code, "flush"));
    return {};
}

Result<> buildAt(const QString& file, const OpenOptions& options) {
    auto connection =
        SqliteConnection::connect(file, FileMode::Create, options.vfs, options.busy_timeout_ms);
    if (!connection)
        return tl::unexpected(connection.error());
    if (Result<> done = fill(**connection, options.kind); !done)
        return done;
    return flush(**connection);
}

} // namespace

Result<> refuseStrayLogs(const QString& file) {
    for (const QString& ending : {QStringLiteral("-wal"), QStringLiteral("-journal")})
        if (QFileInfo info(file + ending); info.exists() && info.size() > 0)
            return tl::unexpected(Error{file.toStdString(), errors::register_missing_beside(
                                                                info.fileName().toStdString())});
    return {};
}

Result<> createRegisterFile(const QString& file, const OpenOptions& options) {
    const QFileInfo folder(QFileInfo(file).absolutePath());
    const std::string where = file.toStdString();
    if (!folder.isDir())
        return tl::unexpected(Error{where, errors::register_folder_missing()});
    if (!folder.isWritable())
        return tl::unexpected(Error{where, errors::register_folder_read_only()});
    if (Result<> done = refuseStrayLogs(file); !done)
        return done;
    const QString beside =
        file + QStringLiteral(".new-") + QUuid::createUuid().toString(QUuid::Id128).left(8);
    if (Result<> done = buildAt(beside, options); !done) {
        QFile::remove(beside);
        QFile::remove(beside + QStringLiteral("-journal"));
        done.error().where = where;
        return done;
    }
    if (!QFile::rename(beside, file)) { // never over another file
        QFile::remove(beside);
        if (!QFileInfo::exists(file))
            return tl::unexpected(Error{where, errors::register_not_placed()});
    }
    if (!flushFolder(folder.filePath().toStdString()))
        return tl::unexpected(Error{where, errors::disk_fault_here()});
    return {};
}

} // namespace latchround
