#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/keys/keypad.h"

namespace latchround::ui {
namespace {

QPushButton* keyNamed(Keypad& pad, const QString& name) {
    for (QPushButton* key : pad.findChildren<QPushButton*>())
        if (key->accessibleName() == name)
            return key;
    return nullptr;
}

void tap(Keypad& pad, const QStringList& names) {
    for (const QString& name : names) {
        QPushButton* key = keyNamed(pad, name);
        ASSERT_NE(key, nullptr) << name.toStdString();
        QTest::mouseClick(key, Qt::LeftButton);
    }
}

TEST(Keypad, TappedDigitsMakeAFigure) {
    Keypad pad;
    QSignalSpy entered(&pad, &Keypad::entered);
    tap(pad, {"1", "2", "Decimal point", "4", "Enter the figure"});
    ASSERT_EQ(entered.count(), 1);
    EXPECT_DOUBLE_EQ(entered[0][0].toDouble(), 12.4);
}

TEST(Keypad, TypedPointAndCommaAreTheSame) {
    for (const char* typed : {"3.25", "3,25"}) {
        Keypad pad;
        QSignalSpy entered(&pad, &Keypad::entered);
        QTest::keyClicks(&pad, typed);
        QTest::keyClick(&pad, Qt::Key_Return);
        ASSERT_EQ(entered.count(), 1) << typed;
        EXPECT_DOUBLE_EQ(entered[0][0].toDouble(), 3.25);
    }
}

TEST(Keypad, EmptyFigureCannotBeEntered) {
    Keypad pad;
    QSignalSpy entered(&pad, &Keypad::entered);
    QTest::keyClick(&pad, Qt::Key_Return);
    EXPECT_FALSE(keyNamed(pad, "Enter the figure")->isEnabled());
    EXPECT_EQ(entered.count(), 0);
}

TEST(Keypad, BackTakesOneDigitAndClearTakesAll) {
    Keypad pad;
    tap(pad, {"1", "2", "3", "Delete the last digit"});
    EXPECT_EQ(pad.text(), QString("12"));
    tap(pad, {"Clear the figure"});
    EXPECT_EQ(pad.value(), std::nullopt);
}

TEST(Keypad, SecondPointAndDigitsPastTheAllowedPlacesAreIgnored) {
    Keypad pad;
    pad.setDecimals(1);
    QTest::keyClicks(&pad, "7.5.68");
    EXPECT_EQ(pad.text(), QString("7.5"));
}

TEST(Keypad, WithoutDecimalsThePointIsOff) {
    Keypad pad;
    pad.setDecimals(0);
    QTest::keyClicks(&pad, "1.2");
    EXPECT_EQ(pad.text(), QString("12"));
    EXPECT_FALSE(keyNamed(pad, "Decimal point")->isEnabled());
}

TEST(Keypad, LeadingZeroGivesWay) {
    Keypad pad;
    QTest::keyClicks(&pad, "07");
    EXPECT_EQ(pad.text(), QString("7"));
}

TEST(Keypad, EveryKeyIsATarget) {
    Keypad pad;
    pad.resize(pad.sizeHint());
    pad.show();
    for (const QPushButton* key : pad.findChildren<QPushButton*>()) {
        EXPECT_GE(key->height(), 60) << key->text().toStdString();
        EXPECT_GE(key->width(), 60) << key->text().toStdString();
    }
}

} // namespace
} // namespace latchround::ui
