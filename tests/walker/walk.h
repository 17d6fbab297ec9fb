// A walk: what random hands do one after the other, drawn and shrunk by RapidCheck's state machine.
// Only what decides which steps make sense is its state; what must be on record is the books'
// affair (book.h, forecast.h).
#pragma once

#include <string>
#include <vector>

#include <rapidcheck.h>
#include <rapidcheck/state.h>

#include "tests/walker/walker.h"

namespace latchround::walker {

struct NoState {};

using Step = rc::state::Command<NoState, Walker>;
using Steps = rc::state::Commands<Step>;

/// Up to `most` steps.
rc::Gen<Steps> someSteps(int most);

/// Takes them, and looks through everything at the end; throws Broken.
void take(const Steps& steps, Walker& walker);

} // namespace latchround::walker
