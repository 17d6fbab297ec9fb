// What a command gives back: the text for standard output, or every fault, one line each.
#pragma once

#include <string>

#include "core/error/error.h"

namespace latchround::headless {

using Answer = Checked<std::string>;

inline tl::unexpected<Errors> refused(const Error& error) {
    return tl::unexpected(Errors{error});
}

} // namespace latchround::headless
