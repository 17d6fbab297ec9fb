// Where keys stand that are laid out in lines.
#include <QPushButton>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/keys/flow_grid.h"
#include "ui/look/look.h"

namespace latchround::ui {
namespace {

struct Grid {
    QWidget page;
    FlowGrid* grid = new FlowGrid(&page);

    QPushButton* key(const QString& words = QStringLiteral("Key")) {
        return new QPushButton(words, &page);
    }
    /// Line, column, and how many lines and columns it takes.
    std::vector<int> placeOf(QPushButton* key) const {
        std::vector<int> place(4);
        grid->getItemPosition(grid->indexOf(key), &place[0], &place[1], &place[2], &place[3]);
        return place;
    }
};

TEST(FlowGrid, AsManyColumnsAsFitWithGapsBetweenThem) {
    const Grid at;
    const int gap = lookOf(&at.page).sizes.gap;
    EXPECT_EQ(at.grid->fitting(3 * 100 + 2 * gap, 100, 9), 3);
    EXPECT_EQ(at.grid->fitting(3 * 100 + 2 * gap - 1, 100, 9), 2);
    EXPECT_EQ(at.grid->fitting(3 * 100 + 2 * gap, 100, 2), 2) << "no more than there are keys";
    EXPECT_EQ(at.grid->fitting(10, 100, 9), 1);
    EXPECT_EQ(at.grid->fitting(500, 100, 0), 1);
}

TEST(FlowGrid, LinesAreOfEqualLength) {
    EXPECT_EQ(FlowGrid::evened(4, 5), 3);
    EXPECT_EQ(FlowGrid::evened(4, 4), 4);
    EXPECT_EQ(FlowGrid::evened(5, 6), 3);
    EXPECT_EQ(FlowGrid::evened(1, 0), 1);
}

TEST(FlowGrid, KeysStandLineByLineWithTheGapOfTheLook) {
    Grid at;
    const FlowGrid::Keys keys{at.key(), at.key(), at.key()};
    EXPECT_TRUE(at.grid->place(keys, 2, 77));
    EXPECT_EQ(at.placeOf(keys[1]), (std::vector{0, 1, 1, 1}));
    EXPECT_EQ(at.placeOf(keys[2]), (std::vector{1, 0, 1, 1}));
    EXPECT_EQ(at.grid->spacing(), lookOf(&at.page).sizes.gap);
    EXPECT_EQ(keys[2]->minimumHeight(), 77);
    EXPECT_EQ(keys[2]->maximumHeight(), 77);
    EXPECT_FALSE(at.grid->place(keys, 2, 77)) << "they stand there";
    EXPECT_TRUE(at.grid->place(keys, 3, 77));
    EXPECT_EQ(at.placeOf(keys[2]), (std::vector{0, 2, 1, 1}));
}

TEST(FlowGrid, AKeyThatIsNotPlacedAgainTakesNoRoom) {
    Grid at;
    const FlowGrid::Keys keys{at.key(), at.key(), at.key()};
    at.grid->place(keys, 3);
    keys[0]->hide();
    const FlowGrid::Keys shown = FlowGrid::shownOf(keys);
    EXPECT_EQ(shown, (FlowGrid::Keys{keys[1], keys[2]})) << "those not shown yet are to be shown";
    EXPECT_TRUE(at.grid->place(shown, 2));
    EXPECT_EQ(at.grid->indexOf(keys[0]), -1);
    EXPECT_EQ(at.placeOf(keys[1]), (std::vector{0, 0, 1, 1}));
    EXPECT_EQ(at.grid->columnStretch(1), 1);
    EXPECT_EQ(at.grid->columnStretch(2), 0);
}

TEST(FlowGrid, ADoubleKeyTakesTwoColumns) {
    Grid at;
    const FlowGrid::Keys keys{at.key(), at.key(), at.key()};
    at.grid->setDouble(keys[0]);
    at.grid->place(keys, 2);
    EXPECT_EQ(at.placeOf(keys[0]), (std::vector{0, 0, 1, 2}));
    EXPECT_EQ(at.placeOf(keys[2]), (std::vector{1, 1, 1, 1}));
    at.grid->place(keys, 4);
    EXPECT_EQ(at.placeOf(keys[2]), (std::vector{0, 3, 1, 1}));
}

TEST(FlowGrid, AllKeysAreAsHighAsTheLongestWordsNeed) {
    Grid at;
    const FlowGrid::Keys keys{
        at.key(), at.key("A door that stays ajar by the width of a hand, and some more words")};
    const Sizes& s = lookOf(&at.page).sizes;
    EXPECT_EQ(FlowGrid::keyHeight({keys[0]}, 1, 400), s.target);
    const int high = FlowGrid::keyHeight(keys, 2, 400);
    EXPECT_GT(high, s.target);
    EXPECT_LT(FlowGrid::keyHeight(keys, 1, 400), high);
    EXPECT_EQ(FlowGrid::heightOf(keys, 2, 400), high);
    EXPECT_EQ(FlowGrid::heightOf(keys, 1, 400), 2 * FlowGrid::keyHeight(keys, 1, 400) + s.gap);
    EXPECT_EQ(FlowGrid::keyHeight({}, 1, 400), 0);
}

} // namespace
} // namespace latchround::ui
