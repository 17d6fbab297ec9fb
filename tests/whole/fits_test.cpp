// Nothing on screen is clipped at the three sizes: every visible label and key has room for its
// words, and lies within what it lies on.
#include <gtest/gtest.h>

#include <QLabel>
#include <QTemporaryDir>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/desk.h"
#include "app/desktop/practice_desk.h"
#include "app/desktop/wall.h"
#include "app/vessels/sample_vessel.h"
#include "tests/whole/hands.h"
#include "ui/look/look.h"
#include "ui/parts/row_pager.h"
#include "ui/parts/verdict_list.h"
#include "ui/screens/door/door_screen.h"

using namespace latchround;

namespace {

std::string nameOf(const QWidget* widget) {
    return std::string(widget->metaObject()->className()) + " " +
           widget->objectName().toStdString();
}

void expectRoom(QWidget* window, const std::string& where) {
    for (QLabel* label : window->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        EXPECT_GE(label->height() + 1, needed) << where << ": " << label->text().toStdString();
        if (!label->wordWrap()) {
            EXPECT_GE(label->width() + 1, label->sizeHint().width())
                << where << ": " << label->text().toStdString();
        }
    }
    for (QPushButton* key : window->findChildren<QPushButton*>()) {
        if (!key->isVisible())
            continue;
        const QRect words = key->fontMetrics().boundingRect(
            QRect(0, 0, key->width() - 14, 10000), Qt::AlignCenter | Qt::TextWordWrap, key->text());
        EXPECT_LE(words.width(), key->width() - 14) << where << ": " << key->text().toStdString();
        EXPECT_LE(words.height(), key->height()) << where << ": " << key->text().toStdString();
        const QWidget* below = key->parentWidget();
        EXPECT_TRUE(below->rect().adjusted(-1, -1, 1, 1).contains(key->geometry()))
            << where << ": " << key->text().toStdString() << " in " << nameOf(below);
    }
}

class Fits : public testing::TestWithParam<QSize> {
protected:
    QTemporaryDir data;
    ui::Look look;
    Desk desk{builtInCatalogue().value(), {}, look};
    QWidget* window = nullptr;
    std::int64_t now_ns = 5'000'000'000'000;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
        ASSERT_TRUE(placed);
        ASSERT_TRUE(desk.open(*placed));
        window = desk.window();
        look.wearOn(*window);
        window->resize(GetParam());
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window));
    }

    /// Until nothing on the screen changes its place or height any more.
    void untilStill() {
        int before = -1;
        for (int i = 0; i < 40; ++i) {
            QTest::qWait(50);
            int now = 0;
            for (const QLabel* label : window->findChildren<QLabel*>())
                now += label->isVisible() ? label->height() + label->y() : 0;
            if (now == before)
                return;
            before = now;
        }
    }

    /// Everything has room, by day and by night. With LATCHROUND_PICTURES set to a folder, what was
    /// seen is left there to be looked at.
    void settled(const QString& where) {
        untilStill();
        EXPECT_EQ(window->size(), GetParam()) << where.toStdString();
        expectRoom(window, where.toStdString());
        const QString folder = qEnvironmentVariable("LATCHROUND_PICTURES");
        if (folder.isEmpty())
            return;
        for (const ui::Light light : {ui::Light::Day, ui::Light::Night}) {
            look.setLight(light);
            QTest::qWait(20);
            window->grab().save(QStringLiteral("%1/%2 %3 %4.png")
                                    .arg(folder, where)
                                    .arg(window->width())
                                    .arg(light == ui::Light::Day ? "day" : "night"));
        }
        look.setLight(ui::Light::Day);
    }

    void closeSheet() {
        hands::click(window, "sheet-close");
        hands::until([&] { return window->findChild<QWidget*>("sheet") == nullptr; },
                     "the sheet is closed");
    }

    /// Turns the pages until the row, or the key, is in sight; presses its key.
    void clickRow(const char* name) {
        auto* row = window->findChild<QWidget*>(name);
        ASSERT_NE(row, nullptr) << name;
        QWidget* pager = row;
        while (!qobject_cast<ui::RowPager*>(pager))
            pager = pager->parentWidget();
        for (const char* turn : {"rows-before", "rows-after"})
            while (!row->isVisible() && pager->findChild<QWidget*>(turn)->isEnabled())
                hands::click(pager, turn);
        auto* key = qobject_cast<QPushButton*>(row);
        hands::click(key ? key : row->findChild<QPushButton*>());
    }

    /// The exercise's own window is looked at from here on, in virtual time.
    void practise(const char* exercise) {
        desk.setSteadyClock([this] { return now_ns; });
        desk.setLot([] { return 7U; });
        clickRow((std::string("practise-") + exercise).c_str());
        ASSERT_NE(desk.practiceDesk(), nullptr);
        window = desk.practiceDesk()->window();
        look.wearOn(*window);
        window->resize(GetParam());
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window));
    }
};

} // namespace

