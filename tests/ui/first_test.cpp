// The page of the very first start: each key goes where it says, everything has room at every size,
// and it is shown once.
#include <gmock/gmock.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>

#include "memory_register.h"
#include "print_to.h"
#include "tests/passing_time.h"
#include "ui/look/look.h"
#include "ui/screens/first/first_screen.h"
#include "ui/window/window.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// A window with a look of its own, as at the first start.
struct FirstStart {
    SmallShip ship;
    Look look;
    Window window;

    explicit FirstStart(QSize size = {1280, 800}, double scale = 1, bool gloves = false)
        : window(ship.load(), look) {
        look.setScale(scale);
        look.setGloves(gloves);
        window.resize(size);
        window.show();
        window.showFirst();
        look.applyTo(window);
        test::settle(window);
    }
    FirstScreen& page() { return *window.findChild<FirstScreen*>(); }
    QPushButton* key(const char* name) {
        for (QPushButton* each : window.findChildren<QPushButton*>(name))
            if (each->isVisible())
                return each;
        return nullptr;
    }
    /// Turns to the part of a small screen that has the key, where need be; presses it.
    void press(const char* name) {
        for (int i = 0; i < 4 && !key(name); ++i)
            QTest::mouseClick(key("first-after"), Qt::LeftButton);
        ASSERT_NE(key(name), nullptr) << name;
        QTest::mouseClick(key(name), Qt::LeftButton);
        test::settle(window);
    }
    QString shown() { return window.findChild<QStackedWidget*>()->currentWidget()->objectName(); }
};

struct Kind {
    QSize size;
    double scale;
    bool gloves;
};

void PrintTo(const Kind& kind, std::ostream* out) {
    *out << kind.size.width() << "x" << kind.size.height() << " at " << kind.scale
         << (kind.gloves ? " with gloves" : "");
}

class FirstAtEverySize : public testing::TestWithParam<Kind> {};

void expectRoomOnFirst(const FirstScreen& page) {
    for (const QLabel* label : page.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        EXPECT_GE(label->height() + 1, needed) << label->text().toStdString();
        EXPECT_TRUE(page.rect().contains(QRect(label->mapTo(&page, QPoint()), label->size())))
            << label->text().toStdString();
    }
    for (const QPushButton* key : page.findChildren<QPushButton*>()) {
        if (!key->isVisible())
            continue;
        const QRect place(key->mapTo(&page, QPoint()), key->size());
        for (const QLabel* label : page.findChildren<QLabel*>())
            EXPECT_FALSE(label->isVisible() && !label->text().isEmpty() &&
                         place.intersects(QRect(label->mapTo(&page, QPoint()), label->size())))
                << key->text().toStdString() << " on " << label->text().toStdString();
        for (const QWidget* on = key->parentWidget(); on != &page; on = on->parentWidget())
            EXPECT_TRUE(QRect(on->mapTo(&page, QPoint()), on->size()).contains(place))
                << key->text().toStdString();
        EXPECT_TRUE(page.rect().contains(QRect(key->mapTo(&page, QPoint()), key->size())))
            << key->text().toStdString();
        EXPECT_GE(key->height(), lookOf(&page).sizes.target) << key->text().toStdString();
    }
}

} // namespace

TEST(FirstScreen, EachKeyGoesWhereItSays) {
    FirstStart start;
    EXPECT_EQ(start.shown(), QString("first"));
    start.press("first-look-round");
    EXPECT_EQ(start.shown(), QString("home"));
    FirstStart again;
    again.press("first-practise");
    EXPECT_EQ(again.shown(), QString("practice"));
}

TEST(FirstScreen, RegisterTakenInCanBeOpenedAtOnce) {
    FirstStart start;
    start.ship.ports.taken_in = "/vessels/mine.db";
    start.press("first-take-in");
    start.press("register-open");
    EXPECT_THAT(start.ship.ports.opened, ::testing::ElementsAre(QString("/vessels/mine.db")));
}

TEST(FirstScreen, RegisterThatDoesNotFitIsToldAndThePageStays) {
    FirstStart start;
    start.ship.ports.taken_in_faults = {Error{place::line("a.csv", 3), "no such deck"}};
    start.press("first-take-in");
    EXPECT_NE(start.window.findChild<QWidget*>("register-faults"), nullptr);
    EXPECT_EQ(start.shown(), QString("first"));
}

TEST(FirstScreen, ChangesSizeAndGlovesAtOnceAndKeepsThem) {
    FirstStart start({1920, 1080});
    start.press("first-size-1");
    EXPECT_EQ(start.look.appearance().scale, 1.5);
    EXPECT_EQ(start.ship.ports.settings["scale"], QString("1.5"));
    start.press("first-gloves-1");
    EXPECT_TRUE(start.look.appearance().sizes.gloves);
    EXPECT_EQ(start.ship.ports.settings["gloves"], QString("1"));
}

TEST(FirstScreen, SaysInTheSettingsThatItWasShown) {
    SmallShip ship;
    Look look;
    Window window(ship.load(), look);
    EXPECT_EQ(window.findChild<FirstScreen*>(), nullptr); // not before it is asked for
    EXPECT_TRUE(ship.ports.settings["first-run"].isEmpty());
    window.showFirst();
    EXPECT_FALSE(ship.ports.settings["first-run"].isEmpty());
}

TEST(FirstScreen, NamesTheDangerAndWhoseRulesStandAbove) {
    FirstStart start;
    QString all;
    for (const QLabel* label : start.page().findChildren<QLabel*>())
        if (label->isVisible())
            all += label->text() + '\n';
    for (const char* words : {"crush", "flag Administration", "approved fire plan", "local rules",
                              "not a certificate", "Anyone may stop"})
        EXPECT_TRUE(all.contains(words)) << words;
}

TEST_P(FirstAtEverySize, HasRoomForEverythingAndLeadsOn) {
    const Kind& kind = GetParam();
    FirstStart start(kind.size, kind.scale, kind.gloves);
    const QString folder = qEnvironmentVariable("LATCHROUND_PICTURES");
    for (int part = 0; part < 4; ++part) {
        expectRoomOnFirst(start.page());
        if (!folder.isEmpty())
            start.window.grab().save(QString("%1/first %2 at %3%4 part %5.png")
                                         .arg(folder)
                                         .arg(kind.size.width())
                                         .arg(kind.scale)
                                         .arg(kind.gloves ? " gloves" : "")
                                         .arg(part));
        if (!start.key("first-after") || !start.key("first-after")->isEnabled())
            break;
        QTest::mouseClick(start.key("first-after"), Qt::LeftButton);
        test::settle(start.window);
    }
    start.press("first-look-round");
    EXPECT_EQ(start.shown(), QString("home"));
}

INSTANTIATE_TEST_SUITE_P(Sizes, FirstAtEverySize,
                         testing::Values(Kind{{1280, 800}, 1, false}, Kind{{800, 1280}, 1, false},
                                         Kind{{1920, 1080}, 1, false}, Kind{{1280, 800}, 1, true},
                                         Kind{{800, 1280}, 1, true}, Kind{{1280, 800}, 2, false},
                                         Kind{{800, 1280}, 2, false}, Kind{{1920, 1080}, 2, false},
                                         Kind{{1280, 800}, 2, true}, Kind{{800, 1280}, 2, true}));
