// walkdown: the doors of a walkdown with their verdicts, as a table to read or as JSON.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

struct Show {
    std::string path;                    ///< of the register
    std::optional<std::string> walkdown; ///< id; without it the latest
    bool json = false;
};

Answer showWalkdown(const Show& show, const Catalogue& catalogue);

} // namespace latchround::headless
