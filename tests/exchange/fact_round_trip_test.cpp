// Every kind of fact comes back equal from its line, to the last bit of its numbers.
#include <set>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "app/exchange/fact_json.h"
#include "tests/exchange/error_words.h"
#include "tests/exchange/random_fact.h"

namespace latchround::test {
namespace {

RC_GTEST_PROP(FactRoundTrip, EveryKindComesBackEqual, ()) {
    const std::vector<Fact> facts = factOfEachKind();
    RC_ASSERT(facts.size() == std::variant_size_v<FactBodies>);
    std::string lines;
    for (const Fact& fact : facts) {
        const std::string line = jsonLineFrom(fact);
        const auto again = factFromJson(line, "f");
        if (!again)
            RC_LOG() << line << ui::inOneLine(again.error());
        RC_ASSERT(again.has_value());
        RC_ASSERT(*again == fact);
        RC_ASSERT(jsonLineFrom(*again) == line);
        lines += line + "\n";
    }
    const auto all = factsFromJsonLines(lines, "f");
    RC_ASSERT(all.has_value());
    RC_ASSERT(*all == facts);
}

RC_GTEST_PROP(FactRoundTrip, DamagedLinesAreReadOrComplainedOf, ()) {
    std::string line = jsonLineFrom(someFact<Mark>());
    const int changes = *rc::gen::inRange(1, 4);
    for (int i = 0; i < changes; ++i)
        line[*rc::gen::inRange<std::size_t>(0, line.size())] = *rc::gen::arbitrary<char>();
    const auto fact = factFromJson(line, "f");
    if (fact)
        RC_ASSERT(factFromJson(jsonLineFrom(*fact), "f").value() == *fact);
    else
        RC_ASSERT(test::whereOf(fact.error()).starts_with("f") &&
                  !test::whatOf(fact.error()).empty());
}

TEST(FactRoundTrip, KindWordsAreOneForEachKindAndAllDifferent) {
    EXPECT_EQ(std::set<std::string_view>(factKindWords.begin(), factKindWords.end()).size(),
              std::variant_size_v<FactBodies>);
    const Fact fact{{}, Judgement{}};
    EXPECT_NE(jsonLineFrom(fact).find(R"("kind":"judgement")"), std::string::npos);
}

} // namespace
} // namespace latchround::test
