// The review on a small screen, and at 200 %: list, item and keys come one at a time; and what a
// screen reader is told of it.
#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "tests/ui/print_to.h"
#include "ui/frames/sheet.h"
#include "ui/lists/value_row.h"
#include "ui/look/look.h"
#include "ui/screens/review/item_list.h"
#include "ui/screens/review/review_screen.h"
#include "ui/screens/review/review_sheets.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct AtSize {
    QWidget window;
    Look look;
    ReviewScreen* review;

    AtSize(VesselSession& session, QSize size, double scale) {
        look.applyTo(window);
        look.setScale(scale);
        review = new ReviewScreen(session, &window);
        window.resize(size);
        review->setGeometry(window.rect());
        window.show();
        review->enter();
        test::settle(window);
    }
    QWidget* shown(const QString& name) const {
        for (QWidget* each : window.findChildren<QWidget*>(name))
            if (each->isVisible())
                return each;
        return nullptr;
    }
    bool shows(const QString& name) const { return shown(name) != nullptr; }
    void press(const QString& name) {
        QWidget* key = shown(name);
        ASSERT_NE(key, nullptr) << name.toStdString();
        QTest::mouseClick(key, Qt::LeftButton);
        test::settle(window);
    }
};

void putOpenItem(SmallShip& ship) {
    const FactId walkdown = ship.begun();
    ship.put(Observation{walkdown, "7-02", "self-closing", Side::None, Answer::No});
    ship.put(Deficiency{walkdown, "7-02", "self-closing", "Stays ajar"});
}

} // namespace

TEST(ReviewSmall, ShowsAllThreeTogetherWhereThereIsRoom) {
    SmallShip ship;
    putOpenItem(ship);
    AtSize at(ship.load(), {1280, 800}, 1);
    for (const char* name : {"review-items", "item-next", "review-papers"})
        EXPECT_TRUE(at.shows(name)) << name;
    for (const char* name : {"part-item", "part-keys", "part-list"})
        EXPECT_FALSE(at.shows(name)) << name;
}

TEST(ReviewSmall, ShowsOneAtATimeAtTwiceTheSizeWithAWayBack) {
    SmallShip ship;
    putOpenItem(ship);
    VesselSession& session = ship.load();
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)}) {
        AtSize at(session, size, 2);
        EXPECT_TRUE(at.shows("review-items"));
        EXPECT_FALSE(at.shows("item-next"));
        EXPECT_FALSE(at.shows("review-papers"));
        at.press("part-item");
        EXPECT_TRUE(at.shows("item-next"));
        EXPECT_FALSE(at.shows("review-items"));
        at.press("part-list");
        EXPECT_TRUE(at.shows("review-items"));
        at.press("part-keys");
        EXPECT_TRUE(at.shows("review-papers"));
        EXPECT_FALSE(at.shows("review-items"));
        at.press("part-list");
        EXPECT_TRUE(at.shows("review-items"));
        // The list itself opens what is tapped or entered.
        auto* list = at.window.findChild<ItemList*>();
        QTest::keyClick(list, Qt::Key_Return);
        EXPECT_TRUE(at.shows("item-next"));
        at.press("part-list");
        const QRect line = list->visualRect(list->currentIndex());
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, line.center());
        EXPECT_TRUE(at.shows("item-next"));
    }
}

TEST(ReviewSmall, StaysWithTheItemThatIsWorked) {
    SmallShip ship;
    putOpenItem(ship);
    VesselSession& session = ship.load();
    AtSize at(session, {1280, 800}, 2);
    at.press("part-item");
    ASSERT_TRUE(session.record(DeficiencyTerms{session.items().front().id, Severity::Critical}));
    EXPECT_TRUE(at.shows("item-next"));
    EXPECT_FALSE(at.shows("review-items"));
}

TEST(ReviewEmpty, SaysWhyThereIsNothing) {
    SmallShip ship;
    VesselSession& session = ship.load();
    AtSize at(session, {1280, 800}, 1);
    auto* nothing = qobject_cast<QLabel*>(at.shown("review-none"));
    ASSERT_NE(nothing, nullptr);
    EXPECT_EQ(nothing->text(), QString("Nothing is open."));
    const auto words = [&] {
        QStringList all;
        for (QLabel* label : at.window.findChildren<Sheet*>().last()->findChildren<QLabel*>())
            if (label->isVisible())
                all << label->text();
        at.window.findChildren<Sheet*>().last()->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return all.join("\n").toStdString();
    };
    using testing::HasSubstr;
    ReviewSheets& sheets = at.review->sheets();
    sheets.compareWalkdowns();
    EXPECT_THAT(words(), HasSubstr("There are not two walkdowns to compare yet."));
    sheets.differences();
    EXPECT_THAT(words(), HasSubstr("No conflicting entries."));
    sheets.history("7-02");
    EXPECT_THAT(words(), HasSubstr("Nothing has been recorded for this door yet."));
    sheets.papers({});
    EXPECT_THAT(words(), HasSubstr("There is no walkdown yet"));
    sheets.sign();
    EXPECT_THAT(words(), HasSubstr("A walkdown can be signed once it has ended."));
}

TEST(ReviewAccess, RowsHaveRoleNameAndWhatStandsInThem) {
    SmallShip ship;
    putOpenItem(ship);
    AtSize at(ship.load(), {1280, 800}, 1);
    auto* list = at.window.findChild<ItemList*>();
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(list);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::List);
    EXPECT_EQ(spoken->text(QAccessible::Name), QString("Open items"));
    ASSERT_EQ(spoken->childCount(), 2) << "a heading and an item";
    QAccessibleInterface* item = spoken->child(1);
    EXPECT_EQ(item->role(), QAccessible::ListItem);
    EXPECT_TRUE(item->state().selected);
    const std::string name = item->text(QAccessible::Name).toStdString();
    for (const char* words : {"7-02", "Stays ajar", "found"})
        EXPECT_THAT(name, testing::HasSubstr(words));
    // Rows that are set: what it is and what stands there, and a key that says both.
    for (ValueRow* row : at.window.findChildren<ValueRow*>()) {
        QAccessibleInterface* said = QAccessible::queryAccessibleInterface(row);
        EXPECT_FALSE(said->text(QAccessible::Name).isEmpty());
        QAccessibleInterface* key = QAccessible::queryAccessibleInterface(row->key());
        EXPECT_EQ(key->role(), QAccessible::Button);
        EXPECT_TRUE(key->text(QAccessible::Name).contains(said->text(QAccessible::Name)))
            << key->text(QAccessible::Name).toStdString();
    }
    auto* due = at.window.findChild<QPushButton*>("item-due");
    ASSERT_NE(due, nullptr);
    QAccessibleInterface* row = QAccessible::queryAccessibleInterface(due->parentWidget());
    EXPECT_EQ(row->text(QAccessible::Name), QString("Due"));
    EXPECT_EQ(row->text(QAccessible::Description), QString("no date set"));
}
