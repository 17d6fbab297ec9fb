#include <array>

#include <QImage>
#include <QPainter>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/parts/door_glyph.h"
#include "ui/parts/verdict_look.h"

namespace latchround::ui {
namespace {

constexpr std::array<Verdict, 7> all_verdicts{
    Verdict::Unsatisfactory, Verdict::Judge,  Verdict::TimeAgain,    Verdict::Untested,
    Verdict::Satisfactory,   Verdict::Advice, Verdict::NotApplicable};

/// Drawn in one ink, so that only the shape can tell two apart.
Colours oneInk() {
    Colours c = coloursOf(Light::Day);
    for (QColor* colour :
         {&c.ink, &c.muted, &c.good, &c.bad, &c.again, &c.judge, &c.advice, &c.untested})
        *colour = Qt::black;
    return c;
}

QImage drawn(Verdict verdict, int side, const Colours& colours) {
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawDoorGlyph(painter, QRectF(0, 0, side, side), verdict, colours);
    return image;
}

/// Share of pixels that clearly differ.
double difference(const QImage& one, const QImage& other) {
    int differing = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            differing += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > 64 ? 1 : 0;
    return double(differing) / (one.width() * one.height());
}

TEST(DoorGlyph, EveryStateIsToldApartByShapeAloneAtEverySize) {
    const Colours colours = oneInk();
    for (const int side : {16, 32, 96})
        for (std::size_t i = 0; i < all_verdicts.size(); ++i)
            for (std::size_t j = i + 1; j < all_verdicts.size(); ++j)
                EXPECT_GT(difference(drawn(all_verdicts[i], side, colours),
                                     drawn(all_verdicts[j], side, colours)),
                          0.02)
                    << word(all_verdicts[i]) << " and " << word(all_verdicts[j]) << " at " << side;
}

TEST(DoorGlyph, StaysInsideItsBox) {
    for (const Verdict verdict : all_verdicts) {
        QImage image(64, 64, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawDoorGlyph(painter, QRectF(16, 16, 32, 32), verdict, coloursOf(Light::Day));
        painter.end();
        for (int n = 0; n < 64; ++n)
            for (const QPoint at : {QPoint(n, 14), QPoint(n, 50), QPoint(14, n), QPoint(50, n)})
                EXPECT_EQ(image.pixelColor(at), QColor(Qt::white)) << word(verdict);
    }
}

TEST(VerdictWords, AreThoseOfTheTrade) {
    EXPECT_EQ(verdictWords(Verdict::Satisfactory), QString("satisfactory"));
    EXPECT_EQ(verdictWords(Verdict::Judge), QString("needs your judgement"));
    EXPECT_EQ(verdictTitle(Verdict::TimeAgain), QString("Time again"));
}

TEST(VerdictWords, AndColoursDifferForEachVerdictThatCounts) {
    for (std::size_t i = 0; i < all_verdicts.size(); ++i)
        for (std::size_t j = i + 1; j < all_verdicts.size(); ++j)
            EXPECT_NE(verdictWords(all_verdicts[i]), verdictWords(all_verdicts[j]));
    const Colours& c = coloursOf(Light::Day);
    EXPECT_NE(colourOf(Verdict::Satisfactory, c), colourOf(Verdict::Unsatisfactory, c));
}

TEST(DoorGlyph, SpeaksItsVerdict) {
    DoorGlyph glyph(Verdict::Untested);
    EXPECT_EQ(glyph.accessibleName(), QString("untested"));
    glyph.setVerdict(Verdict::Unsatisfactory);
    EXPECT_EQ(glyph.accessibleName(), QString("unsatisfactory"));
}

} // namespace
} // namespace latchround::ui
