// The rules of a flag Administration that stand over the catalogue for the vessel shown.
#pragma once

#include <optional>

#include <QString>

#include "core/error/error.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

class QWidget;

namespace latchround::ui {

class FlagRules : public Port {
public:
    /// Whose they are; empty where nobody's stand.
    virtual QString flag() const = 0;
    /// Asks for a file of a flag's rules and keeps it with the vessel, whose window is then opened
    /// anew. Answers whose they are; every error where it cannot; nothing where the person
    /// cancelled.
    virtual Checked<std::optional<QString>> takeIn(QWidget* parent) = 0;
    /// Goes by the catalogue alone again.
    virtual Result<> leave() = 0;
};

} // namespace latchround::ui
