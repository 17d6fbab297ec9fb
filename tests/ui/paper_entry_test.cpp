// A paper form typed in: who walked and when is asked first, rows bear the form's numbers in its
// order, and what is recorded is of who walked, then.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "core/grading/paper_items.h"
#include "tests/ui/memory_register.h"
#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/keypad.h"
#include "ui/keys/row_pager.h"
#include "ui/look/look.h"
#include "ui/screens/door/bulkhead_panel.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/window/window.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct PaperEntry : testing::Test {
    SmallShip ship;
    Look look;
    std::unique_ptr<Window> window;
    FactId walker;

    void SetUp() override {
        walker = ship.put(PersonJoined{"Odd Ravnsby", "chief officer"});
        ship.begun();
        window = std::make_unique<Window>(ship.load(), look);
        window->resize(1280, 800);
        window->show();
        emit window->findChild<HomeScreen*>()->doorChosen("5-31");
    }
    DoorScreen& door() { return window->doorScreen(); }
    Sheet* sheet() { return window->findChild<Sheet*>(); }
    QPushButton& key(const QString& name) {
        auto* found = window->findChild<QPushButton*>(name);
        if (!found)
            throw std::runtime_error("no key " + name.toStdString());
        return *found;
    }
    QPushButton& words(const QString& said) {
        for (QPushButton* each : sheet()->findChildren<QPushButton*>())
            if (each->text() == said)
                return *each;
        throw std::runtime_error("no key " + said.toStdString());
    }
    static void press(QPushButton& pressed) {
        QTest::mouseClick(&pressed, Qt::LeftButton);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void type(const QString& digits) {
        auto* keypad = sheet()->findChild<Keypad*>();
        QTest::keyClicks(keypad, digits);
        QTest::keyClick(keypad, Qt::Key_Return);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    /// Odd Ravnsby walked yesterday at 14:32; it is 25 November, 10:42.
    void beginTyping() {
        press(key("from-paper"));
        press(words("Odd Ravnsby"));
        press(key("walked-day-1"));
        type("1432");
    }
    const std::vector<QWidget*>& rows() { return door().findChild<RowPager*>()->rows(); }
    const Fact& last() { return ship.vessel_register.transactions.back().front(); }
};

} // namespace

TEST_F(PaperEntry, WhoAndWhenComeFirst) {
    press(key("from-paper"));
    EXPECT_FALSE(key("from-paper").isChecked()) << "nothing is typed in before that is known";
    ASSERT_NE(sheet(), nullptr);
    sheet()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(key("from-paper").isChecked());
    beginTyping();
    EXPECT_TRUE(key("from-paper").isChecked());
    EXPECT_EQ(rows().front()->objectName(), "walked-row");
}

TEST_F(PaperEntry, ATimeThatIsNotOrIsStillToComeIsSaid) {
    press(key("from-paper"));
    press(words("Odd Ravnsby"));
    press(key("walked-day-0"));
    type("1071");
    ASSERT_NE(sheet(), nullptr);
    const auto says = [&](const char* words) {
        for (const QLabel* label : sheet()->findChildren<QLabel*>())
            if (label->text().startsWith(QLatin1String(words)))
                return true;
        return false;
    };
    EXPECT_TRUE(says("That is not a valid time."));
    type("1043");
    ASSERT_NE(sheet(), nullptr);
    EXPECT_TRUE(says("That is in the future."));
    type("1042");
    EXPECT_EQ(sheet(), nullptr);
}

TEST_F(PaperEntry, RowsStandInTheOrderOfTheFormUnderItsNumbers) {
    beginTyping();
    const std::vector<PaperItem> items =
        paperItems(ship.session->arrangement(), *ship.session->door("5-31")->door,
                   ship.session->catalogue(), Purpose::Annual);
    ASSERT_EQ(rows().size(), items.size() + 1);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const QWidget& row = *rows()[i + 1];
        EXPECT_TRUE(row.accessibleName().startsWith(QString("%1  ").arg(items[i].number)))
            << row.accessibleName().toStdString();
        if (items[i].kind == PaperKind::Question) {
            EXPECT_EQ(row.objectName().toStdString(), "ask-" + items[i].requirement->id);
        }
    }
}

