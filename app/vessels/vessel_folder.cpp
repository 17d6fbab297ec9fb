#include "app/vessels/vessel_folder.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace latchround {

QString vesselFolder() {
    const QString chosen = qEnvironmentVariable("LATCHROUND_DATA");
    QString folder = chosen.isEmpty()
                         ? QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                               QStringLiteral("/latchround/vessels")
                         : chosen;
    QDir().mkpath(folder);
    return folder;
}

std::vector<QString> registersOnThisMachine() {
    std::vector<QString> paths;
    const QDir folder(vesselFolder());
    for (const QString& name : folder.entryList({QStringLiteral("*.db")}, QDir::Files, QDir::Name))
        paths.push_back(folder.filePath(name));
    return paths;
}

QString registerPathFor(const QString& vessel_name) {
    QString name;
    for (const QChar character : vessel_name.toLower())
        name += character.isLetterOrNumber() ? character : QLatin1Char('-');
    while (name.contains(QStringLiteral("--")))
        name.replace(QStringLiteral("--"), QStringLiteral("-"));
    return QDir(vesselFolder()).filePath(name + QStringLiteral(".db"));
}

namespace {

QString besideRegister(const QString& register_path, const char* ending) {
    const QFileInfo file(register_path);
    return file.dir().filePath(file.completeBaseName() + QLatin1String(ending));
}

} // namespace

QString flagRulesPathFor(const QString& register_path) {
    return besideRegister(register_path, ".rules.json");
}

QString keptCataloguePathFor(const QString& register_path) {
    return besideRegister(register_path, ".catalogue.json");
}

} // namespace latchround
