// Help in place: every question has words and a drawing of its own, one touch opens it and one
// closes it, and it has its room at every size.
#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>

#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>

#include "core/requirement/catalogue.h"
#include "tests/ui/print_to.h"
#include "ui/help/help_page.h"
#include "ui/help/help_panel.h"
#include "ui/help/help_picture.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/help_key.h"
#include "ui/lists/value_row.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {
namespace {

std::vector<Requirement> allRows() {
    std::vector<Requirement> all;
    for (const char* name :
         {"solas-passenger", "solas-before-2002", "us-domestic", "usage", "canada"}) {
        std::ifstream file(std::string(LATCHROUND_SOURCE) + "/resources/requirements/" + name +
                           ".json");
        const std::string text{std::istreambuf_iterator<char>(file),
                               std::istreambuf_iterator<char>()};
        const auto catalogue = catalogueFrom(text, name);
        if (catalogue)
            std::ranges::copy(catalogue->rows, std::back_inserter(all));
    }
    return all;
}

/// What a panel looks like, small, in the look it would have in a window.
QImage seen(const HelpPanel& panel, Light light = Light::Day) {
    Look look;
    look.setLight(light);
    QWidget window;
    look.applyTo(window);
    auto* view = new HelpPanelView(panel, &window);
    view->resize(320, 200);
    return view->grab().toImage().convertToFormat(QImage::Format_RGB32);
}

TEST(Help, EveryRowOfEveryCatalogueHasWordsAndADrawing) {
    const std::vector<Requirement> rows = allRows();
    ASSERT_GT(rows.size(), 60u);
    for (const Requirement& row : rows) {
        EXPECT_FALSE(row.look_for.empty()) << row.id;
        EXPECT_LE(row.look_for.size(), 220u) << row.id << ": too long to be read at the door";
        const auto topic = topicOfRow(row.id);
        ASSERT_TRUE(topic) << row.id;
        EXPECT_FALSE(pictureOf(*topic).empty()) << row.id;
        const Help help = helpForRow(row);
        EXPECT_FALSE(help.title.isEmpty()) << row.id;
        ASSERT_EQ(help.paragraphs.size(), 1u) << row.id;
        EXPECT_EQ(help.paragraphs.front().words.toStdString(), row.look_for);
        EXPECT_TRUE(help.paragraphs.front().source.contains(row.status == Status::Usage
                                                                ? statusWords(row.status)
                                                                : QString::fromStdString(row.cite)))
            << row.id << ": " << help.paragraphs.front().source.toStdString();
    }
}

TEST(Help, EveryQuestionBeforeARemoteReleaseHasWordsAndADrawing) {
    for (const Caution& caution : cautionsBeforeRelease()) {
        const Help help = helpForCaution(caution);
        EXPECT_FALSE(help.paragraphs.front().words.isEmpty()) << caution.id;
        ASSERT_TRUE(help.topic) << caution.id;
        EXPECT_FALSE(pictureOf(*help.topic).empty()) << caution.id;
    }
}

TEST(Help, ReleaseSaysHowAndWhatIsTimed) {
    const std::vector<Requirement> rows = allRows();
    std::vector<const Requirement*> timed;
    for (const Requirement& row : rows)
        if (row.id == "sliding-rate" || row.id == "alarm-lead")
            timed.push_back(&row);
    Door door;
    door.kind = DoorKind::Sliding;
    const Help remote = helpForRelease(Release::Remote, door, timed);
    EXPECT_EQ(remote.paragraphs.size(), 3u);
    EXPECT_EQ(remote.topic, HelpTopic::AlarmLead);
    const Help local = helpForRelease(Release::LocalSideOne, door, timed);
    EXPECT_EQ(local.paragraphs.size(), 2u) << "nobody waits for an alarm at the door's own switch";
    EXPECT_EQ(local.topic, HelpTopic::SlidingRate);
}

TEST(Help, ARowOfAFlagsOwnWithoutWordsHasNone) {
    Requirement row;
    row.id = "flag-of-its-own";
    row.words = "Something else";
    EXPECT_TRUE(helpForRow(row).isEmpty());
    row.look_for = "At the head of the leaf.";
    EXPECT_FALSE(helpForRow(row).isEmpty());
}

TEST(Help, EveryDrawingIsAnotherAndGoodIsNotBad) {
    std::map<QByteArray, int> topics;
    for (int i = 0; i < help_topics; ++i) {
        const HelpPicture picture = pictureOf(HelpTopic(i));
        ASSERT_FALSE(picture.empty()) << i;
        ASSERT_LE(picture.size(), 2u) << i;
        QByteArray whole;
        std::vector<QImage> panels;
        for (HelpPanel panel : picture) {
            panel.says = PanelSays::Shows; // without the tick or the cross
            panels.push_back(seen(panel));
            whole.append(reinterpret_cast<const char*>(panels.back().constBits()),
                         panels.back().sizeInBytes());
        }
        const auto [before, is_new] = topics.emplace(whole, i);
        EXPECT_TRUE(is_new) << i << " is drawn as " << before->second;
        if (panels.size() == 2) {
            EXPECT_NE(panels[0], panels[1]) << i;
        }
    }
}

TEST(Help, TickAndCrossAreShapesAndWords) {
    HelpPicture picture = pictureOf(HelpTopic::Latch);
    ASSERT_EQ(picture.size(), 2u);
    EXPECT_TRUE(HelpPanelView(picture[0]).words().startsWith("Good: "));
    EXPECT_TRUE(HelpPanelView(picture[1]).words().startsWith("Bad: "));
    const QImage good = seen(picture[0]);
    picture[0].says = PanelSays::Bad;
    EXPECT_NE(good, seen(picture[0]));
}

TEST(Help, DrawingsAreInTheLightOfTheLook) {
    const HelpPanel panel = pictureOf(HelpTopic::SelfClosing).front();
    EXPECT_NE(seen(panel, Light::Day), seen(panel, Light::Dusk));
    EXPECT_NE(seen(panel, Light::Dusk), seen(panel, Light::Night));
    // Nothing bright at night.
    const QImage night = seen(panel, Light::Night);
    int brightest = 0;
    for (int y = 0; y < night.height(); ++y)
        for (int x = 0; x < night.width(); ++x)
            brightest = std::max(brightest, qGray(night.pixel(x, y)));
    EXPECT_LT(brightest, 190);
}

TEST(HelpKey, TheQuestionIsAKeyThatAsksForHelp) {
    ChoiceRow row("Seals intact, unpainted?");
    row.offerHelp();
    row.resize(600, row.heightForWidth(600));
    row.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&row));
    auto* key = row.findChild<HelpKey*>();
    ASSERT_NE(key, nullptr);
    EXPECT_GE(key->height(), 60);
    EXPECT_GE(key->width(), 60);
    EXPECT_EQ(key->accessibleName(), "What to look at: Seals intact, unpainted?");
    EXPECT_EQ(QAccessible::queryAccessibleInterface(key)->role(), QAccessible::PushButton);
    int asked = 0;
    int answered = 0;
    QObject::connect(&row, &ChoiceRow::helpAsked, [&] { ++asked; });
    QObject::connect(&row, &ChoiceRow::answered, [&] { ++answered; });
    QTest::mouseClick(row.findChild<QLabel*>(), Qt::LeftButton); // on the words themselves
    EXPECT_EQ(asked, 1);
    row.activateWindow();
    key->setFocus();
    QTest::keyClick(key, Qt::Key_Space);
    EXPECT_EQ(asked, 2);
    QTest::keyClick(row.key(Answer::Yes), Qt::Key_F1);
    EXPECT_EQ(asked, 3) << "F1 on any key of the row";
    QTest::mouseClick(row.key(Answer::No), Qt::LeftButton);
    EXPECT_EQ(answered, 1);
    EXPECT_EQ(asked, 3);
}

