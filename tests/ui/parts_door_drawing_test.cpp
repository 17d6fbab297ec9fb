#include <QImage>

#include <gmock/gmock.h>

#include "ui/look/look.h"
#include "ui/parts/door_drawing.h"

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

TEST(DoorDrawing, CalmMotionMovesInQuarterSteps) {
    Look calm;
    DoorDrawing drawing;
    calm.wearOn(drawing);
    calm.setCalmMotion(true);
    drawing.setDoor(DoorKind::Sliding, 1.4);
    drawing.setProgress(0.45);
    const QImage near_half = shot(drawing);
    drawing.setProgress(0.55);
    EXPECT_EQ(shot(drawing), near_half);
    drawing.setProgress(0.7);
    EXPECT_NE(shot(drawing), near_half);
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
