// Figures in translated texts have the decimal mark of the language: the comma in the translation
// files, as in SOLAS printed in Spanish or French; on the screen that of the machine's country, so
// that a text and the stopwatch beside it write a figure alike.
#include <set>

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include "app/desktop/language.h"
#include "app/languages/decimal_mark.h"
#include "app/languages/translations.h"
#include "tests/tour/language.h"
#include "tests/tour/translations.h"

namespace latchround::tour {
namespace {

using testing::HasSubstr;

using Figures = std::multiset<QString>; ///< as written

bool isCited(const QString& before, const QString& number, const QString& after) {
    static const QRegularExpression names_a_text(
        QStringLiteral(R"((CFR |/|reg\. |art\. |table )$)"));
    static const QRegularExpression goes_on(QStringLiteral(R"(^(\(|-\d))"));
    return before.contains(names_a_text) || after.contains(goes_on) ||
           (before.endsWith('(') && after.startsWith(')')) || number == QLatin1String("72.05");
}

/// Two numbers with one of the marks between them, and not some of several: no "9.4.1.1.5", no
/// time of day.
QRegularExpression numberWith(const char* marks) {
    return QRegularExpression(
        QStringLiteral(R"((?<![\d.,:])\d+[%1]\d+(?![.,]?\d))").arg(QLatin1String(marks)));
}

Figures numbersIn(const QString& text, const char* marks) {
    Figures numbers;
    for (auto at = numberWith(marks).globalMatch(text); at.hasNext();)
        numbers.insert(at.next().captured());
    return numbers;
}

/// What is typed into a file or at the shell has a point in every country.
bool isTyped(const QString& english) {
    return english.startsWith(QLatin1String("Write ")) ||
           english.startsWith(QLatin1String("Give it as a fraction"));
}

/// The numbers of an English text that are figures: no paragraph or table, "46 CFR 116.435(b)",
/// "II-2/9.6", no pair, "3,7".
Figures figuresIn(const QString& english) {
    Figures figures;
    if (isTyped(english))
        return figures;
    for (auto at = numberWith(".").globalMatch(english); at.hasNext();) {
        const QRegularExpressionMatch each = at.next();
        if (!isCited(english.left(each.capturedStart()), each.captured(),
                     english.mid(each.capturedEnd())))
            figures.insert(each.captured());
    }
    return figures;
}

QString withMark(QString figure, const char* mark) {
    return figure.replace('.', QLatin1String(mark));
}

class FiguresIn : public testing::TestWithParam<const char*> {};

TEST_P(FiguresIn, TranslationsHaveTheComma) {
    QStringList otherwise;
    std::size_t figures = 0;
    for (const Message& message : messagesOf(QString::fromUtf8(GetParam()))) {
        if (message.translated.isEmpty())
            continue;
        Figures expected = numbersIn(message.english, ".,");
        for (const QString& figure : figuresIn(message.english)) {
            expected.erase(expected.find(figure));
            expected.insert(withMark(figure, ","));
            ++figures;
        }
        if (numbersIn(message.translated, ".,") != expected)
            otherwise << message.english + "\n    " + message.translated;
    }
    EXPECT_GT(figures, 20u);
    EXPECT_TRUE(otherwise.isEmpty()) << otherwise.size() << " texts\n"
                                     << otherwise.join('\n').toStdString();
}

INSTANTIATE_TEST_SUITE_P(Files, FiguresIn, testing::Values("es", "fr", "id"),
                         [](const auto& language) { return std::string(language.param); });

TEST(DecimalMark, OnlyFiguresThatTheEnglishHasAreTurned) {
    const auto turned = [](const char* translated, const char* english, const char* mark = ".") {
        return withDecimalMark(QString::fromUtf8(translated), english, QString::fromUtf8(mark))
            .toStdString();
    };
    EXPECT_EQ(turned("0,1 a 0,2 m/s", "0.1 to 0.2 m/s"), "0.1 a 0.2 m/s");
    EXPECT_EQ(turned("0,1 a 0,2 m/s", "0.1 to 0.2 m/s", ","), "0,1 a 0,2 m/s");
    EXPECT_EQ(turned("9,5 mm (0,375 in).", "9.5 mm (0.375 in)."), "9.5 mm (0.375 in).");
    EXPECT_EQ(turned("como 3,7 o 3,5°", "such as 3,7 or 3.5°"), "como 3,7 o 3.5°");
    EXPECT_EQ(turned("9.4.1.1.5, 3,5°", "9.4.1.1.5, 3.5°"), "9.4.1.1.5, 3.5°");
    EXPECT_EQ(turned("1,3,5 y 13,5", "1.3.5, 3.5"), "1,3,5 y 13,5");
    EXPECT_EQ(turned("Sí, %1,%2", "Yes, %1.%2"), "Sí, %1,%2");
    EXPECT_EQ(turned("0,2", "0.2", "٫"), "0٫2");
}

struct Country {
    const char* language;
    const char* locale;
    const char* mark;
};

void PrintTo(const Country& country, std::ostream* out) {
    *out << country.locale;
}

class MarkOf : public testing::TestWithParam<Country> {
protected:
    void TearDown() override {
        speakOnTour(QStringLiteral("en"));
        QLocale::setDefault(QLocale::c());
    }
};

/// Every text with a figure, as the program says it there.
TEST_P(MarkOf, TextsIsThatOfTheProgramsOwnFigures) {
    const QString language = QString::fromUtf8(GetParam().language);
    setLanguage(language);
    QLocale::setDefault(figuresOf(language, QLocale(QLatin1String(GetParam().locale))));
    ASSERT_EQ(QLocale().toString(0.25).toStdString(), std::string("0") + GetParam().mark + "25");
    int checked = 0;
    for (const Message& message : messagesOf(QStringLiteral("es"))) {
        const Figures figures = figuresIn(message.english);
        if (figures.empty())
            continue;
        const QString said = QCoreApplication::translate(message.context.toUtf8().constData(),
                                                         message.english.toUtf8().constData());
        if (said == message.english && language != QLatin1String("en"))
            continue; // not translated yet
        for (const QString& figure : figures)
            EXPECT_THAT(said.toStdString(),
                        HasSubstr(withMark(figure, GetParam().mark).toStdString()));
        ++checked;
    }
    EXPECT_GT(checked, 10);
}

INSTANTIATE_TEST_SUITE_P(Countries, MarkOf,
                         testing::Values(Country{"es", "es_ES", ","}, Country{"es", "es_MX", "."},
                                         Country{"fr", "fr_FR", ","}, Country{"id", "id_ID", ","},
                                         Country{"en", "en_GB", "."}, Country{"en", "fr_FR", "."}),
                         [](const auto& country) {
                             return std::string(country.param.language) + "On" +
                                    country.param.locale;
                         });

} // namespace
} // namespace latchround::tour
