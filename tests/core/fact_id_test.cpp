#include <gtest/gtest.h>

#include "core/evidence/fact_id.h"

using namespace latchround;

// RFC 9562, A.6: 2022-02-22T14:22:22-05:00, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
TEST(FactId, IsTheExampleOfRfc9562) {
    EXPECT_EQ(factIdOf(1645557742000, {0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f}),
              "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(FactId, SequenceKeepsOrderWithinAMillisecondAndAgainstASteppedClock) {
    FactIdSequence sequence;
    FactId last;
    for (int i = 0; i < 10000; ++i) {
        const std::int64_t wall_ms = i < 5000 ? 1'700'000'000'000 : 1'699'999'000'000;
        const FactId id = sequence.next(wall_ms, {0xff, 0xff, 0xff, 1, 2, 3, 4, 5, 6, 7});
        ASSERT_LT(last, id) << i;
        ASSERT_TRUE(isFactId(id)) << id;
        last = id;
    }
}

TEST(FactId, RefusesOtherUuids) {
    EXPECT_TRUE(isFactId("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
    EXPECT_FALSE(isFactId("017f22e2-79b0-4cc3-98c4-dc0c0c07398f"));
    EXPECT_FALSE(isFactId("017f22e2-79b0-7cc3-18c4-dc0c0c07398f"));
    EXPECT_FALSE(isFactId("017F22E2-79B0-7CC3-98C4-DC0C0C07398F"));
    EXPECT_FALSE(isFactId(""));
}

TEST(FactIdSequence, GoesOnAfterTheLastOneThoughTheClockWentBack) {
    FactIdSequence before;
    FactId last;
    for (int i = 0; i < 5; ++i)
        last = before.next(1'795'599'720'000, {1, 255, 3, 4, 5, 6, 7, 8, 9, 10});
    FactIdSequence after;
    after.continueAfter(last);
    const FactId next = after.next(1'700'000'000'000, {});
    EXPECT_GT(next, last);
    EXPECT_TRUE(isFactId(next));
    after.continueAfter("not an id");
    EXPECT_GT(after.next(1'700'000'000'000, {}), next);
}
