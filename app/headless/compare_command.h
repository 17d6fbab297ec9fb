// rules compare: what differs between two catalogues, and which doors of a vessel would be graded
// otherwise.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "app/headless/answer.h"

namespace latchround::headless {

struct CompareAsked {
    std::string before; ///< a file of rows, or a folder of them
    std::string now;    ///< the same; or a flag's own rules, which then stand over `before`
    /// A flag's own rules over both, where `now` is none.
    std::optional<std::string> flag_rules;
    std::string register_path; ///< of the vessel; empty: no doors are graded
    std::filesystem::path executable_folder;
    bool json = false;
};

/// Tables; as JSON by resources/schema/rules-compare.schema.json.
Answer compareRules(const CompareAsked& asked);

} // namespace latchround::headless
