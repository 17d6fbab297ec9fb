// collect: handover files of a fleet into one database ashore.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace CLI {
class App;
}

namespace latchround::headless {

struct CollectAsked {
    std::string into; ///< URL of the database
    std::vector<std::string> files;
    std::vector<std::string> accept_keys; ///< public keys in hex
};

/// Progress goes to standard error. Where some files are refused the others are in all the same, so
/// the summary is printed here and the faults are the answer.
Answer collect(const CollectAsked& asked, const Catalogue& catalogue);

/// `graded` runs a command with the catalogue that was asked for.
using Graded = std::function<std::function<Answer()>(std::function<Answer(const Catalogue&)>)>;
void addCollectCommand(CLI::App& program, CollectAsked& asked, std::function<Answer()>& command,
                       const Graded& graded);

} // namespace latchround::headless
