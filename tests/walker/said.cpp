#include "tests/walker/said.h"

#include <type_traits>

#include "app/exchange/fact_json.h"

namespace latchround::walker {

namespace {

template <class Body>
void passOver(Body& one, const Body& other) {
    if constexpr (std::is_same_v<Body, RunStarted>)
        one.heel_deg = other.heel_deg;
    else if constexpr (std::is_same_v<Body, Deficiency>)
        one.repeats = other.repeats;
    else if constexpr (std::is_same_v<Body, MeasuredValue>) {
        one.unit = other.unit;
        one.step = other.step;
    } else if constexpr (std::is_same_v<Body, Mark>) {
        if (one.run.empty())
            one.run = other.run;
        one.device = other.device;
        one.steady_ns = other.steady_ns;
    } else if constexpr (std::is_same_v<Body, RunEnded>) {
        if (one.run.empty())
            one.run = other.run;
        if (one.reason.empty())
            one.reason = other.reason;
    } else if constexpr (std::is_same_v<Body, TakenBack>)
        one.reason = other.reason;
    else if constexpr (std::is_same_v<Body, Photograph>) {
        one.sha256 = other.sha256;
        one.media_type = other.media_type;
    }
}

/// What the body has of this name; empty where it has none.
template <class Take>
std::string named(const FactBody& body, Take take) {
    return std::visit(
        [&](const auto& one) -> std::string {
            if constexpr (requires { take(one); })
                return take(one);
            else
                return {};
        },
        static_cast<const FactBodies&>(body));
}

} // namespace

bool isSaid(const Said& said, const Fact& fact) {
    if (said.supersedes != fact.stamp.supersedes || said.body.index() != fact.body.index())
        return false;
    return std::visit(
        [&](auto expected) {
            const auto& found = std::get<decltype(expected)>(fact.body);
            passOver(expected, found);
            return expected == found;
        },
        static_cast<const FactBodies&>(said.body));
}

std::string lineOf(const Fact& fact) {
    return jsonLineFrom(fact);
}

std::string lineOf(const Said& said) {
    return lineOf(Fact{{"", {}, "", "", said.supersedes}, said.body});
}

std::string walkdownOf(const FactBody& body) {
    return named(body, [](const auto& one) -> decltype((one.walkdown)) { return one.walkdown; });
}

std::string doorOf(const FactBody& body) {
    return named(body, [](const auto& one) -> decltype((one.door)) { return one.door; });
}

bool isNoteOfTyping(const Note& note) {
    return note.text.phrase == "typed-in-from-blank-form";
}

FactId deficiencyOf(const FactBody& body) {
    return named(body,
                 [](const auto& one) -> decltype((one.deficiency)) { return one.deficiency; });
}

FactId runOf(const FactBody& body) {
    return named(body, [](const auto& one) -> decltype((one.run)) { return one.run; });
}

} // namespace latchround::walker
