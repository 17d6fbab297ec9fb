// latchround-cli as a shell sees it: the built program, its two streams and its exit code.
#pragma once

#include <algorithm>
#include <string>

#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace latchround {

struct ShellOutput {
    int exit_code = -1;
    std::string out;
    std::string err;
};

inline ShellOutput run(const QStringList& arguments,
                       const QString& cli = QStringLiteral(LATCHROUND_CLI)) {
    QProcess program;
    program.start(cli, arguments);
    EXPECT_TRUE(program.waitForFinished(120000));
    EXPECT_EQ(program.exitStatus(), QProcess::NormalExit) << "it crashed";
    return {program.exitCode(), program.readAllStandardOutput().toStdString(),
            program.readAllStandardError().toStdString()};
}

inline long lines(const std::string& text) {
    return std::count(text.begin(), text.end(), '\n');
}

inline QByteArray bytesAt(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

class Cli : public ::testing::Test {
protected:
    QString at(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    QString put(const char* name, const QByteArray& bytes) const {
        QFile file(at(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return at(name);
    }
    static QString sample(const char* file) {
        return QStringLiteral(LATCHROUND_SOURCE "/sample_vessels/ternwick-lass/") +
               QString::fromLatin1(file);
    }
    QString imported() const {
        const QString path = at("ternwick.db");
        const ShellOutput said = run({"register", "import", sample("register.csv"), "--into", path,
                                      "--history", sample("history.jsonl")});
        EXPECT_EQ(said.exit_code, 0) << said.err;
        return path;
    }

private:
    QTemporaryDir m_folder;
};

} // namespace latchround
