// What every kind of fact has in common as a row: the word and table of its kind, and what it hangs
// on.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "core/evidence/fact.h"

namespace latchround {

struct FactKind {
    std::string_view word;  ///< in fact.kind
    std::string_view table; ///< where its body lies
};

/// In the order of FactBody's alternatives.
inline constexpr std::array<FactKind, 16> fact_kinds{{{"person-joined", "person_joined"},
                                                      {"walkdown-begun", "walkdown_begun"},
                                                      {"walkdown-ended", "walkdown_ended"},
                                                      {"observation", "observation"},
                                                      {"plate-read", "plate_read"},
                                                      {"measured-value", "measured_value"},
                                                      {"run-started", "run_started"},
                                                      {"mark", "mark"},
                                                      {"run-ended", "run_ended"},
                                                      {"caution-answered", "caution_answered"},
                                                      {"note", "note"},
                                                      {"photograph", "photograph"},
                                                      {"deficiency", "deficiency"},
                                                      {"could-not-test", "could_not_test"},
                                                      {"judgement", "judgement"},
                                                      {"taken-back", "taken_back"}}};
static_assert(std::variant_size_v<FactBody> == fact_kinds.size());

/// What a fact refers to besides its person; absent where its kind has no such reference.
struct FactReferences {
    std::optional<std::string> walkdown;
    std::optional<std::string> door;
    std::optional<std::string> run;
};

inline FactReferences referencesOf(const FactBody& body) {
    return std::visit(
        [](const auto& one) {
            FactReferences references;
            if constexpr (requires { one.walkdown; })
                references.walkdown = one.walkdown;
            if constexpr (requires { one.door; })
                references.door = one.door;
            if constexpr (requires { one.run; })
                references.run = one.run;
            return references;
        },
        body);
}

} // namespace latchround
