// Contrast of every pair the program draws, in all three lights. Limits from WCAG 2.2: 7:1 for text
// (success criterion 1.4.6, enhanced), 3:1 for shapes and edges of controls (1.4.11).
#include <string>
#include <vector>

#include <gmock/gmock.h>

#include "ui/ink/palette.h"
#include "ui/look/practice_colours.h"

namespace latchround::ui {
namespace {

struct Pair {
    std::string name;
    QColor front;
    QColor back;
};

class Contrast : public ::testing::TestWithParam<Light> {
protected:
    const Colours& c = coloursOf(GetParam());
    const PracticeColours& practice = practiceColoursOf(GetParam());
};

TEST_P(Contrast, EveryTextReachesSevenToOne) {
    const std::vector<Pair> texts{
        {"ink on paper", c.ink, c.paper},
        {"ink on card", c.ink, c.card},
        {"ink on selected", c.ink, c.selected},
        {"ink on hull", c.ink, c.hull},
        {"muted on paper", c.muted, c.paper},
        {"muted on card", c.muted, c.card},
        {"muted on selected", c.muted, c.selected},
        {"accent on paper", c.accent, c.paper},
        {"accent on card", c.accent, c.card},
        {"bar ink", c.bar_ink, c.bar},
        {"bar muted", c.bar_muted, c.bar},
        {"stop on paper", c.stop, c.paper},
        {"stop on card", c.stop, c.card},
        {"primary", c.primary.ink, c.primary.area},
        {"good fill", c.good_fill.ink, c.good_fill.area},
        {"bad fill", c.bad_fill.ink, c.bad_fill.area},
        {"neutral fill", c.neutral_fill.ink, c.neutral_fill.area},
        {"key", c.key.ink, c.key.area},
        {"key down", c.key_down.ink, c.key_down.area},
        {"practice", practice.ink, practice.area},
    };
    for (const Pair& pair : texts)
        EXPECT_GE(contrastOf(pair.front, pair.back), 7.0) << pair.name;
}

TEST_P(Contrast, EveryVerdictReadsAsTextOnCardPaperAndSelected) {
    const std::vector<std::pair<std::string, QColor>> verdicts{
        {"good", c.good},   {"bad", c.bad},       {"again", c.again},
        {"judge", c.judge}, {"advice", c.advice}, {"untested", c.untested}};
    for (const auto& [name, colour] : verdicts)
        for (const QColor& back : {c.card, c.paper, c.selected})
            EXPECT_GE(contrastOf(colour, back), 7.0) << name << " on " << back.name().toStdString();
}

TEST_P(Contrast, EveryShapeAndEdgeReachesThreeToOne) {
    const std::vector<Pair> shapes{
        {"edge on card", c.edge, c.card},
        {"edge on paper", c.edge, c.paper},
        {"edge on hull", c.edge, c.hull},
        {"focus on card", c.focus, c.card},
        {"focus on paper", c.focus, c.paper},
        {"focus on hull", c.focus, c.hull},
        {"primary edge on card", c.primary.edge, c.card},
        {"primary edge on paper", c.primary.edge, c.paper},
        {"good edge on card", c.good_fill.edge, c.card},
        {"bad edge on card", c.bad_fill.edge, c.card},
        {"neutral edge on card", c.neutral_fill.edge, c.card},
        {"key edge on paper", c.key.edge, c.paper},
        {"key down edge on paper", c.key_down.edge, c.paper},
        {"leaf on card", c.leaf, c.card},
        {"band on card", c.band, c.card},
        {"band edge on card", c.band_edge, c.card},
        {"alarm on card", c.alarm, c.card},
        {"good on hull", c.good, c.hull},
        {"bad on hull", c.bad, c.hull},
        {"again on hull", c.again, c.hull},
        {"judge on hull", c.judge, c.hull},
        {"untested on hull", c.untested, c.hull},
        {"progress on bar", c.bar_filled, c.bar},
        {"practice hatching", practice.stripe, practice.area},
        {"practice word on paper", practice.word, c.paper},
        {"practice word on card", practice.word, c.card},
        {"progress track on bar", c.bar_track, c.bar},
    };
    for (const Pair& pair : shapes)
        EXPECT_GE(contrastOf(pair.front, pair.back), 3.0) << pair.name;
}

TEST_P(Contrast, PracticeHasNoColourOfAVerdict) {
    for (const QColor& verdict : {c.good, c.bad, c.again, c.judge, c.advice, c.untested}) {
        EXPECT_NE(practice.area, verdict);
        EXPECT_NE(practice.word, verdict);
    }
    // Magenta: apart from red, amber, green, violet and blue by its hue.
    for (const QColor& colour : {practice.area, practice.stripe, practice.word})
        EXPECT_NEAR(colour.hsvHueF(), 0.88, 0.03);
}

TEST_P(Contrast, QtsOwnWidgetsReachSevenToOne) {
    const QPalette p = paletteOf(GetParam());
    const auto of = [&p](QPalette::ColorRole one, QPalette::ColorRole other) {
        return contrastOf(p.color(one), p.color(other));
    };
    EXPECT_GE(of(QPalette::WindowText, QPalette::Window), 7.0);
    EXPECT_GE(of(QPalette::Text, QPalette::Base), 7.0);
    EXPECT_GE(of(QPalette::Text, QPalette::AlternateBase), 7.0);
    EXPECT_GE(of(QPalette::ButtonText, QPalette::Button), 7.0);
    EXPECT_GE(of(QPalette::HighlightedText, QPalette::Highlight), 7.0);
    EXPECT_GE(of(QPalette::PlaceholderText, QPalette::Base), 7.0);
    EXPECT_GE(of(QPalette::ToolTipText, QPalette::ToolTipBase), 7.0);
    EXPECT_GE(of(QPalette::Link, QPalette::Base), 7.0);
}

INSTANTIATE_TEST_SUITE_P(Lights, Contrast, ::testing::Values(Light::Day, Light::Dusk, Light::Night),
                         [](const auto& param_info) {
                             return param_info.param == Light::Day    ? "Day"
                                    : param_info.param == Light::Dusk ? "Dusk"
                                                                      : "Night";
                         });

// WCAG 2.2's own ends of the scale, and the grey often quoted as the lightest that passes 4.5:1 on
// white
// (#767676, 4.54:1; from memory).
TEST(ContrastFormula, GivesThePublishedEnds) {
    EXPECT_NEAR(contrastOf(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrastOf(Qt::white, Qt::white), 1.0, 1e-9);
    EXPECT_NEAR(contrastOf(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
}

TEST(NightLook, HasNoBrightArea) {
    const Colours& c = coloursOf(Light::Night);
    for (const QColor& area : {c.paper, c.card, c.selected, c.bar, c.primary.area, c.good_fill.area,
                               c.bad_fill.area, c.neutral_fill.area, c.key.area, c.key_down.area,
                               c.hull, practiceColoursOf(Light::Night).area})
        EXPECT_LT(contrastOf(area, Qt::black), 2.0) << area.name().toStdString();
}

} // namespace
} // namespace latchround::ui
