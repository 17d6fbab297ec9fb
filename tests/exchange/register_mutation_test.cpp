// Damaged files: never a crash, never half a register, always a place.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/vessel/arrangement_check.h"
#include "tests/exchange/random_arrangement.h"
#include "tests/exchange/sample_register.h"

namespace latchround::test {
namespace {

void holdsTogetherOrComplains(const std::string& csv) {
    const auto result = read(csv);
    if (result) {
        RC_ASSERT(faultsOf(*result).empty());
        const auto again = read(csvFrom(*result));
        RC_ASSERT(again.has_value());
        RC_ASSERT(*again == *result);
        return;
    }
    RC_ASSERT(!result.error().empty());
    for (const Error& error : result.error()) {
        RC_ASSERT(whereOf(error).starts_with("fleet.csv"));
        RC_ASSERT(!whatOf(error).empty());
        RC_ASSERT(!remedyOf(error).empty());
    }
}

RC_GTEST_PROP(RegisterMutation, AnyByteChangedOrLostIsReadOrComplainedOf, ()) {
    std::string csv = sample_csv;
    const int changes = *rc::gen::inRange(1, 6);
    for (int i = 0; i < changes; ++i) {
        const auto at = *rc::gen::inRange<std::size_t>(0, csv.size());
        const char byte = *rc::gen::oneOf(rc::gen::arbitrary<char>(),
                                          rc::gen::element('"', ',', ';', '\n', '\r', '\0', ' '));
        switch (*rc::gen::inRange(0, 4)) {
        case 0:
            csv[at] = byte;
            break;
        case 1:
            csv.insert(at, 1, byte);
            break;
        case 2:
            csv.erase(at, *rc::gen::inRange<std::size_t>(1, 40));
            break;
        default:
            csv.insert(at, csv.substr(*rc::gen::inRange<std::size_t>(0, csv.size()), 60));
        }
    }
    holdsTogetherOrComplains(csv);
}

RC_GTEST_PROP(RegisterMutation, AnyBytesAtAllAreReadOrComplainedOf, ()) {
    holdsTogetherOrComplains(*rc::gen::arbitrary<std::string>());
}

TEST(RegisterMutation, ManyBadQuotesEndInErrorsInReasonableTime) {
    std::string csv = sample_csv;
    for (int i = 0; i < 20000; ++i)
        csv += "deck,\"x" + std::to_string(i) + ",\n";
    const auto result = read(csv);
    ASSERT_FALSE(result);
    EXPECT_GE(result.error().size(), 20u);
    EXPECT_LT(result.error().size(), 100u);
}

} // namespace
} // namespace latchround::test
