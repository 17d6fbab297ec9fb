// The vessel on the screen: its arrangement, every fact, and the walkdown that is shown, graded.
// Everything a screen records goes through record(): to the register first, and only when that says
// it is on disk into the ledger, the grades and the screens. What could not be saved waits here and
// is tried again; nothing is dropped.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include <QObject>
#include <QString>
#include <QTimer>

#include "core/deficiency/item.h"
#include "core/evidence/ledger.h"
#include "core/evidence/taps.h"
#include "core/grading/graded_walkdown.h"
#include "core/measure/reaction_model.h"
#include "core/requirement/catalogue.h"
#include "core/store/register.h"
#include "ui/ports/clock.h"
#include "ui/ports/documents.h"
#include "ui/ports/photographs.h"
#include "ui/ports/ports.h"
#include "ui/ports/waiting_store.h"
#include "ui/session/on_paper.h"

namespace latchround::ui {

/// Something to record. `id` where other facts of the same moment refer to it; else one is made.
struct Entry {
    FactBody body;
    std::optional<FactId> supersedes{};
    FactId id{};
};

class VesselSession : public QObject {
    Q_OBJECT
public:
    VesselSession(Register& vessel_register, const Ports& ports, Catalogue catalogue);

    /// Reads the register; call once before anything else.
    Result<> load();

    const Ports& ports() const { return m_ports; }
    Clock& clock() const { return *m_ports.clock; }
    const Arrangement& arrangement() const { return m_arrangement; }
    const Ledger& ledger() const { return m_ledger; }
    const Catalogue& catalogue() const { return m_catalogue; }

    /// The walkdown under way, or the last one; nothing before the first.
    const std::optional<Walkdown>& walkdown() const { return m_walkdown; }
    /// It has not ended, whoever writes in it.
    bool goesOn() const { return m_walkdown && !m_walkdown->end; }
    /// It has not ended, and this program may write in it.
    bool isUnderWay() const { return goesOn() && !isReadOnly(); }
    /// This program may begin another.
    bool mayBegin() const { return !goesOn() && !isReadOnly(); }
    /// Who writes in the register in place of this program; empty: nobody does.
    const Phrase& otherWriter() const { return m_register.otherWriter(); }
    /// Somebody does: here the vessel is only shown.
    bool isReadOnly() const { return !otherWriter().empty(); }
    /// Takes in what another writer has added since.
    Result<> readAgain();
    /// Doors of that walkdown in the order of the walk.
    const std::vector<GradedDoor>& doors() const { return m_doors; }
    const GradedDoor* door(const QString& number) const;
    /// The next door of the walk that is not done, from this one onward and round; empty when all
    /// are.
    QString nextOpenDoor(const QString& from = {}) const;

    /// What became of every deficiency of this vessel, in the order they were found.
    const std::vector<Item>& items() const;
    const Item* item(const FactId& id) const;

    /// Who records from now on.
    const FactId& person() const { return m_person; }
    QString personName() const;
    void setPerson(const FactId& person) { m_person = person; }
    /// Somebody joins; the id is that person's from then on. Who is first to join records.
    FactId join(const QString& name, const Wording& role);

    /// What this person's thumb is worth on this tablet.
    ReactionModel thumb() const {
        return ReactionModel::of(m_ledger.drillOf(m_person, m_register.device()).get());
    }
    /// When that person did the drill on this tablet last.
    std::optional<Moment> drillTime() const {
        return m_ledger.drillTime(m_person, m_register.device());
    }

    /// From now on what is recorded stands on a paper form; nothing: it is seen now. The first of
    /// each door leaves a note of who typed it in.
    void typeFrom(std::optional<OnPaper> on_paper) { m_on_paper = std::move(on_paper); }
    const std::optional<OnPaper>& onPaper() const { return m_on_paper; }

    /// Heel of the next run, degrees; the walkdown's until it is changed. What stands on paper has
    /// a heel of its own.
    double heel_deg() const;
    void setHeel(double degrees);

    FactId newId() { return m_ports.clock->newId(); }
    /// A number nobody chose: the end of a fresh id.
    std::uint32_t chance();

    /// The fact that record() would make of it now.
    Fact stamped(FactBody body);
    /// Complains while something waits to be saved: what leaves the tablet now would lack it.
    Result<> mayPassOn() const;
    /// Makes a paper of this vessel, and keeps what it was made from. Only a blank form is made
    /// while something waits to be saved.
    Result<QString> makePaper(Paper paper, const FactId& walkdown, const QString& door = {},
                              PaperLanguage language = PaperLanguage::English,
                              const Progress& progress = {});
    /// The person who records signs an ended walkdown; not while something waits to be saved.
    Result<> sign(const FactId& walkdown, Capacity capacity);

    /// All entries in one transaction. Complains where they are not saved: they then wait, and what
    /// comes later waits behind them unless the register refuses them. What speaks of a walkdown or
    /// a door that is not the one shown any more, or would replace something else, is refused here,
    /// and refused() is emitted: it would never be saved.
    Result<> record(std::vector<Entry> entries);
    Result<> record(FactBody body, std::optional<FactId> supersedes = std::nullopt);
    Result<> recordPhotograph(Photograph photograph, const PickedPhotograph& picture);

