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

struct WaitingFile : testing::Test {
    QTemporaryDir data;
    QString vessel;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
        ASSERT_TRUE(placed);
        vessel = *placed;
    }
    QString file() const { return vessel + QStringLiteral(".waiting"); }
    static Fact join(const std::string& id, const std::string& name) {
        return {{id, {1'795'686'120'000, 60}, id, "tablet", {}}, PersonJoined{name, "surveyor"}};
    }
};

const std::vector<std::byte> picture{std::byte{0}, std::byte{10}, std::byte{13}, std::byte{255}};

} // namespace

TEST_F(WaitingFile, ReadsBackWhatWasWrittenAndIsTakenAwayWithIt) {
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
    ASSERT_TRUE(writeWaiting(vessel, waiting));
    const auto back = readWaiting(vessel);
    ASSERT_TRUE(back) << inOneLine(back.error());
    ASSERT_EQ(back->size(), 2u);
    EXPECT_EQ((*back)[0].facts, waiting[0].facts);
    EXPECT_EQ((*back)[1].facts, waiting[1].facts);
    EXPECT_EQ((*back)[1].photograph, picture);
    ASSERT_TRUE(writeWaiting(vessel, {}));
    EXPECT_FALSE(QFile::exists(file()));
    EXPECT_TRUE(readWaiting(vessel)->empty());
}

TEST_F(WaitingFile, IsOfferedAtTheNextStartAndSaved) {
    ASSERT_TRUE(writeWaiting(
        vessel, {{{join("01a21c62-49b2-7001-8304-000000000007", "Waited Long")}, {}}}));
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

TEST_F(WaitingFile, WhatCannotBeReadIsPutAsideAndSaid) {
    QFile damaged(file());
    ASSERT_TRUE(damaged.open(QIODevice::WriteOnly));
    damaged.write("{\"id\": \n");
    damaged.close();
    const auto read = readWaiting(vessel);
    ASSERT_FALSE(read);
    EXPECT_THAT(inOneLine(read.error()), testing::HasSubstr("line 1"));
    EXPECT_TRUE(QFile::exists(file() + ".1"));
    EXPECT_FALSE(QFile::exists(file()));
}

} // namespace latchround
