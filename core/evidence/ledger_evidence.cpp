// What the ledger knows of one door: its facts sorted, its runs put together again.
#include <algorithm>

#include "core/evidence/door_facts.h"
#include "core/evidence/ledger.h"
#include "core/evidence/mark_interval.h"
#include "core/evidence/same_name.h"

namespace latchround {

namespace {

/// Newer of two facts about the same thing; ids sort by time.
template <class Body>
void keepNewest(std::optional<Recorded<Body>>& slot, const Stamp& stamp, const Body& body) {
    if (!slot || slot->stamp.id < stamp.id)
        slot = Recorded<Body>{stamp, body};
}

template <class Map, class Key, class Body>
void keepNewest(Map& map, const Key& key, const Stamp& stamp, const Body& body) {
    const auto [slot, fresh] = map.try_emplace(key, Recorded<Body>{stamp, body});
    if (!fresh && slot->second.stamp.id < stamp.id)
        slot->second = Recorded<Body>{stamp, body};
}

struct Sorter {
    const Stamp& stamp;
    DoorEvidence& into;

    void operator()(const Observation& body) const {
        keepNewest(into.observations, std::pair{body.requirement, body.side}, stamp, body);
    }
    void operator()(const MeasuredValue& body) const {
        keepNewest(into.measured, body.requirement, stamp, body);
    }
    void operator()(const Judgement& body) const {
        keepNewest(into.judgements, body.requirement, stamp, body);
    }
    void operator()(const CouldNotTest& body) const {
        keepNewest(into.could_not_test, body.requirement, stamp, body);
    }
    void operator()(const PlateRead& body) const { keepNewest(into.plate, stamp, body); }
    void operator()(const CautionAnswered& body) const { into.cautions.push_back({stamp, body}); }
    void operator()(const Note& body) const { into.notes.push_back({stamp, body}); }
    void operator()(const Photograph& body) const { into.photographs.push_back({stamp, body}); }
    void operator()(const Deficiency& body) const { into.deficiencies.push_back({stamp, body}); }
    void operator()(const RunStarted& body) const {
        into.runs.push_back({stamp.id,
                             body.kind,
                             body.release,
                             body.release_group.value_or(""),
                             body.heel_deg,
                             stamp.when,
                             {},
                             {}});
    }
    template <class Other>
    void operator()(const Other&) const {
        static_assert(!is_door_evidence<Other>, "say where it is sorted to");
    }
};

} // namespace

DoorEvidence Ledger::evidenceOf(std::string_view walkdown, std::string_view door,
                                const EvidenceAsked& asked) const {
    DoorEvidence evidence;
    evidence.door = door;
    evidence.limits = limitsFor(std::string(walkdown));
    const auto ids = m_by_door.find({std::string(walkdown), std::string(door)});
    if (ids == m_by_door.end())
        return evidence;
    const Fact* since = find(asked.after);
    for (auto id = ids->second.upper_bound(asked.after); id != ids->second.end(); ++id) {
        if (!asked.before.empty() && *id >= asked.before)
            break;
        const Fact& fact = m_facts.at(*id);
        if (const auto* run = std::get_if<RunStarted>(&fact.body))
            if (run->release == Release::Remote)
                evidence.remote_starts.push_back(*id);
        if (isSuperseded(*id, asked.before))
            continue;
        if (since && fact.stamp.when.utc_ms < since->stamp.when.utc_ms)
            continue; // typed in later, from a paper form
        if (!asked.not_by.empty() && isSameName(nameOf(fact.stamp.person), asked.not_by))
            continue;
        evidence.newest = fact.stamp;
        std::visit(Sorter{fact.stamp, evidence}, fact.body);
    }
    for (RunRecord& run : evidence.runs)
        putTogether(run, asked.before);
    return evidence;
}

DoorEvidence Ledger::evidenceOf(std::string_view walkdown, const Door& door,
                                const EvidenceAsked& asked) const {
    DoorEvidence evidence = evidenceOf(walkdown, door.number, asked);
    for (RunRecord& run : evidence.runs)
        voidIfUnmarked(run, door.kind);
    if (asked.before.empty())
        for (const auto& [row, judgement] : evidence.judgements) {
            EvidenceAsked then = asked;
            then.before = judgement.stamp.id;
            evidence.when_judged[row] =
                std::make_shared<const DoorEvidence>(evidenceOf(walkdown, door, then));
        }
    return evidence;
}

void Ledger::putTogether(RunRecord& run, const FactId& before) const {
    const Stamp& stamp = m_facts.at(run.id).stamp;
    run.drill = drillOf(stamp.person, stamp.device, run.id);
    run.newest = run.id;
    const auto parts = m_by_run.find(run.id);
    if (parts == m_by_run.end())
        return;
    for (const FactId& id : parts->second) {
        if (!before.empty() && id >= before)
            break;
        run.newest = std::max(run.newest, lastWordOn(id));
        if (isSuperseded(id, before))
            continue;
        const Fact& fact = m_facts.at(id);
        if (const Mark* mark = std::get_if<Mark>(&fact.body))
            run.marks.push_back({id, *mark});
        else if (const RunEnded* end = std::get_if<RunEnded>(&fact.body))
            run.end = *end;
    }
    voidIfReversed(run);
}

const FactId& Ledger::lastWordOn(const FactId& id) const {
    const FactId* last = &id;
    for (const auto* taking : {&m_replaced, &m_undone})
        if (const auto by = taking->find(id); by != taking->end())
            for (const FactId& each : by->second)
                if (*last < each && !isUndone(each))
                    last = &each;
    return *last;
}

} // namespace latchround
