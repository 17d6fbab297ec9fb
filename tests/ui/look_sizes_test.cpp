#include <limits>

#include <QFontMetricsF>
#include <QPainter>

#include <gmock/gmock.h>

#include "ui/look/figure_text.h"
#include "ui/look/sizes.h"

namespace latchround::ui {
namespace {

TEST(Sizes, TwelveMillimetresAreSixtyPixelsWhereTheScreenDoesNotKnowItself) {
    for (const double dpi : {0.0, 72.0, 96.0, -3.0, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_DOUBLE_EQ(pxPerMmFrom(dpi), 5.0) << dpi;
    const Sizes s = sizesOf(5.0, false);
    EXPECT_EQ(s.target, 60);
    EXPECT_EQ(s.main_target, 100);
    EXPECT_GE(s.gap, 8);
}

TEST(Sizes, TenInchTabletIsMeasuredByItsOwnDensity) {
    EXPECT_NEAR(pxPerMmFrom(149), 5.866, 0.001);
    EXPECT_EQ(sizesOf(pxPerMmFrom(149), false).target, 70);
}

TEST(Sizes, AbsurdDensityIsHeldAtFourHundredDotsPerInch) {
    EXPECT_NEAR(pxPerMmFrom(5000), 400 / 25.4, 1e-9);
    EXPECT_NEAR(sizesOf(1000, false).px_per_mm, 400 / 25.4, 1e-9);
    EXPECT_NEAR(sizesOf(0.1, false).px_per_mm, 80 / 25.4, 1e-9);
}

TEST(Sizes, GlovesMakeTwentyFiveAndFifteenMillimetres) {
    const Sizes s = sizesOf(5.0, true);
    EXPECT_EQ(s.main_target, 125);
    EXPECT_EQ(s.target, 75);
    EXPECT_GT(s.gap, sizesOf(5.0, false).gap);
}

TEST(Sizes, TextGrowsStepByStep) {
    const Sizes s = sizesOf(5.0, false);
    int before = 0;
    for (const TextSize size : {TextSize::Small, TextSize::Body, TextSize::Lead, TextSize::Heading,
                                TextSize::Title, TextSize::Display, TextSize::Clock}) {
        EXPECT_GT(pixelsOf(size, s), before);
        before = pixelsOf(size, s);
    }
}

TEST(FigureText, WidthStaysWhileDigitsCount) {
    const FigureText figures(textFont(TextSize::Clock, sizesOf(5, false)));
    const double width = figures.widthOf("11.11");
    for (const char* text : {"00.00", "28.64", "95.37"})
        EXPECT_DOUBLE_EQ(figures.widthOf(text), width) << text;
}

TEST(FigureText, PointTakesLessRoomThanADigit) {
    const FigureText figures(textFont(TextSize::Clock, sizesOf(5, false)));
    EXPECT_LT(figures.widthOf("."), 0.7 * figures.widthOf("5"));
}

TEST(FigureText, DrawnTextEndsWhereItsWidthSays) {
    QPixmap pixmap(600, 200);
    pixmap.fill(Qt::white);
    QPainter painter(&pixmap);
    const FigureText figures(textFont(TextSize::Display, sizesOf(5, false)));
    EXPECT_DOUBLE_EQ(figures.draw(painter, {10, 100}, "5.62"), 10 + figures.widthOf("5.62"));
}

TEST(Typeface, WordsAreProportionalAndFiguresAreNot) {
    const QFontMetricsF metrics(textFont(TextSize::Body, sizesOf(5, false)));
    EXPECT_LT(metrics.horizontalAdvance('i'), metrics.horizontalAdvance('m'));
    EXPECT_DOUBLE_EQ(metrics.horizontalAdvance('1'), metrics.horizontalAdvance('8'));
}

} // namespace
} // namespace latchround::ui
