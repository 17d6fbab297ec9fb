#include "tests/ashore/fleet_files.h"

#include <span>

#include <QFile>
#include <gtest/gtest.h>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {

const Catalogue& shipped() {
    static const Catalogue catalogue = builtInCatalogue().value();
    return catalogue;
}

namespace {

/// In as few transactions as it can be: each is flushed.
void recordWalk(SqliteRegister& file, bool photographs) {
    std::vector<Fact> facts;
    std::vector<Action> taken;
    const std::vector<Action> walk = sampleWalk(3);
    for (const Action& action : std::span(walk).first(walk.size() - 1))
        if (action.photograph.empty())
            facts.insert(facts.end(), action.facts.begin(), action.facts.end());
        else if (photographs)
            taken.push_back(action);
    EXPECT_TRUE(file.record(facts));
    for (const Action& action : taken)
        EXPECT_TRUE(file.recordPhotograph(action.facts.front(), action.photograph));
    EXPECT_TRUE(file.record(walk.back().facts)); // its end
}

} // namespace

Tablet sampleVessel(const std::string& name) {
    const std::string folder = LATCHROUND_SOURCE "/sample_vessels/" + name;
    const std::string csv = bytesOf(folder + "/register.csv", 1 << 24).value();
    const std::string history = bytesOf(folder + "/history.jsonl", 1 << 28).value();
    Tablet tablet;
    const Result<> done = tablet.file().takeIn(arrangementFromCsv(csv, "register.csv").value(),
                                               factsFromJsonLines(history, "history.jsonl").value(),
                                               {1'000'000'000'000, 0});
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    return tablet;
}

std::string Files::path(const std::string& name) const {
    return m_folder.filePath(QString::fromStdString(name)).toStdString();
}

std::string Files::put(const std::string& name, const std::string& bytes) {
    QFile file(QString::fromStdString(path(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
    return path(name);
}

std::vector<std::string> Files::smallVessels(int count) {
    std::vector<std::string> files;
    for (int i = 1; i <= count; ++i) {
        Arrangement arrangement = sampleArrangement();
        arrangement.particulars.name = "Grey Heron " + std::to_string(i);
        arrangement.particulars.number = "T-" + std::to_string(1000 + i);
        Tablet tablet;
        EXPECT_TRUE(tablet.file().adopt(arrangement, sampleMoment()));
        recordWalk(tablet.file(), i % 10 == 1);
        files.push_back(put(std::to_string(i) + ".zip", tablet.give()));
    }
    return files;
}

void collect(const DatabaseUrl& url, const std::vector<std::string>& files) {
    auto collector = Collector::open(url, shipped(), {});
    ASSERT_TRUE(collector) << ui::inOneLine(collector.error());
    for (const std::string& file : files) {
        const auto collected = collector->take(file);
        EXPECT_TRUE(collected) << ui::inOneLine(collected.error());
    }
}

} // namespace latchround::test
