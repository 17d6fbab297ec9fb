// What a fact refers to: other facts, doors, a walkdown. Read off the roles of its fields.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

#include "core/error/register_errors.h"
#include "core/evidence/fact_fields.h"

namespace latchround {

/// What a fact's own row says it hangs on; null where its kind has no such reference.
struct FactReferences {
    const std::string* walkdown = nullptr;
    const std::string* door = nullptr;
    const std::string* run = nullptr; ///< of a mark or an end
    /// The fact by way of which it speaks of a door: its run, its deficiency, what it lets stand.
    const std::string* by_way_of = nullptr;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role>, const Member& member) {
        if constexpr (Role == FieldRole::Walkdown)
            walkdown = &member;
        if constexpr (Role == FieldRole::Door)
            door = &member;
        if constexpr (Role == FieldRole::Run)
            run = &member;
        if constexpr (Role == FieldRole::Run || Role == FieldRole::Deficiency ||
                      Role == FieldRole::Stands)
            by_way_of = &member;
    }
    void operator()(const char*, const auto&) {}
};

inline FactReferences referencesOf(const FactBody& body) {
    return std::visit(
        [](const auto& one) {
            FactReferences references;
            eachField(one, references);
            return references;
        },
        body);
}

inline KindRules rulesFor(const FactBody& body) {
    return std::visit([](const auto& one) { return rulesOf<std::remove_cvref_t<decltype(one)>>; },
                      body);
}

/// Says of another fact that it does not count, or that it does again.
inline bool takesBack(const FactBody& body) {
    return rulesFor(body).undo == Undo::ByWhatItNames;
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

/// What a field names another fact as.
struct Reference {
    const PhraseCode<1>* what;
    std::optional<std::size_t> kind; ///< that it must be of, if any
};

/// Nothing where the field names no fact.
constexpr std::optional<Reference> referenceBy(FieldRole role) {
    switch (role) {
    case FieldRole::Walkdown:
        return Reference{&errors::its_walkdown, kindOf<WalkdownBegun>()};
    case FieldRole::Run:
        return Reference{&errors::its_run, kindOf<RunStarted>()};
    case FieldRole::Deficiency:
        return Reference{&errors::its_deficiency, kindOf<Deficiency>()};
    case FieldRole::Repeats:
        return Reference{&errors::what_it_repeats, kindOf<Deficiency>()};
    case FieldRole::Shows:
        return Reference{&errors::what_it_shows, {}};
    case FieldRole::Stands:
        return Reference{&errors::what_stands, {}};
    case FieldRole::Yields:
        return Reference{&errors::what_yields, {}};
    case FieldRole::Door:
    case FieldRole::Row:
    case FieldRole::Side:
    case FieldRole::Question:
    case FieldRole::Doors:
    case FieldRole::Phrase:
        break;
    }
    return std::nullopt;
}

/// Calls `visit(text)` for each text in a field: it, that which may be absent, or those of a list.
template <class Visit>
void eachText(const std::string& text, const Visit& visit) {
    visit(text);
}
template <class Visit>
void eachText(const std::optional<std::string>& text, const Visit& visit) {
    if (text)
        visit(*text);
}
template <class Visit>
void eachText(const std::vector<std::string>& texts, const Visit& visit) {
    for (const std::string& text : texts)
        visit(text);
}

template <class Visit>
struct ReferenceVisitor {
    const Visit& visit;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role>, const Member& member) const {
        constexpr std::optional<Reference> reference = referenceBy(Role);
        if constexpr (reference.has_value())
            eachText(member,
                     [&](const FactId& id) { visit(*reference->what, id, reference->kind); });
    }
    void operator()(const char*, const auto&) const {}
};

/// Calls `visit(what, id, kind)` for every fact that this one refers to: the code of what it is to
/// it, and the kind it must be of, if any. Its person comes last but one.
template <class Visit>
void eachReference(const Fact& fact, const Visit& visit) {
    std::visit([&](const auto& body) { eachField(body, ReferenceVisitor<Visit>{visit}); },
               fact.body);
    visit(errors::its_person, fact.stamp.person, std::optional(kindOf<PersonJoined>()));
    if (fact.stamp.supersedes)
        visit(errors::what_it_replaces, *fact.stamp.supersedes, std::optional<std::size_t>());
}

template <class Visit>
struct DoorVisitor {
    const Visit& visit;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role>, const Member& member) const {
        if constexpr (Role == FieldRole::Door || Role == FieldRole::Doors)
            eachText(member, visit);
    }
    void operator()(const char*, const auto&) const {}
};

/// Calls `visit(number)` for every door that this fact names.
template <class Visit>
void eachDoorNamed(const FactBody& named_in, const Visit& visit) {
    std::visit([&](const auto& body) { eachField(body, DoorVisitor<Visit>{visit}); }, named_in);
}

} // namespace latchround
