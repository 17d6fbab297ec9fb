// Figures and days as people of other countries write them: shown with their comma, typed with
// either, and the same number in between.
#include <QApplication>
#include <QLocale>
#include <QPushButton>
#include <QTest>
#include <QTextLayout>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/figures/band_gauge.h"
#include "ui/keys/keypad.h"
#include "ui/lists/two_line_model.h"
#include "ui/lists/verdict_rows.h"
#include "ui/words/claim_words.h"
#include "ui/words/date_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/units.h"

namespace latchround::ui {
namespace {

struct Locales : testing::TestWithParam<const char*> {
    void SetUp() override { QLocale::setDefault(QLocale(QLatin1String(GetParam()))); }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }
};

constexpr CalendarDate day{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{6}};

TEST_P(Locales, AFigureTypedIsTheFigureShownAndTaken) {
    const QLocale locale;
    for (const QString& typed :
         {QStringLiteral("3.25"), QStringLiteral("3,25"), locale.toString(3.25)}) {
        Keypad pad;
        pad.setUnit("mm");
        double entered = 0;
        QObject::connect(&pad, &Keypad::entered, &pad, [&](double value) { entered = value; });
        for (const QChar each : typed) // a keyboard of that country has these keys
            QTest::sendKeyEvent(QTest::Click, &pad, Qt::Key_unknown, QString(each), Qt::NoModifier);
        EXPECT_THAT(
            pad.accessibleDescription(),
            testing::Property(&QString::toStdString,
                              testing::HasSubstr("3" + locale.decimalPoint().toStdString())))
            << typed.toStdString();
        QTest::keyClick(&pad, Qt::Key_Return);
        EXPECT_EQ(entered, 3.25) << typed.toStdString();
    }
}

TEST_P(Locales, TheKeyForThePointShowsTheirs) {
    Keypad pad;
    QStringList keys;
    for (const QPushButton* key : pad.findChildren<QPushButton*>())
        keys << key->text();
    EXPECT_TRUE(keys.contains(QLocale().decimalPoint()));
}

TEST_P(Locales, MeasuredFiguresLimitsAndTheirRowsAreWrittenAlike) {
    const SampleGrade sample;
    const QLocale locale;
    const RowGrade& rate = sample.row("rate");
    EXPECT_EQ(measuredWords(rate),
              QStringLiteral("%1 ± %2\u00a0m/s")
                  .arg(locale.toString(0.198, 'f', 3), locale.toString(0.007, 'f', 3)));
    EXPECT_TRUE(limitWords(*rate.requirement).contains(locale.toString(0.2, 'g', 6)));
    TwoLineModel rows;
    rows.setRows(verdictRows({&rate}));
    EXPECT_TRUE(rows.data(rows.index(0), Qt::DisplayRole)
                    .toString()
                    .contains(locale.toString(0.198, 'f', 3)));
}

TEST_P(Locales, GaugeSpeaksTheirFigures) {
    BandGauge gauge;
    gauge.setBand(10, 40.5, "s");
    EXPECT_TRUE(gauge.limitWords().contains(QLocale().toString(40.5, 'f', 1)));
}

TEST_P(Locales, ConfidenceHasTheirPoint) {
    EXPECT_EQ(confidenceWords(995'000), QLocale().toString(99.5) + QStringLiteral("\u00a0%"));
    EXPECT_EQ(confidenceWords(950'000), QLocale().toString(95) + QStringLiteral("\u00a0%"));
}

TEST_P(Locales, ADayHasItsMonthInTheirLetters) {
    const QLocale locale;
    const QString words = dateWords(day);
    EXPECT_TRUE(words.contains(locale.monthName(11, QLocale::ShortFormat))) << words.toStdString();
    EXPECT_TRUE(words.contains(locale.toString(2026).remove(locale.groupSeparator())))
        << words.toStdString();
    EXPECT_TRUE(monthWords(day).startsWith(locale.standaloneMonthName(11)));
}

INSTANTIATE_TEST_SUITE_P(Of, Locales,
                         testing::Values("es_ES", "fr_FR", "id_ID", "de_DE", "ar_EG", "en_US",
                                         "es_MX"),
                         [](const auto& given) { return std::string(given.param); });

/// Whether a piece of a line that begins on the right still runs from left to right.
bool runsLeftToRight(const QString& before, const QString& piece, const QString& after) {
    QTextLayout layout(before + piece + after);
    QTextOption option;
    option.setTextDirection(Qt::RightToLeft);
    layout.setTextOption(option);
    layout.beginLayout();
    const QTextLine line = layout.createLine();
    layout.endLayout();
    // Between its letters only: at its ends the line turns, and marks of direction have no width.
    const auto isLetter = [&](qsizetype i) { return piece[i].category() != QChar::Other_Format; };
    for (qsizetype i = 1; i + 1 < piece.size(); ++i)
        if (isLetter(i - 1) && isLetter(i) && isLetter(i + 1) &&
            line.cursorToX(int(before.size() + i)) > line.cursorToX(int(before.size() + i) + 1))
            return false;
    return true;
}

const QString arabic = QString::fromUtf8("\u0628\u0627\u0628 ");

struct RightToLeft : testing::Test {
    void SetUp() override { QApplication::setLayoutDirection(Qt::RightToLeft); }
    void TearDown() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

TEST_F(RightToLeft, NumbersOfDoorsAndClassesAreNotTurnedRound) {
    for (const char* text : {"5-09", "A-60", "B-15", "P-01", "3-7", "2027-03-31"}) {
        const QString piece = QString::fromUtf8(text);
        EXPECT_TRUE(runsLeftToRight({}, piece, {})) << text;
        EXPECT_TRUE(runsLeftToRight(arabic, inOnePiece(piece), ' ' + arabic)) << text;
    }
    // Why a translation into such a language has to hold numbers together: after its letters the
    // two halves of a number change places.
    EXPECT_FALSE(runsLeftToRight(arabic, "5-09", ' ' + arabic));
}

TEST_F(RightToLeft, AFigureWithItsUncertaintyIsOnePiece) {
    const SampleGrade sample;
    EXPECT_TRUE(runsLeftToRight(arabic, measuredWords(sample.row("rate")), ' ' + arabic));
    EXPECT_FALSE(runsLeftToRight(arabic, "0.198 ± 0.007", ' ' + arabic)); // what it would be
    QApplication::setLayoutDirection(Qt::LeftToRight);
    EXPECT_EQ(measuredWords(sample.row("rate")), "0.198 ± 0.007\u00a0m/s");
}

TEST_F(RightToLeft, PadAndScalesStay) {
    const Keypad pad;
    const BandGauge gauge;
    EXPECT_EQ(pad.layoutDirection(), Qt::LeftToRight);
    EXPECT_EQ(gauge.layoutDirection(), Qt::LeftToRight);
}

TEST(DayOrder, IsTheLocales) {
    QLocale::setDefault(QLocale("en_US"));
    EXPECT_EQ(dateWords(day), "Nov 6, 2026");
    QLocale::setDefault(QLocale("en_GB"));
    EXPECT_EQ(dateWords(day), "6 Nov 2026");
    QLocale::setDefault(QLocale("es_ES"));
    EXPECT_EQ(dateWords(day), "6 nov 2026");
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(dateWords(day), "6 Nov 2026");
}

} // namespace
} // namespace latchround::ui
