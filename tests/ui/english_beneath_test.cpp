// What keeps people clear of a moving door, and the words of the radio, are read in English as well
// until a speaker has checked the language: each exactly once, whatever the screen speaks.
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>

#include "core/safety/cautions.h"
#include "tests/passing_time.h"
#include "tests/ui/practice_sample.h"
#include "tests/ui/print_to.h"
#include "tests/ui/tongue.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet.h"
#include "ui/help/help_page.h"
#include "ui/keys/row_pager.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/door/typed_run.h"
#include "ui/screens/first/first_screen.h"
#include "ui/screens/plan/brief_words.h"
#include "ui/screens/plan/plan_screen.h"
#include "ui/screens/practice/debrief_screen.h"
#include "ui/screens/stopwatch/run_result.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/radio_words.h"

namespace latchround::ui {
namespace {

struct Beneath : testing::TestWithParam<const char*> {
    SmallShip ship;
    std::unique_ptr<Tongue> tongue;

    void SetUp() override {
        const QString language = QString::fromLatin1(GetParam());
        QLocale::setDefault(QLocale(language));
        if (isEnglish())
            return;
        tongue = std::make_unique<Tongue>(language);
        QCoreApplication::installTranslator(tongue.get());
    }
    void TearDown() override {
        if (tongue)
            QCoreApplication::removeTranslator(tongue.get());
        QLocale::setDefault(QLocale::c());
    }
    static bool isEnglish() { return GetParam() == std::string_view("en"); }
    /// A walkdown for which the words on offer were agreed.
    VesselSession& walking() {
        WalkdownBegun plan = plannedBy("Maren Tollefsby", "all doors", {"5-31", "5-32"});
        plan.start_word = offeredStartWord().toStdString();
        plan.stop_word = offeredStopWord().toStdString();
        ship.put(plan);
        return ship.load();
    }
};

QString inEnglish(const std::function<QString()>& words) {
    const InEnglish english;
    return words();
}

/// How many labels and keys of it, in sight or on another of its pages, say that.
int timesOn(const QWidget& on, const QString& words) {
    int times = 0;
    if (const auto* pager = qobject_cast<const RowPager*>(&on)) {
        for (const QWidget* row : pager->rows())
            times += timesOn(*row, words);
        return times;
    }
    for (const QLabel* label : on.findChildren<QLabel*>())
        times += label->isVisibleTo(&on) && label->text().contains(words) ? 1 : 0;
    QList<const QPushButton*> keys;
    for (const QPushButton* key : on.findChildren<QPushButton*>())
        keys << key;
    if (const auto* key = qobject_cast<const QPushButton*>(&on))
        keys << key;
    for (const QPushButton* key : keys)
        if (key == &on || key->isVisibleTo(&on))
            times += (key->text() == words ? 1 : 0) +
                     (key->property("english").toString() == words ? 1 : 0);
    return times;
}

/// The text itself, and its English once.
void expectRead(const QWidget& on, const std::function<QString()>& words) {
    const QString english = inEnglish(words);
    ASSERT_FALSE(english.isEmpty());
    EXPECT_EQ(timesOn(on, english), 1) << english.toStdString();
    EXPECT_EQ(timesOn(on, words()), 1) << words().toStdString();
}

/// A screen in a window.
template <class S>
struct Opened {
    Look look;
    QWidget window;
    S* screen;
    explicit Opened(VesselSession& session, QSize size = {1280, 800}, double scale = 1,
                    bool gloves = false)
        : screen(new S(session)) {
        screen->setParent(&window);
        look.setScale(scale);
        look.setGloves(gloves);
        look.applyTo(window);
        window.resize(size);
        screen->setGeometry(window.rect());
        window.show();
        static_cast<QWidget*>(screen)->show();
        screen->enter();
        QCoreApplication::processEvents();
    }
    QPushButton& key(const QString& name) {
        auto* found = window.findChild<QPushButton*>(name);
        if (!found)
            throw std::runtime_error("no key " + name.toStdString());
        return *found;
    }
    void press(const QString& name) {
        if (!key(name).isVisible() || !key(name).isEnabled())
            throw std::runtime_error("out of reach: " + name.toStdString());
        QTest::mouseClick(&key(name), Qt::LeftButton);
        test::settle(window);
    }
};

bool inPane(const QWidget& widget) {
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget())
        if (qobject_cast<const ReadingPane*>(at))
            return true;
    return false;
}

Sheet& openSheet(QWidget& over) {
    Sheet* open = nullptr;
    for (Sheet* each : over.window()->findChildren<Sheet*>())
        if (each->isVisible())
            open = each;
    if (!open)
        throw std::runtime_error("no sheet is open");
    return *open;
}

TEST_P(Beneath, EachCautionAndTheWordsAgreedBeforeARemoteRelease) {
    VesselSession& session = walking();
    for (const double scale : {1.0, 2.0}) { // both parts at once, and one at a time
        Opened<CautionScreen> shown(session, {1280, 800}, scale);
        shown.screen->setDoor("5-32");
        test::settle(shown.window);
        for (const Caution& caution : cautionsBeforeRelease())
            expectRead(*shown.screen->findChild<QWidget*>("caution-" + plainText(caution.id)),
                       [&] { return phraseWords(caution.question()); });
        expectRead(shown.key("confirm-again"), [] { return CautionScreen::tr("All still true"); });
        const WalkdownBegun& plan = session.walkdown()->plan;
        expectRead(*shown.screen, [start = radioWord(plan.start_word),
                                   stop = radioWord(plan.stop_word)] {
            return CautionScreen::tr("Call %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.")
                .arg("bridge", "Ch 8", start.words(), stop.words(), "anyone");
        });
    }
}

TEST_P(Beneath, EachPartOfTheBriefAndTheWordsOfTheRadio) {
    Opened<PlanScreen> shown(walking());
    shown.press("to-brief");
    for (std::size_t i = 0; i < briefParts().size(); ++i)
        expectRead(*shown.screen->findChild<RowPager*>("brief"),
                   [i] { return briefParts()[i].words; });
    const RadioWord start = radioWord(offeredStartWord().toStdString());
    const RadioWord stop = radioWord(offeredStopWord().toStdString());
    EXPECT_EQ(start.english, "release now");
    EXPECT_EQ(stop.english, "stop stop stop");
    for (const auto& [number, word] : {std::pair(2, start), std::pair(3, stop)}) {
        const QString name = QStringLiteral("agreed-%1").arg(number);
        expectRead(shown.key(name), [said = word] { return said.words(); });
        if (!shown.key(name).isVisible())
            shown.screen->findChild<RowPager*>("agreed")->turnTo(1);
        shown.press(name);
        expectRead(openSheet(shown.window), [said = word] { return said.words(); });
        openSheet(shown.window).close();
        test::settle(shown.window);
    }
}

TEST_P(Beneath, TheWordToSayWhenARunIsStopped) {
    const RadioWord stop = radioWord(offeredStopWord().toStdString());
    RunResult result;
    result.showEnded(RunOutcome::Stopped, stop);
    expectRead(result, [&] { return RunResult::tr("Say “%1” now").arg(stop.words()); });
    result.showEnded(RunOutcome::Void, stop);
    EXPECT_EQ(timesOn(result, "stop stop stop"), 0) << "nothing is to be said";
}

TEST_P(Beneath, CautionsTickedOnPaper) {
    Opened<CautionScreen> shown(walking()); // any window will do
    TypedRun typed(*ship.session, &shown.window);
    typed.ask("5-32", Release::Remote, RunKind::Closing);
    for (const Caution& caution : cautionsBeforeRelease())
        expectRead(openSheet(shown.window), [&] { return phraseWords(caution.question()); });
}

TEST_P(Beneath, HelpForACautionAndForARelease) {
    QWidget window;
    window.resize(1280, 800);
    window.show();
    const auto expectHelp = [&](const std::function<Help()>& help) {
        showHelp(help(), &window);
        expectRead(openSheet(window), [&] { return help().paragraphs.front().words; });
        openSheet(window).close();
        test::settle(window);
    };
    for (const Caution& caution : cautionsBeforeRelease()) {
        expectHelp([&] { return helpForCaution(caution); });
        showHelp(helpForCaution(caution), &window);
        expectRead(openSheet(window), [&] { return phraseWords(caution.question()); });
        openSheet(window).close();
        test::settle(window);
    }
    for (const Release release : {Release::Remote, Release::LocalSideOne, Release::LetGo})
        expectHelp([&] { return helpForRelease(release, Door{}, {}); });
    expectHelp(helpForContact);
}

TEST_P(Beneath, TheDangerOnTheFirstPage) {
    Opened<FirstScreen> shown(walking());
    expectRead(*shown.screen, [] {
        return FirstScreen::tr("A released door moves by itself. Never walk through it. Keep hands "
                               "and feet off edges and pockets. Post a lookout on each side of "
                               "every door. Anyone may stop the test.");
    });
}

TEST_P(Beneath, WhatPracticeSaysOfPeopleAndCautions) {
    VesselSession& session = walking();
    Opened<DebriefScreen> shown(session);
    shown.screen->show(sampleExam(), sampleDebrief(session.catalogue()));
    test::settle(shown.window);
    const auto& pane = *shown.screen->findChild<ReadingPane*>("debrief-pane");
    for (const char* words :
         {"Watch the opening, not the clock. Stop the moment someone steps in: a stopped run costs "
          "two minutes.",
          "The stopwatch was armed with someone in the way. Look at both sides first. Ask people "
          "to stand clear. Never confirm a caution just to go on."})
        expectRead(pane, [&] { return QCoreApplication::translate("DebriefWords", words); });
}

/// What is in sight and has no room for its words, and what leaves the window.
void expectRoom(const QWidget& window, const std::string& where) {
    for (const QLabel* label : window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty() || !label->wordWrap())
            continue;
        const bool moves = inPane(*label);
        EXPECT_GE(label->height() + 1, label->heightForWidth(label->width()))
            << where << ": " << label->text().toStdString();
        if (!moves)
            EXPECT_TRUE(
                window.rect().contains(QRect(label->mapTo(&window, QPoint()), label->size())))
                << where << ": " << label->text().toStdString();
    }
    for (const QPushButton* key : window.findChildren<QPushButton*>())
        if (key->isVisible()) {
            EXPECT_GE(key->height(), lookOf(&window).sizes.target)
                << where << ": " << key->objectName().toStdString();
            EXPECT_TRUE(window.rect().contains(QRect(key->mapTo(&window, QPoint()), key->size())))
                << where << ": " << key->objectName().toStdString();
            for (const QWidget* on = key->parentWidget(); on != &window; on = on->parentWidget())
                EXPECT_TRUE(on->rect().contains(QRect(key->mapTo(on, QPoint()), key->size())))
                    << where << ": " << key->objectName().toStdString();
        }
}

