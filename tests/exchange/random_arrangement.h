// Random sound arrangements for property tests.
#pragma once

#include <rapidcheck.h>

#include "core/vessel/arrangement.h"

namespace latchround::test {

rc::Gen<Arrangement> soundArrangement();

/// Text with the characters that CSV and JSON stumble over.
rc::Gen<std::string> awkwardText();

} // namespace latchround::test
