// Whatever English the core speaks on a screen is listed for the translators. The tests' translator
// answers in capitals, so that small letters are what was not listed.
#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "core/division/required_class.h"
#include "core/practice/fault.h"
#include "core/requirement/applicability.h"
#include "core/safety/cautions.h"
#include "tests/ui/memory_register.h"
#include "tests/ui/print_to.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/core_words.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {
namespace {

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

TEST_F(CoreSpeaks, CautionsAndFaults) {
    for (const Caution& caution : cautionsBeforeRelease())
        EXPECT_TRUE(isInLanguage(coreWords(caution.question))) << caution.question;
    for (const auto& [fault, name] : practice::faultWords)
        EXPECT_TRUE(isInLanguage(coreWords(practice::sentence(fault)))) << name;
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
                        const std::string why =
                            askedBecause(row, particulars, door, Stand(&boundary));
                        const QString words = coreWords(why);
                        EXPECT_TRUE(
                            isInLanguage(QString(words).remove(QString::fromStdString(row.issuer))))
                            << why << " -> " << words.toStdString();
                    }
                }
}

TEST_F(CoreSpeaks, WhatAReasonSpeaksOf) {
    EXPECT_EQ(coreWords("plate A-60, register A-30"), "PLATE A-60, REGISTER A-30");
    EXPECT_EQ(coreWords("plate illegible"), "PLATE ILLEGIBLE");
    // The name of a table stays as the text has it.
    EXPECT_EQ(coreWords("register A-15, boundary A-60 (SOLAS II-2 table 9.1, 2-12), whose door "
                        "needs A-30"),
              "REGISTER A-15, BOUNDARY A-60 (SOLAS II-2 table 9.1, 2-12), WHOSE DOOR NEEDS A-30");
    EXPECT_EQ(coreWords("plate A-60, boundary A-60 by the approved plan, A-30 by SOLAS II-2/9"),
              "PLATE A-60, BOUNDARY A-60 BY THE APPROVED PLAN, A-30 BY SOLAS II-2/9");
}

TEST_F(CoreSpeaks, EveryReason) {
    for (int kind = 0; kind <= int(ReasonKind::OpeningUnknown); ++kind) {
        const Reason reason{ReasonKind(kind), "plate A-60", 2, 1.5};
        EXPECT_TRUE(isInLanguage(reasonWords(reason).remove("plate A-60"))) << inWords(reason);
    }
}

TEST(CoreInEnglish, IsSaidAsTheCoreSaysIt) {
    for (int kind = 0; kind <= int(ReasonKind::OpeningUnknown); ++kind)
        for (const char* text : {"", "plate A-60, register A-30"})
            for (const int runs : {1, 3}) {
                const Reason reason{ReasonKind(kind), text, runs, 1.5};
                // After three runs, or two that disagree, there is no one.
                if (runs == 1 && (reason.kind == ReasonKind::StillCloseAfterThree ||
                                  reason.kind == ReasonKind::RunsDisagree))
                    continue;
                EXPECT_EQ(reasonWords(reason).toStdString(), inWords(reason));
            }
    for (const Caution& caution : cautionsBeforeRelease())
        EXPECT_EQ(coreWords(caution.question).toStdString(), caution.question);
}

TEST(CoreInEnglish, AComplaintIsSaidInOneLine) {
    const Complaint complaint{"door 5-32", "the disk is full: NOT saved.",
                              "Free some space and try again."};
    EXPECT_EQ(complaintWords(complaint).toStdString(), inOneLine(complaint));
}

TEST_F(CoreSpeaks, AComplaintInTheLanguage) {
    EXPECT_TRUE(isInLanguage(complaintWords(
        {"door 5-32", "the disk is full: NOT saved.", "Free some space and try again."})));
    EXPECT_TRUE(isInLanguage(
        coreWords("the disk reports a fault (SQLite 778): NOT saved.").remove("SQLITE")));
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
