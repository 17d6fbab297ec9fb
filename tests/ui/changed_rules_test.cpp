// Home tells that doors are graded otherwise since the rules changed, with both texts, until
// somebody has seen it.
#include <gmock/gmock.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "core/error/reading_errors.h"
#include "memory_register.h"
#include "print_to.h"
#include "ui/frames/sheet.h"
#include "ui/screens/home/changed_rules_card.h"
#include "ui/screens/home/home_screen.h"
#include "ui/words/grade_words.h"

using namespace latchround;
using namespace latchround::ui;
using testing::HasSubstr;

namespace {

Catalogue shipped() {
    SmallShip ship;
    return ship.load().catalogue();
}

void eachOf(Requirement& row, const std::function<void(Requirement&)>& edit) {
    edit(row);
    for (Requirement& variant : row.variants)
        edit(variant);
}

/// The catalogue that ships, as an edition in which doors that close by themselves were advice.
Catalogue formerRules() {
    Catalogue former = shipped();
    for (Requirement& row : former.rows)
        if (row.id == "self-closing")
            eachOf(row, [](Requirement& each) {
                each.status = Status::Advice;
                each.edition = "the edition before";
                each.cite = "the old paragraph";
            });
    return former;
}

/// 7-02 does not close by itself, which the rules in force do not allow.
struct ChangedShip : SmallShip {
    QWidget window;
    HomeScreen* home = nullptr;

    explicit ChangedShip(std::optional<Catalogue> former = formerRules()) {
        const FactId walkdown = begun();
        put(Observation{walkdown, "7-02", "self-closing", Side::None, Answer::No});
        if (former)
            ports.former = std::make_shared<const Catalogue>(std::move(*former));
    }
    void show(QSize size = {1280, 800}) {
        home = new HomeScreen(load(), &window);
        window.resize(size);
        home->setGeometry(window.rect());
        window.show();
        home->enter();
        QCoreApplication::processEvents();
    }
    ChangedRulesCard& card() { return *home->findChild<ChangedRulesCard*>(); }
    std::string cardWords() {
        return card().findChild<QLabel*>("changed-rules-count")->text().toStdString();
    }
    void press(const char* name) {
        for (QPushButton* key : window.findChildren<QPushButton*>(QLatin1String(name)))
            if (key->isVisible() && key->isEnabled()) {
                QTest::mouseClick(key, Qt::LeftButton);
                QCoreApplication::processEvents();
                return;
            }
        ADD_FAILURE() << "out of reach: " << name;
    }
    /// All that the sheets say.
    std::string sheetWords() {
        QStringList words;
        for (Sheet* sheet : window.findChildren<Sheet*>())
            for (const QLabel* label : sheet->findChildren<QLabel*>())
                words << label->text();
        return words.join(QLatin1Char('\n')).toStdString();
    }
};

} // namespace

TEST(ChangedRules, WithoutOtherRulesThereIsNoCard) {
    ChangedShip ship(std::nullopt);
    ship.show();
    EXPECT_FALSE(ship.card().isVisible());
}

TEST(ChangedRules, RulesThatGradeEveryDoorAlikeMakeNoCard) {
    ChangedShip ship(shipped());
    ship.show();
    EXPECT_FALSE(ship.card().isVisible());
}

TEST(ChangedRules, TheCardSaysHowManyDoorsAreGradedOtherwise) {
    ChangedShip ship;
    ship.show();
    EXPECT_TRUE(ship.card().isVisible());
    EXPECT_EQ(ship.cardWords(), "1 door graded differently since the rules changed");
}

TEST(ChangedRules, AnExerciseHasNone) {
    ChangedShip ship;
    Ports ports = ship.ports.all();
    ports.former_rules = nullptr;
    VesselSession session(ship.vessel_register, ports, shipped());
    ASSERT_TRUE(session.load());
    HomeScreen home(session);
    home.resize(1280, 800);
    home.show();
    home.enter();
    EXPECT_FALSE(home.findChild<ChangedRulesCard*>()->isVisible());
}

TEST(ChangedRules, TheListNamesTheDoorWithTheVerdictBeforeAndNow) {
    ChangedShip ship;
    ship.show();
    ship.press("changed-rules-look");
    EXPECT_THAT(ship.sheetWords(), HasSubstr("7-02: was untested, now unsatisfactory"));
    EXPECT_THAT(ship.sheetWords(), HasSubstr("No record has changed"));
    EXPECT_THAT(ship.sheetWords(),
                HasSubstr(findRequirement(ship.session->catalogue(), "self-closing")->words));
}

TEST(ChangedRules, TheDoorShowsTheRowByBothTextsWithCitationAndEdition) {
    ChangedShip ship;
    ship.show();
    ship.press("changed-rules-look");
    ship.press("changed-7-02");
    const GradedDoor* door = ship.session->door(QStringLiteral("7-02"));
    const RowGrade* row = findRow(door->grade, "self-closing");
    const std::string words = ship.sheetWords();
    EXPECT_THAT(words, HasSubstr("Before: advice"));
    EXPECT_THAT(words, HasSubstr("the old paragraph, edition the edition before"));
    EXPECT_THAT(words, HasSubstr("Now: unsatisfactory"));
    EXPECT_THAT(words, HasSubstr(citationWords(*row->requirement).toStdString()));
}

