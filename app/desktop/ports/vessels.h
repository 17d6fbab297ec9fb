// The registers on this tablet, and the way from one to another.
#pragma once

#include <functional>

#include "app/desktop/open_vessel.h"
#include "ui/ports/clock.h"
#include "ui/ports/vessels.h"

namespace latchround {

class DesktopVessels : public ui::Vessels {
public:
    /// Opens it once the event that asked for it is over; errors at once.
    using OpenSoon = std::function<Result<>(const QString& place)>;

    DesktopVessels(const OpenVessel& open, const ui::Clock& clock, OpenSoon open_soon)
        : m_open(open)
        , m_clock(clock)
        , m_open_soon(std::move(open_soon)) {}

    std::vector<ui::VesselOnTablet> others() const override;
    Result<> open(const QString& place) override { return m_open_soon(place); }
    Checked<std::optional<QString>> takeIn(QWidget* parent, const Progress& progress) override;

private:
    const OpenVessel& m_open;
    const ui::Clock& m_clock;
    OpenSoon m_open_soon;
};

} // namespace latchround
