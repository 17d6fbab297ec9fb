// Whatever the core speaks on a screen has its words in one table, and a translation. The tests'
// translator answers in capitals, so that small letters are what was not translated.
#include <filesystem>
#include <map>
#include <set>
#include <vector>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "core/division/division_phrases.h"
#include "core/division/required_class.h"
#include "core/error/register_errors.h"
#include "core/grading/reason_phrases.h"
#include "core/phrase/places.h"
#include "core/practice/fault.h"
#include "core/requirement/applicability.h"
#include "core/requirement/applicability_phrases.h"
#include "core/safety/cautions.h"
#include "tests/tour/translations.h"
#include "tests/ui/memory_register.h"
#include "tests/ui/print_to.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {
namespace {

using ::testing::ElementsAre;

class Capitals : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override {
        return QString::fromUtf8(source).toUpper();
    }
};

struct CoreSpeaks : testing::Test {
    Capitals capitals;
    void SetUp() override { QCoreApplication::installTranslator(&capitals); }
    void TearDown() override { QCoreApplication::removeTranslator(&capitals); }
};

/// Words that nobody translated; a sign of a unit is none.
bool isInLanguage(const QString& words) {
    static const QRegularExpression small(QStringLiteral("[a-z]{3}"));
    return !words.contains(small);
}

std::vector<PhraseRow> allRows() {
    std::vector<PhraseRow> all;
    for (const PhraseRows& table : allPhraseRows())
        all.insert(all.end(), table.begin(), table.end());
    return all;
}

