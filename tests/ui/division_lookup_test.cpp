// The fire tables on the screen: two spaces chosen, the class, its cell and its citation told.
#include <QListWidget>
#include <QTest>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "tests/ui/print_to.h"
#include "ui/look/label.h"
#include "ui/screens/door/division_lookup.h"

namespace latchround::ui {
namespace {

using ::testing::HasSubstr;

class Lookup : public ::testing::Test {
protected:
    static DivisionQuestion ship(ShipKind kind, DivisionKind division) {
        DivisionQuestion question;
        question.ship = kind;
        question.division = division;
        question.built = calendarDateFrom("2016-01-01");
        return question;
    }
    void open(const DivisionQuestion& question) {
        m_shown = std::make_unique<DivisionLookup>(builtInCatalogue().value().divisions, question);
        m_shown->resize(900, 600);
        m_shown->show();
    }
    void choose(int side, int category) { m_shown->spaces(side)->setCurrentRow(category - 1); }
    void press(const char* key) {
        QTest::mouseClick(m_shown->findChild<QPushButton*>(key), Qt::LeftButton);
    }
    QString title() const { return m_shown->findChild<Label*>("division-class")->text(); }
    std::string all() const {
        QStringList words;
        for (const QLabel* label : m_shown->findChildren<QLabel*>())
            words << label->text();
        return words.join('\n').toStdString();
    }

    std::unique_ptr<DivisionLookup> m_shown;
};

// SOLAS II-2 table 9.1, 3-7; table 9.2, 12-7 and 7-12.
TEST_F(Lookup, TellsClassCellAndCitation) {
    open(ship(ShipKind::PassengerOver36, DivisionKind::Bulkhead));
    EXPECT_EQ(title(), "Choose both spaces");
    choose(0, 7);
    choose(1, 3);
    EXPECT_EQ(title(), "B-15");
    EXPECT_THAT(all(), HasSubstr("SOLAS II-2 table 9.1, cell 3-7: B-15"));
    EXPECT_THAT(all(), HasSubstr("the flag Administration take precedence over"));
    press("division-deck");
    EXPECT_THAT(all(), HasSubstr("Below the deck"));
    choose(0, 12);
    choose(1, 7);
    EXPECT_EQ(title(), "A-60");
    choose(0, 7);
    choose(1, 12);
    EXPECT_EQ(title(), "A-0");
    press("division-zone-bulkhead");
    EXPECT_EQ(title(), "A-60");
    EXPECT_THAT(all(), HasSubstr("9.2.2.1.1.1"));
}

TEST_F(Lookup, SaysWhomToAskWhereNothingIsPrinted) {
    DivisionQuestion question = ship(ShipKind::PassengerOver36, DivisionKind::Bulkhead);
    question.spaces = SpacePair{4, 4};
    open(question);
    EXPECT_EQ(title(), "No value printed: ask the Administration");
}

// 46 CFR table 116.415(b), 1-10; 116.435(c)(1).
TEST_F(Lookup, TellsWhatTheDoorOfAUSBulkheadNeeds) {
    open(ship(ShipKind::UsK, DivisionKind::Bulkhead));
    EXPECT_EQ(m_shown->spaces(0)->count(), 13);
    choose(0, 1);
    choose(1, 10);
    EXPECT_EQ(title(), "A-60, door A-15");
}

} // namespace
} // namespace latchround::ui
