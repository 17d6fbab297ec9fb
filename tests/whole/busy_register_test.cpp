// Somebody else writes in the register for a while: a tap is answered all the same, what it
// recorded is on disk at once, and it is saved when its turn has come.
#include <QElapsedTimer>
#include <QFile>
#include <QTimer>

#include <sqlite3.h>

#include "app/desktop/waiting_file.h"
#include "core/error/desktop_errors.h"
#include "tests/passing_time.h"
#include "tests/whole/walking.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

namespace latchround::test {
namespace {

/// Holds the write lock of a register as a long merge does.
class Writer {
public:
    explicit Writer(const QString& file) {
        EXPECT_EQ(sqlite3_open(file.toUtf8().constData(), &m_handle), SQLITE_OK);
    }
    ~Writer() { sqlite3_close(m_handle); }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    void begin() { run("BEGIN IMMEDIATE"); }
    void end() { run("ROLLBACK"); }

private:
    void run(const char* sql) {
        EXPECT_EQ(sqlite3_exec(m_handle, sql, nullptr, nullptr, nullptr), SQLITE_OK);
    }
    sqlite3* m_handle = nullptr;
};

/// Half of what a connection waits where nothing else is said; on an idle tablet it is a tenth of a
/// second, which a busy machine under the sanitizers cannot promise.
constexpr int tap_ms = 2500;

class BusyRegister : public Walk {
protected:
    template <class Act>
    static qint64 msOf(const Act& act) {
        QElapsedTimer timer;
        timer.start();
        act();
        return timer.elapsed();
    }
    /// Keys that answer Yes on the step now shown.
    std::vector<QPushButton*> yesKeys() {
        std::vector<QPushButton*> keys;
        for (ChoiceRow* row : doorScreen().findChildren<ChoiceRow*>())
            for (const Side side : {Side::None, Side::One, Side::Two})
                if (QPushButton* yes = row->key(Answer::Yes, side); yes && yes->isVisible())
                    keys.push_back(yes);
        return keys;
    }
    std::size_t factsOnDisk() { return ledgerOnDisk().facts().size(); }
    /// In the file of what waits, and not on record.
    std::size_t kept() {
        const Ledger ledger = ledgerOnDisk();
        const auto waiting = WaitingFile(path).read().waiting;
        return std::size_t(std::ranges::count_if(waiting, [&](const WaitingBatch& batch) {
            return !ledger.find(batch.facts.front().stamp.id);
        }));
    }
};

} // namespace

TEST_F(BusyRegister, ATapIsAnsweredKeptAndSavedWithoutAWord) {
    planAndBegin();
    test::settle(*window());
    const auto keys = yesKeys();
    ASSERT_GE(keys.size(), 3u);
    const qint64 idle_ms = msOf([&] { hands::click(keys[0]); });
    const std::size_t before = factsOnDisk();
    Writer other(path);
    other.begin();
    const qint64 first_ms = msOf([&] { hands::click(keys[1]); });
    const qint64 second_ms = msOf([&] { hands::click(keys[2]); });
    EXPECT_LT(first_ms, idle_ms + tap_ms);
    EXPECT_LT(second_ms, idle_ms + tap_ms);
    EXPECT_EQ(kept(), 2u) << "a cut of power would lose it";
    EXPECT_FALSE(window()->findChild<QWidget*>("not-saved")->isVisible());
    EXPECT_EQ(factsOnDisk(), before);
    other.end();
    hands::until([&] { return kept() == 0; }, "it is saved");
    EXPECT_EQ(factsOnDisk(), before + 2);
    EXPECT_FALSE(window()->findChild<QWidget*>("not-saved")->isVisible());
}

namespace {

/// A tablet whose disk takes nothing beside the register.
class KeptNowhere : public BusyRegister {
protected:
    class Nowhere : public WaitingStore {
    public:
        Result<> keep(const std::vector<WaitingBatch>& waiting) override {
            return waiting.empty() ? Result<>() : tl::unexpected(Error{{}, "the disk is full"});
        }
        Result<QString> putAside(const std::vector<WaitingBatch>&) override {
            return tl::unexpected(Error{{}, "the disk is full"});
        }
    } nowhere;

