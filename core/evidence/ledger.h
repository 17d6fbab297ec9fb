// Every fact known, indexed by walkdown and door. Facts go in, in any order; nothing comes out
// again. The one place where superseding is worked out.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/evidence/fact.h"
#include "core/vessel/door.h"

namespace latchround {

struct Person {
    FactId id;
    std::string name;
    Wording role;
};

struct Walkdown {
    FactId id;
    Stamp begun_by;
    WalkdownBegun plan;
    std::optional<Recorded<WalkdownEnded>> end;
};

/// Which of a door's facts are asked for: by default all that count.
struct EvidenceAsked {
    FactId after;       ///< only facts that are later: by id, and by when they were seen
    std::string not_by; ///< none of what somebody of this name recorded
    /// As it was before this fact: what is later by id neither counts nor supersedes. Empty: now.
    FactId before{};
};

class Ledger {
public:
    /// Adding a fact whose id is already there changes nothing.
    void add(Fact fact);

    /// In the order of their ids.
    std::vector<Person> people() const;
    /// Name of a person by id; empty where nobody is known by it.
    const std::string& nameOf(const std::string& person) const;
    /// In the order they began.
    std::vector<Walkdown> walkdowns() const;
    std::optional<Walkdown> walkdown(std::string_view id) const;
    /// What this walkdown knows of this door; empty evidence where nothing was recorded.
    DoorEvidence evidenceOf(std::string_view walkdown, std::string_view door,
                            const EvidenceAsked& asked = {}) const;
    /// The same as it is graded: runs without what such a door's runs cannot be without are void,
    /// and each judgement comes with what was on record when it was made.
    DoorEvidence evidenceOf(std::string_view walkdown, const Door& door,
                            const EvidenceAsked& asked = {}) const;
    /// Numbers of the doors this walkdown recorded anything about.
    std::vector<std::string> doorsTouched(std::string_view walkdown) const;
    /// The newest drill of this person on this device recorded before the fact `before`; null where
    /// there is none. An empty `before` is now.
    std::shared_ptr<const ThumbDrill> drillOf(const std::string& person, const std::string& device,
                                              const FactId& before = {}) const;
    /// When that drill was done; nothing where there is none.
    std::optional<Moment> drillTime(const std::string& person, const std::string& device) const;
    /// What figures of this walkdown are judged by: the newest limits set before it ended.
    DecisionLimits limitsFor(const std::string& walkdown) const;
    /// Whether an end of this walkdown stands.
    bool hasEnded(const FactId& walkdown) const;
    /// When this upkeep was last recorded as done by itself; walkdowns are not looked at.
    std::optional<Moment> upkeepDone(const std::string& upkeep) const;
    /// The last day of the certificate seen last.
    std::optional<CalendarDate> certificateUntil() const;
    /// What was recorded about this deficiency and counts, by id, itself first.
    std::vector<const Fact*> courseOf(const FactId& deficiency) const;
    /// Ids of all deficiencies that count, in their order.
    std::vector<FactId> deficiencies() const;
    /// Signatures under this walkdown that count, in their order.
    std::vector<Recorded<WalkdownSigned>> signaturesOf(const FactId& walkdown) const;
    /// Keys that somebody on this device accepted, with whose they are.
    std::vector<KeyAccepted> keysAcceptedOn(const std::string& device) const;

    /// What is taken back, undone or put back in the end; the fact itself where it is of another
    /// kind, null where that is not here.
    const Fact* subjectOf(const Fact& fact) const;
    /// The door a fact speaks of, by way of the run, the deficiency or the other fact that it
    /// names; empty where it speaks of none.
    std::string doorOf(const Fact& fact) const;
    /// The newest fact of this device that somebody has signed for; empty where there is none.
    FactId lastSignedOf(const std::string& device) const;

    /// Replaced by a later fact, undone, or yields to another by the newest decision that names
    /// it; by what is earlier than `before`, where that is not empty.
    bool isSuperseded(const FactId& id, const FactId& before = {}) const {
        return isReplaced(id, before) || isUndone(id, before) || yields(id, before);
    }
    /// Taken back by undo, and not put back; never what others rest on.
    bool isUndone(const FactId& id, const FactId& before = {}) const;
    /// A walkdown in which something was recorded at a door, or a deficiency of which something
    /// more was.
    bool isRestedOn(const FactId& id) const;
    const Fact* find(const FactId& id) const;
    /// Everything, by id.
    const std::map<FactId, Fact>& facts() const { return m_facts; }
    std::size_t size() const { return m_facts.size(); }

private:
    using Drills = std::map<FactId, std::shared_ptr<const ThumbDrill>>;
    bool isReplaced(const FactId& id, const FactId& before) const;
    bool isTakenBack(const FactId& id, const FactId& before = {}) const; ///< by undo
    bool yields(const FactId& id, const FactId& before) const;
    /// Marks and end, as they were before the fact `before`.
    void putTogether(RunRecord& run, const FactId& before) const;
    /// The newest of what replaces this fact or takes it back; itself where nothing does.
    const FactId& lastWordOn(const FactId& id) const;
    /// Itself and what was recorded about it, counting or not.
    const std::set<FactId>& courseIds(const FactId& deficiency) const;
    const Fact* newestOf(const std::set<FactId>& ids) const;
    /// The newest end of a walkdown that stands; null while it is under way.
    const Fact* standingEnd(const FactId& walkdown) const;
    const Drills::value_type* newestDrill(const std::string& person, const std::string& device,
                                          const FactId& before) const;

    using Key = std::pair<std::string, std::string>; // walkdown, door unless said otherwise
    std::map<FactId, Fact> m_facts;
    std::map<FactId, std::set<FactId>> m_replaced; // fact -> what replaces it or takes it back
    std::map<FactId, std::set<FactId>> m_undone;   // fact -> what undoes it
    std::map<Key, std::set<FactId>> m_by_door;
    std::map<FactId, std::set<FactId>> m_by_run; // marks and ends
    std::set<FactId> m_walkdowns;
    std::map<FactId, std::set<FactId>> m_walkdown_ends; // walkdown -> ends, of several tablets
    std::map<FactId, Person> m_people;
    std::map<FactId, std::map<FactId, bool>> m_settled; // fact -> decision -> whether it yields
    std::map<FactId, std::set<FactId>> m_courses;       // by deficiency, itself among them
    std::map<FactId, std::set<FactId>> m_signatures;    // by walkdown
    std::set<FactId> m_keys;
    std::map<Key, Drills> m_drills; // person, device
    std::map<FactId, DecisionLimits> m_limits;
    std::map<std::string, std::set<FactId>> m_upkeep; // by id of the upkeep
    std::set<FactId> m_certificates;
};

} // namespace latchround