TEST_F(PaperEntry, LettersAnswerTheMarkedQuestionDownTheForm) {
    beginTyping();
    std::vector<ChoiceRow*> questions;
    for (QWidget* row : rows())
        if (auto* question = qobject_cast<ChoiceRow*>(row))
            questions.push_back(question);
    const auto isMarked = [](const ChoiceRow* question) {
        return question->accessibleDescription().contains("y, n and a");
    };
    auto* pager = door().findChild<RowPager*>();
    pager->turnTo(pager->pages() - 1);
    ASSERT_FALSE(questions.front()->isVisible());
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_FALSE(questions.front()->answer(Side::One)) << "it was not in sight";
    for (std::size_t i = 0; i < questions.size(); ++i) {
        for (std::size_t j = 0; j < questions.size(); ++j)
            EXPECT_EQ(isMarked(questions[j]), i == j) << i << " " << j;
        EXPECT_TRUE(questions[i]->isVisible()) << i;
        const Side side = questions[i]->key(Answer::Yes, Side::One) ? Side::One : Side::None;
        QTest::keyClick(&door(), i % 2 == 0 ? Qt::Key_Y : Qt::Key_N);
        EXPECT_EQ(questions[i]->answer(side), i % 2 == 0 ? Answer::Yes : Answer::No);
        if (side == Side::One)
            QTest::keyClick(&door(), Qt::Key_A);
    }
}

TEST_F(PaperEntry, WhatIsTypedIsOfWhoWalkedThenAndSaysWhoTypedIt) {
    beginTyping();
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(last().stamp.person, walker);
    const std::int64_t day_ms = 86'400'000;
    const std::int64_t minute_ms = 60'000;
    EXPECT_EQ(last().stamp.when.utc_ms,
              ship.ports.clock.utc_ms - day_ms + (14 * 60 + 32 - 10 * 60 - 42) * minute_ms);
    const Fact& note = ship.vessel_register.transactions.back().back();
    ASSERT_TRUE(std::holds_alternative<Note>(note.body));
    EXPECT_EQ(std::get<Note>(note.body).text.text,
              "Typed in from a paper form by Maren Tollefsby.");
    EXPECT_EQ(note.stamp.person, ship.person);
    EXPECT_EQ(note.stamp.when, ship.ports.clock);
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(ship.vessel_register.transactions.back().size(), 1U) << "the note comes once";
    // Each of them is a tap of its own for undo.
    EXPECT_EQ(ship.session->tapToTakeBack("5-31")->facts.size(), 1U);
}

TEST_F(PaperEntry, TheNoteOfWhoTypedComesOnceAndUndoDoesNotReachIt) {
    beginTyping();
    QTest::keyClick(&door(), Qt::Key_Y);
    ASSERT_TRUE(ship.session->undo(*ship.session->tapToTakeBack("5-31")));
    press(key("step-0"));
    EXPECT_FALSE(ship.session->tapToTakeBack()) << "of who typed it is only the note";
    press(key("from-paper"));
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(ship.vessel_register.transactions.back().size(), 1U);
    EXPECT_EQ(ship.session->door("5-31")->evidence.notes.size(), 1U);
}

TEST_F(PaperEntry, WhoTypesInTakesBackNoTapOfTheWalkers) {
    ship.session->setPerson(walker);
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-31", "seen"}));
    ship.session->setPerson(ship.person);
    beginTyping();
    EXPECT_FALSE(ship.session->tapToTakeBack("5-31"));
    QTest::keyClick(&door(), Qt::Key_Y);
    const auto tap = ship.session->tapToTakeBack("5-31");
    ASSERT_TRUE(tap);
    ASSERT_TRUE(ship.session->undo(*tap));
    EXPECT_LT(last().stamp.when.utc_ms - ship.ports.clock.utc_ms, 1000);
    EXPECT_GE(last().stamp.when.utc_ms, ship.ports.clock.utc_ms) << "it is taken back now";
    EXPECT_FALSE(ship.session->tapToTakeBack("5-31"));
}

