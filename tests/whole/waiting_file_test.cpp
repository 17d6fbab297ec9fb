// What could not be saved outlives the program, in a file beside the register.
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/desk.h"
#include "app/desktop/waiting_file.h"
#include "app/desktop/wall.h"
#include "app/vessels/sample_vessel.h"
#include "hands.h"

namespace latchround {

namespace {

struct Waiting : testing::Test {
    QTemporaryDir data;
    QString vessel;
    WaitingFile kept;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
        ASSERT_TRUE(placed);
        vessel = *placed;
        kept = WaitingFile(vessel);
    }
    static QByteArray bytesOf(const QString& path) {
        QFile opened(path);
        EXPECT_TRUE(opened.open(QIODevice::ReadOnly)) << path.toStdString();
        return opened.readAll();
    }
    void append(const QByteArray& bytes) const {
        QFile opened(file());
        ASSERT_TRUE(opened.open(QIODevice::Append));
        opened.write(bytes);
    }
    /// Number `n`, joined by nobody else.
    static ui::WaitingBatch batch(int n) {
        return {{join("01a21c62-49b2-7001-8304-00000000010" + std::to_string(n),
                      "Person " + std::to_string(n))},
                {}};
    }
    QString file() const { return vessel + QStringLiteral(".waiting"); }
    static Fact join(const std::string& id, const std::string& name) {
        return {{id, {1'795'686'120'000, 60}, id, "tablet", {}}, PersonJoined{name, "surveyor"}};
    }
};

const std::vector<std::byte> picture{std::byte{0}, std::byte{10}, std::byte{13}, std::byte{255}};

} // namespace

TEST_F(Waiting, ReadsBackWhatWasWrittenAndIsTakenAwayWithIt) {
    const std::vector<ui::WaitingBatch> waiting{
        {{join("01a21c62-49b2-7001-8304-000000000001", "A \"quoted\"\nname"),
          join("01a21c62-49b2-7001-8304-000000000002", "B")},
         {}},
        {{Fact{{"01a21c62-49b2-7001-8304-000000000003",
                {1, 0},
                "01a21c62-49b2-7001-8304-000000000001",
                "tablet",
                {}},
               Photograph{"01a21c62-49b2-7001-8304-000000000009",
                          "5-01",
                          std::string(64, 'a'),
                          "image/png",
                          "sill",
                          "",
                          {}}}},
         picture}};
    ASSERT_TRUE(kept.keep(waiting));
    const auto [back, fault] = kept.read();
    ASSERT_FALSE(fault) << inOneLine(*fault);
    ASSERT_EQ(back.size(), 2u);
    EXPECT_EQ(back[0].facts, waiting[0].facts);
    EXPECT_EQ(back[1].facts, waiting[1].facts);
    EXPECT_EQ(back[1].photograph, picture);
    ASSERT_TRUE(kept.keep({}));
    EXPECT_FALSE(QFile::exists(file()));
    EXPECT_TRUE(kept.read().waiting.empty());
}

TEST_F(Waiting, IsOfferedAtTheNextStartAndSaved) {
    ASSERT_TRUE(kept.keep({{{join("01a21c62-49b2-7001-8304-000000000007", "Waited Long")}, {}}}));
    ui::Look look;
    Desk desk(builtInCatalogue().value(), {}, look);
    ASSERT_TRUE(desk.open(vessel));
    hands::click(desk.window(), "save-again");
    EXPECT_FALSE(QFile::exists(file()));
    const auto facts = SqliteRegister::open(vessel).value()->facts().value();
    EXPECT_TRUE(std::ranges::any_of(facts, [](const Fact& fact) {
        return fact.stamp.id == "01a21c62-49b2-7001-8304-000000000007";
    }));
}

TEST_F(Waiting, WhatCannotBeReadIsPutAsideAndSaid) {
    append("{\"id\": \n");
    const auto read = kept.read();
    ASSERT_TRUE(read.fault);
    EXPECT_TRUE(read.waiting.empty());
    EXPECT_THAT(inOneLine(*read.fault), testing::HasSubstr("line 1"));
    EXPECT_EQ(bytesOf(file() + ".1"), "{\"id\": \n");
    EXPECT_FALSE(QFile::exists(file()));
}

/// One bad line costs its own transaction alone.
TEST_F(Waiting, WhatCanBeReadBesideABadLineStillWaits) {
    ASSERT_TRUE(kept.keep({batch(1)}));
    append("{\"id\": \n\n");
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    const auto read = WaitingFile(vessel).read();
    ASSERT_TRUE(read.fault);
    EXPECT_THAT(inOneLine(*read.fault), testing::HasSubstr("line 3"));
    ASSERT_EQ(read.waiting.size(), 2u);
    EXPECT_EQ(read.waiting[1].facts, batch(2).facts);
    EXPECT_EQ(bytesOf(file() + ".1"), "{\"id\": \n");
    const auto again = WaitingFile(vessel).read();
    EXPECT_FALSE(again.fault) << "it is said once";
    EXPECT_EQ(again.waiting.size(), 2u);
}

/// Power was cut while it was written: what came before counts.
TEST_F(Waiting, ATransactionThatWasCutShortIsNotTakenForWhole) {
    ASSERT_TRUE(kept.keep({batch(1)}));
    const QByteArray whole = bytesOf(file());
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    const QByteArray both = bytesOf(file());
    ASSERT_TRUE(both.startsWith(whole)) << "what was there is written anew";
    for (const qsizetype missing : {qsizetype(1), qsizetype(2), (both.size() - whole.size()) / 2}) {
        QFile torn(file());
        ASSERT_TRUE(torn.open(QIODevice::WriteOnly));
        torn.write(both.left(both.size() - missing));
        torn.close();
        const auto read = WaitingFile(vessel).read();
        EXPECT_TRUE(read.fault) << missing;
        ASSERT_EQ(read.waiting.size(), 1u) << missing;
        EXPECT_EQ(read.waiting[0].facts, batch(1).facts);
    }
}

TEST_F(Waiting, WhatIsRefusedGoesIntoAFileOfItsOwn) {
    ui::WaitingBatch refused = batch(1);
    refused.refused = Complaint{"fact 1", "another fact has this id", "Record it anew."};
    const auto place = kept.putAside({refused});
    ASSERT_TRUE(place) << inOneLine(place.error());
    EXPECT_EQ(*place, vessel + ".aside.1");
    EXPECT_TRUE(bytesOf(*place).startsWith("refused fact 1: another fact has this id"));
    EXPECT_TRUE(bytesOf(*place).contains("Person 1"));
    EXPECT_EQ(*kept.putAside({refused}), vessel + ".aside.2") << "the first stays";
}

} // namespace latchround
