// US customary units beside the texts' own. Check values: definitions of the yard and pound
// agreement of 1959 and NIST Special Publication 811 (2008), appendix B.8: foot 3.048 E-01 m, inch
// 2.54 E+01 mm, pound (avoirdupois) 4.535 924 E-01 kg, pound-force 4.448 222 N, foot pound-force
// 1.355 818 J, square foot 9.290 304 E-02 m2, foot per second 3.048 E-01 m/s.
#include <QLocale>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/keys/keypad.h"
#include "ui/words/grade_words.h"
#include "ui/words/units.h"

namespace latchround::ui {
namespace {

struct UnitsShown : testing::Test {
    void SetUp() override { useUnits(Units::UsCustomary); }
    void TearDown() override {
        useUnits(Units::OfTheText);
        QLocale::setDefault(QLocale::c());
    }
};

/// One of the published unit is one of ours.
void expectOne(double value, const char* unit, const char* name, double published_places) {
    const Shown shown = inUsUnits(value, unit, 6);
    EXPECT_EQ(shown.unit, QString::fromUtf8(name));
    EXPECT_NEAR(shown.value, 1, published_places) << unit;
}

TEST_F(UnitsShown, FactorsAreThePublishedOnes) {
    expectOne(0.3048, "m", "ft", 1e-12);
    expectOne(25.4, "mm", "in", 1e-12);
    expectOne(0.3048, "m/s", "ft/s", 1e-12);
    expectOne(9.290304e-02, "m2", "ft²", 1e-12);
    expectOne(4.535924e-01, "kg", "lb", 1e-6);
    expectOne(4.448222, "N", "lbf", 1e-6);
    expectOne(1.355818, "J", "ft·lbf", 1e-6);
    EXPECT_DOUBLE_EQ(inUsUnits(0.45359237, "kg", 6).value, 1); // by definition
}

TEST_F(UnitsShown, SecondsAndDegreesAreTheSame) {
    EXPECT_EQ(inUsUnits(12.5, "s", 1).value, 12.5);
    EXPECT_EQ(inUsUnits(12.5, "s", 1).unit, "s");
    EXPECT_EQ(alsoWords(12.5, "s", 1), "");
    EXPECT_EQ(quantityWords(3.5, "", 1), "3.5");
}

TEST_F(UnitsShown, FinenessIsKeptNeitherMoreNorLess) {
    EXPECT_EQ(quantityWords(0.198, "m/s", 3), "0.650\u00a0ft/s"); // 1 mm/s is 0.003 ft/s
    EXPECT_EQ(quantityWords(150, "mm", 0), "5.91\u00a0in");       // 1 mm is 0.04 in
    EXPECT_EQ(quantityWords(1600, "m2", 0), "17222\u00a0ft²");
    EXPECT_EQ(quantityWords(85, "kg", 0), "187\u00a0lb");
    EXPECT_EQ(quantityWords(60, "N", 0), "13.5\u00a0lbf");
    EXPECT_EQ(quantityWords(1.7, "J", 1), "1.25\u00a0ft·lbf");
}

TEST_F(UnitsShown, LengthsOfDoorsAreInInchesOfShipsInFeet) {
    EXPECT_EQ(lengthWords(0.9, 2), "35.4\u00a0in");
    EXPECT_EQ(lengthWords(1.8288, 2), "72.0\u00a0in");
    EXPECT_EQ(lengthWords(3.1, 2), "10.17\u00a0ft");
    EXPECT_EQ(lengthWords(77.6, 1), "254.6\u00a0ft");
    EXPECT_EQ(lengthWords(40, 0), "131\u00a0ft");
    EXPECT_EQ(statedWords(40, "m", 0), "40\u00a0m (131\u00a0ft)");
}

TEST_F(UnitsShown, LimitStaysInItsTextsUnitBesideTheFigure) {
    const SampleGrade sample;
    const RowGrade& rate = sample.row("rate");
    EXPECT_EQ(measuredWords(rate), QString("0.650 ± 0.021\u00a0ft/s"));
    EXPECT_EQ(limitWords(*rate.requirement), "0.1 to 0.2\u00a0m/s (0.328 to 0.656\u00a0ft/s)");
    const InTextUnits text;
    EXPECT_EQ(measuredWords(rate), "0.198 ± 0.007\u00a0m/s");
    EXPECT_EQ(limitWords(*rate.requirement), "0.1 to 0.2\u00a0m/s");
}

TEST_F(UnitsShown, UnitsOfTheTextSayNothingElse) {
    useUnits(unitsFrom(""));
    EXPECT_EQ(lengthWords(0.9, 2), "0.90\u00a0m");
    EXPECT_EQ(statedWords(0.065, "m2", 3), "0.065\u00a0m²");
    EXPECT_EQ(recordedWords(80, "mm"), "80\u00a0mm");
    EXPECT_EQ(alsoWords(80, "mm", 0), "");
    useUnits(unitsFrom("us"));
    EXPECT_EQ(recordedWords(80, "mm"), "80\u00a0mm (3.15\u00a0in)");
}

TEST_F(UnitsShown, KeypadTakesTheTextsUnitAndShowsTheOtherAsItIsTyped) {
    Keypad pad;
    pad.setUnit("mm");
    pad.setDecimals(1);
    double entered = 0;
    QObject::connect(&pad, &Keypad::entered, &pad, [&](double value) { entered = value; });
    QTest::keyClicks(&pad, "80");
    EXPECT_THAT(pad.accessibleDescription().toStdString(), testing::HasSubstr("80 mm = 3.150"));
    QTest::keyClick(&pad, Qt::Key_Return);
    EXPECT_EQ(entered, 80); // nothing but what was typed
}

TEST_F(UnitsShown, FollowTheLocale) {
    QLocale::setDefault(QLocale(QLocale::Spanish));
    EXPECT_EQ(quantityWords(0.198, "m/s", 3), "0,650\u00a0ft/s");
    EXPECT_EQ(recordedWords(12.5, "mm"), "12,5\u00a0mm (0,492\u00a0in)");
}

} // namespace
} // namespace latchround::ui