    /// What this person tapped last on this tablet, at this door (empty: anywhere) and can still be
    /// taken back; nothing where something is not saved yet.
    std::optional<Tap> tapToTakeBack(const QString& door = {}) const;
    /// What this person took back last, with no tap since.
    std::optional<Tap> tapToPutBack(const QString& door = {}) const;
    /// Takes it back, or puts it back; recorded like anything else.
    Result<> undo(const Tap& tap);
    /// When something was last seen to be on disk; nothing before the first.
    const std::optional<Moment>& savedAt() const { return m_saved_at; }

    /// Is on record, or waits to be.
    bool knows(const FactId& id) const { return find(id) != nullptr; }
    /// What is not saved yet, and why.
    std::size_t waiting() const { return m_waiting.size(); }
    const Error& whyWaiting() const { return m_why_waiting; }
    /// Facts of it that are not refused, in their order.
    std::vector<const Fact*> waitingFacts() const;
    /// A mark or the end of this run is among them: what is on record does not tell yet how the run
    /// stands.
    bool waitsFor(const FactId& run) const;
    /// What waits is tried again by itself until it is saved: somebody else writes.
    bool isTryingAgain() const { return m_again.isActive(); }
    /// That has not gone on for long, what waits is kept on disk meanwhile, and nothing of it is
    /// refused: nobody needs to be told yet. What is told follows this, and nothing else does.
    bool isSavingShortly() const;
    /// Opens the register afresh and tries again, each in its turn.
    Result<> saveWaiting();
    /// Those that the register refuses for their own sake, each with why.
    std::vector<const WaitingBatch*> refusedBatches() const;
    /// Those of them that begin with these facts wait no longer; the answer says where they are
    /// kept instead. Complains where none of these is refused any more.
    Result<QString> putRefusedAside(const std::set<FactId>& first_facts);
    /// Nothing is lost when the program ends now: nothing waits, or what waits was kept.
    bool isSafeToLeave() const { return m_waiting.empty() || m_is_kept; }
    /// What an earlier start of the program had to leave unsaved, and what it saved after all; call
    /// once, after load.
    void takeUp(std::vector<WaitingBatch> kept);
    /// In place of `before`, which showed the same vessel: who records is the same, and what waits
    /// there waits here, for the same reason, and is tried again as it was. Call once, after load.
    void goOnFrom(const VesselSession& before);

    Result<std::vector<std::byte>> photograph(std::string_view sha256) const;

signals:
    /// Something was saved; after the other signals about it.
    void recorded();
    void doorChanged(QString number);
    void walkdownChanged();
    void waitingChanged();
    /// Something was not recorded and will not be.
    void refused(latchround::Error why);

private:
    using Waiting = WaitingBatch;
    const Fact* find(const FactId& id) const;
    std::optional<Error> refusalOfAny(const std::vector<Fact>& facts) const;
    Result<> save(const Waiting& batch);
    Result<> saveOrKeep(Waiting batch);
    Result<> saveEach();
    /// All that waits may be saved in one transaction.
    bool goTogether() const;
    /// So it is.
    Result<> saveAtOnce();
    Result<> saveOneByOne();
    /// Why a batch was not saved; answers what stood in the way.
    Register::Obstacle noteFailure(Waiting& batch, const Error& why);
    /// Only what was busy is tried again by itself.
    void tryAgainAfter(Register::Obstacle obstacle);
    void tryAgain();
    void takeIn(const std::vector<Fact>& facts);
    void showLatestWalkdown();
    /// Whose taps are recorded: who is signed on, or walked with a paper form.
    const FactId& recorder() const { return m_on_paper ? m_on_paper->walker : m_person; }
    Hand hand() const { return {recorder(), m_register.device()}; }
    /// That moment, or the next one that no tap of this tablet bears, so that each can be told from
    /// the others.
    Moment freeMoment(Moment when);
    /// Now, or as on paper.
    Moment nextMoment() { return freeMoment(m_on_paper ? m_on_paper->when : m_ports.clock->now()); }
    /// Beside the first that is recorded of a door from a paper form: who typed it in, now. Nothing
    /// where that is on record.
    std::optional<Fact> noteOfTyping(const Fact& first);
    bool isOnRecord(const Note& note) const;
    /// Who types in takes back what stands on the paper, not what the walker tapped.
    std::optional<Tap> onThisPaper(std::optional<Tap> tap) const;
    /// What is on record after all waits no longer.
    void dropSaved();
    /// What waits is not what it was.
    void keepWaiting();

    Register& m_register;
    Ports m_ports;
    Catalogue m_catalogue;
    Arrangement m_arrangement;
    Ledger m_ledger;
    std::optional<Walkdown> m_walkdown;
    std::vector<GradedDoor> m_doors;
    mutable std::optional<std::vector<Item>> m_items; ///< worked out when first asked for
    FactId m_person;
    double m_heel_deg = 0;
    std::set<std::int64_t> m_moments; ///< of this tablet's taps, UTC, ms
    std::optional<OnPaper> m_on_paper;
    std::optional<Moment> m_saved_at;
    std::vector<Waiting> m_waiting;
    bool m_is_kept = true; ///< what waits outlives the program
    Error m_why_waiting;
    QTimer m_again{this}; ///< rings while a busy register is tried again
    int m_tries = 0;
};

} // namespace latchround::ui