TEST(ChangedRules, BothTextsSayTheLimitAndWhatWasMeasured) {
    Catalogue former = shipped();
    for (Requirement& row : former.rows)
        if (row.id == "reopen-distance")
            eachOf(row, [](Requirement& each) { each.high = 0.5; });
    ChangedShip ship(std::nullopt);
    const FactId walkdown = ship.begun();
    ship.put(MeasuredValue{walkdown, "5-32", "reopen-distance", 0.8, "m"});
    ship.ports.former = std::make_shared<const Catalogue>(former);
    ship.show();
    ship.press("changed-rules-look");
    ship.press("changed-5-32");
    const QString limit = QStringLiteral("Limit: ");
    const auto limits = [&](double high) {
        Requirement row = *findRequirement(former, "reopen-distance");
        row.high = high;
        return (limit + limitWords(row)).toStdString();
    };
    EXPECT_THAT(ship.sheetWords(), HasSubstr(limits(0.5)));
    EXPECT_THAT(ship.sheetWords(), HasSubstr(limits(1)));
    EXPECT_THAT(ship.sheetWords(), HasSubstr("0.8"));
}

TEST(ChangedRules, FromTheTextsItIsOneKeyToTheDoor) {
    ChangedShip ship;
    ship.show();
    QSignalSpy chosen(ship.home, &HomeScreen::doorChosen);
    ship.press("changed-rules-look");
    ship.press("changed-7-02");
    ship.press("changed-door-open");
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("7-02"));
}

TEST(ChangedRules, WhoHasSeenItIsToldNoMore) {
    ChangedShip ship;
    ship.show();
    ship.press("changed-rules-look");
    ship.press("changed-rules-seen");
    EXPECT_FALSE(ship.card().isVisible());
    EXPECT_EQ(ship.ports.former, nullptr);
    ship.home->enter();
    EXPECT_FALSE(ship.card().isVisible());
}

TEST(ChangedRules, LookingAloneDoesNotTakeItAway) {
    ChangedShip ship;
    ship.show();
    ship.press("changed-rules-look");
    ship.window.findChildren<Sheet*>().back()->close();
    ship.home->enter();
    EXPECT_TRUE(ship.card().isVisible());
}

TEST(ChangedRules, WhatCannotBeKeptStaysAndSaysWhy) {
    ChangedShip ship;
    ship.ports.keep_failure = Error{"disk", "full"};
    ship.show();
    ship.press("changed-rules-look");
    ship.press("changed-rules-seen");
    EXPECT_TRUE(ship.card().isVisible());
    EXPECT_THAT(ship.sheetWords(), HasSubstr("disk: full"));
}

TEST(ChangedRules, ADoorPutRightMeanwhileIsNotToldAnyMore) {
    ChangedShip ship;
    ship.show();
    ASSERT_TRUE(ship.session->record(Observation{ship.session->walkdown()->id, "7-02",
                                                 "self-closing", Side::None, Answer::Yes}));
    ship.home->enter();
    EXPECT_FALSE(ship.card().isVisible());
}

TEST(ChangedRules, ItSaysWhoseRulesWerePutInOrTakenOut) {
    ChangedShip taken_out;
    auto former = formerRules();
    former.flag = "Port of Skerry";
    taken_out.ports.former = std::make_shared<const Catalogue>(former);
    taken_out.show();
    taken_out.press("changed-rules-look");
    EXPECT_THAT(taken_out.sheetWords(),
                HasSubstr("The rules of Port of Skerry no longer apply on top of the catalogue."));
    ChangedShip edition;
    edition.show();
    edition.press("changed-rules-look");
    EXPECT_THAT(edition.sheetWords(),
                HasSubstr("A different edition of the catalogue is now in use."));
}

TEST(ChangedRules, RulesThatCannotBeReadAnyMoreAreToldAsWhatTheyAre) {
    ChangedShip ship(std::nullopt);
    ship.ports.former_unreadable = Error{"kept", errors::not_readable_file()};
    ship.show();
    EXPECT_EQ(ship.cardWords(), "The rules have changed since the doors were last shown");
    ship.press("changed-rules-look");
    EXPECT_THAT(ship.sheetWords(), HasSubstr("can no longer be read"));
    ship.press("changed-rules-seen");
    EXPECT_FALSE(ship.card().isVisible());
}

TEST(ChangedRules, OnASmallWindowItStandsWithTheWalkAndWithTheRules) {
    ChangedShip ship;
    ship.show({640, 480});
    EXPECT_TRUE(ship.card().isVisible());
    ship.press("home-part-1"); // zones
    EXPECT_FALSE(ship.card().isVisible());
    ship.press("home-part-4"); // rules
    EXPECT_TRUE(ship.card().isVisible());
}
