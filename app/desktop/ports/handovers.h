// Handovers of the vessel that is open, through files that the person chooses.
#pragma once

#include <optional>

#include "app/desktop/open_vessel.h"
#include "app/handover/handover.h"
#include "ui/ports/clock.h"
#include "ui/ports/handovers.h"
#include "ui/ports/vessels.h"

namespace latchround {

class DesktopHandovers : public ui::Handovers {
public:
    DesktopHandovers(const OpenVessel& open, const ui::Clock& clock, ui::Vessels& vessels)
        : m_open(open)
        , m_clock(clock)
        , m_vessels(vessels) {}

    Result<std::optional<QString>> give(QWidget* parent, const QString& sealed_for,
                                        const Progress& progress) override;
    Checked<std::optional<ui::HandoverSeen>> lookAt(QWidget* parent,
                                                    const Progress& progress) override;
    Result<> take(const ui::HandoverSeen& seen, const std::vector<Fact>& along,
                  const Progress& progress) override;

private:
    const OpenVessel& m_open;
    const ui::Clock& m_clock;
    ui::Vessels& m_vessels;
    std::optional<Handover> m_seen; ///< the file looked at last
};

} // namespace latchround
