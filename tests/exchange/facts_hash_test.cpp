#include <gtest/gtest.h>

#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"

namespace latchround {
namespace {

std::string hashOf(std::string_view text) {
    return sha256Hex(std::as_bytes(std::span(text)));
}

// FIPS 180-4, the examples that NIST publishes beside it for SHA-256.
TEST(FactsHash, PublishedExamples) {
    EXPECT_EQ(hashOf("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(hashOf("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(hashOf(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(FactsHash, IsThatOfTheLinesWithTheirBreaks) {
    const Fact one{{"a", {1, 60}, "a", "tablet", {}}, PersonJoined{"Maren Holt", "surveyor"}};
    const Fact other{{"b", {2, 60}, "a", "tablet", {}}, TakenBack{"slip"}};
    const std::vector<const Fact*> facts{&one, &other};
    EXPECT_EQ(factsSha256(facts), hashOf(jsonLineFrom(one) + "\n" + jsonLineFrom(other) + "\n"));
    EXPECT_EQ(factsSha256({}), hashOf(""));
}

} // namespace
} // namespace latchround
