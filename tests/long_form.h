// Tests that try many cases at random try twenty times as many where tests/run --long asks for it.
#pragma once

#include <cstdlib>

namespace latchround::test {

/// How many times the usual number of cases.
inline int timesAsMany() {
    return std::getenv("LATCHROUND_LONG") ? 20 : 1;
}

} // namespace latchround::test
