#include "app/practice/practice_folder.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QUuid>

#include "app/vessels/vessel_folder.h"

namespace latchround::practice {

namespace {

QString folderOf(const QString& name) {
    const QString folder =
        QDir(vesselFolder()).filePath(QStringLiteral("practice") + QLatin1Char('/') + name);
    QDir().mkpath(folder);
    return QDir::cleanPath(folder);
}

const QString ending = QStringLiteral(".practice");

/// By the time they were begun, which their names begin with.
QString newName(Moment now) {
    const QDateTime begun = QDateTime::fromMSecsSinceEpoch(now.utc_ms, Qt::UTC);
    return begun.toString(QStringLiteral("yyyyMMdd-HHmmss-zzz-")) +
           QUuid::createUuid().toString(QUuid::Id128).left(8) + ending;
}

/// What cannot be removed now is tried again with the next exercise.
void clearAway(const QString& all_but) {
    const QDir folder(practiceFolder());
    QStringList files = folder.entryList({QLatin1Char('*') + ending}, QDir::Files, QDir::Name);
    files.removeAll(all_but);
    while (files.size() >= registers_kept) {
        const QString oldest = folder.filePath(files.takeFirst());
        for (const char* beside : {"", "-wal", "-shm", ".unfinished"})
            QFile::remove(oldest + QLatin1String(beside));
    }
}

} // namespace

QString practiceFolder() {
    return folderOf({});
}

QString exerciseFolder() {
    return folderOf(QStringLiteral("exercises"));
}

QString attemptFolder() {
    return folderOf(QStringLiteral("attempts"));
}

std::filesystem::path pathOf(const QString& file) {
    return QFile::encodeName(file).toStdString();
}

Result<std::unique_ptr<SqliteRegister>> newPracticeRegister(const Arrangement& vessel, Moment now) {
    OpenOptions options;
    options.kind = RegisterKind::Practice;
    const QString name = newName(now);
    auto opened = SqliteRegister::open(QDir(practiceFolder()).filePath(name), options);
    if (!opened)
        return opened;
    if (const Result<> adopted = (*opened)->adopt(vessel, now); !adopted)
        return tl::unexpected(adopted.error());
    clearAway(name);
    return opened;
}

} // namespace latchround::practice
