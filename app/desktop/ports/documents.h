// Documents of the vessel, or of the exercise, that is open.
#pragma once

#include "app/desktop/open_vessel.h"
#include "ui/ports/clock.h"
#include "ui/ports/documents.h"

namespace latchround {

class DesktopDocuments : public ui::Documents {
public:
    DesktopDocuments(const OpenVessel& open, const ui::Clock& clock)
        : m_open(open)
        , m_clock(clock) {}

    Result<ui::PaperMade> make(ui::Paper paper, const FactId& walkdown, const QString& door,
                               ui::PaperLanguage language, const Progress& progress) override;
    void show(const QString& path) override;

private:
    const OpenVessel& m_open;
    const ui::Clock& m_clock;
};

} // namespace latchround
