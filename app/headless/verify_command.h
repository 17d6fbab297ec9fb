// verify: whether a register is sound, and what its signatures and reports rest on still stands.
#pragma once

#include <string>

#include "app/headless/answer.h"

namespace latchround::headless {

/// What was looked at, or every fault.
Answer verifyRegister(const std::string& path);

} // namespace latchround::headless
