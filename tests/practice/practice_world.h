// A user's data folder of a test's own, and a practice register in it in which somebody practised.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QTemporaryDir>

#include "app/register/sqlite_register.h"

namespace latchround::test {

/// Stands in place of the user's own folder while it lives.
class DataFolder {
public:
    DataFolder();
    ~DataFolder();
    DataFolder(const DataFolder&) = delete;
    DataFolder& operator=(const DataFolder&) = delete;

    QString at(const QString& name) const { return m_folder.filePath(name); }
    QString put(const QString& name, const std::string& bytes) const;

private:
    QTemporaryDir m_folder;
};

/// A person, a walkdown over three practice doors, and what was seen of them.
std::vector<Fact> practisedFacts();

/// A practice register that holds them.
std::unique_ptr<SqliteRegister> practisedRegister();

/// The only *.practice file there is.
QString practicePath();

std::string bytesOfFile(const QString& path);

} // namespace latchround::test
