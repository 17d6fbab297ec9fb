// What stands on a paper form is recorded as of who walked and when, not of who types it in.
#pragma once

#include <optional>

#include "core/evidence/stamp.h"

namespace latchround::ui {

struct OnPaper {
    FactId walker;                    ///< who looked at the door
    Moment when;                      ///< as written on the form; not later than now
    std::optional<double> heel_deg{}; ///< at this door; nothing: the walkdown's

    bool operator==(const OnPaper&) const = default;
};

} // namespace latchround::ui
