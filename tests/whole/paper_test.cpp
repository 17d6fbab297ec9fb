#include "core/evidence/admission.h"
#include "tests/whole/walking.h"
#include "ui/words/walkdown_words.h"

using namespace latchround;
using namespace latchround::test;
using namespace latchround::ui;

// A dead tablet: what was written on the form is typed in afterwards, mostly by three letters.
TEST_F(Walk, WhatStandsOnPaperIsTypedIn) {
    planAndBegin();
    doorScreen().setDoor("5-09");
    turnToPaper();
    auto* pager = doorScreen().findChild<RowPager*>();
    const auto onPage = [&](const QString& name) {
        auto* row = doorScreen().findChild<ValueRow*>(name);
        for (int page = 0; !row->isVisible(); ++page)
            pager->turnTo(page);
        hands::click(row->key());
    };
    constexpr int more_than_asked = 60;
    for (int i = 0; i < more_than_asked; ++i)
        QTest::keyClick(&doorScreen(), Qt::Key_Y);
    for (QWidget* row : pager->rows())
        if (auto* choice = qobject_cast<ChoiceRow*>(row)) {
            for (const Side side : {Side::None, Side::One, Side::Two})
                if (choice->key(Answer::Yes, side)) {
                    EXPECT_EQ(choice->answer(side), Answer::Yes) << row->objectName().toStdString();
                }
        }
    onPage("plate-row");
    hands::clickWords(hands::sheet(window()), "A-60");
    onPage("measure-reopen-distance");
    hands::typeFigure(window(), "0.6");
    for (const auto& [release, intervals] : {std::pair{"release-local-1", std::vector{"12"}},
                                             {"release-local-2", {"12.1"}},
                                             {"release-remote", {"6.4", "12", "0.2"}}}) {
        onPage(release);
        if (intervals.size() > 1)
            hands::click(window(), "typed-cautions");
        for (const char* seconds : intervals)
            hands::typeFigure(window(), seconds);
    }
    const DoorGrade grade = gradeOnDisk("5-09");
    EXPECT_NEAR(row(grade, "alarm-lead").figure->value, 6.4, 1e-9);
    EXPECT_NEAR(row(grade, "sliding-rate").figure->value, 1.8 / 12.033, 0.001);
    EXPECT_EQ(row(grade, "alarm-holds").verdict, Verdict::Satisfactory);
    const std::vector<Fact> facts = SqliteRegister::open(path).value()->facts().value();
    int by_hand = 0;
    int cautions = 0;
    int typed_in = 0;
    for (const Fact& fact : facts) {
        const auto* note = std::get_if<Note>(&fact.body);
        typed_in +=
            note && note->text.text == "Typed in from a paper form by Ansa Merlund." ? 1 : 0;
        if (doorWalkedTo(fact.body) && !note) {
            EXPECT_EQ(shipTime(fact.stamp.when).time().toString("HH:mm"), "00:01");
        }
        const auto* mark = std::get_if<Mark>(&fact.body);
        by_hand += mark && mark->device == InputDevice::Hand ? 1 : 0;
        cautions += std::holds_alternative<CautionAnswered>(fact.body) ? 1 : 0;
    }
    EXPECT_EQ(by_hand, 8);
    EXPECT_EQ(cautions, 6);
    EXPECT_EQ(typed_in, 1);
    hands::click(window(), "forward");
    EXPECT_NE(doorScreen().door(), "5-09");
    hands::typeFigure(window(), "0001"); // its own time
    EXPECT_TRUE(qobject_cast<QPushButton*>(hands::find(window(), "from-paper"))->isChecked());
}
