// Each long job of the program, stopped on its way: nothing has changed, no half file is left; and
// let alone, it tells how far it is until it is through.
#include <algorithm>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/papers.h"
#include "app/vessels/sample_vessel.h"
#include "core/error/reading_errors.h"
#include "core/error/register_errors.h"
#include "tests/whole/hands.h"
#include "ui/words/phrase_words.h"

using namespace latchround;

namespace {

constexpr auto lantern_csv = LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv";
constexpr auto lass_csv = LATCHROUND_SOURCE "/sample_vessels/ternwick-lass/register.csv";

constexpr int most_places = 100; ///< at which a job is stopped here

/// Who waits: counts how often it is asked, and says no at one of them.
struct WhoWaits {
    int stop_at = 0; ///< 0: never
    int asked = 0;
    int done = 0;
    int of = 0;

    Progress progress() {
        return [this](int now_done, int now_of) {
            EXPECT_LE(done, now_done) << "it never goes back";
            EXPECT_LE(now_done, now_of);
            done = now_done;
            of = now_of;
            return ++asked != stop_at;
        };
    }
    void expectThrough() const {
        EXPECT_GT(asked, 1);
        EXPECT_EQ(done, of);
    }
    void expectStopped() const { EXPECT_EQ(asked, stop_at) << "nobody is asked after a no"; }
    /// The first time it is asked, in the middle, and the last time.
    static std::vector<int> places(int asked) { return {1, asked / 2, asked}; }
};

class LongJobs : public testing::Test {
protected:
    QTemporaryDir data;
    QTemporaryDir elsewhere;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QString path;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        open(placeSampleVessel(sampleVessels().front(), momentNow()).value());
    }
    void open(const QString& at) {
        path = at;
        ASSERT_TRUE(app.open(path));
        ASSERT_TRUE(QTest::qWaitForWindowExposed(app.window()));
    }
    /// Name, size and, of all but registers, the bytes of every file of the vessels' folder.
    QStringList files() const {
        QStringList all;
        for (const QFileInfo& file :
             QDir(data.path()).entryInfoList(QDir::Files | QDir::NoDotAndDotDot, QDir::Name)) {
            if (file.fileName().endsWith("-wal") || file.fileName().endsWith("-shm"))
                continue; // of the register that is open
            all << file.fileName();
            if (file.suffix() != "db")
                all << QString::number(qHash(bytesOf(file.filePath())));
        }
        return all;
    }
    static QByteArray bytesOf(const QString& file) {
        QFile opened(file);
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
    }
    static std::vector<Fact> factsAt(const QString& register_path) {
        return SqliteRegister::open(register_path).value()->facts().value();
    }
    static std::size_t issuesAt(const QString& register_path) {
        return SqliteRegister::open(register_path).value()->issues().value().size();
    }
    void choose(const QString& file) { hands::chooseFileWhenAsked(app.window(), file); }
};

} // namespace

TEST_F(LongJobs, AStoppedPaperLeavesTheOneThatWasThere) {
    const FactId walkdown = [&] {
        FactId newest;
        for (const Fact& fact : factsAt(path))
            if (std::holds_alternative<WalkdownBegun>(fact.body))
                newest = fact.stamp.id;
        return newest;
    }();
    for (const ui::Paper paper :
         std::vector<ui::Paper>{ui::blank_form, ReportKind::Survey, ReportKind::WorkList}) {
        WhoWaits whole;
        const auto made = app.ports().documents->make(paper, walkdown, {}, {}, whole.progress());
        ASSERT_TRUE(made) << ui::inOneLine(made.error());
        whole.expectThrough();
        const QByteArray before = bytesOf(made->path);
        EXPECT_TRUE(before.trimmed().endsWith("%%EOF"));
        const QStringList folder = files();
        std::vector<int> places = WhoWaits::places(whole.asked);
        if (paper == ui::Paper(ReportKind::Survey))
            places = {whole.asked / 2}; // it takes longest, and goes the same way
        for (const int place : places) {
            WhoWaits waiting{place};
            const auto stopped =
                app.ports().documents->make(paper, walkdown, {}, {}, waiting.progress());
            ASSERT_FALSE(stopped) << place;
            EXPECT_EQ(stopped.error().what, errors::stopped_as_asked());
            waiting.expectStopped();
            EXPECT_EQ(bytesOf(made->path), before);
            EXPECT_EQ(files(), folder);
        }
        // Nor is there one where none was.
        ASSERT_TRUE(QFile::remove(made->path));
        WhoWaits waiting{whole.asked};
        EXPECT_FALSE(app.ports().documents->make(paper, walkdown, {}, {}, waiting.progress()));
        EXPECT_FALSE(QFile::exists(made->path));
    }
}

/// What is saved while it is made is not in it, and not said to be.
TEST_F(LongJobs, APaperIsOfWhatWasOnRecordWhenItWasAskedFor) {
    const auto own = SqliteRegister::open(path).value();
    ui::VesselSession session(*own, app.ports(), builtInCatalogue().value());
    ASSERT_TRUE(session.load());
    FactId joined;
    const Progress somebodyJoins = [&](int, int) {
        if (joined.empty())
            joined = session.join("Late Comer", "surveyor");
        return true;
    };
    const auto made =
        paperOf(session, *own, {ReportKind::WorkList, session.walkdown()->id, {}, momentNow()},
                ProgressRange(somebodyJoins));
    ASSERT_TRUE(made) << ui::inOneLine(made.error());
    ASSERT_NE(session.ledger().find(joined), nullptr);
    ASSERT_FALSE(made->made->covers.empty());
    for (const Covered& covered : made->made->covers)
        EXPECT_LT(covered.last, joined);
}