    void SetUp() override {
        Ports ports = app.ports();
        ports.waiting = &nowhere;
        app.setPorts(ports);
        Walk::SetUp();
    }
};

} // namespace

TEST_F(KeptNowhere, WhatWaitsIsNotLeftForAnotherVesselNorForANewWindow) {
    const QString other_vessel = placeSampleVessel(sampleVessels().back(), momentNow()).value();
    planAndBegin();
    test::settle(*window());
    const auto keys = yesKeys();
    ASSERT_FALSE(keys.empty());
    const std::size_t before = factsOnDisk();
    Writer other(path);
    other.begin();
    hands::click(keys[0]);
    const QWidget* shown = window();
    for (const QString& place : {other_vessel, path}) {
        const Result<> refused = app.open(place);
        ASSERT_FALSE(refused) << place.toStdString();
        EXPECT_EQ(refused.error().what, errors::entries_wait_here());
        EXPECT_EQ(window(), shown);
    }
    other.end();
    hands::until([&] { return factsOnDisk() == before + 1; }, "it is saved");
    EXPECT_TRUE(app.open(other_vessel));
}

/// As where the language is changed.
TEST_F(BusyRegister, AWindowMadeAnewGoesOnSaving) {
    planAndBegin();
    test::settle(*window());
    const std::size_t before = factsOnDisk();
    const auto keys = yesKeys();
    ASSERT_FALSE(keys.empty());
    Writer other(path);
    other.begin();
    hands::click(keys[0]);
    ASSERT_EQ(kept(), 1u);
    const QWidget* old = window();
    emit app.window()->madeAnewAsked();
    hands::until([&] { return window() != old; }, "the window is made anew");
    test::settle(*window());
    EXPECT_FALSE(window()->findChild<QWidget*>("not-saved")->isVisible());
    other.end();
    hands::until([&] { return kept() == 0; }, "it is saved");
    EXPECT_EQ(factsOnDisk(), before + 1);
}

TEST_F(BusyRegister, StopIsAnsweredAndMarksGoOn) {
    planAndBegin();
    test::settle(*window());
    toStep(Step::Release);
    test::settle(*window());
    for (QPushButton* key : window()->findChildren<QPushButton*>())
        if (key->isVisible() && key->parentWidget()->objectName().startsWith("release-") &&
            key->parentWidget()->objectName() != "release-remote") {
            hands::click(key);
            break;
        }
    auto* screen = window()->findChild<StopwatchScreen*>();
    ASSERT_TRUE(screen->isVisible());
    test::settle(*window());
    Writer other(path);
    other.begin();
    const qint64 mark_ms = msOf([&] { hands::pressAt(window(), "mark", 5'000'000); });
    EXPECT_LT(mark_ms, tap_ms);
    EXPECT_TRUE(screen->isRunning());
    EXPECT_TRUE(window()->findChild<MarkKey*>("mark")->isEnabled());
    auto* stop = window()->findChild<QPushButton*>("stop");
    ASSERT_TRUE(stop->isEnabled());
    const qint64 stop_ms = msOf([&] { QTest::mousePress(stop, Qt::LeftButton); });
    EXPECT_LT(stop_ms, tap_ms);
    EXPECT_FALSE(screen->isRunning());
    EXPECT_EQ(kept(), 2u);
    other.end();
    hands::until([&] { return kept() == 0; }, "it is saved");
    const Ledger ledger = ledgerOnDisk();
    const auto& facts = ledger.facts();
    const auto ended = std::ranges::count_if(facts, [](const auto& entry) {
        const auto* end = std::get_if<RunEnded>(&entry.second.body);
        return end && end->outcome == RunOutcome::Stopped;
    });
    EXPECT_EQ(ended, 1);
}

} // namespace latchround::test
