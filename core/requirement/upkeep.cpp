#include "core/requirement/upkeep.h"

namespace latchround {

CalendarDate dueAfter(CalendarDate done, Period every) {
    if (every == Period::Weekly)
        return std::chrono::sys_days(done) + std::chrono::days(7);
    const CalendarDate due = done + std::chrono::months(every == Period::Quarterly ? 3 : 12);
    return due.ok() ? due : CalendarDate(due.year() / due.month() / std::chrono::last);
}

} // namespace latchround
