// What every kind of fact has in common as a row: the table of its kind, and what it hangs on.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <variant>

#include "core/evidence/fact.h"

namespace latchround {

/// Where the body of a kind lies, by its index in FactBody: its word with underscores.
inline std::string bodyTableOf(std::size_t kind) {
    std::string table(factKindWords[kind]);
    std::ranges::replace(table, '-', '_');
    return table;
}

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
