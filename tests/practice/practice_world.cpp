#include "tests/practice/practice_world.h"

#include <QDir>
#include <QFile>
#include <gtest/gtest.h>

#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {

DataFolder::DataFolder() {
    qputenv("LATCHROUND_DATA", QFile::encodeName(m_folder.path()));
}

DataFolder::~DataFolder() {
    qunsetenv("LATCHROUND_DATA");
}

QString DataFolder::put(const QString& name, const std::string& bytes) const {
    QFile file(at(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    EXPECT_EQ(file.write(bytes.data(), qint64(bytes.size())), qint64(bytes.size()));
    return at(name);
}

std::vector<Fact> practisedFacts() {
    std::vector<Fact> facts = samplePersonAndWalkdown();
    std::get<WalkdownBegun>(facts[1].body).doors = {"P-01", "P-04", "P-12"};
    const FactId walk = facts[1].stamp.id;
    facts.push_back(sampleFact(2, PlateRead{walk, "P-12", PlateState::Read, FireClass::B0}));
    facts.push_back(sampleFact(3, Observation{walk, "P-01", "no-hook", Side::None, Answer::No}));
    facts.push_back(sampleFact(4, Deficiency{walk, "P-01", "no-hook", "a hook holds it open"}));
    return facts;
}

std::unique_ptr<SqliteRegister> practisedRegister() {
    auto opened = practice::newPracticeRegister(practice::practiceVessel(), sampleMoment());
    EXPECT_TRUE(opened) << ui::inOneLine(opened.error());
    const Result<> recorded = (*opened)->record(practisedFacts());
    EXPECT_TRUE(recorded) << ui::inOneLine(recorded.error());
    return std::move(*opened);
}

QString practicePath() {
    const QDir folder(practice::practiceFolder());
    const QStringList files = folder.entryList({QStringLiteral("*.practice")}, QDir::Files);
    EXPECT_EQ(files.size(), 1);
    return files.isEmpty() ? QString() : folder.filePath(files.front());
}

std::string bytesOfFile(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll().toStdString();
}

} // namespace latchround::test
