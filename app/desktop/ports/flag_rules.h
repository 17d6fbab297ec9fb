// The rules of a flag that lie beside the register of the vessel that is open.
#pragma once

#include "app/desktop/open_vessel.h"
#include "core/requirement/catalogue.h"
#include "ui/ports/flag_rules.h"
#include "ui/ports/vessels.h"

namespace latchround {

class DesktopFlagRules : public ui::FlagRules {
public:
    /// `catalogue`: over which they stand.
    DesktopFlagRules(const OpenVessel& open, const Catalogue& catalogue, ui::Vessels& vessels)
        : m_open(open)
        , m_catalogue(catalogue)
        , m_vessels(vessels) {}

    QString flag() const override;
    Checked<std::optional<QString>> takeIn(QWidget* parent) override;
    Result<> leave() override;

private:
    const OpenVessel& m_open;
    const Catalogue& m_catalogue;
    ui::Vessels& m_vessels;
};

} // namespace latchround
