// What could not be saved outlives the program, in a file beside the register.
#include <csignal>

#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <sys/resource.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/waiting_file.h"
#include "app/vessels/sample_vessel.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "hands.h"
#include "ui/words/phrase_words.h"

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
    /// Without the room behind it, and without the end of its last line.
    static QByteArray contentOf(QByteArray bytes) {
        while (bytes.endsWith('\n'))
            bytes.chop(1);
        return bytes;
    }
    void append(const QByteArray& bytes) const {
        QFile opened(file());
        ASSERT_TRUE(opened.open(QIODevice::Append));
        opened.write(bytes);
    }
    /// Number `n`, joined by nobody else.
    static ui::WaitingBatch batch(int n) {
        return {{join("01a21c62-49b2-7001-8304-0000000" + std::to_string(10000 + n),
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
    ASSERT_FALSE(fault) << ui::inOneLine(*fault);
    ASSERT_EQ(back.size(), 2u);
    EXPECT_EQ(back[0].facts, waiting[0].facts);
    EXPECT_EQ(back[1].facts, waiting[1].facts);
    EXPECT_EQ(back[1].photograph, picture);
    ASSERT_TRUE(kept.takeAway());
    EXPECT_FALSE(QFile::exists(file()));
    EXPECT_TRUE(kept.read().waiting.empty());
}

/// A tap waits for nothing but its own line.
TEST_F(Waiting, WhatWasSavedStaysInTheFileUntilItIsTakenAway) {
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    const QByteArray before = bytesOf(file());
    ASSERT_TRUE(kept.keep({batch(2)}));
    ASSERT_TRUE(kept.keep({}));
    EXPECT_EQ(bytesOf(file()), before);
    ASSERT_TRUE(kept.keep({batch(3)}));
    EXPECT_TRUE(bytesOf(file()).startsWith(contentOf(before)));
    EXPECT_EQ(WaitingFile(vessel).read().waiting.size(), 3u);
}

/// Else it would be offered again at the next start.
TEST_F(Waiting, WhatWasPutAsideLeavesTheFile) {
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    ASSERT_TRUE(kept.putAside({batch(1)}));
    ASSERT_TRUE(kept.keep({batch(2)}));
    const auto rest = WaitingFile(vessel).read().waiting;
    ASSERT_EQ(rest.size(), 1u);
    EXPECT_EQ(rest[0].facts, batch(2).facts);
    ASSERT_TRUE(kept.putAside({batch(2)}));
    ASSERT_TRUE(kept.keep({}));
    EXPECT_FALSE(QFile::exists(file()));
}

/// The program ended before it took the file away.
TEST_F(Waiting, WhatWasSavedAfterAllIsNotOfferedAgain) {
    const ui::WaitingBatch saved = batch(1);
    ASSERT_TRUE(SqliteRegister::open(vessel).value()->record(saved.facts));
    for (const bool more : {true, false}) {
        ASSERT_TRUE(kept.keep(more ? std::vector{saved, batch(2)} : std::vector{saved}));
        ui::Look look;
        DesktopApp app(builtInCatalogue().value(), {}, look);
        ASSERT_TRUE(app.open(vessel));
        EXPECT_EQ(app.window()->findChild<QPushButton*>("save-again")->isVisible(), more);
        if (more)
            hands::click(app.window(), "save-again");
        else
            EXPECT_FALSE(QFile::exists(file())) << "nothing waits";
    }
    EXPECT_FALSE(QFile::exists(file()));
}

TEST_F(Waiting, IsOfferedAtTheNextStartAndSaved) {
    ASSERT_TRUE(kept.keep({{{join("01a21c62-49b2-7001-8304-000000000007", "Waited Long")}, {}}}));
    {
        ui::Look look;
        DesktopApp app(builtInCatalogue().value(), {}, look);
        ASSERT_TRUE(app.open(vessel));
        hands::click(app.window(), "save-again");
    }
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
    EXPECT_THAT(ui::inOneLine(*read.fault), testing::HasSubstr("line 1"));
    EXPECT_EQ(bytesOf(file() + ".1"), "{\"id\": \n");
    EXPECT_FALSE(QFile::exists(file()));
}

/// One bad line costs its own transaction alone.
TEST_F(Waiting, WhatCanBeReadBesideABadLineStillWaits) {
    ASSERT_TRUE(kept.keep({batch(1)}));
    append("{\"id\": \ntogether 1\n");
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    const QByteArray whole = bytesOf(file());
    const auto bad_line = whole.left(whole.indexOf("{\"id\": \n")).count('\n') + 1;
    const auto read = WaitingFile(vessel).read();
    ASSERT_TRUE(read.fault);
    EXPECT_THAT(ui::inOneLine(*read.fault), testing::HasSubstr("line " + std::to_string(bad_line)));
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
    const QByteArray room = bytesOf(file());
    const QByteArray whole = contentOf(room);
    const ui::WaitingBatch two{{batch(2).facts.front(), batch(3).facts.front()}, {}};
    ASSERT_TRUE(kept.keep({batch(1), two}));
    EXPECT_EQ(bytesOf(file()).size(), room.size()) << "it grows with each tap";
    const QByteArray both = contentOf(bytesOf(file()));
    ASSERT_TRUE(both.startsWith(whole)) << "what was there is written anew";
    const qsizetype second = both.indexOf('\n', whole.size() + 1);
    const qsizetype third = both.indexOf('\n', second + 1);
    std::vector<QByteArray> torn{both.left(second + 1), both.left(third + 1), both};
    torn.back().replace(whole.size(), second - whole.size(),
                        QByteArray(second - whole.size(), '\n'));
    for (const qsizetype missing : {qsizetype(1), qsizetype(2), (both.size() - whole.size()) / 2})
        torn.push_back(both.left(both.size() - missing));
    for (QByteArray left : torn)
        for (const bool with_room : {true, false}) {
            if (with_room)
                left.append(room.size() - left.size(), '\n');
            QFile written(file());
            ASSERT_TRUE(written.open(QIODevice::WriteOnly));
            written.write(left);
            written.close();
            const auto read = WaitingFile(vessel).read();
            EXPECT_TRUE(read.fault) << left.trimmed().toStdString();
            ASSERT_EQ(read.waiting.size(), 1u) << left.trimmed().toStdString();
            EXPECT_EQ(read.waiting[0].facts, batch(1).facts);
        }
}

TEST_F(Waiting, MuchThatWasSavedMakesRoom) {
    ASSERT_TRUE(kept.keep({batch(1)}));
    const qsizetype room = bytesOf(file()).size();
    for (int n = 0; n < 2000; ++n)
        ASSERT_TRUE(kept.keep({batch(n)}));
    EXPECT_EQ(bytesOf(file()).size(), room);
    std::vector<ui::WaitingBatch> waiting;
    for (int n = 0; n < 1000; ++n)
        waiting.push_back(batch(n));
    ASSERT_TRUE(kept.keep(waiting));
    EXPECT_EQ(WaitingFile(vessel).read().waiting.size(), 1000u);
}

/// As on a disk on which nothing longer than this finds room.
class Room {
public:
    explicit Room(rlim_t bytes) {
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit now{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &now);
        m_signal = std::signal(SIGXFSZ, SIG_IGN);
    }
    ~Room() {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        (void)std::signal(SIGXFSZ, m_signal);
    }
    Room(const Room&) = delete;
    Room& operator=(const Room&) = delete;

private:
    rlimit m_before{};
    void (*m_signal)(int) = nullptr;
};

TEST_F(Waiting, AnAlmostFullDiskStillTakesATap) {
    const Room room(2000);
    ASSERT_TRUE(kept.keep({batch(1)}));
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    EXPECT_LT(bytesOf(file()).size(), 2000);
    EXPECT_EQ(WaitingFile(vessel).read().waiting.size(), 2u);
}

/// There is no room to keep what cannot be read, nor to write what can anew.
TEST_F(Waiting, WhatCanBeReadOnAFullDiskIsThereAtEveryStart) {
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    append("{\"id\": " + QByteArray(3000, 'x'));
    {
        const Room room(10);
        WaitingFile next(vessel);
        const auto read = next.read();
        ASSERT_TRUE(read.fault);
        EXPECT_EQ(read.waiting.size(), 2u);
        EXPECT_FALSE(next.keep(read.waiting)) << "it is in the old file alone";
    }
    const auto later = WaitingFile(vessel).read();
    ASSERT_EQ(later.waiting.size() + WaitingFile(vessel).read().waiting.size(), 4u);
    EXPECT_TRUE(bytesOf(file() + ".1").contains("xxx"));
}

/// Somebody put it there meanwhile: it is read when the vessel is opened again.
TEST_F(Waiting, AFileThatIsNotKnownIsNotTakenAway) {
    ASSERT_TRUE(kept.keep({batch(1)}));
    WaitingFile other(vessel);
    ASSERT_TRUE(other.keep({}));
    ASSERT_TRUE(other.takeAway());
    EXPECT_EQ(WaitingFile(vessel).read().waiting.size(), 1u);
}

TEST_F(Waiting, AFileThatWasMovedAwayIsWrittenAnew) {
    ASSERT_TRUE(kept.keep({batch(1), batch(2)}));
    ASSERT_TRUE(QFile::remove(file()));
    ASSERT_TRUE(kept.keep({batch(2)}));
    EXPECT_EQ(WaitingFile(vessel).read().waiting.size(), 1u);
}

TEST_F(Waiting, WhatIsRefusedGoesIntoAFileOfItsOwn) {
    ui::WaitingBatch refused = batch(1);
    refused.refused = Error{place::fact("1"), errors::not_saved(errors::fact_id_taken())};
    const auto place = kept.putAside({refused});
    ASSERT_TRUE(place) << ui::inOneLine(place.error());
    EXPECT_EQ(*place, vessel + ".aside.1");
    EXPECT_TRUE(bytesOf(*place).startsWith(
        "refused entry 1: another entry with this id is recorded already: NOT saved. Record a "
        "correction under an id of its own.\n"));
    EXPECT_TRUE(bytesOf(*place).contains("Person 1"));
    EXPECT_EQ(*kept.putAside({refused}), vessel + ".aside.2") << "the first stays";
}

} // namespace latchround
