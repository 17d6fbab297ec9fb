// The catalogue by which the doors of the vessel were last shown, where the one in force now grades
// some of them otherwise.
#pragma once

#include <optional>

#include "core/error/error.h"
#include "core/requirement/catalogue.h"
#include "ui/ports/port.h"

namespace latchround::ui {

class FormerRules : public Port {
public:
    /// Null where no door was graded otherwise when the vessel came on the screen, where that was
    /// acknowledged since, and where the former catalogue cannot be read.
    virtual const Catalogue* former() const = 0;
    /// Why it cannot be read, where it is another one and this program does not understand it.
    virtual std::optional<Error> unreadable() const = 0;
    /// Somebody has seen it: from now on the catalogue in force is the one that doors were shown
    /// by.
    virtual Result<> acknowledge() = 0;
};

} // namespace latchround::ui