TEST_F(LongJobs, AStoppedImportMakesNoVesselAndChangesNone) {
    for (const char* csv : {lass_csv, lantern_csv}) {
        const bool is_new = csv == lass_csv;
        const QStringList folder = files();
        const std::size_t issues = issuesAt(path);
        const QString file = elsewhere.filePath("register.csv");
        QFile::remove(file);
        ASSERT_TRUE(QFile::copy(QString::fromLatin1(csv), file));
        for (int stop_at = 1; stop_at < most_places; ++stop_at) {
            WhoWaits waiting{stop_at};
            choose(file);
            const auto taken = app.ports().vessels->takeIn(app.window(), waiting.progress());
            if (taken) {
                EXPECT_GT(stop_at, 2) << "it was asked on its way";
                waiting.expectThrough();
                EXPECT_EQ(files() != folder, is_new);
                break;
            }
            ASSERT_EQ(taken.error().front().what, errors::stopped_as_asked());
            waiting.expectStopped();
            EXPECT_EQ(files(), folder);
            EXPECT_EQ(issuesAt(path), issues);
        }
        EXPECT_EQ(issuesAt(path), is_new ? issues : issues + 1);
    }
}

TEST_F(LongJobs, AStoppedHandoverLeavesNoFile) {
    const QString file = elsewhere.filePath("all.zip");
    WhoWaits whole;
    choose(file);
    ASSERT_TRUE(app.ports().handovers->give(app.window(), {}, whole.progress()));
    whole.expectThrough();
    const std::vector<Fact> facts = factsAt(path);
    ASSERT_TRUE(QFile::remove(file));
    for (const int place : WhoWaits::places(whole.asked)) {
        WhoWaits waiting{place};
        choose(file);
        const auto given = app.ports().handovers->give(app.window(), {}, waiting.progress());
        ASSERT_FALSE(given) << place;
        EXPECT_EQ(given.error().what, errors::stopped_as_asked());
        waiting.expectStopped();
        EXPECT_TRUE(QDir(elsewhere.path()).isEmpty());
        EXPECT_EQ(factsAt(path), facts);
    }
}

TEST_F(LongJobs, AStoppedLookAndAStoppedTakingChangeNothing) {
    const Phrase stopped_taking = errors::not_taken_in(errors::stopped());
    const QString file = elsewhere.filePath("from the bridge.zip");
    choose(file);
    ASSERT_TRUE(app.ports().handovers->give(app.window(), {}, {}));
    // Another tablet of the same vessel, which knows nothing yet.
    QTemporaryDir other;
    qputenv("LATCHROUND_DATA", other.path().toUtf8());
    open(takeInVessel(QString::fromLatin1(lantern_csv), momentNow()).value());
    const auto before = factsAt(path);

    WhoWaits whole_look;
    choose(file);
    ASSERT_TRUE(app.ports().handovers->lookAt(app.window(), whole_look.progress()));
    whole_look.expectThrough();
    for (const int place : WhoWaits::places(whole_look.asked)) {
        WhoWaits waiting{place};
        choose(file);
        const auto seen = app.ports().handovers->lookAt(app.window(), waiting.progress());
        ASSERT_FALSE(seen) << place;
        EXPECT_THAT(seen.error().front().what,
                    testing::AnyOf(errors::stopped_as_asked(), stopped_taking));
        waiting.expectStopped();
        EXPECT_EQ(factsAt(path), before);
    }

    const auto take = [&](WhoWaits& waiting) {
        choose(file);
        const auto seen = app.ports().handovers->lookAt(app.window(), {});
        EXPECT_TRUE(seen && *seen && (*seen)->asks);
        const std::string device = SqliteRegister::open(path).value()->device();
        const FactId person = app.clock().newId();
        const std::vector<Fact> along{
            {{person, app.clock().now(), person, device, std::nullopt}, PersonJoined{"Mate", ""}},
            {{app.clock().newId(), app.clock().now(), person, device, std::nullopt},
             *(*seen)->asks}};
        return app.ports().handovers->take(**seen, along, waiting.progress());
    };
    WhoWaits taking{1};
    const Result<> first = take(taking);
    ASSERT_FALSE(first);
    EXPECT_EQ(first.error().what, stopped_taking);
    EXPECT_EQ(factsAt(path), before);
    for (int stop_at = 2; stop_at < most_places; stop_at += 11) {
        WhoWaits waiting{stop_at};
        const Result<> taken = take(waiting);
        if (taken) {
            EXPECT_GT(stop_at, 2) << "it was asked on its way";
            waiting.expectThrough();
            break;
        }
        EXPECT_EQ(taken.error().what, stopped_taking);
        waiting.expectStopped();
        ASSERT_EQ(factsAt(path), before) << stop_at;
        ASSERT_EQ(issuesAt(path), 1u);
    }
    EXPECT_GT(factsAt(path).size(), before.size());
}
