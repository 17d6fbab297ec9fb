// After the walk, by clicks on the real widgets of two tablets of one vessel: a deficiency is
// rectified on the bridge, handed over, retested on the second tablet by somebody else, handed back
// and found closed; a walkdown is signed; papers are made.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QLabel>
#include <QProcess>
#include <QTemporaryDir>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "core/deficiency/item.h"
#include "tests/whole/hands.h"
#include "ui/keys/choice_row.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/review/item_list.h"
#include "ui/screens/review/review_screen.h"

using namespace latchround;
using namespace latchround::ui;
using testing::HasSubstr;

namespace {

constexpr auto lantern = LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv";

/// A program with a folder of its own, as on another machine.
struct Tablet {
    QTemporaryDir data;
    Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QString path;

    QWidget* window() { return app.window(); }
    void use() { qputenv("LATCHROUND_DATA", data.path().toUtf8()); }
    void open(const QString& at) {
        path = at;
        ASSERT_TRUE(app.open(path));
        window()->resize(1280, 800);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window()));
    }
    bool shows(const QString& name) {
        for (const QWidget* each : window()->findChildren<QWidget*>(name))
            if (each->isVisible())
                return true;
        return false;
    }
    void toReview() {
        while (!shows("review"))
            hands::click(window(), shows("open-items-all") ? "open-items-all" : "back");
    }
    void tap(const QString& words) { hands::clickWords(hands::sheet(window()), words); }
    /// The item of this door and row, worked out from nothing but the file on disk.
    Item item(const char* door, const char* row) const {
        const auto file = SqliteRegister::open(path).value();
        Ledger ledger;
        const std::vector<Fact> facts = file->facts().value();
        for (const Fact& fact : facts)
            ledger.add(fact);
        static const Catalogue catalogue = builtInCatalogue().value();
        const Arrangement arrangement = file->arrangement().value();
        for (const Item& each : itemsOf(arrangement, ledger, catalogue))
            if (each.door == door && each.requirement == row)
                return each;
        throw std::out_of_range(door);
    }
    void choose(const FactId& id) {
        window()->findChild<ItemList*>()->setCurrent(id);
        QCoreApplication::processEvents();
    }
};

class AfterWalk : public testing::Test {
protected:
    Tablet bridge;
    Tablet second;
    QString file = bridge.data.filePath("from the bridge.zip");
    QString back = bridge.data.filePath("from the second.zip");

    void SetUp() override {
        bridge.use();
        bridge.open(placeSampleVessel(sampleVessels().front(), momentNow()).value());
    }
    void give(Tablet& from, const QString& to) {
        from.use();
        hands::click(from.window(), "review-hand-over");
        hands::chooseFileWhenAsked(from.window(), to);
        hands::click(from.window(), "hand-give");
        hands::click(from.window(), "sheet-close");
        ASSERT_TRUE(QFile::exists(to));
    }
    /// The vessel is opened anew afterwards.
    void take(Tablet& into, const QString& from) {
        into.use();
        hands::click(into.window(), "review-hand-over");
        hands::chooseFileWhenAsked(into.window(), from);
        hands::click(into.window(), "hand-take");
        QWidget* before = into.window();
        hands::click(before, "hand-take-in");
        hands::until([&] { return into.window() != before; }, "the vessel is opened anew");
        into.window()->resize(1280, 800);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(into.window()));
    }
};

} // namespace

TEST_F(AfterWalk, ADeficiencyIsRectifiedHandedOverRetestedAndClosed) {
    bridge.toReview();
    const Item found = bridge.item("6-08", "self-closing");
    ASSERT_EQ(found.state, ItemState::Found);
    bridge.choose(found.id);
    hands::click(bridge.window(), "item-next");
    bridge.tap("rails cleaned and greased");
    bridge.tap("Ines Quillaran");
    hands::click(bridge.window(), "item-next");
    ASSERT_EQ(bridge.item("6-08", "self-closing").state, ItemState::AwaitingRetest);
    give(bridge, file);

    second.use();
    second.open(takeInVessel(QString::fromLatin1(lantern), momentNow()).value());
    second.toReview();
    hands::click(second.window(), "review-who");
    QTest::keyClicks(hands::find(second.window(), "person-name"), "Linnet Orrowby");
    second.tap("surveyor");
    take(second, file);
    EXPECT_EQ(second.item("6-08", "self-closing").state, ItemState::AwaitingRetest);
    DoorScreen& door = second.app.window()->doorScreen();
    second.toReview();
    hands::click(second.window(), "back");
    hands::click(second.window(), "home-main");
    door.setDoor("6-08");
    hands::click(second.window(), "step-1");
    auto* row = door.findChild<ChoiceRow*>("ask-self-closing");
    ASSERT_NE(row, nullptr);
    while (!row->isVisible())
        hands::click(&door, "rows-after");
    hands::click(row->key(Answer::Yes));
    const Item retested = second.item("6-08", "self-closing");
    EXPECT_EQ(retested.state, ItemState::Closed);
    second.toReview();
    give(second, back);

    take(bridge, back);
    EXPECT_EQ(bridge.item("6-08", "self-closing").state, ItemState::Closed);
}

TEST_F(AfterWalk, AWalkdownIsSignedByTwoAndTheListGoesToTheMaster) {
    bridge.toReview();
    hands::click(bridge.window(), "review-sign");
    hands::click(bridge.window(), "sign-inspector");
    EXPECT_FALSE(hands::find(bridge.window(), "sign-chief")->isEnabled()) << "one person, once";
    hands::click(bridge.window(), "sheet-close");
    hands::click(bridge.window(), "review-who");
    bridge.tap("Astri Holloquist, chief officer");
    hands::click(bridge.window(), "review-sign");
    hands::click(bridge.window(), "sign-chief");
    const QString signatures =
        qobject_cast<QLabel*>(hands::find(bridge.window(), "signatures"))->text();
    EXPECT_THAT(signatures.toStdString(), HasSubstr("Linnet Orrowby, as inspector"));
    EXPECT_THAT(signatures.toStdString(), HasSubstr("Astri Holloquist, as chief officer"));
    EXPECT_THAT(signatures.toStdString(), HasSubstr("unchanged"));
    hands::click(bridge.window(), "sheet-close");

    hands::click(bridge.window(), "review-papers");
    hands::click(bridge.window(), "paper-deficiencies");
    const QString told = qobject_cast<QLabel*>(hands::find(bridge.window(), "told"))->text();
    QProcess reader;
    reader.start("pdftotext", {"-layout", told.mid(told.indexOf('/')), "-"});
    ASSERT_TRUE(reader.waitForFinished());
    const std::string text = reader.readAllStandardOutput().toStdString();
    for (const char* words : {"Vellis Lantern", "7-05", "07105", "Astri Holloquist"})
        EXPECT_THAT(text, HasSubstr(words));
    const auto facts = SqliteRegister::open(bridge.path).value()->facts().value();
    EXPECT_TRUE(std::ranges::any_of(facts, [](const Fact& fact) {
        const auto* made = std::get_if<ReportMade>(&fact.body);
        return made && made->report == ReportKind::DeficiencyList;
    }));
}
