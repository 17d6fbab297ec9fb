#include <QImage>

#include <gmock/gmock.h>

#include "ui/look/look.h"
#include "ui/ship/door_drawing.h"

namespace latchround::ui {
namespace {

QImage shot(DoorDrawing& drawing) {
    drawing.resize(600, 210);
    return drawing.grab().toImage();
}

class DrawingOfKind : public ::testing::TestWithParam<DoorKind> {};

TEST_P(DrawingOfKind, MovesWithItsProgress) {
    DoorDrawing drawing;
    drawing.setDoor(GetParam(), 0.9);
    drawing.setProgress(0);
    const QImage open = shot(drawing);
    drawing.setProgress(0.5);
    const QImage half = shot(drawing);
    drawing.setProgress(1);
    const QImage shut = shot(drawing);
    EXPECT_NE(open, half);
    EXPECT_NE(half, shut);
}

TEST_P(DrawingOfKind, ShowsTheAlarmAndSaysSo) {
    DoorDrawing drawing;
    drawing.setDoor(GetParam(), 0.9);
    const QImage silent = shot(drawing);
    drawing.setAlarm(true);
    EXPECT_NE(shot(drawing), silent);
    EXPECT_TRUE(drawing.accessibleName().contains("alarm on"));
}

TEST_P(DrawingOfKind, IsDrawnAsSeenFromTheSideOneStandsOn) {
    DoorDrawing drawing;
    drawing.setDoor(GetParam(), 0.9);
    drawing.setProgress(0.5);
    const QImage from_one = shot(drawing);
    drawing.setSide(Side::Two);
    EXPECT_NE(shot(drawing), from_one);
    drawing.setSide(Side::None);
    EXPECT_EQ(shot(drawing), from_one);
}

TEST_P(DrawingOfKind, ShowsTheSoftBlockOfAContactRunAndSaysSo) {
    DoorDrawing drawing;
    drawing.setDoor(GetParam(), 0.9);
    const QImage free = shot(drawing);
    drawing.setBlock(true);
    EXPECT_NE(shot(drawing), free);
    EXPECT_TRUE(drawing.accessibleName().contains("block"));
    drawing.setProgress(DoorDrawing::block_at);
    const QImage touching = shot(drawing);
    drawing.setProgress(0.2);
    EXPECT_NE(shot(drawing), touching) << "it re-opens";
}

TEST_P(DrawingOfKind, CalmMotionMovesInQuarterSteps) {
    Look calm;
    DoorDrawing drawing;
    calm.applyTo(drawing);
    calm.setCalmMotion(true);
    drawing.setDoor(GetParam(), 1.4);
    drawing.setProgress(0.45);
    drawing.setSecondProgress(0.3);
    const QImage near_half = shot(drawing);
    drawing.setProgress(0.55);
    drawing.setSecondProgress(0.2);
    EXPECT_EQ(shot(drawing), near_half);
    drawing.setProgress(0.7);
    EXPECT_NE(shot(drawing), near_half);
}

INSTANTIATE_TEST_SUITE_P(Kinds, DrawingOfKind,
                         ::testing::Values(DoorKind::SingleLeaf, DoorKind::DoubleLeaf,
                                           DoorKind::Sliding, DoorKind::DoubleSwing));

TEST(DoorDrawing, SecondLeafMovesOnItsOwn) {
    DoorDrawing drawing;
    drawing.setDoor(DoorKind::DoubleLeaf, 1.8);
    drawing.setProgress(1);
    const QImage together = shot(drawing);
    drawing.setSecondProgress(0.2);
    EXPECT_NE(shot(drawing), together);
}

TEST(DoorDrawing, ASlidingLeafLeavesItsPocketTowardsTheOtherHandFromSideTwo) {
    DoorDrawing drawing;
    drawing.setDoor(DoorKind::Sliding, 1.4);
    drawing.setProgress(0.5);
    const QColor leaf = coloursOf(Light::Day).leaf;
    const auto left_of_leaf = [&] {
        const QImage image = shot(drawing);
        for (int x = 0; x < image.width(); ++x)
            if (image.pixelColor(x, image.height() / 2) == leaf)
                return double(x) / image.width();
        return 1.0;
    };
    const double from_one = left_of_leaf();
    drawing.setSide(Side::Two);
    const double from_two = left_of_leaf();
    EXPECT_LT(from_one, 0.4);
    EXPECT_GT(from_two, from_one);
}

TEST(DoorDrawing, ProgressIsHeldBetweenOpenAndShut) {
    DoorDrawing drawing;
    drawing.setProgress(7);
    EXPECT_DOUBLE_EQ(drawing.progress(), 1);
    drawing.setProgress(-1);
    EXPECT_DOUBLE_EQ(drawing.progress(), 0);
}

} // namespace
} // namespace latchround::ui
