#include "core/requirement/upkeep.h"

namespace latchround {

CalendarDate dueAfter(CalendarDate done, Period every) {
    if (every == Period::Weekly)
        return std::chrono::sys_days(done) + std::chrono::days(7);
    return monthsLater(done, every == Period::Quarterly ? 3 : 12);
}

} // namespace latchround