/// The codes that the headers of the core declare, as often as they do.
std::multiset<std::string> declaredCodes() {
    namespace fs = std::filesystem;
    const fs::path core = fs::path(LATCHROUND_SOURCE) / "core";
    std::multiset<std::string> codes;
    for (const fs::directory_entry& each : fs::recursive_directory_iterator(core)) {
        const fs::path path = each.path();
        if (path.extension() != ".h" ||
            (path.parent_path() != core / "error" && path != core / "phrase" / "places.h" &&
             !path.stem().string().ends_with("_phrases")))
            continue;
        QFile file(QString::fromStdString(path.string()));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
        const QString source = QString::fromUtf8(file.readAll());
        static const QRegularExpression declaration(
            QStringLiteral(R"(PhraseCode<\d>\s+\w+\s*\{\s*"([^"]+)\"\s*\};)"));
        qsizetype found = 0;
        for (const QRegularExpressionMatch& match : declaration.globalMatch(source)) {
            codes.insert(match.captured(1).toStdString());
            ++found;
        }
        EXPECT_EQ(found, source.count(QLatin1String("PhraseCode<"))) << path;
    }
    return codes;
}

std::set<QChar> placesOf(const QString& words) {
    static const QRegularExpression place(QStringLiteral("%([1-9])"));
    std::set<QChar> places;
    for (const QRegularExpressionMatch& match : place.globalMatch(words))
        places.insert(match.captured(1).front());
    return places;
}

/// English -> translation, of the context "Core" of one language.
std::map<QString, QString> translationsOf(const QString& language) {
    std::map<QString, QString> translations;
    for (const tour::Message& message : tour::messagesOf(language))
        if (message.context == QLatin1String("Core"))
            translations[message.english] = message.translated;
    return translations;
}

TEST(PhraseTables, EveryCodeHasOneRowAndEveryRowACode) {
    std::multiset<std::string> worded;
    for (const PhraseRow& row : allRows())
        worded.emplace(row.code);
    const std::multiset<std::string> declared = declaredCodes();
    EXPECT_GT(declared.size(), 300u);
    for (const std::string& code : worded) {
        EXPECT_EQ(worded.count(code), 1u) << code;
        EXPECT_EQ(declared.count(code), 1u) << code << " has a row";
    }
    for (const std::string& code : declared) {
        EXPECT_EQ(declared.count(code), 1u) << code;
        EXPECT_EQ(worded.count(code), 1u) << code << " is declared";
    }
}

TEST_F(CoreSpeaks, EveryPhraseAndRemedyWithItsPlacesFilled) {
    const auto part = [](std::size_t place) { return QStringLiteral("<%1>").arg(place); };
    for (const PhraseRow& row : allRows()) {
        const std::size_t places = std::max(placesIn(row.words), placesIn(row.remedy));
        std::vector<Phrase> parts;
        for (std::size_t place = 1; place <= places; ++place)
            parts.emplace_back(part(place).toStdString());
        const auto expected = [&](const char* english) {
            QString words = QString::fromUtf8(english).toUpper();
            for (std::size_t place = 1; place <= places; ++place)
                words.replace(QStringLiteral("%%1").arg(place), part(place));
            return words;
        };
        const Phrase phrase(row.code, parts);
        EXPECT_NE(*row.words, '\0') << row.code;
        EXPECT_EQ(phraseWords(phrase), expected(row.words)) << row.code;
        EXPECT_EQ(remedyWords(phrase), expected(row.remedy)) << row.code;
    }
}

struct Translated : testing::TestWithParam<const char*> {};

TEST_P(Translated, EveryPhraseAndRemedyHasItsWordsAndPlaces) {
    const std::map<QString, QString> translations = translationsOf(QString::fromUtf8(GetParam()));
    for (const PhraseRow& row : allRows())
        for (const char* english : {row.words, row.remedy}) {
            static const QRegularExpression letter(QStringLiteral("[A-Za-z]"));
            const QString key = QString::fromUtf8(english);
            if (!key.contains(letter)) // none, or places alone
                continue;
            const auto found = translations.find(key);
            if (found == translations.end() || found->second.isEmpty())
                ADD_FAILURE() << row.code << " is not translated: " << english;
            else
                EXPECT_EQ(placesOf(found->second), placesOf(key))
                    << row.code << ": " << found->second.toStdString();
        }
}

INSTANTIATE_TEST_SUITE_P(Into, Translated, testing::Values("es", "fr", "id"),
                         [](const auto& language) { return std::string(language.param); });

TEST_F(CoreSpeaks, CautionsAndFaults) {
    for (const Caution& caution : cautionsBeforeRelease())
        EXPECT_TRUE(isInLanguage(phraseWords(caution.question()))) << caution.id;
    for (const auto& [fault, name] : practice::faultWords)
        EXPECT_TRUE(isInLanguage(phraseWords(practice::sentence(fault)))) << name;
}

TEST_F(CoreSpeaks, WhyARowIsAskedOfADoor) {
    const Catalogue catalogue = builtInCatalogue().value();
    const Arrangement vessel = smallVessel();
    Door door = vessel.doors.front();
    for (const Regime regime : {Regime::SolasPassenger, Regime::UsH, Regime::UsK, Regime::Other})
        for (const DoorKind kind :
             {DoorKind::SingleLeaf, DoorKind::DoubleLeaf, DoorKind::Sliding, DoorKind::DoubleSwing})
            for (const bool fitted : {false, true})
                for (const Boundary& boundary : vessel.boundaries) {
                    Particulars particulars = vessel.particulars;
                    particulars.regime = regime;
                    door.kind = kind;
                    door.hold_back = door.hose_port = door.escape_route = door.latch = fitted;
                    door.watertight = door.power_operated = door.designed_to_reopen = fitted;
                    door.weathertight = door.sill_in_frame = door.escape_trunk = !fitted;
                    for (const Requirement& row : catalogue.rows) {
                        const QString words = phraseWords(
                            askedBecause(row, particulars, door,
                                         locationOf(particulars, &boundary, catalogue.divisions)));
                        EXPECT_NE(words, "") << row.id;
                        EXPECT_TRUE(
                            isInLanguage(QString(words).remove(QString::fromStdString(row.issuer))))
                            << row.id << ": " << words.toStdString();
                    }
                }
}

/// "plate A-60, register A-30".
Phrase twoClasses() {
    return joined(phrase::with_commas, {reason::plate("A-60"), reason::in_register("A-30")});
}

TEST_F(CoreSpeaks, WhatAReasonSpeaksOf) {
    EXPECT_EQ(phraseWords(twoClasses()), "PLATE A-60, REGISTER A-30");
    EXPECT_EQ(phraseWords(reason::no_plate()), "NO PLATE");
    EXPECT_EQ(phraseWords(reason::plate_illegible()), "PLATE ILLEGIBLE");
    // The name of a table stays as the text has it.
    EXPECT_EQ(phraseWords(
                  joined(phrase::with_commas,
                         {reason::in_register("A-15"),
                          reason::whose_door_needs(
                              reason::boundary_by("A-60", "SOLAS II-2 table 9.1, 2-12"), "A-30")})),
              "REGISTER A-15, BOUNDARY A-60 (SOLAS II-2 table 9.1, 2-12), WHOSE DOOR NEEDS A-30");
    EXPECT_EQ(
        phraseWords(joined(phrase::with_commas,
                           {reason::plate("A-60"),
                            reason::boundary_by_plan("A-60", "A-30", "SOLAS II-2 table 9.1")})),
        "PLATE A-60, BOUNDARY A-60 BY THE APPROVED PLAN, A-30 BY SOLAS II-2 table 9.1");
}

TEST_F(CoreSpeaks, EveryReason) {
    for (int kind = 0; kind <= int(ReasonKind::OpeningUnknown); ++kind) {
        const QString words = reasonWords({ReasonKind(kind), "plate a-60", 2, 1.5});
        const bool from_data = holdsCatalogueWords(ReasonKind(kind));
        EXPECT_TRUE(isInLanguage(QString(words).remove("plate a-60"))) << words.toStdString();
        EXPECT_FALSE(from_data && words.contains("plate a-60")) << "it is of the catalogue";
    }
}

TEST_F(CoreSpeaks, NotesOfABoundary) {
    const Catalogue catalogue = builtInCatalogue().value();
    for (const ShipKind ship :
         {ShipKind::PassengerOver36, ShipKind::Passenger36OrFewer, ShipKind::UsH, ShipKind::UsK})
        for (const DivisionKind division : {DivisionKind::Bulkhead, DivisionKind::Deck,
                                            DivisionKind::ZoneBulkhead, DivisionKind::ZoneStep})
            for (int other = 1; other <= 14; ++other) {
                const DivisionQuestion question{ship, division, SpacePair{4, other}, {}, {}, {}};
                for (const Phrase& note :
                     notesOf(requiredClass(catalogue.divisions, question), question))
                    EXPECT_TRUE(note.code.empty() || isInLanguage(phraseWords(note))) << note.code;
            }
}

TEST(CoreInEnglish, CautionsAreAskedInSoManyWords) {
    std::vector<std::string> asked;
    for (const Caution& caution : cautionsBeforeRelease())
        asked.push_back(phraseWords(caution.question()).toStdString());
    EXPECT_THAT(
        asked,
        ElementsAre("The release has been announced to everyone near these doors",
                    "Passengers and crew are clear of every door that will move, and kept clear",
                    "A lookout is posted on each side of every door that will move",
                    "The control station is on the agreed channel and ready",
                    "The start word and the stop word have been given and read back",
                    "Every path and pocket is clear; hands, feet and cables are off every edge"));
}

TEST(CoreInEnglish, AFaultIsASentence) {
    for (const auto& [fault, name] : practice::faultWords)
        EXPECT_TRUE(phraseWords(practice::sentence(fault)).endsWith(QLatin1Char('.'))) << name;
}

TEST(CoreInEnglish, WhyARowIsAsked) {
    EXPECT_EQ(phraseWords(joined(
                  phrase::with_semicolons,
                  {joined(phrase::with_commas, {applies::zone_bulkhead(), applies::sliding()}),
                   applies::keel_before("2010-07-01")})),
              "zone bulkhead, sliding; keel laid before 2010-07-01: ask for the approved drawing");
    EXPECT_EQ(phraseWords(applies::exempt(applies::watertight())), "exempt: watertight");
    EXPECT_EQ(phraseWords(applies::text_of_other_ships("IMO")), "text for other ships: IMO");
    EXPECT_EQ(phraseWords(division::no_value_printed()),
              "no value printed: ask the Administration");
}

const Error disk_is_full{place::door("5-32"), errors::not_saved(errors::disk_full())};

TEST(CoreInEnglish, AnErrorIsSaidInOneLine) {
    EXPECT_EQ(inOneLine(disk_is_full),
              "door 5-32: the disk is full: NOT saved. Free some space and try again.");
    EXPECT_EQ(errorWords(disk_is_full).toStdString(), inOneLine(disk_is_full));
}

TEST_F(CoreSpeaks, AnErrorInTheLanguage) {
    EXPECT_TRUE(isInLanguage(errorWords(disk_is_full))) << inOneLine(disk_is_full);
    EXPECT_EQ(phraseWords(errors::not_saved(errors::disk_fault(778))),
              "THE DISK REPORTS A FAULT (SQLITE 778): NOT SAVED");
}

TEST_F(CoreSpeaks, TheCatalogueByItsOwnWords) {
    Requirement row;
    row.words = "Pocket clear";
    EXPECT_EQ(askedWords(row), "POCKET CLEAR");
    row.question = "Is the pocket clear?";
    EXPECT_EQ(askedWords(row), "IS THE POCKET CLEAR?");
    EXPECT_EQ(rowWords(row), "POCKET CLEAR");
    EXPECT_EQ(lookForWords(row), "");
}

} // namespace
} // namespace latchround::ui
