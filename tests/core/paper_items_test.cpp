// What a paper form asks of a door, and in which order it is numbered.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/grading/paper_items.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::ElementsAre;

namespace {

Door slidingDoor() {
    Door door = given::slidingDoor();
    door.designed_to_reopen = true;
    return door;
}

std::vector<PaperItem> itemsOf(const Door& door, Purpose purpose = Purpose::Annual) {
    Arrangement arrangement;
    arrangement.particulars = given::solasVessel();
    return paperItems(arrangement, door, given::catalogue(), purpose);
}

} // namespace

TEST(PaperItems, AreNumberedFromOneWithoutGapsPlateFirstAndContactLast) {
    const std::vector<PaperItem> items = itemsOf(slidingDoor());
    ASSERT_GT(items.size(), 10U);
    EXPECT_EQ(items.front().kind, PaperKind::Plate);
    EXPECT_EQ(items.back().kind, PaperKind::Contact);
    for (std::size_t i = 0; i < items.size(); ++i)
        EXPECT_EQ(items[i].number, int(i) + 1);
    EXPECT_TRUE(std::ranges::is_sorted(items, {}, &PaperItem::kind));
}

TEST(PaperItems, QuestionsGoStepByStepAsTheScreenAsksThem) {
    const Door door = slidingDoor();
    const DoorGrade blank = grade(given::solasVessel(), door, nullptr, {}, given::catalogue());
    std::vector<std::string> on_screen;
    for (const Step step : {Step::Look, Step::Release, Step::Function})
        for (const Requirement* row : askedInOrder(blank, step))
            if (row->check == CheckKind::Seen || row->check == CheckKind::SeenBothSides)
                on_screen.push_back(row->id);
    std::vector<std::string> on_paper;
    for (const PaperItem& item : itemsOf(door))
        if (item.kind == PaperKind::Question)
            on_paper.push_back(item.requirement->id);
    EXPECT_EQ(on_paper, on_screen);
    EXPECT_FALSE(on_paper.empty());
}

TEST(PaperItems, RunsAreTheReleasesOfTheDoor) {
    std::vector<Release> runs;
    for (const PaperItem& item : itemsOf(slidingDoor()))
        if (item.kind == PaperKind::Run)
            runs.push_back(item.release);
    EXPECT_THAT(runs, ElementsAre(Release::LocalSideOne, Release::LocalSideTwo, Release::Remote));
}
