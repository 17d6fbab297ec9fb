// The ship's time, the clock that marks are taken by, and ids that follow one another.
#pragma once

#include <cstdint>

#include "core/evidence/stamp.h"
#include "ui/ports/port.h"

namespace latchround::ui {

class Clock : public Port {
public:
    virtual Moment now() const = 0;
    /// The clock of MarkPress::steady_ns.
    virtual std::int64_t steadyNow_ns() const = 0;
    virtual FactId newId() = 0;
};

} // namespace latchround::ui
