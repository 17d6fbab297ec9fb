// How far a job is: parts of parts add up, it never goes back, and a no is for good.
#include "core/progress_range.h"

#include <gmock/gmock.h>

using namespace latchround;

namespace {

struct HeardPace {
    std::vector<int> done;
    int of = 0;
    bool go_on = true;

    Progress progress() {
        return [this](int now, int whole) {
            done.push_back(now);
            of = whole;
            return go_on;
        };
    }
    double share() const { return double(done.back()) / of; }
};

} // namespace

TEST(ProgressRange, PartsOfPartsAddUp) {
    HeardPace heard;
    const ProgressRange pace(heard.progress());
    const ProgressRange second = pace.part(50, 100);
    EXPECT_TRUE(second.at(0, 4));
    EXPECT_DOUBLE_EQ(heard.share(), 0.5);
    EXPECT_TRUE(second.part(0, 50).at(2, 4));
    EXPECT_DOUBLE_EQ(heard.share(), 0.625);
    EXPECT_TRUE(second.progress()(4, 4));
    EXPECT_DOUBLE_EQ(heard.share(), 1);
}

TEST(ProgressRange, NeverGoesBackAndNeverPastTheEnd) {
    HeardPace heard;
    const ProgressRange pace(heard.progress());
    EXPECT_TRUE(pace.at(8, 10));
    EXPECT_TRUE(pace.at(2, 10));
    EXPECT_TRUE(pace.at(30, 10));
    EXPECT_TRUE(pace.at(0, 0)) << "a job of nothing";
    EXPECT_EQ(heard.done, (std::vector{8000, 8000, 10000, 10000}));
    EXPECT_EQ(heard.of, 10000);
}

TEST(ProgressRange, ANoIsForGoodAndForAllParts) {
    HeardPace heard;
    const ProgressRange pace(heard.progress());
    const ProgressRange part = pace.part(0, 10);
    heard.go_on = false;
    EXPECT_FALSE(part.at(1, 2));
    heard.go_on = true;
    EXPECT_FALSE(pace.at(1, 1));
    EXPECT_TRUE(pace.isStopped());
    EXPECT_EQ(heard.done.size(), 1u) << "nobody is asked again";
}

TEST(ProgressRange, GoesOnWhereNobodyAsks) {
    const ProgressRange pace;
    EXPECT_TRUE(pace.at(1, 2));
    EXPECT_FALSE(pace.isStopped());
}
