#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/keys/choice_row.h"

namespace latchround::ui {
namespace {

/// Painted with one pixel to the unit, whatever the screen's scale.
QImage painted(QWidget& widget) {
    QImage image(widget.size(), QImage::Format_RGB32);
    image.fill(Qt::white);
    widget.render(&image);
    return image;
}

struct Heard {
    explicit Heard(ChoiceRow& row) {
        QObject::connect(&row, &ChoiceRow::answered, &row,
                         [this](Answer answer, Side side) { answers.emplace_back(answer, side); });
        QObject::connect(&row, &ChoiceRow::clearAsked, &row,
                         [this](Side side) { clears.push_back(side); });
    }
    std::vector<std::pair<Answer, Side>> answers;
    std::vector<Side> clears;
};

TEST(ChoiceRow, TapOnNoAnswersNo) {
    ChoiceRow row("Pocket clear of dirt and litter");
    Heard heard(row);
    QTest::mouseClick(row.key(Answer::No), Qt::LeftButton);
    ASSERT_EQ(heard.answers.size(), 1u);
    EXPECT_EQ(heard.answers[0].first, Answer::No);
    EXPECT_EQ(row.answer(), Answer::No);
    EXPECT_TRUE(row.key(Answer::No)->isChecked());
}

TEST(ChoiceRow, AnotherKeyTakesOverFromTheFirst) {
    ChoiceRow row("Seals intact");
    Heard heard(row);
    QTest::mouseClick(row.key(Answer::Yes), Qt::LeftButton);
    QTest::mouseClick(row.key(Answer::NotApplicable), Qt::LeftButton);
    EXPECT_EQ(heard.answers.size(), 2u);
    EXPECT_FALSE(row.key(Answer::Yes)->isChecked());
    EXPECT_EQ(row.answer(), Answer::NotApplicable);
}

TEST(ChoiceRow, ChosenKeyPressedAgainAsksAndKeepsTheAnswer) {
    ChoiceRow row("Seals intact");
    Heard heard(row);
    QTest::mouseClick(row.key(Answer::Yes), Qt::LeftButton);
    QTest::mouseClick(row.key(Answer::Yes), Qt::LeftButton);
    EXPECT_EQ(heard.clears.size(), 1u);
    EXPECT_EQ(heard.answers.size(), 1u);
    EXPECT_EQ(row.answer(), Answer::Yes);
    EXPECT_TRUE(row.key(Answer::Yes)->isChecked());
}

/// A finger that comes down twice.
TEST(ChoiceRow, ASecondTapOfTheSameFingerIsPassedOver) {
    ChoiceRow row("Seals intact");
    Heard heard(row);
    QPushButton* yes = row.key(Answer::Yes);
    QTest::mouseClick(yes, Qt::LeftButton);
    QMouseEvent again(QEvent::MouseButtonDblClick, QPointF(5, 5), yes->mapToGlobal(QPointF(5, 5)),
                      Qt::LeftButton, Qt::LeftButton, {});
    QApplication::sendEvent(yes, &again);
    QTest::mouseRelease(yes, Qt::LeftButton);
    EXPECT_EQ(heard.answers.size(), 1u);
    EXPECT_TRUE(heard.clears.empty());
    EXPECT_EQ(row.answer(), Answer::Yes);
}

TEST(ChoiceRow, SpaceOnAKeyAnswers) {
    ChoiceRow row("Travel path clear");
    Heard heard(row);
    row.show();
    row.key(Answer::Yes)->setFocus();
    QTest::keyClick(row.key(Answer::Yes), Qt::Key_Space);
    ASSERT_EQ(heard.answers.size(), 1u);
    EXPECT_EQ(heard.answers[0].first, Answer::Yes);
}

TEST(ChoiceRow, SettingAnAnswerShowsItAndSaysNothing) {
    ChoiceRow row("Seals intact");
    Heard heard(row);
    row.setAnswer(Answer::No);
    EXPECT_TRUE(row.key(Answer::No)->isChecked());
    EXPECT_TRUE(heard.answers.empty());
}

TEST(ChoiceRow, SidesAreAnsweredApart) {
    ChoiceRow row("Opened and closed by one person", {}, true);
    Heard heard(row);
    QTest::mouseClick(row.key(Answer::No, Side::Two), Qt::LeftButton);
    ASSERT_EQ(heard.answers.size(), 1u);
    EXPECT_EQ(heard.answers[0].second, Side::Two);
    EXPECT_EQ(row.answer(Side::One), std::nullopt);
    EXPECT_EQ(row.answer(Side::Two), Answer::No);
    EXPECT_EQ(row.answer(Side::None), std::nullopt);
    EXPECT_EQ(row.key(Answer::Yes, Side::None), nullptr);
}

TEST(ChoiceRow, ChosenKeyShowsAShapeAsWellAsAColour) {
    ChoiceRow row("Seals intact");
    row.resize(560, 80);
    QPushButton* key = row.key(Answer::Yes);
    // Counted by brightness on a dark fill: the tick is there, and a dash is another shape.
    row.setAnswer(Answer::Yes);
    key->setProperty("tone", "good");
    const QImage tick = painted(*key);
    key->setProperty("tone", "neutral");
    const QImage dash = painted(*key);
    const QRect top(20, 6, key->width() - 40, 20);
    const auto brightOnes = [&](const QImage& image) {
        int n = 0;
        for (int y = top.top(); y <= top.bottom(); ++y)
            for (int x = top.left(); x <= top.right(); ++x)
                n += qGray(image.pixel(x, y)) > 200 ? 1 : 0;
        return n;
    };
    EXPECT_GT(brightOnes(tick), 8);
    EXPECT_GT(brightOnes(dash), 4);
    EXPECT_NE(brightOnes(tick), brightOnes(dash));
}

TEST(ChoiceRow, KeysAreTargetsAndKeepTheirDistanceAtEveryWidth) {
    for (const int width : {360, 560, 760, 1200}) {
        ChoiceRow row("Sill in place, floor covering stops at it", "look at both sides", true);
        row.resize(width, row.sizeHint().height());
        row.show();
        QCoreApplication::processEvents();
        for (const Side side : {Side::One, Side::Two}) {
            const QRect yes = row.key(Answer::Yes, side)->geometry();
            const QRect no = row.key(Answer::No, side)->geometry();
            EXPECT_GE(yes.width(), 60) << width;
            EXPECT_GE(yes.height(), 60) << width;
            EXPECT_GE(no.left() - yes.right(), 8) << width;
        }
    }
}

} // namespace
} // namespace latchround::ui
