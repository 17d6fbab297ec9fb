// The review screen: deficiencies from found to closed by taps, and what concerns all of them.
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "memory_register.h"
#include "print_to.h"
#include "ui/frames/sheet.h"
#include "ui/keys/phrase_picker.h"
#include "ui/screens/review/item_list.h"
#include "ui/screens/review/review_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct Shown {
    QWidget window;
    ReviewScreen* review;

    explicit Shown(VesselSession& session, QSize size = {1280, 800}) {
        review = new ReviewScreen(session, &window);
        window.resize(size);
        review->setGeometry(window.rect());
        window.show();
        review->enter();
        settle();
    }
    /// What was replaced is gone.
    static void settle() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    template <class W>
    W& part(const QString& name) {
        W* found = nullptr;
        for (W* each : window.findChildren<W*>(name))
            found = each->isVisible() || !found ? each : found;
        if (!found)
            throw std::runtime_error("no part " + name.toStdString());
        return *found;
    }
    void press(const QString& name) {
        QPushButton& key = part<QPushButton>(name);
        while (!key.isVisible()) { // on a later page of the panel
            auto& after = part<QPushButton>(QStringLiteral("rows-after"));
            if (!after.isVisible() || !after.isEnabled())
                throw std::runtime_error("out of reach: " + name.toStdString());
            QTest::mouseClick(&after, Qt::LeftButton);
        }
        if (!key.isEnabled())
            throw std::runtime_error("cannot be pressed: " + name.toStdString());
        QTest::mouseClick(&key, Qt::LeftButton);
        settle();
    }
    /// Taps a phrase of the sheet on top.
    void tap(const QString& words) {
        QWidget* top = &window;
        for (Sheet* sheet : window.findChildren<Sheet*>())
            top = sheet;
        for (QPushButton* key : top->findChildren<QPushButton*>())
            if (key->isVisible() && key->text().contains(words)) {
                QTest::mouseClick(key, Qt::LeftButton);
                settle();
                return;
            }
        throw std::runtime_error("no key that reads " + words.toStdString());
    }
    QString state() { return part<QLabel>(QStringLiteral("item-state")).text(); }
    QString title() { return part<QLabel>(QStringLiteral("item-title")).text(); }
    ItemList& list() { return part<ItemList>(QStringLiteral("review-items")); }
};

FactId failing(SmallShip& ship, const char* door = "7-02") {
    const FactId walkdown = ship.begun();
    ship.put(Observation{walkdown, door, "self-closing", Side::None, Answer::No});
    return walkdown;
}

FactId writtenUp(SmallShip& ship, const char* door = "7-02") {
    const FactId walkdown = failing(ship, door);
    return ship.put(Deficiency{walkdown, door, "self-closing", "Stays ajar"});
}

Item item(const VesselSession& session) {
    return session.items().back();
}

} // namespace

TEST(ReviewScreen, WritesUpARowInTheWordsOfTheRequirement) {
    SmallShip ship;
    failing(ship);
    VesselSession& session = ship.load();
    Shown shown(session);
    EXPECT_TRUE(shown.part<QLabel>("review-none").isVisible());
    shown.press("review-write-up");
    shown.press("write-up-all");
    ASSERT_EQ(session.items().size(), 1u);
    EXPECT_THAT(item(session).text().text, ::testing::HasSubstr(item(session).row->words));
    EXPECT_TRUE(shown.title().startsWith("7-02"));
    EXPECT_EQ(shown.state(), QString("found"));
    EXPECT_FALSE(shown.part<QPushButton>("review-write-up").isVisible());
}

/// Whoever reads them would miss the tap that is not saved yet.
TEST(ReviewScreen, AnExerciseIsNeitherSignedNorHandedOver) {
    SmallShip ship;
    ship.begun();
    ship.load();
    Ports ports = ship.ports.all();
    ports.handovers = nullptr;
    ports.signing = nullptr;
    VesselSession exercise(ship.vessel_register, ports, ship.session->catalogue());
    ASSERT_TRUE(exercise.load());
    exercise.setPerson(ship.person);
    Shown shown(exercise);
    EXPECT_TRUE(shown.part<QPushButton>("review-papers").isVisible());
    EXPECT_FALSE(shown.part<QPushButton>("review-hand-over").isVisible());
    EXPECT_FALSE(shown.part<QPushButton>("review-sign").isVisible());
}

