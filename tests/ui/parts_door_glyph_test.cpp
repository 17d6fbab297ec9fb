#include <algorithm>
#include <array>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <QXmlStreamReader>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/ink/glyph_drawing.h"
#include "ui/ink/verdict_colour.h"
#include "ui/look/sizes.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/verdict_words.h"

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
    for (const int side : {13, 16, 32, 96}) // 13: a door among seven decks of the profile
        for (std::size_t i = 0; i < all_verdicts.size(); ++i)
            for (std::size_t j = i + 1; j < all_verdicts.size(); ++j)
                EXPECT_GT(difference(drawn(all_verdicts[i], side, colours),
                                     drawn(all_verdicts[j], side, colours)),
                          0.02)
                    << word(all_verdicts[i]) << " and " << word(all_verdicts[j]) << " at " << side;
}

/// What is dark in a picture, stretched to a square: shape without size or place.
QImage shapeIn(const QImage& picture) {
    QRect dark;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            if (qGray(picture.pixel(x, y)) < 128)
                dark |= QRect(x, y, 1, 1);
    return picture.copy(dark).scaled(32, 32, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

/// Of what is dark in either, the share that is dark in both.
double overlap(const QImage& one, const QImage& other) {
    int both = 0;
    int either = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const bool in_one = qGray(one.pixel(x, y)) < 128;
            const bool in_other = qGray(other.pixel(x, y)) < 128;
            both += in_one && in_other ? 1 : 0;
            either += in_one || in_other ? 1 : 0;
        }
    return double(both) / std::max(1, either);
}

QImage questionMark(int side, bool bold) {
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    QFont font = textFont(TextSize::Body, Sizes{}, bold);
    font.setPixelSize(side * 3 / 4);
    painter.setFont(font);
    painter.drawText(image.rect(), Qt::AlignCenter, QStringLiteral("?"));
    return image;
}

TEST(DoorGlyph, JudgementNeededIsNothingLikeTheHelpKeysQuestionMark) {
    Colours colours = oneInk();
    colours.ink = Qt::white; // without its frame
    for (const int side : {16, 32, 96}) {
        const QImage glyph = shapeIn(drawn(Verdict::Judge, side, colours));
        const QImage question = shapeIn(questionMark(side, true));
        EXPECT_LT(overlap(glyph, question), 0.5) << side;
        EXPECT_GT(overlap(shapeIn(questionMark(side, false)), question), 0.5) << side;
        // It is level: the same from either side.
        EXPECT_GT(overlap(glyph, glyph.mirrored(true, false)), 0.85) << side;
        EXPECT_LT(overlap(question, question.mirrored(true, false)), 0.85) << side;
    }
}

TEST(DoorGlyph, JudgementNeededIsToldFromAllOthersAtTheProfilesSmallest) {
    for (const Verdict verdict : all_verdicts)
        if (verdict != Verdict::Judge)
            EXPECT_GT(difference(drawn(Verdict::Judge, 9, oneInk()), drawn(verdict, 9, oneInk())),
                      0.1)
                << word(verdict);
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

QImage drawnFromSvg(const QByteArray& svg, QSize size) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QSvgRenderer renderer(svg);
    EXPECT_TRUE(renderer.isValid());
    QPainter painter(&image);
    renderer.render(&painter);
    return image;
}

TEST(DoorGlyphSvg, IsSoundXmlThatNamesTheVerdict) {
    for (const Verdict verdict : all_verdicts) {
        QXmlStreamReader xml(doorGlyphSvg(verdict, coloursOf(Light::Day)));
        QString title;
        int paths = 0;
        while (!xml.atEnd()) {
            xml.readNext();
            if (!xml.isStartElement())
                continue;
            if (xml.name() == QLatin1String("title"))
                title = xml.readElementText();
            else if (xml.name() == QLatin1String("path"))
                ++paths;
        }
        EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
        EXPECT_EQ(title, verdictWords(verdict));
        EXPECT_GE(paths, 2) << word(verdict);
    }
}

TEST(DoorGlyphSvg, LooksAsTheScreenDrawsIt) {
    const Colours& colours = coloursOf(Light::Day);
    for (const Verdict verdict : all_verdicts) {
        QImage screen(164, 200, QImage::Format_RGB32);
        screen.fill(Qt::white);
        QPainter painter(&screen);
        drawDoorGlyph(painter, QRectF(screen.rect()), verdict, colours);
        painter.end();
        EXPECT_LT(difference(drawnFromSvg(doorGlyphSvg(verdict, colours), screen.size()), screen),
                  0.01)
            << word(verdict);
    }
}

TEST(DoorGlyphSvg, SevenAreToldApartByShapeAlone) {
    std::vector<QImage> drawn_each;
    for (const Verdict verdict : all_verdicts)
        drawn_each.push_back(drawnFromSvg(doorGlyphSvg(verdict, oneInk()), {82, 100}));
    for (std::size_t i = 0; i < drawn_each.size(); ++i)
        for (std::size_t j = i + 1; j < drawn_each.size(); ++j)
            EXPECT_GT(difference(drawn_each[i], drawn_each[j]), 0.02)
                << word(all_verdicts[i]) << " and " << word(all_verdicts[j]);
}

/// LATCHROUND_GLYPHS set to that folder writes them anew.
TEST(DoorGlyphSvg, ShippedFilesAreWhatTheProgramDraws) {
    const QString anew = qEnvironmentVariable("LATCHROUND_GLYPHS");
    for (const Verdict verdict : all_verdicts) {
        const QByteArray svg = doorGlyphSvg(verdict, coloursOf(Light::Day));
        const QString name = QString::fromLatin1(word(verdict).data()) + ".svg";
        if (!anew.isEmpty()) {
            QFile file(anew + '/' + name);
            ASSERT_TRUE(file.open(QIODevice::WriteOnly)) << file.fileName().toStdString();
            ASSERT_EQ(file.write(svg), svg.size());
        }
        QFile shipped(QStringLiteral(LATCHROUND_GLYPHS_DIR "/") + name);
        ASSERT_TRUE(shipped.open(QIODevice::ReadOnly)) << shipped.fileName().toStdString();
        EXPECT_EQ(shipped.readAll(), svg) << name.toStdString();
    }
}

TEST(VerdictWords, AreThoseOfTheTrade) {
    EXPECT_EQ(verdictWords(Verdict::Satisfactory), QString("satisfactory"));
    EXPECT_EQ(verdictWords(Verdict::Judge), QString("judgement needed"));
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
