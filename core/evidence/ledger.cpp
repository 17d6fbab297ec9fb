#include "core/evidence/ledger.h"

#include <algorithm>
#include <type_traits>

#include "core/evidence/door_facts.h"

namespace latchround {

namespace {

template <class Body>
constexpr bool is_of_a_course =
    is_one_of<Body, DeficiencyTerms, Rectification, AwaitingRetest, Withdrawal>;

/// Looked for in the ledger only where it is asked for by its id or kind.
template <class Body>
constexpr bool is_not_filed = is_one_of<Body, TakenBack, Undone, ReportMade>;

/// An empty `before` is now.
bool isBefore(const FactId& id, const FactId& before) {
    return before.empty() || id < before;
}

} // namespace

void Ledger::add(Fact fact) {
    const FactId id = fact.stamp.id;
    if (m_facts.contains(id))
        return;
    if (fact.stamp.supersedes)
        (std::holds_alternative<Undone>(fact.body) ? m_undone : m_replaced)[*fact.stamp.supersedes]
            .insert(id);
    std::visit(
        [&](const auto& body) {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, PersonJoined>)
                m_people.emplace(id, Person{id, body.name, body.role});
            else if constexpr (std::is_same_v<Body, WalkdownBegun>)
                m_walkdowns.insert(id);
            else if constexpr (std::is_same_v<Body, WalkdownEnded>) {
                m_walkdown_ends[body.walkdown].insert(id);
            } else if constexpr (is_one_of<Body, Mark, RunEnded>)
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
            else if constexpr (is_of_a_course<Body>)
                m_courses[body.deficiency].insert(id);
            else if constexpr (std::is_same_v<Body, DifferenceSettled>) {
                m_settled[body.stands].emplace(id, false);
                for (const FactId& over : body.over)
                    m_settled[over].emplace(id, true);
            } else if constexpr (std::is_same_v<Body, WalkdownSigned>)
                m_signatures[body.walkdown].insert(id);
            else if constexpr (std::is_same_v<Body, KeyAccepted>)
                m_keys.insert(id);
            else if constexpr (is_door_evidence<Body>)
                m_by_door[{body.walkdown, body.door}].insert(id);
            else
                static_assert(is_not_filed<Body>, "say what the ledger makes of this kind");
            if constexpr (std::is_same_v<Body, Deficiency>)
                m_courses[id].insert(id);
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
    if (const Fact* ended = standingEnd(key))
        walkdown.end = Recorded<WalkdownEnded>{ended->stamp, std::get<WalkdownEnded>(ended->body)};
    return walkdown;
}

std::vector<Walkdown> Ledger::walkdowns() const {
    std::vector<Walkdown> all;
    for (const FactId& id : m_walkdowns)
        if (!isSuperseded(id))
            all.push_back(*walkdown(id));
    return all;
}

std::vector<Person> Ledger::people() const {
    std::vector<Person> people;
    for (const auto& [id, person] : m_people)
        people.push_back(person);
    return people;
}

const std::string& Ledger::nameOf(const std::string& person) const {
    static const std::string nobody;
    const auto found = m_people.find(person);
    return found == m_people.end() ? nobody : found->second.name;
}

const Ledger::Drills::value_type* Ledger::newestDrill(const std::string& person,
                                                      const std::string& device,
                                                      const FactId& before) const {
    const auto drills = m_drills.find({person, device});
    const Drills::value_type* newest = nullptr;
    if (drills != m_drills.end())
        for (const Drills::value_type& entry : drills->second)
            if (!isSuperseded(entry.first) && (before.empty() || entry.first < before))
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
    const Fact* end = standingEnd(walkdown);
    DecisionLimits limits;
    for (const auto& [id, set] : m_limits)
        if (!isSuperseded(id) && (!end || id < end->stamp.id))
            limits = set;
    return limits;
}

bool Ledger::isUndone(const FactId& id, const FactId& before) const {
    return isTakenBack(id, before) && !isRestedOn(id);
}

bool Ledger::isTakenBack(const FactId& id, const FactId& before) const {
    const auto undoing = m_undone.find(id);
    // Later than what it undoes, so that no two can wait for each other; and an undo that was put
    // back stays put back: the next undo is another fact.
    const auto isPutBack = [&](const FactId& undo) {
        const auto putting_back = m_undone.find(undo);
        return putting_back != m_undone.end() &&
               std::ranges::any_of(putting_back->second, [&](const FactId& each) {
                   return undo < each && isBefore(each, before);
               });
    };
    return undoing != m_undone.end() &&
           std::ranges::any_of(undoing->second, [&](const FactId& undo) {
               return id < undo && isBefore(undo, before) && !isPutBack(undo);
           });
}

bool Ledger::isRestedOn(const FactId& id) const {
    return (m_walkdowns.contains(id) && !doorsTouched(id).empty()) ||
           std::ranges::any_of(courseIds(id),
                               [&](const FactId& of) { return of != id && !isSuperseded(of); });
}

const std::set<FactId>& Ledger::courseIds(const FactId& deficiency) const {
    static const std::set<FactId> nothing;
    const auto ids = m_courses.find(deficiency);
    return ids == m_courses.end() ? nothing : ids->second;
}

bool Ledger::isReplaced(const FactId& id, const FactId& before) const {
    const auto by = m_replaced.find(id);
    return by != m_replaced.end() && std::ranges::any_of(by->second, [&](const FactId& each) {
               return isBefore(each, before) && !isUndone(each, before);
           });
}

bool Ledger::yields(const FactId& id, const FactId& before) const {
    const auto decisions = m_settled.find(id);
    if (decisions == m_settled.end())
        return false;
    // A decision speaks of what was there before it, so that no two can wait for each other; and
    // for nothing once what it let stand was undone.
    const auto stands = [&](const FactId& decision) {
        return isBefore(decision, before) && !isSuperseded(decision, before) &&
               !isTakenBack(std::get<DifferenceSettled>(m_facts.at(decision).body).stands, before);
    };
    const auto newest = std::find_if(
        decisions->second.rbegin(), decisions->second.rend(),
        [&](const auto& decision) { return id < decision.first && stands(decision.first); });
    return newest != decisions->second.rend() && newest->second;
}

FactId Ledger::lastSignedOf(const std::string& device) const {
    FactId last;
    for (const auto& [walkdown, ids] : m_signatures)
        for (const Recorded<WalkdownSigned>& signature : signaturesOf(walkdown)) {
            if (signature.stamp.device == device)
                last = std::max(last, signature.stamp.id);
            for (const Covered& covered : signature.body.covers)
                if (covered.device == device)
                    last = std::max(last, covered.last);
        }
    return last;
}

const Fact* Ledger::subjectOf(const Fact& fact) const {
    constexpr int longest = 100; // a chain that is longer leads nowhere
    const Fact* at = &fact;
    for (int i = 0; i < longest && at; ++i) {
        if (!takesBack(at->body))
            return at;
        at = at->stamp.supersedes ? find(*at->stamp.supersedes) : nullptr;
    }
    return nullptr;
}

std::string Ledger::doorOf(const Fact& fact) const {
    const Fact* subject = subjectOf(fact);
    FactReferences named = subject ? referencesOf(subject->body) : FactReferences();
    if (!named.door && named.by_way_of)
        if (const Fact* other = find(*named.by_way_of))
            named = referencesOf(other->body);
    return named.door ? *named.door : std::string();
}

std::vector<const Fact*> Ledger::courseOf(const FactId& deficiency) const {
    std::vector<const Fact*> course;
    for (const FactId& id : courseIds(deficiency))
        if (!isSuperseded(id))
            course.push_back(find(id));
    return course;
}

std::vector<FactId> Ledger::deficiencies() const {
    std::vector<FactId> all;
    for (const auto& [id, course] : m_courses)
        if (course.contains(id) && !isSuperseded(id))
            all.push_back(id);
    return all;
}

std::vector<Recorded<WalkdownSigned>> Ledger::signaturesOf(const FactId& walkdown) const {
    std::vector<Recorded<WalkdownSigned>> signatures;
    const auto ids = m_signatures.find(walkdown);
    if (ids != m_signatures.end())
        for (const FactId& id : ids->second)
            if (!isSuperseded(id))
                signatures.push_back(
                    {m_facts.at(id).stamp, std::get<WalkdownSigned>(m_facts.at(id).body)});
    return signatures;
}

std::vector<KeyAccepted> Ledger::keysAcceptedOn(const std::string& device) const {
    std::vector<KeyAccepted> keys;
    for (const FactId& id : m_keys)
        if (!isSuperseded(id) && m_facts.at(id).stamp.device == device)
            keys.push_back(std::get<KeyAccepted>(m_facts.at(id).body));
    return keys;
}

const Fact* Ledger::newestOf(const std::set<FactId>& ids) const {
    const auto found = std::find_if(ids.rbegin(), ids.rend(),
                                    [this](const FactId& id) { return !isSuperseded(id); });
    return found == ids.rend() ? nullptr : &m_facts.at(*found);
}

const Fact* Ledger::standingEnd(const FactId& walkdown) const {
    const auto ends = m_walkdown_ends.find(walkdown);
    return ends == m_walkdown_ends.end() ? nullptr : newestOf(ends->second);
}

bool Ledger::hasEnded(const FactId& walkdown) const {
    return m_walkdowns.contains(walkdown) && standingEnd(walkdown);
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

std::vector<std::string> Ledger::doorsTouched(std::string_view walkdown) const {
    std::vector<std::string> doors;
    const std::string key{walkdown};
    for (auto entry = m_by_door.lower_bound({key, {}});
         entry != m_by_door.end() && entry->first.first == key; ++entry)
        if (std::ranges::any_of(entry->second, [&](const FactId& id) { return !isSuperseded(id); }))
            doors.push_back(entry->first.second);
    return doors;
}

} // namespace latchround