void expectRoomOnPages(RowPager& rows, const QWidget& window, const std::string& where) {
    for (int page = 0; page < rows.pages(); ++page) {
        rows.turnTo(page);
        test::settle(window);
        expectRoom(window, where + ", page " + std::to_string(page));
    }
}

TEST_P(Beneath, HasItsRoomInEveryWindow) {
    VesselSession& session = walking();
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)})
        for (const auto& [scale, gloves] :
             {std::pair(1.0, false), std::pair(1.0, true), std::pair(2.0, false)}) {
            const std::string window = std::to_string(size.width()) + (gloves ? " gloves" : "") +
                                       (scale > 1 ? " large" : "");
            Opened<CautionScreen> caution(session, size, scale, gloves);
            caution.screen->setDoor("5-32");
            test::settle(caution.window);
            expectRoom(caution.window, window + ", caution");
            if (caution.key("caution-next").isVisible())
                caution.press("caution-next");
            expectRoomOnPages(*caution.screen->findChild<RowPager*>(), caution.window,
                              window + ", caution");
            Opened<PlanScreen> plan(session, size, scale, gloves);
            while (plan.key("plan-on").isVisible())
                plan.press("plan-on");
            plan.press("to-brief");
            expectRoomOnPages(*plan.screen->findChild<RowPager*>("brief"), plan.window,
                              window + ", brief");
            if (plan.key("brief-on").isVisible())
                plan.press("brief-on");
            expectRoomOnPages(*plan.screen->findChild<RowPager*>("agreed"), plan.window,
                              window + ", agreed");
            Opened<FirstScreen> first(session, size, scale, gloves);
            test::settle(first.window);
            expectRoom(first.window, window + ", first");
        }
}

INSTANTIATE_TEST_SUITE_P(Languages, Beneath, testing::Values("en", "es", "fr", "id"),
                         [](const auto& given) { return std::string(given.param); });

} // namespace
} // namespace latchround::ui