TEST_P(Fits, NothingIsClippedOnAnyScreenOfTheWalk) {
    settled("home");
    hands::click(window, "home-main");
    settled("door, look");
    hands::click(window, "step-1");
    settled("door, release");
    hands::click(window, "rows-after");
    settled("door, release, more");
    hands::click(window, "from-paper");
    settled("door, from paper");
    hands::click(window, "step-1");
    hands::click(window, "rows-after");
    hands::click(window, "rows-before");
    hands::click(hands::find(window, "release-remote")->findChild<QPushButton*>());
    settled("caution");
    const auto confirmShown = [&] {
        for (QPushButton* key : window->findChildren<QPushButton*>())
            if (key->isVisible() && key->text() == "Confirm")
                hands::click(key);
    };
    confirmShown();
    for (QPushButton* more : window->findChildren<QPushButton*>("rows-after"))
        while (more->isVisible() && more->isEnabled()) {
            hands::click(more);
            confirmShown();
        }
    settled("caution, confirmed");
    hands::click(window, "arm");
    settled("stopwatch, armed");
    hands::pressAt(window, "mark", 1'000'000);
    hands::pressAt(window, "mark", 1'006'400);
    settled("stopwatch, leaf moving");
    hands::pressAt(window, "mark", 1'018'400);
    hands::pressAt(window, "mark", 1'018'600);
    settled("stopwatch, run complete");
    hands::until([&] { return hands::find(window, "run-done")->isEnabled(); }, "the run is over");
    hands::click(window, "run-done");
    hands::click(window, "step-2");
    settled("door, function");
}

TEST_P(Fits, NothingIsClippedOnAnySheet) {
    hands::click(window, "home-all-doors");
    settled("all doors");
    closeSheet();
    hands::click(window, "home-vessels");
    settled("vessels");
    closeSheet();
    hands::click(window, "home-settings");
    settled("settings");
    closeSheet();
    hands::click(window, "home-settings");
    hands::click(window, "settings-decide");
    settled("decision");
    closeSheet();
    hands::click(window, "home-due");
    settled("due");
    hands::click(window, "due-certificate");
    settled("certificate");
    closeSheet();
    hands::click(window, "home-end");
    settled("end");
    hands::click(window, "end-not");
    hands::click(window, "home-main");
    clickRow("plate-row");
    settled("plate");
    closeSheet();
    clickRow("boundary-row");
    settled("fire tables");
    closeSheet();
    hands::click(window, "not-asked");
    settled("not asked");
    closeSheet();
    hands::click(window, "note");
    settled("note");
    closeSheet();
    hands::click(window, "could-not");
    settled("could not test");
    closeSheet();
    hands::click(window, "step-1");
    clickRow("heel-row");
    settled("heel");
    closeSheet();
    emit window->findChild<ui::VerdictList*>()->whyAsked("sliding-rate");
    settled("why");
    closeSheet();
    ui::Window* front = desk.window();
    front->doorScreen().setDoor("5-04");
    emit window->findChild<ui::VerdictList*>()->whyAsked("self-closing");
    settled("why, inclined");
    closeSheet();
    emit window->findChild<ui::VerdictList*>()->whyAsked("sliding-rate");
    settled("why, timed");
    hands::click(window, "why-budget");
    settled("budget");
    hands::click(hands::find(hands::sheet(window), "sheet-close"));
    QTest::qWait(50); // the sheet below stays
    hands::click(window, "why-years");
    settled("through the years");
}

TEST_P(Fits, NothingIsClippedInTheDrill) {
    hands::click(window, "home-settings");
    hands::click(window, "settings-drill");
    settled("drill, before");
    hands::click(window, "drill-begin-silent");
    settled("drill, trial");
}

