// The language the program speaks is the setting's, else the machine's where it is spoken here;
// figures go with it; papers are English whatever it is, unless they are asked for as a
// translation; and a translation keeps every place that its English has.
#include <QApplication>
#include <QDir>
#include <QProcess>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/language.h"
#include "app/languages/translations.h"
#include "core/evidence/newest_walkdown.h"
#include "tests/tour/language.h"
#include "tests/tour/tour.h"
#include "tests/tour/translations.h"
#include "ui/words/door_words.h"
#include "ui/words/in_english.h"
#include "ui/words/phrase_words.h"
#include "ui/words/units.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

class Language : public testing::Test {
protected:
    void TearDown() override {
        speakOnTour(QStringLiteral("en"));
        ui::useUnits(ui::Units::OfTheText);
        QLocale::setDefault(QLocale::c());
    }
};

QString leafMoves() {
    return ui::markWords(MarkKind::LeafMoves);
}

/// "%1", "%2" in the order of their numbers.
QStringList placesIn(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%[0-9n]"));
    QStringList places;
    for (auto at = place.globalMatch(text); at.hasNext();)
        places << at.next().captured();
    places.sort();
    places.removeDuplicates();
    return places;
}

} // namespace

TEST_F(Language, IsTheSettingsElseTheMachinesElseEnglish) {
    EXPECT_THAT(translatedLanguages(), testing::UnorderedElementsAre("es", "fr", "id"));
    EXPECT_EQ(languageFor("fr", {"es-ES"}), "fr");
    EXPECT_EQ(languageFor("en", {"es-ES"}), "en");
    EXPECT_EQ(languageFor("", {"de-DE", "es-MX", "en-US"}), "es");
    EXPECT_EQ(languageFor("", {"en-US", "es-MX"}), "en");
    EXPECT_EQ(languageFor("", {"de-DE"}), "en");
    EXPECT_EQ(languageFor("xx", {"id_ID.UTF-8"}), "id");
    EXPECT_EQ(languageFor("", {}), "en");
}

TEST_F(Language, FiguresGoWithItAndWithTheMachinesOwnCountry) {
    EXPECT_EQ(figuresOf("es", QLocale("de_DE")).toString(0.2), "0,2");
    EXPECT_EQ(figuresOf("es", QLocale("es_MX")).toString(0.2), "0.2");
    EXPECT_EQ(figuresOf("en", QLocale("fr_FR")).toString(0.2), "0.2");
    EXPECT_EQ(figuresOf("fr", QLocale::c()).toString(0.2), "0,2");
    // No mark between thousands in any: 1.600 m2 would be read as 1.6.
    for (const char* code : {"en", "es", "fr", "id"})
        EXPECT_EQ(figuresOf(code, QLocale::c()).toString(1600.0, 'f', 0), "1600") << code;
}

TEST_F(Language, SpokenAtOnceAndSilentForPapers) {
    setLanguage("es");
    const QString spanish = leafMoves();
    EXPECT_EQ(spanish, "La hoja se mueve");
    EXPECT_EQ(QLocale().decimalPoint(), ",");
    ui::useUnits(ui::Units::UsCustomary);
    {
        ui::InEnglish english;
        EXPECT_EQ(leafMoves(), "Leaf moves");
        EXPECT_EQ(QLocale().decimalPoint(), ".");
        EXPECT_EQ(ui::unitsInUse(), ui::Units::OfTheText);
        EXPECT_TRUE(english.onScreen([&] {
            return leafMoves() == spanish && QLocale().decimalPoint() == "," &&
                   ui::unitsInUse() == ui::Units::UsCustomary;
        }));
        EXPECT_EQ(leafMoves(), "Leaf moves");
    }
    EXPECT_EQ(leafMoves(), spanish);
    EXPECT_EQ(ui::unitsInUse(), ui::Units::UsCustomary);
    EXPECT_EQ(QApplication::layoutDirection(), Qt::LeftToRight);
    setLanguage("en");
    EXPECT_EQ(leafMoves(), "Leaf moves");
}

TEST_F(Language, PapersReadTheSameInEveryLanguageUnlessATranslationIsAskedFor) {
    QTemporaryDir documents;
    qputenv("HOME", documents.path().toUtf8());
    Tour tour(Tablet{}, [](const QString&, Tour&) {});
    const QDir vessels(qEnvironmentVariable("LATCHROUND_DATA"));
    const QStringList files = vessels.entryList({"*.db"}, QDir::Files);
    ASSERT_EQ(files.size(), 1);
    const auto file = SqliteRegister::open(vessels.filePath(files.front()));
    ASSERT_TRUE(file);
    ui::VesselSession session(**file, tour.app().ports(), builtInCatalogue().value());
    ASSERT_TRUE(session.load());
    const QString door = QStringLiteral("5-04"); // with times, a rate and a clear opening
    const auto walkdown = newestWalkdownOf(session.ledger(), door.toStdString());
    ASSERT_TRUE(walkdown);
    const auto madeIn = [&](const char* language, ui::Units units, ui::PaperLanguage of_paper) {
        speakOnTour(QLatin1String(language));
        ui::useUnits(units);
        auto made = tour.app().ports().documents->make(ReportKind::DoorRecord, walkdown->id, door,
                                                       of_paper, [](int, int) { return true; });
        EXPECT_TRUE(made) << ui::inOneLine(made.error());
        return made.value_or(ui::PaperMade{});
    };
    const auto wordsOf = [](const ui::PaperMade& paper) {
        QProcess reader;
        reader.start("pdftotext", {paper.path, "-"});
        EXPECT_TRUE(reader.waitForFinished());
        return reader.readAllStandardOutput().toStdString();
    };
    using ui::PaperLanguage;
    const auto english = madeIn("en", ui::Units::OfTheText, PaperLanguage::English);
    EXPECT_THAT(wordsOf(english), testing::HasSubstr("m/s"));
    const auto same = madeIn("es", ui::Units::UsCustomary, PaperLanguage::English);
    EXPECT_EQ(wordsOf(same), wordsOf(english));
    EXPECT_EQ(same.made->language, "en");
    const auto spanish = madeIn("es", ui::Units::UsCustomary, PaperLanguage::OfTheScreen);
    EXPECT_THAT(wordsOf(spanish),
                testing::AllOf(testing::HasSubstr("machine translation"), testing::HasSubstr("m/s"),
                               testing::Not(testing::HasSubstr("ft/s"))));
    EXPECT_EQ(spanish.made->language, "es");
    EXPECT_TRUE(spanish.path.endsWith(" es.pdf")) << spanish.path.toStdString();
    EXPECT_EQ(ui::unitsInUse(), ui::Units::UsCustomary) << "the screen goes on in its own";
}

TEST_F(Language, ATranslationKeepsEveryPlaceOfItsEnglish) {
    for (const QString& language : translatedLanguages())
        for (const Message& message : messagesOf(language)) {
            if (message.translated.isEmpty())
                continue;
            const std::string where = language.toStdString() + ": " + message.english.toStdString();
            EXPECT_EQ(placesIn(message.translated), placesIn(message.english)) << where;
            EXPECT_EQ(message.translated.count('\n'), message.english.count('\n')) << where;
            // What is put together of pieces keeps the space or the comma it begins with.
            EXPECT_EQ(message.translated.startsWith(' '), message.english.startsWith(' ')) << where;
        }
}
