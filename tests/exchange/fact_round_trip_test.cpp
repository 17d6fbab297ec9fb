// Every kind of fact comes back equal from its line, to the last bit of its numbers.
#include <cmath>
#include <set>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "app/exchange/fact_fields.h"
#include "app/exchange/fact_json.h"
#include "core/evidence/fact_id.h"
#include "tests/exchange/random_arrangement.h"

namespace latchround::test {
namespace {

/// Fills every field with something random.
struct FieldFiller {
    void operator()(const char*, std::string& member) { member = *awkwardText(); }
    void operator()(const char*, std::vector<std::string>& member) {
        member = *rc::gen::container<std::vector<std::string>>(awkwardText());
    }
    void operator()(const char*, std::vector<ThumbTrial>& member) {
        member.resize(*rc::gen::inRange<std::size_t>(0, 4));
        for (ThumbTrial& trial : member)
            eachField(trial, *this);
    }
    void operator()(const char*, std::optional<SampleDrawn>& member) {
        if (*rc::gen::arbitrary<bool>())
            eachField(member.emplace(), *this);
    }
    void operator()(const char*, int& member) { member = *rc::gen::arbitrary<int>(); }
    void operator()(const char*, CalendarDate& member) {
        member = std::chrono::sys_days(std::chrono::days(*rc::gen::inRange(0, 40'000)));
    }
    void operator()(const char*, bool& member) { member = *rc::gen::arbitrary<bool>(); }
    void operator()(const char*, double& member) {
        member = *rc::gen::suchThat(rc::gen::arbitrary<double>(),
                                    [](double value) { return std::isfinite(value); });
    }
    void operator()(const char*, Side& member) {
        member = *rc::gen::element(Side::None, Side::One, Side::Two);
    }
    void operator()(const char*, std::optional<FireClass>& member) {
        if (*rc::gen::arbitrary<bool>())
            member = fireClassWords[*rc::gen::inRange<std::size_t>(0, fireClassWords.size())].value;
    }
    void operator()(const char*, std::optional<std::string>& member) {
        if (*rc::gen::arbitrary<bool>())
            member = *awkwardText();
    }
    template <class Number>
    void operator()(const char*, std::optional<Number>& member) {
        if (*rc::gen::arbitrary<bool>())
            member = *rc::gen::oneOf(rc::gen::arbitrary<Number>(),
                                     rc::gen::element(std::numeric_limits<Number>::min(),
                                                      std::numeric_limits<Number>::max()));
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const char*, Closed& member) {
        const auto& words = wordsFor(Closed{});
        member = words[*rc::gen::inRange<std::size_t>(0, words.size())].value;
    }
};

FactId someId() {
    std::array<std::uint8_t, 10> random{};
    for (std::uint8_t& byte : random)
        byte = *rc::gen::arbitrary<std::uint8_t>();
    return factIdOf(*rc::gen::inRange<std::int64_t>(0, std::int64_t{1} << 48), random);
}

template <class Body>
Fact someFact() {
    Fact fact;
    fact.stamp = {someId(),
                  {*rc::gen::inRange<std::int64_t>(0, 4102444800000), *rc::gen::inRange(-720, 841)},
                  *awkwardText(),
                  *awkwardText(),
                  std::nullopt};
    if (*rc::gen::arbitrary<bool>())
        fact.stamp.supersedes = someId();
    Body body;
    eachField(body, FieldFiller{});
    fact.body = std::move(body);
    return fact;
}

template <std::size_t... Kind>
std::vector<Fact> oneOfEachKind(std::index_sequence<Kind...>) {
    return {someFact<std::variant_alternative_t<Kind, FactBody>>()...};
}

constexpr auto all_kinds = std::make_index_sequence<std::variant_size_v<FactBody>>{};

RC_GTEST_PROP(FactRoundTrip, EveryKindComesBackEqual, ()) {
    const std::vector<Fact> facts = oneOfEachKind(all_kinds);
    RC_ASSERT(facts.size() == std::variant_size_v<FactBody>);
    std::string lines;
    for (const Fact& fact : facts) {
        const std::string line = jsonLineFrom(fact);
        const auto again = factFromJson(line, "f");
        if (!again)
            RC_LOG() << line << inOneLine(again.error());
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
        RC_ASSERT(fact.error().where.starts_with("f") && !fact.error().what.empty());
}

TEST(FactRoundTrip, KindWordsAreOneForEachKindAndAllDifferent) {
    EXPECT_EQ(std::set<std::string_view>(factKindWords.begin(), factKindWords.end()).size(),
              std::variant_size_v<FactBody>);
    const Fact fact{{}, Judgement{}};
    EXPECT_NE(jsonLineFrom(fact).find(R"("kind":"judgement")"), std::string::npos);
}

} // namespace
} // namespace latchround::test
