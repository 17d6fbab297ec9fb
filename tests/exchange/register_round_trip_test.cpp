// A register that is written and read back is the same register, and writes the same bytes.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/vessel/arrangement_check.h"
#include "tests/exchange/random_arrangement.h"
#include "tests/exchange/sample_register.h"

namespace latchround::test {
namespace {

TEST(RegisterRoundTrip, CanonicalFileComesBackByteForByte) {
    const auto vessel = read(sample_csv);
    ASSERT_TRUE(vessel) << inLines(vessel.error());
    EXPECT_EQ(csvFrom(*vessel), sample_csv);
}

TEST(RegisterRoundTrip, MetresHaveTwoDecimalsAndMassNoTrailingZeros) {
    auto vessel = read(sample_csv).value();
    vessel.doors[0].x_m = -0.0;
    vessel.doors[0].y_m = 1.125;
    vessel.doors[0].opening_m = 2;
    vessel.doors[0].leaf_mass_kg = 150.0;
    EXPECT_NE(csvFrom(vessel).find(",0.00,1.125,3/4,sliding,A-60,A-60,2.00,150,yes"),
              std::string::npos);
}

TEST(RegisterRoundTrip, BlanksAtTheEndsOfFreeTextAreKept) {
    auto vessel = read(sample_csv).value();
    vessel.doors[0].plate = " A-60\t";
    vessel.doors[1].plate = "  ";
    const auto again = read(csvFrom(vessel));
    ASSERT_TRUE(again) << inLines(again.error());
    EXPECT_EQ(*again, vessel);
}

RC_GTEST_PROP(RegisterRoundTrip, AnySoundArrangementComesBackEqual, ()) {
    const Arrangement vessel = *soundArrangement();
    RC_ASSERT(faultsOf(vessel).empty());
    const std::string csv = csvFrom(vessel);
    const auto again = read(csv);
    if (!again)
        RC_LOG() << inLines(again.error()) << csv;
    RC_ASSERT(again.has_value());
    RC_ASSERT(*again == vessel);
    RC_ASSERT(csvFrom(*again) == csv);
}

} // namespace
} // namespace latchround::test
