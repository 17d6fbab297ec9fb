// Values of RFC 3339 section 5.8; their seconds since 1970 worked out independently.
#include "core/evidence/moment_text.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace latchround {
namespace {

TEST(MomentText, ExamplesOfRfc3339Section58) {
    EXPECT_EQ(momentFrom("1985-04-12T23:20:50.52Z"), (Moment{482196050520, 0}));
    EXPECT_EQ(momentFrom("1996-12-19T16:39:57-08:00"), (Moment{851042397000, -480}));
    EXPECT_EQ(momentFrom("1996-12-20T00:39:57Z"), (Moment{851042397000, 0}));
    EXPECT_EQ(momentFrom("1937-01-01T12:00:27.87+00:20"), (Moment{-1041337172130, 20}));
}

TEST(MomentText, LeapSecondOfTheExamplesHasNoPlaceInUtcMilliseconds) {
    EXPECT_EQ(momentFrom("1990-12-31T23:59:60Z"), std::nullopt);
}

TEST(MomentText, IsWrittenWithThreeDecimalsAndTheShipsOffset) {
    EXPECT_EQ(rfc3339Text({482196050520, 0}), "1985-04-12T23:20:50.520+00:00");
    EXPECT_EQ(rfc3339Text({851042397000, -480}), "1996-12-19T16:39:57.000-08:00");
    EXPECT_EQ(rfc3339Text({-1, 0}), "1969-12-31T23:59:59.999+00:00");
    EXPECT_EQ(rfc3339Text({0, 840}), "1970-01-01T14:00:00.000+14:00");
    EXPECT_EQ(rfc3339Text({0, -570}), "1969-12-31T14:30:00.000-09:30");
}

TEST(MomentText, SmallLettersAndZerosPastTheThirdDecimalAreRead) {
    EXPECT_EQ(momentFrom("1985-04-12t23:20:50.520000z"), (Moment{482196050520, 0}));
}

TEST(MomentText, WhatIsNotAMomentIsRefused) {
    for (const char* text :
         {"", "1985-04-12", "1985-04-12T23:20:50", "1985-04-12 23:20:50Z", "1985-02-30T23:20:50Z",
          "1985-04-12T24:00:00Z", "1985-04-12T23:60:00Z", "1985-04-12T23:20:50.Z",
          "1985-04-12T23:20:50.1234Z", "1985-04-12T23:20:50+1:00", "1985-04-12T23:20:50+01:60",
          "1985-04-12T23:20:50+14:01", "1985-04-12T23:20:50-12:01", "1985-04-12T23:20:50ZZ",
          "1985-04-12T23:2:50Z", "85-04-12T23:20:50Z", "1985-04-12T23:20:5"})
        EXPECT_EQ(momentFrom(text), std::nullopt) << text;
}

RC_GTEST_PROP(MomentText, AnyMomentComesBackEqual, ()) {
    // Year 1 to year 9998, so that the offset cannot lead out of the four digits.
    const Moment moment{*rc::gen::inRange<std::int64_t>(-62135596800000, 253370764800000),
                        *rc::gen::inRange(-720, 841)};
    RC_ASSERT(momentFrom(rfc3339Text(moment)) == moment);
}

} // namespace
} // namespace latchround
