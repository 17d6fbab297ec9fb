// Nothing on screen is clipped at the three sizes: every visible label and key has room for its
// words, and lies within what it lies on.
#include <gtest/gtest.h>

#include <QLabel>
#include <QTemporaryDir>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/desk.h"
#include "app/desktop/wall.h"
#include "app/vessels/sample_vessel.h"
#include "tests/whole/hands.h"
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

class Fits : public testing::TestWithParam<QSize> {};

} // namespace

TEST_P(Fits, NothingIsClippedOnAnyScreenOfTheWalk) {
    QTemporaryDir data;
    qputenv("LATCHROUND_DATA", data.path().toUtf8());
    const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
    ASSERT_TRUE(placed);
    ui::Look look;
    Desk desk(builtInCatalogue().value(), {}, look);
    ASSERT_TRUE(desk.open(*placed));
    QWidget* window = desk.window();
    window->resize(GetParam());
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window));
    const auto settled = [&](const char* where) {
        QTest::qWait(50);
        EXPECT_EQ(window->size(), GetParam());
        expectRoom(window, where);
    };
    settled("home");
    hands::click(window, "home-main");
    settled("door, look");
    hands::click(window, "step-1");
    settled("door, release");
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

INSTANTIATE_TEST_SUITE_P(Sizes, Fits,
                         testing::Values(QSize(1280, 800), QSize(800, 1280), QSize(1920, 1080)));