/// English comes first, and alone where the screen speaks it.
TEST(ReviewScreen, OffersPapersInTheLanguageOfTheScreen) {
    SmallShip ship;
    failing(ship);
    VesselSession& session = ship.load();
    const auto madeAfter = [&](const char* language_key) {
        Shown shown(session);
        shown.press("review-papers");
        EXPECT_EQ(shown.window.findChild<QPushButton*>("paper-language-0") != nullptr,
                  QLocale().language() != QLocale::C);
        if (language_key)
            shown.press(language_key);
        shown.press("paper-work");
        return ship.ports.paper_languages.back();
    };
    EXPECT_EQ(madeAfter(nullptr), PaperLanguage::English);
    QLocale::setDefault(QLocale(QLocale::Spanish));
    EXPECT_EQ(madeAfter(nullptr), PaperLanguage::English);
    EXPECT_EQ(madeAfter("paper-language-1"), PaperLanguage::OfTheScreen);
    QLocale::setDefault(QLocale::c());
}

TEST(ReviewScreen, PassesNothingOnWhileATapWaits) {
    SmallShip ship;
    const FactId walkdown = failing(ship);
    ship.ended(walkdown);
    VesselSession& session = ship.load();
    Shown shown(session);
    ship.vessel_register.failure = disk_full;
    (void)session.record(UpkeepDone{"closers", {}});
    const auto told = [&] { return shown.part<QLabel>(QStringLiteral("told")).text(); };
    const auto closeSheets = [&] {
        for (Sheet* sheet : shown.window.findChildren<Sheet*>())
            sheet->close();
        Shown::settle();
    };
    shown.press("review-papers");
    shown.press("paper-survey");
    EXPECT_THAT(told().toStdString(), ::testing::HasSubstr("not saved yet"));
    EXPECT_TRUE(ship.ports.papers.empty());
    closeSheets();
    shown.press("review-papers");
    shown.press("blank-form");
    EXPECT_EQ(ship.ports.papers, std::vector{blank_form}) << "it rests on nothing recorded";
    closeSheets();
    shown.press("review-hand-over");
    shown.press("hand-give");
    EXPECT_THAT(told().toStdString(), ::testing::HasSubstr("not saved yet"));
    EXPECT_TRUE(ship.ports.given.empty());
    closeSheets();
    shown.press("review-sign");
    shown.press("sign-inspector");
    EXPECT_THAT(told().toStdString(), ::testing::HasSubstr("not saved yet"));
    EXPECT_EQ(session.waiting(), 1u) << "no signature waits behind it";
}

TEST(ReviewScreen, ASignatureThatIsSavedInAMomentIsNotCalledUnsigned) {
    SmallShip ship;
    const FactId walkdown = failing(ship);
    ship.ended(walkdown);
    VesselSession& session = ship.load();
    Shown shown(session);
    ship.vessel_register.failure =
        Error{place::this_register(), errors::not_saved(errors::somebody_is_writing())};
    ship.vessel_register.failure_is = Register::Obstacle::Busy;
    shown.press("review-sign");
    shown.press("sign-inspector");
    EXPECT_THAT(shown.part<QLabel>("told").text().toStdString(),
                ::testing::HasSubstr("saved automatically"));
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_EQ(session.ledger().signaturesOf(walkdown).size(), 1u);
}

