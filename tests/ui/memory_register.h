// A world outside that lives in memory, and a small ship in it, for tests of the screens: nothing
// is written, the clock stands where the test sets it, ids come in a fixed order, and every port
// can be made to fail.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/evidence/fact_id.h"
#include "tests/store/memory_register.h"
#include "ui/keys/mark_key.h"
#include "ui/ports/exercises.h"
#include "ui/ports/handovers.h"
#include "ui/ports/vessels.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

/// What every port answers, and what it was asked.
class FakePorts {
public:
    FakePorts();
    FakePorts(const FakePorts&) = delete;
    FakePorts& operator=(const FakePorts&) = delete;
    const Ports& all() const { return m_ports; }

    /// 2026-11-25 10:42:00 ship's time, one hour before UTC.
    Moment clock{1795599720000, 60};
    void advance(std::int64_t milliseconds) { clock.utc_ms += milliseconds; }
    Moment now() const { return clock; }
    FactId newId() { return m_ids.next(clock.utc_ms, {}); }
    std::function<std::int64_t()> steady_ns = ui::steadyNow_ns;

    std::optional<PickedPhotograph> picture; ///< what the person picks
    bool camera = false;
    std::optional<Error> report_failure;
    std::vector<FactId> reports; ///< walkdowns that papers were made of
    std::vector<Paper> papers;   ///< which, in the same order
    std::vector<PaperLanguage> paper_languages;
    std::vector<QString> shown; ///< files handed to Documents::show
    std::vector<VesselOnTablet> on_tablet;
    std::vector<QString> opened; ///< places handed to Vessels::open
    std::optional<Error> open_failure;
    std::optional<QString> taken_in; ///< what takeIn of a register, an exercise or rules answers
    Errors taken_in_faults;          ///< or these, where there are any
    QString flag;                    ///< whose rules stand over the catalogue
    std::shared_ptr<const Catalogue> former; ///< by which the doors were last shown
    std::optional<Error> former_unreadable;  ///< or why that cannot be read
    std::map<QString, QString> settings;
    std::vector<WaitingBatch> kept; ///< what was kept as waiting last
    std::optional<Error> keep_failure;
    std::vector<WaitingBatch> aside; ///< everything put aside
    bool loudspeaker = false;
    bool sounding = false;
    int cues = 0;                         ///< marks that were answered by tick and shake
    std::vector<QString> given;           ///< keys that handover files were sealed for, or empty
    std::optional<HandoverSeen> seen;     ///< what Handovers::lookAt answers
    std::vector<std::vector<Fact>> taken; ///< what was recorded along with each file taken in
    std::vector<ExerciseOffered> offered;
    std::optional<QString>
        right_password; ///< the only one that opens an exercise, where there is one
    std::vector<std::pair<QString, QString>>
        practised; ///< places and passwords with which one began
    std::optional<ExerciseUnfinished> broken_off;
    std::vector<QString> gone_on; ///< passwords handed to Exercises::goOn
    std::vector<practice::Attempt> finished;

    /// In place of the one that keeps what waits in memory.
    void setWaitingStore(WaitingStore& store) { m_ports.waiting = &store; }

private:
    /// Each small port over what stands above.
    struct Each;
    std::shared_ptr<Each> m_each;
    Ports m_ports;
    FactIdSequence m_ids;
};

/// A vessel of three zones and two decks with a handful of doors: "5-31" and "5-32" in bulkhead
/// 2/3 on deck 5, "7-02" in bulkhead 2/3 on deck 7, "5-11" in bulkhead 1/2 on deck 5, "5-40" in a
/// stairway of zone 3.
Arrangement smallVessel();

/// A plan that was read out: these doors, walked by this person.
WalkdownBegun plannedBy(const std::string& name, const std::string& scope,
                        std::vector<std::string> doors);

/// A register of the small vessel with one person, Maren Tollefsby, and a session over it. Loaded
/// with whatever was put into the register before `load`.
struct SmallShip {
    MemoryRegister vessel_register{smallVessel()};
    FakePorts ports;
    std::unique_ptr<VesselSession> session;
    FactId person;

    SmallShip();
    /// A walkdown of these doors (all, in walk order, where empty), begun now by the person.
    FactId begun(std::vector<std::string> doors = {});
    void ended(const FactId& walkdown);
    /// A fact of that person's, now; answers its id.
    FactId put(FactBody body);
    /// Makes the session and loads it.
    VesselSession& load();
};

} // namespace latchround::ui
