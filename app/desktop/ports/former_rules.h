// The catalogue beside the register of the vessel that is open: the texts by which its doors were
// last shown, kept as texts and graded by anew, so that no verdict is kept twice.
#pragma once

#include "app/desktop/open_vessel.h"
#include "ui/ports/former_rules.h"

namespace latchround {

class DesktopFormerRules : public ui::FormerRules {
public:
    const Catalogue* former() const override { return m_former ? &*m_former : nullptr; }
    std::optional<Error> unreadable() const override { return m_unreadable; }
    Result<> acknowledge() override;

    /// A vessel comes on the screen. Keeps its catalogue where none was kept, and where the one
    /// that was grades every door as now; nothing where another program writes in the register.
    /// Complains where it cannot be kept.
    Result<> look(const QString& register_path, const ui::VesselSession& session);

private:
    Result<> keep();

    QString m_file;
    std::string m_now; ///< the texts in force
    std::optional<Catalogue> m_former;
    std::optional<Error> m_unreadable;
};

} // namespace latchround