TEST(HelpKey, AValueRowAsksForHelpByItsWords) {
    ValueRow row("Ship's heel now", "Change");
    row.offerHelp();
    row.setDetail("0.4 degrees");
    row.resize(600, 90);
    row.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&row));
    for (const QLabel* label : row.findChildren<QLabel*>())
        EXPECT_EQ(label->foregroundRole(), QPalette::WindowText) << "each keeps its own ink";
    int asked = 0;
    int changed = 0;
    QObject::connect(&row, &ValueRow::helpAsked, [&] { ++asked; });
    QObject::connect(&row, &ValueRow::asked, [&] { ++changed; });
    QTest::mouseClick(row.findChild<HelpKey*>(), Qt::LeftButton);
    QTest::keyClick(row.key(), Qt::Key_F1);
    QTest::mouseClick(row.key(), Qt::LeftButton);
    EXPECT_EQ(asked, 2);
    EXPECT_EQ(changed, 1);
}

TEST(HelpKey, TabComesToTheAnswersFirst) {
    QWidget window;
    auto* choice = new ChoiceRow("Seals intact, unpainted?");
    auto* value = new ValueRow("Ship's heel now", "Change");
    choice->offerHelp();
    value->offerHelp();
    choice->setParent(&window); // as rows come to a page: made first
    value->setParent(&window);
    std::vector<QWidget*> way;
    for (QWidget* each = window.nextInFocusChain(); each != &window;
         each = each->nextInFocusChain())
        if (each->focusPolicy() & Qt::TabFocus)
            way.push_back(each);
    EXPECT_THAT(way, testing::ElementsAre(choice->key(Answer::Yes), choice->key(Answer::No),
                                          choice->key(Answer::NotApplicable),
                                          choice->findChild<HelpKey*>(), value->key(),
                                          value->findChild<HelpKey*>()));
}