TEST_P(Fits, NothingIsClippedOnPlanAndBrief) {
    hands::click(window, "home-end");
    hands::click(window, "end-confirm");
    settled("home, ended");
    hands::click(window, "home-main");
    settled("plan");
    hands::click(window, "sample");
    settled("sample");
    closeSheet();
    hands::click(window, "add-person");
    settled("person");
    QTest::keyClicks(hands::find(window, "person-name"), "Ansa Merlund");
    hands::clickWords(hands::sheet(window), "surveyor");
    hands::click(window, "to-brief");
    settled("brief");
    hands::click(window, "agreed-1");
    settled("channel");
}

TEST_P(Fits, NothingIsClippedAfterTheWalk) {
    hands::click(window, "open-items-all");
    settled("review");
    const auto opened = [&](const char* key, const char* where) {
        hands::click(window, key);
        settled(where);
        closeSheet();
    };
    const auto onPanel = [&](const char* name) {
        for (QPushButton* key : window->findChildren<QPushButton*>(name))
            while (!key->isVisible())
                hands::click(window, "rows-after");
    };
    for (const auto& [key, where] : {std::pair{"item-due", "item, due"},
                                     {"item-assigned", "item, who"},
                                     {"item-interim", "item, until then"},
                                     {"item-severity", "item, severity"},
                                     {"item-port", "item, port State control"},
                                     {"item-history", "item, history"}}) {
        onPanel(key);
        opened(key, where);
    }
    settled("review, last page of the item");
    opened("review-who", "review, who");
    opened("review-write-up", "review, write up");
    opened("review-compare", "review, compare");
    opened("review-papers", "review, papers");
    opened("review-hand-over", "review, hand over");
    opened("review-sign", "review, sign");
    opened("item-next", "item, rectified");
    opened("item-away", "item, withdraw");
    hands::click(window, "review-which");
    settled("review, closed too");
}

TEST_P(Fits, NothingIsClippedWhilePractising) {
    hands::click(window, "home-practice");
    settled("practice");
    practise("sliding");
    settled("practice, home");
    hands::click(window, "home-main");
    settled("practice, plan");
    hands::click(window, "add-person");
    QTest::keyClicks(hands::find(window, "person-name"), "Ansa Merlund");
    hands::clickWords(hands::sheet(window), "surveyor");
    hands::click(window, "to-brief");
    settled("practice, brief");
    for (int i = 0; i < 5; ++i)
        clickRow(QString("read-out-%1").arg(i).toUtf8().constData());
    hands::click(window, "agreed-1");
    hands::clickWords(hands::sheet(window), "Ch 10");
    hands::click(window, "begin");
    settled("practice, door");
    hands::click(window, "practice-scene");
    settled("practice, at the door");
    for (const char* spot : {"spot-pocket", "spot-plate", "spot-seals", "spot-papers"}) {
        hands::click(window, spot);
        settled(QString("practice, ") + spot);
    }
    hands::click(window, "scene-whole");
    hands::click(window, "scene-side");
    settled("practice, at the door, side two");
    hands::click(window, "back");
    hands::click(window, "step-1");
    untilStill();
    clickRow("release-remote");
    settled("practice, caution");
    for (const char* id : {"announced", "people-clear", "watch-posted", "station-ready",
                           "words-agreed", "path-free"})
        clickRow(QString("caution-%1").arg(id).toUtf8().constData());
    hands::click(window, "arm");
    settled("practice, stopwatch");
    hands::click(window, "work-release");
    now_ns += 4'000'000'000;
    settled("practice, alarm");
    hands::pressAt(window, "mark", 1'000'000);
    now_ns += 8'000'000'000;
    hands::pressAt(window, "mark", 1'008'000);
    settled("practice, leaf moving");
    now_ns += 20'000'000'000;
    hands::pressAt(window, "mark", 1'018'000);
    hands::pressAt(window, "mark", 1'018'700);
    settled("practice, run complete");
    hands::until([&] { return hands::find(window, "run-done")->isEnabled(); }, "the run is over");
    hands::click(window, "run-done");
    hands::click(window, "practice-end");
    settled("practice, end");
    hands::click(window, "practice-end-confirm");
    settled("practice, debrief");
    for (const char* section :
         {"debrief-faults", "debrief-verdicts", "debrief-people", "debrief-marks"}) {
        hands::click(window, section);
        settled(QString("practice, ") + section);
    }
    hands::click(window, "debrief-done");
    hands::until([&] { return desk.practiceDesk() == nullptr; }, "back to the vessel");
    window = desk.window();
    look.wearOn(*window);
    settled("practice, progress");
}

INSTANTIATE_TEST_SUITE_P(Sizes, Fits,
                         testing::Values(QSize(1280, 800), QSize(800, 1280), QSize(1920, 1080)));
