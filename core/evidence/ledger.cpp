#include "core/evidence/ledger.h"

#include <algorithm>
#include <type_traits>

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
    void operator()(const Other&) const {}
};

} // namespace

void Ledger::add(Fact fact) {
    const FactId id = fact.stamp.id;
    if (m_facts.contains(id))
        return;
    if (fact.stamp.supersedes)
        m_superseded.insert(*fact.stamp.supersedes);
    std::visit(
        [&](const auto& body) {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, PersonJoined>)
                m_people.push_back({id, body.name, body.role});
            else if constexpr (std::is_same_v<Body, WalkdownBegun>)
                m_walkdowns.insert(id);
            else if constexpr (std::is_same_v<Body, WalkdownEnded>) {
                FactId& end = m_walkdown_ends[body.walkdown];
                end = std::max(end, id);
            } else if constexpr (std::is_same_v<Body, Mark> || std::is_same_v<Body, RunEnded>)
                m_by_run[body.run].insert(id);
            else if constexpr (std::is_same_v<Body, ThumbDrill>)
                m_drills[{fact.stamp.person, fact.stamp.device}].emplace(
                    id, std::make_shared<const ThumbDrill>(body));
            else if constexpr (std::is_same_v<Body, DecisionLimits>)
                m_limits.emplace(id, body);
            else if constexpr (std::is_same_v<Body, UpkeepDone>)
                m_upkeep[body.upkeep].insert(id);
            else if constexpr (std::is_same_v<Body, CertificateSeen>)
                m_certificates.insert(id);
            else if constexpr (!std::is_same_v<Body, TakenBack>)
                m_by_door[{body.walkdown, body.door}].insert(id);
        },
        fact.body);
    m_facts.emplace(id, std::move(fact));
}

const Fact* Ledger::find(const FactId& id) const {
    const auto found = m_facts.find(id);
    return found == m_facts.end() ? nullptr : &found->second;
}

std::optional<Walkdown> Ledger::walkdown(std::string_view id) const {
    const FactId key{id};
    const Fact* begun = m_walkdowns.contains(key) ? find(key) : nullptr;
    if (!begun)
        return std::nullopt;
    Walkdown walkdown{key, begun->stamp, std::get<WalkdownBegun>(begun->body), {}};
    const auto end = m_walkdown_ends.find(key);
    if (end != m_walkdown_ends.end() && !m_superseded.contains(end->second)) {
        const Fact* ended = find(end->second);
        walkdown.end = Recorded<WalkdownEnded>{ended->stamp, std::get<WalkdownEnded>(ended->body)};
    }
    return walkdown;
}

std::vector<Walkdown> Ledger::walkdowns() const {
    std::vector<Walkdown> all;
    for (const FactId& id : m_walkdowns)
        if (!m_superseded.contains(id))
            all.push_back(*walkdown(id));
    return all;
}

DoorEvidence Ledger::evidenceOf(std::string_view walkdown, std::string_view door) const {
    DoorEvidence evidence;
    evidence.door = door;
    evidence.limits = limitsFor(std::string(walkdown));
    const auto ids = m_by_door.find({std::string(walkdown), std::string(door)});
    if (ids == m_by_door.end())
        return evidence;
    for (const FactId& id : ids->second) {
        if (m_superseded.contains(id))
            continue;
        const Fact& fact = m_facts.at(id);
        std::visit(Sorter{fact.stamp, evidence}, fact.body);
    }
    for (RunRecord& run : evidence.runs) {
        const Stamp& stamp = m_facts.at(run.id).stamp;
        run.drill = drillOf(stamp.person, stamp.device, run.id);
        const auto parts = m_by_run.find(run.id);
        if (parts == m_by_run.end())
            continue;
        for (const FactId& id : parts->second) {
            if (m_superseded.contains(id))
                continue;
            const Fact& fact = m_facts.at(id);
            if (const Mark* mark = std::get_if<Mark>(&fact.body))
                run.marks.push_back({id, *mark});
            else if (const RunEnded* end = std::get_if<RunEnded>(&fact.body))
                run.end = *end;
        }
    }
    return evidence;
}

const Ledger::Drills::value_type* Ledger::newestDrill(const std::string& person,
                                                      const std::string& device,
                                                      const FactId& before) const {
    const auto drills = m_drills.find({person, device});
    const Drills::value_type* newest = nullptr;
    if (drills != m_drills.end())
        for (const Drills::value_type& entry : drills->second)
            if (!m_superseded.contains(entry.first) && (before.empty() || entry.first < before))
                newest = &entry;
    return newest;
}

std::shared_ptr<const ThumbDrill>
Ledger::drillOf(const std::string& person, const std::string& device, const FactId& before) const {
    const auto* newest = newestDrill(person, device, before);
    return newest ? newest->second : nullptr;
}

std::optional<Moment> Ledger::drillTime(const std::string& person,
                                        const std::string& device) const {
    const auto* newest = newestDrill(person, device, {});
    return newest ? std::optional(m_facts.at(newest->first).stamp.when) : std::nullopt;
}

DecisionLimits Ledger::limitsFor(const std::string& walkdown) const {
    const auto end = m_walkdown_ends.find(walkdown);
    const bool ended = end != m_walkdown_ends.end() && !m_superseded.contains(end->second);
    DecisionLimits limits;
    for (const auto& [id, set] : m_limits)
        if (!m_superseded.contains(id) && (!ended || id < end->second))
            limits = set;
    return limits;
}

const Fact* Ledger::newestOf(const std::set<FactId>& ids) const {
    const auto found = std::find_if(
        ids.rbegin(), ids.rend(), [this](const FactId& id) { return !m_superseded.contains(id); });
    return found == ids.rend() ? nullptr : &m_facts.at(*found);
}

std::optional<Moment> Ledger::upkeepDone(const std::string& upkeep) const {
    const auto done = m_upkeep.find(upkeep);
    const Fact* newest = done == m_upkeep.end() ? nullptr : newestOf(done->second);
    return newest ? std::optional(newest->stamp.when) : std::nullopt;
}

std::optional<CalendarDate> Ledger::certificateUntil() const {
    const Fact* newest = newestOf(m_certificates);
    return newest ? std::optional(std::get<CertificateSeen>(newest->body).valid_until)
                  : std::nullopt;
}

std::optional<FactId> Ledger::endOf(const FactId& run) const {
    std::optional<FactId> end;
    const auto parts = m_by_run.find(run);
    if (parts == m_by_run.end())
        return end;
    for (const FactId& id : parts->second)
        if (!m_superseded.contains(id) && std::holds_alternative<RunEnded>(m_facts.at(id).body))
            end = id;
    return end;
}

std::vector<std::string> Ledger::doorsTouched(std::string_view walkdown) const {
    std::vector<std::string> doors;
    const std::string key{walkdown};
    for (auto entry = m_by_door.lower_bound({key, {}});
         entry != m_by_door.end() && entry->first.first == key; ++entry)
        if (std::ranges::any_of(entry->second,
                                [&](const FactId& id) { return !m_superseded.contains(id); }))
            doors.push_back(entry->first.second);
    return doors;
}

} // namespace latchround
