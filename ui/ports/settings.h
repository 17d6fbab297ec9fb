// Choices about the screen that outlive the program: light, gloves, calm motion.
#pragma once

#include <QString>

#include "ui/ports/port.h"

namespace latchround::ui {

class Settings : public Port {
public:
    virtual QString setting(const QString& name) const = 0;
    virtual void keepSetting(const QString& name, const QString& value) = 0;
};

} // namespace latchround::ui
