// A day to choose: keys for the usual ones, and a line to write another.
#pragma once

#include <utility>
#include <vector>

#include "core/vessel/calendar_date.h"
#include "ui/look/part.h"

namespace latchround::ui {

class DayPicker : public Part {
    Q_OBJECT
public:
    using Usual = std::pair<QString, CalendarDate>; ///< what stands on the key, and its day

    /// `name`: objectName of the line; of the key that keeps it, with "-keep" behind it.
    DayPicker(const char* name, const std::vector<Usual>& usual, QWidget* parent = nullptr);

signals:
    void picked(latchround::CalendarDate day);
};

} // namespace latchround::ui
