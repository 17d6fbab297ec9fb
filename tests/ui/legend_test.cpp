// The legend names the marks that the zone profile draws, and no others.
#include <QLabel>
#include <QSignalSpy>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/screens/home/legend.h"
#include "ui/ship/zone_profile.h"

namespace latchround::ui {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::UnorderedElementsAre;

std::vector<std::string> wordsOf(const Legend& legend) {
    std::vector<std::string> words;
    for (const QLabel* label : legend.findChildren<QLabel*>())
        if (label->isVisible())
            words.push_back(label->text().toStdString());
    return words;
}

Door doorAt(const char* number, double x_m, double y_m, const char* boundary) {
    Door door;
    door.number = number;
    door.deck = "1";
    door.x_m = x_m;
    door.y_m = y_m;
    door.boundary = boundary;
    return door;
}

/// Two doors side by side in a bulkhead, one in a stairway.
Arrangement twoZones() {
    Arrangement ship;
    ship.particulars.length_m = 60;
    ship.decks = {{"1", "", 0}, {"2", "", 3}, {"3", "", 6}, {"4", "", 9}, {"5", "", 12}};
    ship.zones = {{"1", 0, 30}, {"2", 30, 60}};
    ship.boundaries = {{"1/2", Place::ZoneBulkhead, "1", "2", 30, {}},
                       {"stair", Place::Stairway, "1", "1", 12, {}}};
    ship.doors = {doorAt("1-1", 30, -3, "1/2"), doorAt("1-2", 30, 3, "1/2"),
                  doorAt("1-S", 12, 0, "stair")};
    return ship;
}

struct Drawn {
    ZoneProfile profile;
    Legend legend;
    explicit Drawn(QSize size) {
        profile.resize(size);
        QObject::connect(&profile, &ZoneProfile::marksChanged, &legend,
                         [this] { legend.setMarks(profile.marks()); });
        profile.setArrangement(twoZones());
        legend.show();
    }
};

constexpr QSize low(900, 160);
constexpr QSize high(900, 600);

} // namespace

TEST(Legend, HasNothingToSayOfAnEmptyRegister) {
    Legend legend;
    legend.show();
    EXPECT_THAT(wordsOf(legend), IsEmpty());
}

TEST(Legend, NamesDotsWhereDoorsOfOtherBoundariesAreDrawnAsDots) {
    Drawn drawn(low);
    EXPECT_THAT(wordsOf(drawn.legend), UnorderedElementsAre("untested", "other boundaries"));
}

TEST(Legend, NamesNoDotsWhereThereIsRoomForGlyphs) {
    Drawn drawn(high);
    EXPECT_THAT(wordsOf(drawn.legend), ElementsAre("untested"));
}

TEST(Legend, NamesEachVerdictThatADoorHas) {
    Drawn drawn(high);
    drawn.profile.setVerdicts({{"1-1", Verdict::Satisfactory}, {"1-S", Verdict::Judge}});
    EXPECT_THAT(wordsOf(drawn.legend),
                UnorderedElementsAre("satisfactory", "judgement needed", "untested"));
}

TEST(Legend, NamesAnOpenBulkheadOrOneThatIsNotYetProven) {
    Drawn drawn(high);
    drawn.profile.setBulkheads({{"1/2"}, {}, {}, {}});
    EXPECT_THAT(wordsOf(drawn.legend), UnorderedElementsAre("untested", "bulkhead open"));
    drawn.profile.setBulkheads({{}, {"1/2"}, {}, {}});
    EXPECT_THAT(wordsOf(drawn.legend), UnorderedElementsAre("untested", "not yet proven"));
}

TEST(Legend, NamesTheCountOfDoorsDrawnAsOne) {
    Drawn drawn({160, 600});
    EXPECT_THAT(wordsOf(drawn.legend), UnorderedElementsAre("untested", "×2", "several doors"));
}

TEST(Legend, KeepsItsSizeInACloserView) {
    Drawn drawn(low);
    const QSize whole = drawn.legend.sizeHint();
    ASSERT_TRUE(drawn.profile.marks().dots);
    drawn.profile.setZoom(4, {450, 80});
    ASSERT_FALSE(drawn.profile.marks().dots);
    EXPECT_EQ(drawn.legend.sizeHint(), whole);
}

TEST(Legend, TakesMoreLinesWhereThereIsLessRoom) {
    Drawn drawn(low);
    drawn.profile.setVerdicts({{"1-1", Verdict::Satisfactory}, {"1-S", Verdict::Unsatisfactory}});
    const QSize one_line = drawn.legend.sizeHint();
    for (const int room : {one_line.width() - 1, one_line.width() / 2, one_line.width() / 3}) {
        drawn.legend.setRoom(room);
        EXPECT_LE(drawn.legend.sizeHint().width(), room);
        EXPECT_GT(drawn.legend.sizeHint().height(), one_line.height());
    }
}

} // namespace latchround::ui
