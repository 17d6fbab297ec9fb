// rules: every row that doors are graded by, with its limit, dates, exemptions and text; of a
// vessel or one of its doors, whether it binds there and why.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "app/headless/collect_command.h"

namespace latchround::headless {

struct RulesAsked {
    std::string register_path;           ///< of the vessel; empty: of none in particular
    std::optional<std::string> door;     ///< its number
    std::optional<std::string> row;      ///< id of a row: its whole page
    std::optional<std::string> to;       ///< PDF to write
    std::optional<std::string> language; ///< of that PDF: "es"; without it English
    bool json = false;
    bool practice = false; ///< mark every page as practice
    bool replace = false;  ///< a file that is there already
};

/// A table; of one row its page; as JSON by resources/schema/rules.schema.json. Needs a
/// QGuiApplication where it writes a PDF.
Answer showRules(const RulesAsked& asked, const Catalogue& catalogue);

/// `register_path`: beside it a flag's own rules are looked for. Answers the command, which takes
/// other commands.
CLI::App* addRulesCommand(CLI::App& program, RulesAsked& asked, std::string& register_path,
                          std::function<Answer()>& command, const Graded& graded);

} // namespace latchround::headless