TEST_F(PaperEntry, AtTheNextDoorOnlyTheTimeIsAskedFor) {
    beginTyping();
    emit door().findChild<BulkheadPanel*>()->doorChosen("5-32");
    EXPECT_FALSE(key("from-paper").isChecked()) << "its time is not known yet";
    ASSERT_NE(sheet(), nullptr);
    type("1435");
    EXPECT_TRUE(key("from-paper").isChecked());
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(last().stamp.person, walker);
    EXPECT_EQ((last().stamp.when.utc_ms / 60'000) % 60, 35);
    EXPECT_EQ(ship.session->ledger().doorOf(last()), "5-32");
}

TEST_F(PaperEntry, WithoutItsTimeTheNextDoorIsSeenNow) {
    beginTyping();
    emit door().findChild<BulkheadPanel*>()->doorChosen("5-32");
    sheet()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-32", "seen"}));
    EXPECT_EQ(last().stamp.person, ship.person);
    press(key("from-paper"));
    EXPECT_FALSE(key("from-paper").isChecked()) << "who walked there is asked anew";
}

TEST_F(PaperEntry, EndsWhenTheDoorIsLeft) {
    beginTyping();
    emit door().bar().back();
    emit window->findChild<HomeScreen*>()->doorChosen("5-31");
    EXPECT_FALSE(key("from-paper").isChecked());
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-31", "seen"}));
    EXPECT_EQ(last().stamp.person, ship.person);
    EXPECT_LT(std::abs(last().stamp.when.utc_ms - ship.ports.clock.utc_ms), 1000);
}

TEST_F(PaperEntry, TheHeelOnTheFormIsOfThatDoorAlone) {
    ship.session->setHeel(0.5);
    beginTyping();
    ship.session->setHeel(3);
    EXPECT_EQ(ship.session->heel_deg(), 3);
    press(key("step-0"));
    EXPECT_EQ(ship.session->heel_deg(), 0.5);
    press(key("from-paper"));
    EXPECT_EQ(ship.session->heel_deg(), 3);
    emit door().findChild<BulkheadPanel*>()->doorChosen("5-32");
    type("1435");
    EXPECT_EQ(ship.session->heel_deg(), ship.session->walkdown()->plan.heel_deg);
}

TEST_F(PaperEntry, ALetterWithAModifierIsNoAnswer) {
    beginTyping();
    const auto before = ship.vessel_register.transactions.size();
    QTest::keyClick(&door(), Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(ship.vessel_register.transactions.size(), before);
    QTest::keyClick(&door(), Qt::Key_Y, Qt::ShiftModifier);
    EXPECT_EQ(ship.vessel_register.transactions.size(), before + 1);
}

TEST_F(PaperEntry, ATapBearsAMomentOfItsOwnAfterWhateverCameBetween) {
    beginTyping();
    QTest::keyClick(&door(), Qt::Key_Y);
    press(key("step-0"));
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-31", "seen"}));
    press(key("from-paper"));
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(ship.session->tapToTakeBack("5-31")->facts.size(), 1U);
}

TEST_F(PaperEntry, WhatIsSeenNowIsOfWhoIsSignedOn) {
    beginTyping();
    press(key("step-0"));
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-31", "seen"}));
    EXPECT_EQ(last().stamp.person, ship.person);
    press(key("from-paper")); // known already
    EXPECT_TRUE(key("from-paper").isChecked());
    QTest::keyClick(&door(), Qt::Key_Y);
    EXPECT_EQ(last().stamp.person, walker);
    emit door().bar().back();
    ASSERT_TRUE(ship.session->record(Note{ship.session->walkdown()->id, "5-31", "seen again"}));
    EXPECT_EQ(last().stamp.person, ship.person) << "home is not the form";
}
