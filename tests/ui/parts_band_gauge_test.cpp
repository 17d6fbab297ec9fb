#include <QImage>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/figures/band_gauge.h"

namespace latchround::ui {
namespace {

/// Painted with one pixel to the unit, whatever the screen's scale.
QImage painted(QWidget& widget) {
    QImage image(widget.size(), QImage::Format_RGB32);
    image.fill(coloursOf(Light::Day).paper);
    widget.render(&image);
    return image;
}

/// Columns of the gauge's middle line that are closest to a colour.
int columnsOf(BandGauge& gauge, const QColor& colour) {
    const QImage image = painted(gauge);
    const int y = 60; // inside the track at 5 px/mm
    int n = 0;
    for (int x = 0; x < image.width(); ++x)
        n += image.pixelColor(x, y) == colour ? 1 : 0;
    return n;
}

BandGauge& sized(BandGauge& gauge) {
    gauge.resize(620, 115);
    return gauge;
}

TEST(BandGauge, BandIsAsWideAsTheLimitsSay) {
    BandGauge gauge;
    gauge.setBand(5, 10, "s");
    gauge.setScale(0, 20);
    // 600 px of track for 20 s: five seconds are 150, less the lines at the limits.
    EXPECT_NEAR(columnsOf(sized(gauge), coloursOf(Light::Day).band), 150, 8);
}

TEST(BandGauge, UncertaintyEatsIntoTheBandAtBothLimits) {
    BandGauge gauge;
    gauge.setBand(5, 10, "s");
    gauge.setScale(0, 20);
    const int before = columnsOf(sized(gauge), coloursOf(Light::Day).band);
    gauge.setUncertainty(1);
    const int after = columnsOf(gauge, coloursOf(Light::Day).band);
    EXPECT_NEAR(before - after, 60, 6);
    EXPECT_GT(columnsOf(gauge, coloursOf(Light::Day).band_edge), 40);
}

TEST(BandGauge, OneSidedLimitRunsToTheEndOfTheScale) {
    BandGauge at_most;
    at_most.setBand({}, 10, "mm", 0);
    at_most.setScale(0, 20);
    EXPECT_NEAR(columnsOf(sized(at_most), coloursOf(Light::Day).band), 300, 10);
    EXPECT_EQ(at_most.limitWords(), QString("at most 10 mm"));
    BandGauge at_least;
    at_least.setBand(5, {}, "mm", 0);
    EXPECT_EQ(at_least.limitWords(), QString("at least 5 mm"));
}

TEST(BandGauge, NeedleMovesWithTheValue) {
    BandGauge gauge;
    gauge.setBand(5, 10, "s");
    gauge.setScale(0, 20);
    sized(gauge);
    const QImage none = painted(gauge);
    gauge.setValue(3);
    const QImage three = painted(gauge);
    gauge.setValue(12);
    EXPECT_NE(none, three);
    EXPECT_NE(three, painted(gauge));
    EXPECT_EQ(three.pixelColor(10 + 90, 60), coloursOf(Light::Day).ink);
}

TEST(BandGauge, SpeaksLimitsAndValue) {
    BandGauge gauge;
    gauge.setTitle("Leaf moving");
    gauge.setBand(7, 14, "s");
    gauge.setValue(5.62);
    EXPECT_EQ(gauge.accessibleName(),
              QString("Leaf moving, allowed 7.0 to 14.0 s, now 5.6 s, below the limit"));
}

} // namespace
} // namespace latchround::ui