TEST(ReviewScreen, GoesFromFoundToReadyByTaps) {
    SmallShip ship;
    writtenUp(ship);
    VesselSession& session = ship.load();
    Shown shown(session);
    shown.press("item-next");
    shown.tap("closer adjusted");
    shown.tap("Maren Tollefsby");
    EXPECT_EQ(item(session).state, ItemState::Rectified);
    ASSERT_EQ(item(session).rectifications.size(), 1u);
    EXPECT_EQ(item(session).rectifications[0].body.what,
              Wording("closer adjusted", "closer-adjusted"));
    EXPECT_EQ(item(session).rectifications[0].body.by, "Maren Tollefsby");
    shown.press("item-next");
    EXPECT_EQ(item(session).state, ItemState::AwaitingRetest);
    EXPECT_FALSE(shown.part<QPushButton>("item-next").isVisible());
}

TEST(ReviewScreen, SetsDayPersonMeasureSeverityAndWhatPortStateGave) {
    SmallShip ship;
    writtenUp(ship);
    VesselSession& session = ship.load();
    Shown shown(session);
    shown.press("item-due");
    shown.tap("in 7 days");
    EXPECT_EQ(item(session).due, calendarDateFrom("2026-12-02"));
    shown.press("item-assigned");
    shown.tap("Maren Tollefsby");
    EXPECT_EQ(item(session).assigned, "Maren Tollefsby");
    shown.press("item-interim");
    shown.tap("every hour");
    EXPECT_EQ(item(session).interim, Wording("fire patrol, every hour", "fire-patrol-every-hour"));
    shown.press("item-severity");
    shown.press("severity-minor");
    EXPECT_EQ(item(session).severity, Severity::Minor);
    shown.press("item-port");
    shown.tap("16");
    shown.tap("no ground");
    shown.press("port-keep");
    EXPECT_EQ(item(session).action, PortAction::Within14Days);
    EXPECT_EQ(item(session).ground_for_detention, false);
    EXPECT_EQ(item(session).due, calendarDateFrom("2026-12-02")) << "a day that was set stays";
}

TEST(ReviewScreen, AnActionThatNamesATimeSetsTheDayWhereNoneWasSet) {
    SmallShip ship;
    writtenUp(ship);
    VesselSession& session = ship.load();
    Shown shown(session);
    shown.press("item-port");
    shown.tap("16");
    shown.press("port-keep");
    EXPECT_EQ(item(session).due, calendarDateFrom("2026-12-09"));
}

TEST(ReviewScreen, WithdrawsWithAReasonAndTakesItBack) {
    SmallShip ship;
    writtenUp(ship);
    VesselSession& session = ship.load();
    Shown shown(session);
    shown.press("item-away");
    shown.tap("by mistake");
    EXPECT_EQ(item(session).state, ItemState::Withdrawn);
    shown.press("review-which");
    EXPECT_EQ(shown.list().current(), item(session).id);
    shown.press("item-away");
    EXPECT_EQ(item(session).state, ItemState::Found);
}

TEST(ReviewScreen, APhotographOfTheWorkBelongsToTheRectification) {
    SmallShip ship;
    const FactId found = writtenUp(ship);
    const FactId mended = ship.put(Rectification{found, "closer adjusted", "Ove Brandlund"});
    // SHA-256 of the one byte, by sha256sum.
    ship.ports.picture =
        PickedPhotograph{{std::byte{1}},
                         "4bf5122f344554c53bde2ebb8cd2b7e3d1600ad631c385a5d7cce23c7785459a",
                         "image/png"};
    VesselSession& session = ship.load();
    Shown shown(session);
    shown.press("item-photograph");
    shown.tap("after the work");
    ASSERT_EQ(item(session).photographs.size(), 1u);
    EXPECT_EQ(item(session).photographs[0].body.shows, mended);
}

