// The desktop program around one vessel: it joins the vessel that is open to the ports through
// which the screens ask for the world outside. Opening another vessel takes register, session and
// window down and builds them anew.
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QTimer>

#include "app/desktop/open_vessel.h"
#include "app/desktop/ports/attempts.h"
#include "app/desktop/ports/clock.h"
#include "app/desktop/ports/documents.h"
#include "app/desktop/ports/exercises.h"
#include "app/desktop/ports/flag_rules.h"
#include "app/desktop/ports/former_rules.h"
#include "app/desktop/ports/handovers.h"
#include "app/desktop/ports/photographs.h"
#include "app/desktop/ports/settings.h"
#include "app/desktop/ports/signing.h"
#include "app/desktop/ports/sound.h"
#include "app/desktop/ports/vessels.h"
#include "app/desktop/ports/waiting_store.h"
#include "core/requirement/catalogue.h"
#include "ui/look/look.h"
#include "ui/ports/ports.h"
#include "ui/window/vessel_choice.h"

namespace latchround {

class PracticeApp;

class DesktopApp {
public:
    /// `catalogue_notice`: shown at the start, where there is something to say.
    DesktopApp(Catalogue catalogue, std::optional<Error> catalogue_notice, ui::Look& look);
    virtual ~DesktopApp();
    DesktopApp(const DesktopApp&) = delete;
    DesktopApp& operator=(const DesktopApp&) = delete;

    /// Opens a register file and shows it; on an error what was shown stays.
    Result<> open(const QString& path);
    /// For the start: opens the register, or shows the vessels there are and why this one is not
    /// open.
    void openOrChoose(const QString& path);
    /// Null while none is open.
    ui::Window* window() const { return m_open.window.get(); }
    /// What stands in its place then.
    ui::VesselChoice* vesselChoice() const { return m_choice.get(); }
    /// The exercise on the screen; null while nobody practises.
    PracticeApp* practiceApp() const { return m_practice.get(); }
    /// What the vessel's window asks.
    const ui::Ports& ports() const { return m_ports; }
    DesktopClock& clock() { return m_clock; }
    /// For tests: the lot by which an exercise draws.
    void setLot(std::function<std::uint32_t()> lot) { m_lot = std::move(lot); }
    /// For tests: a machine that answers otherwise. Before open().
    void setPorts(const ui::Ports& ports) { m_ports = ports; }

protected:
    /// Takes down what is on the screen, which asks its ports to the last.
    void close();

private:
    /// The catalogue that a vessel goes by, and what is to be said of it.
    struct Rules {
        Catalogue catalogue;
        Errors notices;
    };
    Rules rulesFor(const QString& register_path) const;
    /// The choices that words are made by, as they are set now.
    QString wordsSetting() const;
    /// Language and units are from now on as they are set; windows that are there stay as they are.
    void speakAsSet();
    /// The same vessel, or another, once the event that asked for it is over.
    Result<> openSoon(const QString& path);
    /// The register that openSoon() has opened already, or another one.
    Result<std::unique_ptr<SqliteRegister>> opened(const QString& path);
    /// What waits of this vessel, into its new session: as it stood on the screen, or as it was
    /// kept. What of it could not be read is answered.
    std::optional<Error> takeUpWaiting(ui::VesselSession& session, const QString& path,
                                       const std::string& device);
    /// The same vessel in a new window, once the event that asked for it is over.
    void makeAnew();
    /// As new, or as it was broken off.
    Result<> practise(const practice::Exercise& exercise, const QString& place,
                      std::optional<practice::Unfinished> broken_off);
    /// Once the event that asked for it is over.
    void endPractice();

    Catalogue m_catalogue;
    std::optional<Error> m_catalogue_notice;
    ui::Look& m_look;
    QString m_next;  ///< to be opened when the event that asked for it is over
    QString m_words; ///< the choices that the window's words were made by
    QTimer m_change_over;
    QTimer m_back;  ///< from practice to the vessel
    QTimer m_other; ///< looks what another program did: added something, or took the log away
    std::function<std::uint32_t()> m_lot = [this] { return m_open.session->chance(); };
    OpenVessel m_open;
    DesktopClock m_clock;
    DesktopSettings m_settings;
    DesktopSound m_sound{m_settings};
    DesktopPhotographs m_photographs;
    DesktopDocuments m_documents{m_open, m_clock};
    DesktopAttempts m_attempts;
    DesktopWaiting m_waiting{m_open};
    DesktopSigning m_signing{m_open};
    DesktopVessels m_vessels;
    DesktopHandovers m_handovers{m_open, m_clock, m_vessels};
    DesktopExercises m_exercises;
    DesktopFlagRules m_flag_rules{m_open, m_catalogue, m_vessels};
    DesktopFormerRules m_former_rules;
    ui::Ports m_ports;
    std::unique_ptr<SqliteRegister> m_opened; ///< of m_next, until the event that asked is over
    std::unique_ptr<ui::VesselChoice> m_choice;
    std::unique_ptr<PracticeApp> m_practice;
};

} // namespace latchround
