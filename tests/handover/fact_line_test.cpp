// The short way of reading facts gives what the long way gives, or nothing.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "app/exchange/fact_json.h"
#include "app/handover/fact_line.h"
#include "tests/exchange/random_fact.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

RC_GTEST_PROP(FactLine, TheShortWayGivesWhatTheLongWayGives, ()) {
    for (const Fact& fact : factOfEachKind()) {
        const std::string line = jsonLineFrom(fact);
        if (const auto plain = factFromPlainLine(line))
            RC_ASSERT(*plain == factFromJson(line, "f").value());
        else
            RC_ASSERT(line.find('\\') != line.npos);
    }
}

RC_GTEST_PROP(FactLine, OfADamagedLineItReadsNothingElse, ()) {
    const std::vector<Fact> facts = factOfEachKind();
    std::string line = jsonLineFrom(facts[*rc::gen::inRange<std::size_t>(0, facts.size())]);
    const int changes = *rc::gen::inRange(1, 4);
    for (int i = 0; i < changes; ++i) {
        const auto at = *rc::gen::inRange<std::size_t>(0, line.size());
        switch (*rc::gen::inRange(0, 3)) {
        case 0:
            line[at] = *rc::gen::oneOf(rc::gen::arbitrary<char>(),
                                       rc::gen::element('"', ',', '{', '}', '-', '0', '.', 'e'));
            break;
        case 1:
            line.erase(at, 1);
            break;
        default:
            line.insert(at, 1, *rc::gen::element('0', '-', '.', ',', '"', ' ', '}'));
        }
    }
    if (const auto plain = factFromPlainLine(line)) {
        const auto fact = factFromJson(line, "f");
        if (!fact)
            RC_LOG() << line << "\n" << ui::inOneLine(fact.error());
        RC_ASSERT(fact.has_value());
        RC_ASSERT(*plain == *fact);
    }
}

TEST(FactLine, NumbersThatJsonDoesNotKnowGoTheLongWay) {
    const std::string line =
        R"({"id":"018f0000-0000-7000-8000-000000000001","at":"2024-04-23T10:00:00.000+01:00",)"
        R"("person":"p","device":"d","kind":"measured-value","walkdown":"w","door":"1",)"
        R"("requirement":"r","value":@,"unit":"mm"})";
    const auto with = [&](const char* number) {
        std::string all = line;
        all.replace(all.find('@'), 1, number);
        return factFromPlainLine(all).has_value();
    };
    for (const char* good : {"1", "-1.5", "0.25", "1e3", "1.5E-7", "0"})
        EXPECT_TRUE(with(good)) << good;
    for (const char* bad : {"", "+1", "01", ".5", "1.", "1e", "nan", "inf", "0x1", "1e999", "-"})
        EXPECT_FALSE(with(bad)) << bad;
}

TEST(FactLine, FactsComeOutByIdAndNoneTwice) {
    const std::vector<std::string> lines = [] {
        std::vector<std::string> all;
        for (const char* end : {"3", "1", "2"})
            all.push_back(jsonLineFrom(
                {{"018f0000-0000-7000-8000-00000000000" + std::string(end), {}, "p", "d", {}},
                 PersonJoined{"P", ""}}));
        return all;
    }();
    const auto facts =
        factsById(lines[0] + "\n" + lines[1] + "\n" + lines[2] + "\n" + lines[1] + "\n", "f");
    ASSERT_TRUE(facts) << ui::inOneLine(facts.error());
    ASSERT_EQ(facts->size(), 3u);
    EXPECT_LT((*facts)[0].stamp.id, (*facts)[1].stamp.id);
    EXPECT_LT((*facts)[1].stamp.id, (*facts)[2].stamp.id);
}

} // namespace
} // namespace latchround::test
