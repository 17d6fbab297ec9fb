// What a fact refers to: other facts, doors, a walkdown.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <variant>

#include "core/evidence/fact.h"

namespace latchround {

/// What a fact's own row says it hangs on; null where its kind has no such reference.
struct FactReferences {
    const std::string* walkdown = nullptr;
    const std::string* door = nullptr;
    const std::string* run = nullptr; ///< of a mark or an end
};

inline FactReferences referencesOf(const FactBody& body) {
    return std::visit(
        [](const auto& one) {
            FactReferences references;
            if constexpr (requires { one.walkdown; })
                references.walkdown = &one.walkdown;
            if constexpr (requires { one.door; })
                references.door = &one.door;
            if constexpr (requires { one.run; })
                references.run = &one.run;
            return references;
        },
        body);
}

/// A body of one of these kinds.
template <class Body, class... Kinds>
inline constexpr bool is_one_of = (std::is_same_v<Body, Kinds> || ...);

/// Index of a kind in FactBody.
template <class Body, std::size_t Index = 0>
constexpr std::size_t kindOf() {
    if constexpr (std::is_same_v<std::variant_alternative_t<Index, FactBodies>, Body>)
        return Index;
    else
        return kindOf<Body, Index + 1>();
}

/// Calls `visit(what, id, kind)` for every fact that this one refers to: what it is to it, and the
/// kind it must be of, if any. Its person comes last but one.
template <class Visit>
void eachReference(const Fact& fact, Visit visit) {
    constexpr std::optional<std::size_t> any;
    const auto ofKind = [](std::size_t kind) { return std::optional(kind); };
    std::visit(
        [&](const auto& body) {
            if constexpr (requires { body.walkdown; })
                visit("the walkdown", body.walkdown, ofKind(kindOf<WalkdownBegun>()));
            if constexpr (requires { body.run; })
                visit("the run", body.run, ofKind(kindOf<RunStarted>()));
            if constexpr (requires { body.deficiency; })
                visit("the deficiency", body.deficiency, ofKind(kindOf<Deficiency>()));
            if constexpr (requires { body.repeats; })
                if (body.repeats)
                    visit("the deficiency it repeats,", *body.repeats,
                          ofKind(kindOf<Deficiency>()));
            if constexpr (requires { body.shows; })
                if (body.shows)
                    visit("the fact it shows,", *body.shows, any);
            if constexpr (requires { body.stands; }) {
                visit("the fact that stands,", body.stands, any);
                for (const FactId& over : body.over)
                    visit("the fact that yields,", over, any);
            }
        },
        fact.body);
    visit("the person", fact.stamp.person, ofKind(kindOf<PersonJoined>()));
    if (fact.stamp.supersedes)
        visit("the fact it replaces,", *fact.stamp.supersedes, any);
}

/// Calls `visit(number)` for every door that this fact names.
template <class Visit>
void eachDoorNamed(const FactBody& named_in, Visit visit) {
    std::visit(
        [&](const auto& body) {
            if constexpr (requires { body.door; })
                visit(body.door);
            if constexpr (requires { body.doors; })
                for (const std::string& door : body.doors)
                    visit(door);
        },
        named_in);
}

} // namespace latchround
