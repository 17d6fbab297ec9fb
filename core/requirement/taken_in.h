// What a file says of rows of another file: variants of them for its own ships, and that its ships
// go by another text, as a rule or as advice. It waits as JSON until the files are joined.
#pragma once

#include <string>
#include <vector>

#include "core/error/error.h"

namespace latchround {

struct Catalogue;
class JsonFaults;
class JsonObject;

struct SaidOfOthers {
    Phrase file; ///< stands in errors
    std::string edition;
    std::string issuer;
    std::string variants{}; ///< JSON, as it stands under "variants"; empty where it says nothing
    std::string takes_in{}; ///< the same of "takes_in"
};

/// What the top object says of other files, looked through as far as it can be without them.
SaidOfOthers saidOfOthersFrom(JsonObject& top);

/// Puts it into the rows and profiles of the catalogue; complains of a row that is not there.
void takeIn(Catalogue& catalogue, const SaidOfOthers& said, JsonFaults& faults);

} // namespace latchround
