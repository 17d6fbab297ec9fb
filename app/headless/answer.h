// What a command gives back: the text for standard output, or every fault, one line each.
#pragma once

#include <string>

#include "core/complaint.h"

namespace latchround::headless {

using Answer = Checked<std::string>;

inline tl::unexpected<Complaints> refused(const Complaint& complaint) {
    return tl::unexpected(Complaints{complaint});
}

} // namespace latchround::headless
