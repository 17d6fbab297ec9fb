// Random facts of every kind for property tests. To be called inside a property.
#pragma once

#include <array>
#include <cmath>
#include <concepts>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <rapidcheck.h>

#include "core/evidence/fact_fields.h"
#include "core/evidence/fact_id.h"
#include "tests/exchange/random_arrangement.h"

namespace latchround::test {

/// Fills every field with something random.
struct FieldFiller {
    void operator()(const char*, std::string& member) { member = *awkwardText(); }
    void operator()(const char*, std::vector<std::string>& member) {
        member = *rc::gen::container<std::vector<std::string>>(awkwardText());
    }
    template <class Part>
    void operator()(const char*, std::vector<Part>& member) {
        member.resize(*rc::gen::inRange<std::size_t>(0, 4));
        for (Part& part : member)
            eachField(part, *this);
    }
    template <Described Part>
    void operator()(const char*, Part& member) {
        eachField(member, *this);
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
    template <class Value>
    void operator()(const char* key, std::optional<Value>& member) {
        if (*rc::gen::arbitrary<bool>())
            (*this)(key, member.emplace());
    }
    template <std::integral Number>
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

inline FactId someId() {
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
    return {someFact<std::variant_alternative_t<Kind, FactBodies>>()...};
}

inline std::vector<Fact> factOfEachKind() {
    return oneOfEachKind(std::make_index_sequence<std::variant_size_v<FactBodies>>{});
}

} // namespace latchround::test
