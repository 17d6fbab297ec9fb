// Undo on the screen: it says what it takes back before it does, stays with the door that is shown,
// and can be undone.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "tests/ui/memory_register.h"
#include "ui/frames/sheet.h"
#include "ui/look/look.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/window/window.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// The key of the bar that is shown: each screen has a bar of its own.
QPushButton& undoKey(const Window& window) {
    for (QPushButton* each : window.findChildren<QPushButton*>("undo"))
        if (each->isVisible())
            return *each;
    throw std::runtime_error("no bar is shown");
}

QPushButton& keyOnSheet(const Window& window, const char* name) {
    auto* key = window.findChild<QPushButton*>(QLatin1String(name));
    if (!key || !key->isVisible())
        throw std::runtime_error(std::string("no key ") + name);
    return *key;
}

struct UndoSheet : testing::Test {
    SmallShip ship;
    Look look;
    std::unique_ptr<Window> window;

    void SetUp() override {
        ship.begun();
        window = std::make_unique<Window>(ship.load(), look);
        window->resize(1280, 800);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    void press(const char* name) {
        QTest::mouseClick(&keyOnSheet(*window, name), Qt::LeftButton);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
};

} // namespace

TEST_F(UndoSheet, UndoSaysWhatItTakesBackAndPutsItBack) {
    VesselSession& session = *ship.session;
    const auto notes = [&] { return session.door("5-31")->evidence.notes.size(); };
    ASSERT_TRUE(session.record(Note{session.walkdown()->id, "5-31", "seal torn"}));
    EXPECT_EQ(undoKey(*window).accessibleName(), "Undo: see what can be taken back");
    QTest::mouseClick(&undoKey(*window), Qt::LeftButton);
    EXPECT_EQ(notes(), 1U) << "it only says so yet";
    EXPECT_EQ(keyOnSheet(*window, "undo-take-back").accessibleName(),
              "Take back: note on 5-31: seal torn");
    press("undo-take-back");
    EXPECT_EQ(notes(), 0U);
    ASSERT_TRUE(undoKey(*window).isEnabled());
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(keyOnSheet(*window, "undo-put-back").accessibleName(),
              "Put back: note on 5-31: seal torn");
    press("undo-put-back");
    EXPECT_EQ(notes(), 1U);
}

TEST_F(UndoSheet, UndoStaysWithTheDoorOnTheScreenUnlessAsked) {
    VesselSession& session = *ship.session;
    const FactId walkdown = session.walkdown()->id;
    ASSERT_TRUE(session.record(Note{walkdown, "5-31", "here"}));
    ASSERT_TRUE(session.record(Note{walkdown, "5-32", "there"}));
    window->doorScreen().setDoor("5-31");
    emit window->findChild<HomeScreen*>()->doorChosen("5-31");
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(keyOnSheet(*window, "undo-take-back").accessibleName(),
              "Take back: note on 5-31: here");
    EXPECT_EQ(keyOnSheet(*window, "undo-take-back-elsewhere").accessibleName(),
              "Take back: note on 5-32: there");
    press("undo-take-back");
    EXPECT_TRUE(session.door("5-31")->evidence.notes.empty());
    EXPECT_EQ(session.door("5-32")->evidence.notes.size(), 1U);
}

TEST_F(UndoSheet, UndoWaitsWhileASheetLiesOverTheScreen) {
    VesselSession& session = *ship.session;
    ASSERT_TRUE(session.record(Note{session.walkdown()->id, "5-31", "seal torn"}));
    window->showMessage("Told", "Something");
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->findChildren<Sheet*>().size(), 1);
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1U);
}

TEST_F(UndoSheet, OfATapAtManyDoorsTheDoorOnTheScreenIsNamedAndTaken) {
    VesselSession& session = *ship.session;
    std::vector<Entry> entries;
    for (const char* number : {"5-31", "5-32"})
        entries.push_back({Note{session.walkdown()->id, number, "painted over"}});
    ASSERT_TRUE(session.record(std::move(entries)));
    QTest::mouseClick(&undoKey(*window), Qt::LeftButton);
    EXPECT_EQ(keyOnSheet(*window, "undo-take-back").accessibleName(),
              "Take back: note on 5-31: painted over, and 1 more");
    press("sheet-close");
    emit window->findChild<HomeScreen*>()->doorChosen("5-32");
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(keyOnSheet(*window, "undo-take-back").accessibleName(),
              "Take back: note on 5-32: painted over");
    press("undo-take-back");
    EXPECT_TRUE(session.door("5-32")->evidence.notes.empty());
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1U);
}

TEST_F(UndoSheet, TheKeysOfRedoOpenItToo) {
    VesselSession& session = *ship.session;
    ASSERT_TRUE(session.record(Note{session.walkdown()->id, "5-31", "seal torn"}));
    ASSERT_TRUE(session.undo(*session.tapToTakeBack()));
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Redo));
    EXPECT_EQ(keyOnSheet(*window, "undo-put-back").accessibleName(),
              "Put back: note on 5-31: seal torn");
}

TEST_F(UndoSheet, SaysWhichCautionIsTakenBack) {
    VesselSession& session = *ship.session;
    ASSERT_TRUE(session.record(CautionAnswered{session.walkdown()->id, "5-31", "announced", true}));
    QTest::mouseClick(&undoKey(*window), Qt::LeftButton);
    const QString said = keyOnSheet(*window, "undo-take-back").accessibleName();
    EXPECT_TRUE(said.startsWith("Take back: caution for 5-31: ")) << said.toStdString();
    EXPECT_GT(said.size(), QString("Take back: caution for 5-31: ").size() + 10);
}
