// The tablet's clocks, and ids made of its time.
#pragma once

#include <functional>

#include "app/desktop/clock_and_chance.h"
#include "core/evidence/fact_id.h"
#include "ui/keys/mark_key.h"
#include "ui/ports/clock.h"

namespace latchround {

class DesktopClock : public ui::Clock {
public:
    Moment now() const override { return m_wall(); }
    std::int64_t steadyNow_ns() const override { return m_steady_ns(); }
    FactId newId() override { return m_new_id(); }

    /// New ids come after this one.
    void continueAfter(const FactId& id) { m_ids.continueAfter(id); }

    /// For tests: the clock that marks and practice doors go by.
    void setSteady(std::function<std::int64_t()> clock) { m_steady_ns = std::move(clock); }
    /// For pictures that come out the same twice: ship's time, and the ids of what is recorded.
    void setWall(std::function<Moment()> clock) { m_wall = std::move(clock); }
    void setIds(std::function<FactId()> ids) { m_new_id = std::move(ids); }

private:
    FactIdSequence m_ids;
    std::function<Moment()> m_wall = momentNow;
    std::function<std::int64_t()> m_steady_ns = ui::steadyNow_ns;
    std::function<FactId()> m_new_id = [this] { return nextFactId(m_ids); };
};

} // namespace latchround
