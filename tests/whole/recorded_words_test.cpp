// Whoever records in another language and in other units leaves a record in plain English and in
// the units of the texts, with the ids of the phrases that were picked; the screen goes on in its
// own language.
#include <algorithm>

#include "app/desktop/language.h"
#include "tests/whole/walking.h"
#include "ui/keys/phrase_picker.h"
#include "ui/ports/settings.h"
#include "ui/screens/door/why_panel.h"
#include "ui/words/offered.h"
#include "ui/words/units.h"

using namespace latchround;
using namespace latchround::test;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

namespace {

class WalkInSpanish : public Walk {
protected:
    QLocale before;

    void speak(const QString& language, const QString& units) {
        app.ports().settings->keepSetting(QStringLiteral("language"), language);
        app.ports().settings->keepSetting(QStringLiteral("units"), units);
        setLanguage(language);
        ui::useUnits(ui::unitsFrom(units));
    }
    void SetUp() override {
        speak(QStringLiteral("es"), QStringLiteral("us"));
        Walk::SetUp();
    }
    void TearDown() override {
        speak({}, {});
        setLanguage(QStringLiteral("en"));
        QLocale::setDefault(before);
    }

    /// What the key of this phrase says here.
    static QString said(const char* id) {
        QString words = ui::wordingWords(ui::offered(id));
        EXPECT_NE(words.toStdString(), ui::offered(id).text) << "nobody translated it";
        return words;
    }
    void pick(const char* id) { hands::clickWords(hands::sheet(window()), said(id)); }

    void whyOf(const char* row) {
        emit window()->findChild<ui::VerdictList*>()->whyAsked(row);
        QCoreApplication::processEvents();
    }
    template <class Body>
    Body recorded() {
        std::optional<Body> last;
        const Ledger ledger = ledgerOnDisk();
        for (const auto& [id, fact] : ledger.facts())
            if (const auto* body = std::get_if<Body>(&fact.body))
                last = *body;
        EXPECT_TRUE(last);
        return last.value_or(Body());
    }

    void beginInSpanish() {
        hands::click(window(), "home-main");
        hands::click(window(), "add-person");
        QTest::keyClicks(hands::find(window(), "person-name"), "Ansa Merlund");
        pick("chief-officer");
        hands::click(window(), "to-brief");
        for (int i = 0;
             QWidget* part = window()->findChild<QWidget*>(QString("read-out-%1").arg(i)); ++i) {
            turnTo(part);
            hands::click(part);
        }
        hands::click(window(), "agreed-1");
        pick("telephone");
        hands::click(window(), "begin");
        ASSERT_TRUE(doorScreen().isVisible());
    }
};

} // namespace

TEST_F(WalkInSpanish, AWalkdownAndWhoWalks) {
    beginInSpanish();
    EXPECT_EQ(recorded<PersonJoined>().role, Wording("chief officer", "chief-officer"));
    const WalkdownBegun plan = recorded<WalkdownBegun>();
    EXPECT_EQ(plan.scope, Wording("all doors", "all-doors"));
    EXPECT_EQ(plan.control_station, Wording("bridge", "bridge"));
    EXPECT_EQ(plan.channel, Wording("telephone", "telephone"));
    EXPECT_EQ(plan.may_stop, Wording("anyone", "anyone"));
    EXPECT_EQ(plan.start_word, "accione ahora") << "said over the radio as agreed";
}

TEST_F(WalkInSpanish, WhatIsNotedAndWhatCouldNotBeTested) {
    beginInSpanish();
    doorScreen().setDoor("7-03");
    hands::click(window(), "note");
    pick("closer-leaks-oil");
    EXPECT_EQ(recorded<Note>().text, Wording("closer leaks oil", "closer-leaks-oil"));
    hands::click(window(), "could-not");
    pick("space-locked-no-key");
    EXPECT_EQ(recorded<CouldNotTest>().reason,
              Wording("space locked, no key", "space-locked-no-key"));
    whyOf("hinged-time");
    EXPECT_TRUE(window()->findChild<ui::WhyPanel*>()->paragraphs().join(' ').contains(
        said("space-locked-no-key")));
}

TEST_F(WalkInSpanish, ARunThatWasCalledOff) {
    beginInSpanish();
    doorScreen().setDoor("7-03");
    toStep(Step::Release);
    hands::click(hands::find(window(), "release-local-1")->findChild<QPushButton*>());
    hands::pressAt(window(), "mark", 1'000'000);
    QTest::keyClick(hands::find(window(), "mark"), Qt::Key_Escape);
    EXPECT_EQ(recorded<RunEnded>().reason,
              Wording("stopped, no reason given", "stopped-no-reason-given"));
    hands::clickWords(window(), said("someone-in-the-way"));
    EXPECT_EQ(recorded<RunEnded>().reason, Wording("someone in the way", "someone-in-the-way"));
}

TEST_F(WalkInSpanish, AJudgement) {
    beginInSpanish();
    doorScreen().setDoor("7-03");
    const auto rows = doorScreen().findChild<RowPager*>()->rows();
    const auto found = std::ranges::find_if(
        rows, [](const QWidget* row) { return row->objectName() == "ask-path-clear"; });
    ASSERT_NE(found, rows.end());
    auto* row = qobject_cast<ChoiceRow*>(*found);
    ASSERT_NE(row, nullptr);
    turnTo(row);
    QPushButton* no = row->key(Answer::No);
    hands::click(no ? no : row->key(Answer::No, Side::One));
    whyOf("path-clear");
    pick("worn-still-does-its-work");
    hands::clickWords(hands::sheet(window()),
                      QCoreApplication::translate("latchround::ui::WhyPanel", "Satisfactory"));
    EXPECT_EQ(recorded<Judgement>().reason,
              Wording("worn but serviceable", "worn-still-does-its-work"));
}

TEST_F(WalkInSpanish, ADeficiencyWithAFigure) {
    beginInSpanish();
    doorScreen().setDoor("5-09");
    toStep(Step::Release);
    timeRun("local-1", {0, 2});
    ASSERT_EQ(row(gradeOnDisk("5-09"), "sliding-rate").verdict, Verdict::Unsatisfactory);
    whyOf("sliding-rate");
    hands::click(window(), "why-deficiency");
    QPushButton* with_figure = nullptr;
    for (auto* key :
         hands::sheet(window())->findChild<ui::PhrasePicker*>()->findChildren<QPushButton*>())
        if (key->text().contains(ui::unitInUse("m/s")))
            with_figure = key;
    ASSERT_NE(with_figure, nullptr);
    EXPECT_THAT(with_figure->text().toStdString(), Not(StartsWith("Not met")));
    EXPECT_THAT(with_figure->text().toStdString(), HasSubstr("ft/s"));
    hands::click(with_figure);
    const Wording text = recorded<Deficiency>().text;
    EXPECT_THAT(text.text, StartsWith("Not met: "));
    EXPECT_THAT(text.text, HasSubstr("m/s"));
    EXPECT_THAT(text.text, HasSubstr("limit: "));
    EXPECT_THAT(text.text, Not(HasSubstr("ft/s")));
    EXPECT_THAT(text.text, Not(testing::ContainsRegex("[0-9],[0-9]")))
        << "the figures of a record have a point";
    EXPECT_EQ(text.phrase, std::nullopt);
}
