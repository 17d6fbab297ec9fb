#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/keys/phrase_picker.h"
#include "ui/words/offered.h"

namespace latchround::ui {
namespace {

TEST(PhrasePicker, TappedPhraseIsPickedAndShownChosen) {
    PhrasePicker picker({"door wedged open", "power off"});
    QSignalSpy picked(&picker, &PhrasePicker::picked);
    const auto keys = picker.findChildren<QPushButton*>();
    QPushButton* wedged = nullptr;
    for (QPushButton* key : keys)
        if (key->text() == "door wedged open")
            wedged = key;
    ASSERT_NE(wedged, nullptr);
    QTest::mouseClick(wedged, Qt::LeftButton);
    ASSERT_EQ(picked.count(), 1);
    EXPECT_EQ(picked[0][0].toString(), QString("door wedged open"));
    EXPECT_TRUE(wedged->isChecked());
    EXPECT_EQ(picker.chosen(), "door wedged open");
}

/// The screen's language and units on the key, the record's words in what is picked.
TEST(PhrasePicker, WhatIsRecordedMayReadOtherwiseThanItsKey) {
    PhrasePicker picker;
    picker.setChoices({{"0.5 in", "12.7 mm"}});
    QSignalSpy picked(&picker, &PhrasePicker::picked);
    for (QPushButton* key : picker.findChildren<QPushButton*>())
        if (key->text() == "0.5 in")
            QTest::mouseClick(key, Qt::LeftButton);
    ASSERT_EQ(picked.count(), 1);
    EXPECT_EQ(picked[0][0].toString(), QString("0.5 in"));
    EXPECT_EQ(picked[0][1].value<Wording>(), "12.7 mm");
}

TEST(PhrasePicker, APhraseIsPickedWithItsIdAndOwnWordsWithNone) {
    PhrasePicker picker;
    picker.setPhrases({offered("seal-painted-over")});
    QSignalSpy picked(&picker, &PhrasePicker::picked);
    for (QPushButton* key : picker.findChildren<QPushButton*>())
        if (key->text() == "seal painted over")
            QTest::mouseClick(key, Qt::LeftButton);
    auto* line = picker.findChild<QLineEdit*>();
    QTest::keyClicks(line, "seal painted over");
    QTest::keyClick(line, Qt::Key_Return);
    ASSERT_EQ(picked.count(), 2);
    EXPECT_EQ(picked[0][1].value<Wording>(), Wording("seal painted over", "seal-painted-over"));
    EXPECT_EQ(picked[1][1].value<Wording>(), Wording("seal painted over"));
}

TEST(PhrasePicker, OwnWordsArePickedTrimmed) {
    PhrasePicker picker({"power off"});
    QSignalSpy picked(&picker, &PhrasePicker::picked);
    auto* line = picker.findChild<QLineEdit*>();
    QTest::keyClicks(line, "  hinge  bent ");
    QTest::keyClick(line, Qt::Key_Return);
    ASSERT_EQ(picked.count(), 1);
    EXPECT_EQ(picked[0][0].toString(), QString("hinge bent"));
}

TEST(PhrasePicker, BlankWordsPickNothing) {
    PhrasePicker picker({"power off"});
    QSignalSpy picked(&picker, &PhrasePicker::picked);
    auto* line = picker.findChild<QLineEdit*>();
    QTest::keyClicks(line, "   ");
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(picked.count(), 0);
}

TEST(PhrasePicker, ClearForgetsTheChoice) {
    PhrasePicker picker({"power off"});
    QTest::mouseClick(picker.findChild<QPushButton*>(), Qt::LeftButton);
    picker.clear();
    EXPECT_TRUE(picker.chosen().empty());
    for (const QPushButton* key : picker.findChildren<QPushButton*>())
        EXPECT_FALSE(key->isChecked());
}

} // namespace
} // namespace latchround::ui
