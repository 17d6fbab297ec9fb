#include "app/register/issue.h"

#include "app/exchange/register_csv.h"

namespace latchround {

bool isEarlier(const Issue& one, const Issue& other) {
    if (one.adopted.utc_ms != other.adopted.utc_ms)
        return one.adopted.utc_ms < other.adopted.utc_ms;
    if (one.adopted.ship_offset_minutes != other.adopted.ship_offset_minutes)
        return one.adopted.ship_offset_minutes < other.adopted.ship_offset_minutes;
    return csvFrom(one.arrangement) < csvFrom(other.arrangement);
}

} // namespace latchround