TEST(HelpKey, ARowWithoutHelpHasNoSuchKey) {
    ChoiceRow row("Seals intact, unpainted?");
    EXPECT_EQ(row.findChild<HelpKey*>(), nullptr);
    int asked = 0;
    QObject::connect(&row, &ChoiceRow::helpAsked, [&] { ++asked; });
    QTest::keyClick(row.key(Answer::Yes), Qt::Key_F1);
    EXPECT_EQ(asked, 0);
}

struct Window {
    QSize size;
    double scale = 1;
};

class HelpSheet : public testing::TestWithParam<Window> {
protected:
    Look look;
    QWidget window;

    void SetUp() override {
        look.setScale(GetParam().scale);
        look.applyTo(window);
        window.resize(GetParam().size);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    QWidget* sheet() { return window.findChild<QWidget*>("sheet"); }
    void expectGone() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_EQ(sheet(), nullptr);
    }
    /// On the page that is shown nothing is clipped, and drawings and words do not overlap.
    void expectRoom(const std::string& what) {
        auto* page = window.findChild<HelpPage*>();
        for (const QLabel* label : page->findChildren<QLabel*>())
            EXPECT_GE(label->height() + 1, label->heightForWidth(label->width()))
                << what << ": " << label->text().toStdString();
        std::vector<QRect> areas;
        for (QWidget* part : page->findChildren<QWidget*>())
            if (part->isVisible() && !part->findChild<QWidget*>())
                areas.emplace_back(part->mapTo(page, QPoint()), part->size());
        for (std::size_t i = 0; i < areas.size(); ++i) {
            EXPECT_TRUE(page->rect().contains(areas[i])) << what;
            for (std::size_t k = i + 1; k < areas.size(); ++k)
                EXPECT_FALSE(areas[i].intersects(areas[k])) << what;
        }
        for (const HelpPanelView* drawing : page->findChildren<HelpPanelView*>())
            EXPECT_GE(drawing->height(), 140) << what;
    }
};

TEST_P(HelpSheet, HasItsRoomForEveryRow) {
    for (const Requirement& row : allRows()) {
        showHelp(helpForRow(row), &window);
        QCoreApplication::processEvents();
        expectRoom(row.id);
        QTest::mouseClick(window.findChild<QPushButton*>("sheet-close"), Qt::LeftButton);
        expectGone();
    }
}

TEST_P(HelpSheet, HasItsRoomForALongOne) {
    const std::vector<Requirement> rows = allRows();
    std::vector<const Requirement*> timed;
    for (const Requirement& row : rows)
        if (row.id == "sliding-rate" || row.id == "alarm-lead" || row.id == "alarm-holds")
            timed.push_back(&row);
    Door door;
    door.kind = DoorKind::Sliding;
    showHelp(helpForRelease(Release::Remote, door, timed), &window);
    QCoreApplication::processEvents();
    expectRoom("remote");
    // The keys that asked for it close it again, the one and the other.
    QTest::keyClick(window.findChild<HelpPage*>(), Qt::Key_F1);
    expectGone();
    showHelp(helpForHeel(), &window);
    QTest::keyClick(window.findChild<HelpPage*>(), Qt::Key_Escape);
    expectGone();
}

TEST_P(HelpSheet, IsLeftAsPicturesWhereAsked) {
    const QString folder = qEnvironmentVariable("LATCHROUND_PICTURES");
    const std::vector<Requirement> rows = allRows();
    const auto shown = [&](const Help& help, const QString& name) {
        showHelp(help, &window);
        QCoreApplication::processEvents();
        EXPECT_EQ(sheet()->size(), window.size());
        if (!folder.isEmpty())
            window.grab().save(QStringLiteral("%1/help %2 %3 %4.png")
                                   .arg(folder, name)
                                   .arg(window.width())
                                   .arg(GetParam().scale * 100));
        QTest::keyClick(window.findChild<HelpPage*>(), Qt::Key_Escape);
        expectGone();
    };
    std::vector<const Requirement*> timed;
    for (const Requirement& row : rows) {
        if (row.id == "sliding-rate" || row.id == "alarm-lead" || row.id == "alarm-holds")
            timed.push_back(&row);
        if (row.id == "plate" || row.id == "h-latch-throw" || row.id == "hose-port")
            shown(helpForRow(row), QString::fromStdString(row.id));
    }
    Door door;
    door.kind = DoorKind::Sliding;
    shown(helpForRelease(Release::Remote, door, timed), "remote");
    shown(helpForCaution(cautionsBeforeRelease()[2]), "watch");
}

INSTANTIATE_TEST_SUITE_P(Sizes, HelpSheet,
                         testing::Values(Window{{1280, 800}}, Window{{800, 1280}},
                                         Window{{1920, 1080}}, Window{{1280, 800}, 2},
                                         Window{{800, 1280}, 2}));

} // namespace
} // namespace latchround::ui
