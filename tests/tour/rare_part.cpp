// What seldom comes up: what an earlier start left unsaved or the register refuses, a run that was
// cut short, two people who said different things, an exercise that was broken off; and the sheets
// that few doors or few hands lead to.
#include <QAbstractButton>
#include <sys/file.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPointer>
#include <QRegularExpression>

#include "app/desktop/practice_app.h"
#include "app/desktop/waiting_file.h"
#include "app/register/sqlite_register.h"
#include "app/vessels/vessel_folder.h"
#include "tests/tour/tour.h"
#include "tests/whole/hands.h"

namespace latchround::tour {

namespace {

/// What another tablet, and this one before its power was cut, could not save.
class LeftBehind {
public:
    explicit LeftBehind(const std::vector<Fact>& facts) {
        for (const Fact& fact : facts) {
            if (std::holds_alternative<WalkdownEnded>(fact.body))
                m_ended = std::get<WalkdownEnded>(fact.body).walkdown;
            if (std::holds_alternative<PersonJoined>(fact.body))
                m_person = fact.stamp.id;
            if (std::holds_alternative<Observation>(fact.body))
                m_last = &fact;
        }
    }

    std::vector<ui::WaitingBatch> batches() {
        auto answer = std::get<Observation>(m_last->body);
        answer.answer = answer.answer == Answer::No ? Answer::Yes : Answer::No;
        Observation late = answer;
        late.walkdown = m_ended;
        const Fact start =
            made(RunStarted{answer.walkdown, answer.door, RunKind::Closing, Release::LocalSideOne});
        Mark mark;
        mark.run = start.stamp.id;
        mark.event_ms = 1000;
        return {{{made(answer)}, {}}, {{start, made(mark)}, {}}, {{made(late)}, {}}};
    }

private:
    Fact made(FactBody body) {
        const Moment when{m_last->stamp.when.utc_ms + 60'000,
                          m_last->stamp.when.ship_offset_minutes};
        return {{m_ids.next(when.utc_ms, {}), when, m_person, "another tablet", {}},
                std::move(body)};
    }

    FactIdSequence m_ids;
    FactId m_ended;
    FactId m_person;
    const Fact* m_last = nullptr;
};

void open(Tour& tour, const QString& path) {
    const QPointer<QWidget> before = &tour.window();
    ASSERT_TRUE(tour.app().ports().vessels->open(path));
    tour.waitUntil([&] { return !before; }, "the other vessel is opened");
}

void decide(Tour& tour) {
    tour.tap("open-items-all");
    tour.tap("review-differences");
    tour.stop("differences");
    tour.tap("decide-0");
    tour.stop("difference");
    tour.tapPhrase(0);
    tour.stop("difference, why");
    tour.closeSheet();
    tour.tap("review-hand-over");
    tour.tap("hand-key");
    tour.stop("own key");
    tour.closeSheet();
    tour.tap("review-hand-over");
    tour.tap("hand-seal");
    tour.stop("seal");
    tour.closeSheet();
}

void comeBackAfterTrouble(Tour& tour) {
    const QString path = registersOnThisMachine().front();
    const std::vector<Fact> facts = SqliteRegister::open(path).value()->facts().value();
    ASSERT_TRUE(WaitingFile(path).keep(LeftBehind(facts).batches()));
    // What is kept is looked for when a vessel comes on the screen, not when its window is renewed.
    const QString other = QDir(vesselFolder()).filePath("other.db");
    ASSERT_TRUE(QFile::copy(path, other));
    open(tour, other);
    open(tour, path);
    tour.stop("not saved");
    tour.tap("save-again");
    tour.stop("cut short");
    tour.tap("cut-short-by-hand");
    tour.stop("cut short, by hand");
    tour.closeSheet();
    tour.stop("refused");
    tour.tap("put-aside");
    tour.stop("put aside");
    tour.tap("put-aside-confirm");
    tour.stop("put aside, done");
    tour.closeSheet();
}

void keepPhotograph(Tour& tour) {
    const QString picture = QDir(vesselFolder()).filePath("seal.png");
    QImage image(8, 8, QImage::Format_RGB32);
    image.fill(Qt::black);
    ASSERT_TRUE(image.save(picture));
    hands::chooseFileWhenAsked(&tour.window(), picture);
    tour.tap("photograph");
    tour.window().activateWindow(); // the dialog had the keyboard
    tour.settle();
    tour.stop("photograph");
    tour.closeSheet();
}

void breakOffAnExercise(Tour& tour) {
    tour.tap("home-practice");
    tour.tap("practise-sliding");
    tour.settle();
    emit tour.app().practiceApp()->window()->practiceLeft();
    tour.waitUntil([&] { return !tour.app().practiceApp(); }, "back to the vessel");
    tour.stop("practice, unfinished");
    tour.tap("unfinished-aside");
}

/// A flag's own rules came to lie beside the register.
void seeWhatOtherRulesChange(Tour& tour) {
    const QString path = registersOnThisMachine().front();
    QFile rules(flagRulesPathFor(path));
    ASSERT_TRUE(rules.open(QIODevice::WriteOnly));
    // Its names hold no word that could have been handed to the translators.
    rules.write(R"({"edition":"HO 7/2026","issuer":"HO 7","rows":[
        {"id":"sliding-rate","change":"tighten","low":0.14,"cite":"HO 7/2026, 3"}]})");
    rules.close();
    open(tour, path);
    tour.stop("rules changed");
    tour.tap("changed-rules-look");
    tour.stop("rules changed, doors");
    static const QRegularExpression door(QStringLiteral("^changed-[0-9]"));
    const auto keys = tour.window().findChildren<QAbstractButton*>(door);
    ASSERT_FALSE(keys.isEmpty());
    tour.tap(keys.front()->objectName());
    tour.stop("rules changed, texts");
    tour.closeTopSheet();
    tour.tap("changed-rules-seen");
    tour.settle();
}

/// Another program that has a register to itself, as its file of the lock says.
class OtherWriter {
public:
    explicit OtherWriter(const QString& vessel_register)
        : m_file(vessel_register + QStringLiteral(".writer")) {
        EXPECT_TRUE(m_file.open(QIODevice::ReadWrite));
        EXPECT_EQ(::flock(m_file.handle(), LOCK_EX | LOCK_NB), 0);
        EXPECT_GT(m_file.write("process 4711 on Lantern\n"), 0);
        EXPECT_TRUE(m_file.flush());
    }

private:
    QFile m_file;
};

void onlyRead(Tour& tour) {
    const QString own = registersOnThisMachine().back(); // of the demo vessel
    const QString shared = QDir(vesselFolder()).filePath("shared.db");
    ASSERT_TRUE(QFile::copy(own, shared));
    const OtherWriter writer(shared);
    open(tour, shared);
    tour.stop("only read");
    tour.tap("home-main");
    tour.stop("only read, doors");
    tour.closeSheet();
    open(tour, own);
}

} // namespace

void goRareWays(Tour& tour) {
    comeBackAfterTrouble(tour);
    decide(tour);
    tour.tap("back");
    tour.tap("home-main");
    keepPhotograph(tour);
    tour.tap("from-paper");
    tour.tapPhrase(-1);
    tour.stop("from paper, somebody else");
    tour.closeSheet();
    tour.tap("back");
    breakOffAnExercise(tour);
    seeWhatOtherRulesChange(tour);
    onlyRead(tour);
}

} // namespace latchround::tour
