// The rule book on the tablet: found by typing, read row by row, at a door or aboard.
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "memory_register.h"
#include "print_to.h"
#include "ui/lists/chosen_list.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/rules/rule_page.h"
#include "ui/screens/rules/rules_screen.h"
#include "ui/screens/rules/rules_shown.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;

struct Book {
    QWidget window;
    RulesScreen* screen;

    explicit Book(VesselSession& session, const QString& door = {}, const QString& row = {},
                  QSize size = {1280, 800}) {
        screen = new RulesScreen(session, &window);
        window.resize(size);
        screen->setGeometry(window.rect());
        window.show();
        screen->openAt(door, row);
        screen->enter();
        settle();
    }
    static void settle() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    template <class W>
    W& part(const char* name) {
        W* found = window.findChild<W*>(QLatin1String(name));
        if (!found)
            throw std::runtime_error(std::string("no part ") + name);
        return *found;
    }
    void press(const char* name) {
        QTest::mouseClick(&part<QPushButton>(name), Qt::LeftButton);
        settle();
    }
    void type(const char* words) {
        auto& field = part<QLineEdit>("rules-search");
        field.clear();
        QTest::keyClicks(&field, words);
        settle();
    }
    ChosenList& list() { return part<ChosenList>("rules-rows"); }
    bool shows(const char* row) { return list().rows().rowOf(row) >= 0; }
    int rows() {
        int items = 0;
        for (int row = 0; row < list().rows().rowCount(); ++row)
            items += list().rows().at(row).isHeading() ? 0 : 1;
        return items;
    }
    QString title() { return part<QLabel>("rule-title").text(); }
    std::string said() { return part<RulePage>("rule-page").paragraphs().join("\n").toStdString(); }
};

} // namespace

TEST(RulesScreen, ShowsTheTextsAndTheRowsThatAreAskedAboard) {
    SmallShip ship;
    Book book(ship.load());
    EXPECT_TRUE(book.shows(rule_texts_line));
    EXPECT_TRUE(book.shows("self-closing"));
    EXPECT_FALSE(book.shows("exterior")) << "there is no such door";
    EXPECT_THAT(book.said(), HasSubstr("Not read: "));
}

TEST(RulesScreen, ShowsEveryRowOfTheCatalogueWhereAllAreAskedFor) {
    SmallShip ship;
    const VesselSession& session = ship.load();
    Book book(*ship.session);
    book.press("rules-all");
    EXPECT_EQ(book.rows(),
              1 + int(session.catalogue().rows.size() + session.catalogue().upkeep.size()));
    book.list().choose("exterior");
    EXPECT_THAT(book.said(), HasSubstr("Does not apply: no such door aboard"));
    book.press("rules-asked");
    EXPECT_FALSE(book.shows("exterior"));
}

TEST(RulesScreen, FindsARowByItsCitationAndByItsWords) {
    SmallShip ship;
    Book book(ship.load());
    book.press("rules-all");
    book.type("9.4.1.1.5.2");
    EXPECT_TRUE(book.shows("hinged-time"));
    EXPECT_TRUE(book.shows("sliding-rate"));
    EXPECT_FALSE(book.shows("self-closing"));
    book.type("SHUTS hinged");
    EXPECT_TRUE(book.shows("hinged-time"));
    EXPECT_FALSE(book.shows("sliding-rate"));
    EXPECT_THAT(book.title().toStdString(), HasSubstr("Hinged door shuts"));
    book.type("zebra crossing");
    EXPECT_FALSE(book.list().isVisible());
    EXPECT_TRUE(book.part<QLabel>("rules-none").isVisible());
}

TEST(RulesScreen, SaysAboardWhichDoorsARowBinds) {
    SmallShip ship;
    Book book(ship.load());
    book.list().choose("self-closing");
    EXPECT_THAT(book.said(),
                AllOf(HasSubstr("Aboard this vessel\nBinding at: "), HasSubstr("5-31")));
}

TEST(RulesScreen, OpensAtADoorsRowAndSaysWhyItBindsThere) {
    SmallShip ship;
    ship.begun();
    Book book(ship.load(), "5-32", "self-closing");
    EXPECT_EQ(book.list().chosenKey(), QString("self-closing"));
    EXPECT_THAT(book.said(), HasSubstr("At door 5-32\nBinding here: zone bulkhead"));
    EXPECT_EQ(book.part<QPushButton>("rules-asked").text(), QString("This door"));
}

TEST(RulesScreen, OpensAtARowThatIsNotAskedAndSaysWhyNot) {
    SmallShip ship;
    Book book(ship.load(), "5-32", "hinged-time");
    EXPECT_EQ(book.list().chosenKey(), QString("hinged-time"));
    EXPECT_TRUE(book.part<QPushButton>("rules-all").isChecked());
    EXPECT_THAT(book.said(), HasSubstr("Does not apply here: sliding"));
}

TEST(RulesScreen, PrintsTheBookOfTheVesselOrOfTheDoor) {
    SmallShip ship;
    Book book(ship.load());
    book.press("rules-print");
    EXPECT_EQ(ship.ports.papers, std::vector{rule_book}) << "it rests on nothing recorded";
}

TEST(RulesScreen, OnASmallWindowShowsTheListOrOneRow) {
    SmallShip ship;
    Book book(ship.load(), {}, {}, {640, 480});
    EXPECT_TRUE(book.list().isVisible());
    EXPECT_FALSE(book.part<RulePage>("rule-page").isVisible());
    book.press("part-row");
    EXPECT_FALSE(book.list().isVisible());
    EXPECT_TRUE(book.part<RulePage>("rule-page").isVisible());
    book.press("part-list");
    EXPECT_TRUE(book.list().isVisible());
}

TEST(RulesScreen, IsReachedFromWhyARowHasItsVerdict) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    QWidget window;
    window.resize(1280, 800);
    auto* door = new DoorScreen(session, &window);
    door->setGeometry(window.rect());
    door->setDoor("5-32");
    window.show();
    door->enter();
    const QSignalSpy asked(door, &DoorScreen::rulesAsked);
    emit door->findChild<VerdictList*>()->whyAsked("self-closing");
    Book::settle();
    QTest::mouseClick(window.findChild<QPushButton*>("why-rules"), Qt::LeftButton);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front(), (QVariantList{"5-32", "self-closing"}));
}
