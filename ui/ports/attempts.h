// How the exercises went that were finished on this tablet.
#pragma once

#include <vector>

#include "core/error/error.h"
#include "core/practice/debrief.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

namespace latchround::ui {

class Attempts : public Port {
public:
    /// The oldest first.
    virtual Result<std::vector<practice::Attempt>> finished() const = 0;
    virtual Result<> keep(const practice::Attempt& attempt) = 0;
};

} // namespace latchround::ui
