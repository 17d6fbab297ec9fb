// The desk while practising: the doors of an exercise, a practice register, and a window of their
// own. It holds nothing of the vessel that was on the screen, and has no port by which anything of
// an exercise could get into a real record.
#pragma once

#include <memory>

#include "app/desktop/open_vessel.h"
#include "app/desktop/ports/documents.h"
#include "app/practice/unfinished.h"
#include "core/practice/stage.h"
#include "core/requirement/catalogue.h"
#include "ui/look/look.h"
#include "ui/ports/attempts.h"
#include "ui/ports/clock.h"
#include "ui/ports/ports.h"

namespace latchround {

class PracticeApp {
public:
    /// `tablet`: whose clock, settings, sound, photographs and attempts are the same in practice.
    PracticeApp(const ui::Ports& tablet, const practice::Exercise& exercise, std::uint32_t seed);

    /// A register for it, and the window. `place`: of the exercise, by which it is found again
    /// where it is broken off.
    Result<> open(const QString& place, Catalogue catalogue, ui::Look& look);
    /// The same with one that was broken off. Refuses it where the exercise is not what it was.
    Result<> goOn(practice::Unfinished broken_off, Catalogue catalogue, ui::Look& look);

    ui::Window* window() const { return m_open.window.get(); }
    const practice::Stage& stage() const { return m_stage; }
    ui::VesselSession& session() const { return *m_open.session; }

private:
    /// The tablet's; an exercise that is kept has its end.
    class Ended : public ui::Attempts {
    public:
        Ended(ui::Attempts& tablet, const practice::Unfinished& so_far)
            : m_tablet(tablet)
            , m_so_far(so_far) {}
        Result<std::vector<practice::Attempt>> finished() const override {
            return m_tablet.finished();
        }
        Result<> keep(const practice::Attempt& attempt) override;

    private:
        ui::Attempts& m_tablet;
        const practice::Unfinished& m_so_far;
    };

    Result<> show(Catalogue catalogue, ui::Look& look);
    /// What the doors did so far.
    Result<> keepSoFar();

    practice::Stage m_stage;
    practice::Unfinished m_so_far;
    ui::Clock& m_clock;
    Ended m_attempts;
    DesktopDocuments m_documents;
    ui::Ports m_ports;
    OpenVessel m_open;
};

} // namespace latchround