TEST(ReviewScreen, GroupsAreReachedByKeysAndArrowKeysPassOverHeadings) {
    SmallShip ship;
    const FactId walkdown = failing(ship, "7-02");
    ship.put(Deficiency{walkdown, "7-02", "self-closing", "Stays ajar"});
    const FactId other = ship.put(Deficiency{walkdown, "5-40", "no-hook", "Hook on the leaf"});
    DeficiencyTerms terms{other};
    terms.due = calendarDateFrom("2026-11-20");
    ship.put(terms);
    Shown shown(ship.load());
    ItemList& list = shown.list();
    ASSERT_EQ(list.model()->rowCount(), 4) << "two headings, two items";
    EXPECT_EQ(list.current(), other) << "what is overdue stands first";
    EXPECT_TRUE(shown.title().startsWith("5-40"));
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Down);
    EXPECT_TRUE(shown.title().startsWith("7-02"));
    const QString heading = list.model()->index(0, 0).data().toString();
    EXPECT_THAT(heading.toStdString(), ::testing::HasSubstr("overdue"));
    shown.tap("Zone");
    EXPECT_THAT(list.model()->index(0, 0).data().toString().toStdString(),
                ::testing::HasSubstr("zones 2 and 3"));
    EXPECT_TRUE(shown.title().startsWith("7-02")) << "the item shown stays";
}

TEST(ReviewScreen, AsksWhoWorksBeforeAnythingCanBeRecorded) {
    SmallShip ship;
    writtenUp(ship);
    VesselSession& session = ship.load();
    session.setPerson({});
    Shown shown(session);
    EXPECT_FALSE(shown.part<QPushButton>("item-next").isEnabled());
    shown.press("review-who");
    shown.press("who-other");
    shown.part<QLineEdit>("person-name").setText("Ove Brandlund");
    shown.tap("chief officer");
    EXPECT_EQ(session.personName(), QString("Ove Brandlund"));
    EXPECT_TRUE(shown.part<QPushButton>("item-next").isEnabled());
}

TEST(ReviewScreen, ADifferenceIsDecidedWithAReason) {
    SmallShip ship;
    const FactId walkdown = failing(ship);
    Fact other{{ship.ports.newId(), ship.ports.now(), ship.person, "tablet-2", {}},
               Observation{walkdown, "7-02", "self-closing", Side::None, Answer::Yes}};
    ship.vessel_register.put(other);
    VesselSession& session = ship.load();
    EXPECT_EQ(
        session.door("7-02")->evidence.observations.at({"self-closing", Side::None}).body.answer,
        Answer::Yes);
    Shown shown(session);
    shown.press("review-differences");
    shown.press("decide-0");
    shown.tap(":\nno");
    shown.tap("together");
    EXPECT_EQ(
        session.door("7-02")->evidence.observations.at({"self-closing", Side::None}).body.answer,
        Answer::No);
    EXPECT_FALSE(shown.part<QPushButton>("review-differences").isVisible());
}

TEST(ReviewScreen, SendsRectifiedDoorsToTheirRetest) {
    SmallShip ship;
    const FactId found = writtenUp(ship);
    ship.put(Rectification{found, "closer adjusted", "Ove Brandlund"});
    VesselSession& session = ship.load();
    Shown shown(session);
    EXPECT_FALSE(shown.part<QPushButton>("review-retest").isEnabled()) << "a walk is under way";
    ASSERT_TRUE(session.record(WalkdownEnded{session.walkdown()->id, ""}));
    QSignalSpy asked(shown.review, &ReviewScreen::retestAsked);
    shown.press("review-retest");
    EXPECT_EQ(asked.size(), 1);
    EXPECT_EQ(doorsToRetest(session.items()), std::vector<std::string>{"7-02"});
}

TEST(ReviewScreen, ComparesTheLastTwoWalkdowns) {
    SmallShip ship;
    const FactId first = failing(ship);
    ship.ended(first);
    ship.ports.advance(86'400'000);
    const FactId second = ship.begun();
    ship.put(Observation{second, "7-02", "self-closing", Side::None, Answer::Yes});
    ship.put(Observation{second, "5-40", "no-hook", Side::None, Answer::No});
    Shown shown(ship.load());
    shown.press("review-compare");
    QStringList words;
    for (QLabel* label : shown.window.findChildren<QLabel*>())
        if (label->isVisible())
            words << label->text();
    const std::string all = words.join('\n').toStdString();
    EXPECT_THAT(all, ::testing::HasSubstr("New: not in order now"));
    EXPECT_THAT(all, ::testing::HasSubstr("Cleared: in order again"));
}
