// The small invented vessel with what came after its walk: items in every state.
#pragma once

#include "sample_walkdown.h"

namespace latchround {

class SampleItems : public SampleWalkdown {
public:
    /// 5-32 sliding-rate: found, port State control's terms, overdue, assigned to Ove Brandlund.
    /// 5-32 no-hook: rectified. 4-10: withdrawn. 5-31 no-hook: found, nothing said of it.
    SampleItems();

    FactId rate_item;
    FactId hook_item;
};

} // namespace latchround
