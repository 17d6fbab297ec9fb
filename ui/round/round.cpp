#include "ui/round/round.h"

#include <algorithm>
#include <set>
#include <type_traits>
#include <utility>

#include "core/evidence/admission.h"

namespace latchround::ui {

namespace {

/// The door a fact speaks of; empty for facts about a whole walkdown. Marks and ends name their
/// run.
std::string doorOf(const Fact& fact, const Ledger& ledger) {
    return std::visit(
        [&](const auto& body) -> std::string {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, Mark> || std::is_same_v<Body, RunEnded>) {
                const Fact* run = ledger.find(body.run);
                return run ? std::get<RunStarted>(run->body).door : std::string{};
            } else if constexpr (std::is_same_v<Body, TakenBack>) {
                const Fact* slip =
                    fact.stamp.supersedes ? ledger.find(*fact.stamp.supersedes) : nullptr;
                return slip ? doorOf(*slip, ledger) : std::string{};
            } else if constexpr (std::is_same_v<Body, DifferenceSettled>) {
                const Fact* stands = ledger.find(body.stands);
                return stands ? doorOf(*stands, ledger) : std::string{};
            } else if constexpr (requires { body.door; }) {
                return body.door;
            } else {
                return {};
            }
        },
        fact.body);
}

bool changesWalkdowns(const Fact& fact, const Ledger& ledger) {
    if (fact.stamp.supersedes && std::holds_alternative<TakenBack>(fact.body)) {
        const Fact* slip = ledger.find(*fact.stamp.supersedes);
        return slip && changesWalkdowns(*slip, ledger);
    }
    return std::holds_alternative<WalkdownBegun>(fact.body) ||
           std::holds_alternative<WalkdownEnded>(fact.body) ||
           std::holds_alternative<DecisionLimits>(fact.body); // every door is graded anew
}

Complaint anotherWrites(const QString& who) {
    return {"register", "another program writes in it (" + who.toStdString() + "): NOT saved.",
            "Close it there, then open the vessel here again."};
}

} // namespace

Round::Round(Register& vessel_register, Outside& outside, Catalogue catalogue)
    : m_register(vessel_register)
    , m_outside(outside)
    , m_catalogue(std::move(catalogue)) {}

Done Round::load() {
    auto arrangement = m_register.arrangement();
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    auto facts = m_register.facts();
    if (!facts)
        return tl::unexpected(facts.error());
    m_arrangement = std::move(*arrangement);
    for (Fact& fact : *facts)
        m_ledger.add(std::move(fact));
    showLatestWalkdown();
    if (m_walkdown)
        m_person = m_walkdown->begun_by.person;
    return {};
}

void Round::showLatestWalkdown() {
    const std::vector<Walkdown> all = m_ledger.walkdowns();
    const FactId before = m_walkdown ? m_walkdown->id : FactId();
    m_walkdown.reset();
    if (!all.empty()) {
        const auto open =
            std::find_if(all.rbegin(), all.rend(), [](const Walkdown& each) { return !each.end; });
        m_walkdown = open == all.rend() ? all.back() : *open;
    }
    m_doors = m_walkdown ? gradeWalkdown(m_arrangement, m_ledger, *m_walkdown, m_catalogue)
                         : std::vector<GradedDoor>{};
    if (!m_walkdown || m_walkdown->id != before)
        m_heel_deg = m_walkdown ? m_walkdown->plan.heel_deg : 0;
}

const GradedDoor* Round::door(const QString& number) const {
    const auto found = std::ranges::find(m_doors, number.toStdString(),
                                         [](const GradedDoor& door) { return door.door->number; });
    return found == m_doors.end() ? nullptr : &*found;
}

QString Round::nextOpenDoor(const QString& from) const {
    const GradedDoor* start = door(from);
    const std::size_t offset = start ? std::size_t(start - m_doors.data()) + 1 : 0;
    for (std::size_t i = 0; i < m_doors.size(); ++i) {
        const GradedDoor& candidate = m_doors[(offset + i) % m_doors.size()];
        if (!isDone(candidate) && &candidate != start)
            return QString::fromStdString(candidate.door->number);
    }
    return {};
}

const std::vector<Item>& Round::items() const {
    if (!m_items)
        m_items = itemsOf(m_arrangement, m_ledger, m_catalogue);
    return *m_items;
}

const Item* Round::item(const FactId& id) const {
    const auto found = std::ranges::find(items(), id, &Item::id);
    return found == items().end() ? nullptr : &*found;
}

FactId Round::join(const QString& name, const QString& role) {
    FactId id = newId();
    std::vector<Entry> entries;
    entries.push_back({PersonJoined{name.toStdString(), role.toStdString()}, std::nullopt, id});
    (void)record(std::move(entries));
    if (m_person.empty() && knows(id))
        m_person = id;
    return id;
}

std::uint32_t Round::chance() {
    return QString::fromStdString(newId()).right(8).toUInt(nullptr, 16);
}

QString Round::personName() const {
    return QString::fromStdString(m_ledger.nameOf(m_person));
}

Done Round::record(FactBody body, std::optional<FactId> supersedes) {
    std::vector<Entry> entries;
    entries.push_back({std::move(body), std::move(supersedes), {}});
    return record(std::move(entries));
}

Done Round::record(std::vector<Entry> entries) {
    const Moment now = m_outside.now();
    Waiting batch;
    for (Entry& entry : entries) {
        Fact fact = stamped(std::move(entry.body));
        if (!entry.id.empty())
            fact.stamp.id = entry.id;
        if (std::holds_alternative<PersonJoined>(fact.body))
            fact.stamp.person = fact.stamp.id;
        fact.stamp.when = now;
        fact.stamp.supersedes = std::move(entry.supersedes);
        batch.facts.push_back(std::move(fact));
    }
    return saveOrKeep(std::move(batch));
}

Fact Round::stamped(FactBody body) {
    return {{m_outside.newId(), m_outside.now(), m_person, m_register.device(), {}},
            std::move(body)};
}

Done Round::undo() {
    if (!newestTap())
        return {};
    const std::vector<Taps::Undoing> undoing = m_taps.undoNewest(m_ledger);
    std::vector<Fact> facts;
    std::vector<FactId> ids;
    for (const Taps::Undoing& each : undoing) {
        facts.push_back(stamped(each.undo.body));
        facts.back().stamp.supersedes = each.undo.supersedes;
        ids.push_back(facts.back().stamp.id);
    }
    if (!facts.empty()) {
        if (Done saved = m_register.record(facts); !saved)
            return saved; // the tap stands, and can be undone again
    }
    m_taps.undone(undoing, ids);
    takeIn(facts);
    return {};
}

Result<QString> Round::makePaper(Paper paper, const FactId& walkdown, const QString& door,
                                 const GoOn& go_on) {
    const Result<PaperMade> made = m_outside.makePaper(paper, walkdown, door, go_on);
    if (!made)
        return tl::unexpected(made.error());
    if (made->made && !m_person.empty())
        (void)record(*made->made);
    return made->path;
}

Done Round::sign(const FactId& walkdown, Capacity capacity) {
    WalkdownSigned body;
    body.walkdown = walkdown;
    body.capacity = capacity;
    const Result<Fact> fact = m_outside.signedWalkdown(stamped(std::move(body)));
    if (!fact)
        return tl::unexpected(fact.error());
    m_taps = {}; // what was signed stands
    return saveOrKeep({{*fact}, {}});
}

Done Round::recordPhotograph(Photograph photograph, const PickedPhotograph& picture) {
    photograph.sha256 = picture.sha256;
    photograph.media_type = picture.media_type;
    Waiting batch;
    batch.photograph = picture.bytes;
    batch.facts.push_back(stamped(std::move(photograph)));
    return saveOrKeep(std::move(batch));
}

Done Round::save(const Waiting& batch) {
    if (!batch.photograph.empty())
        return m_register.recordPhotograph(batch.facts.front(), batch.photograph);
    return m_register.record(batch.facts);
}

const Fact* Round::find(const FactId& id) const {
    for (const Waiting& batch : m_waiting)
        for (const Fact& fact : batch.facts)
            if (fact.stamp.id == id)
                return &fact;
    return m_ledger.find(id);
}

/// Asked before anything is saved, so that nothing waits which the register would never take.
std::optional<Complaint> Round::refusalOfAny(const std::vector<Fact>& facts) const {
    const auto among = [&](const FactId& id) -> std::optional<Fact> {
        for (const Fact& fact : facts)
            if (fact.stamp.id == id)
                return fact;
        const Fact* known = find(id);
        return known ? std::optional(*known) : std::nullopt;
    };
    const auto endWaits = [this](const FactId& walkdown) {
        for (const Waiting& batch : m_waiting)
            for (const Fact& fact : batch.facts)
                if (const auto* end = std::get_if<WalkdownEnded>(&fact.body);
                    end && end->walkdown == walkdown)
                    return true;
        return false;
    };
    const OnRecord known{among, [&](const FactId& walkdown) {
                             return !isUnderWay() || m_walkdown->id != walkdown ||
                                    endWaits(walkdown);
                         }};
    for (const Fact& fact : facts) {
        if (auto refusal = refusalOf(fact, known))
            return refusal;
        const std::string* number = doorWalkedTo(fact.body);
        if (number && !door(QString::fromStdString(*number)))
            return Complaint{"door " + *number,
                             "it is not on the walkdown that is shown: NOT saved.",
                             "Choose the door again."};
    }
    return std::nullopt;
}

Done Round::readAgain() {
    auto facts = m_register.facts();
    if (!facts)
        return tl::unexpected(facts.error());
    std::erase_if(*facts, [this](const Fact& fact) { return m_ledger.find(fact.stamp.id); });
    if (!facts->empty())
        takeIn(*facts);
    return {};
}

Done Round::saveOrKeep(Waiting batch) {
    if (const QString other = otherWriter(); !other.isEmpty()) {
        Complaint why = anotherWrites(other);
        emit refused(why);
        return tl::unexpected(std::move(why));
    }
    if (auto refusal = refusalOfAny(batch.facts)) {
        emit refused(*refusal);
        return tl::unexpected(std::move(*refusal));
    }
    if (m_waiting.empty()) {
        Done saved = save(batch);
        if (saved) {
            m_taps.keep(batch.facts, m_ledger);
            takeIn(batch.facts);
            return saved;
        }
        m_why_waiting = saved.error();
    }
    // Order matters: what came first must be saved first.
    m_waiting.push_back(std::move(batch));
    keepWaiting();
    return tl::unexpected(m_why_waiting);
}

void Round::keepWaiting() {
    m_is_kept = m_outside.keepWaiting(m_waiting).has_value();
    emit waitingChanged();
}

void Round::takeUp(std::vector<WaitingBatch> kept) {
    if (kept.empty())
        return;
    m_waiting = std::move(kept);
    m_why_waiting = {"register", "the program ended before this was saved.", "Save it now."};
    emit waitingChanged();
}

Done Round::saveWaiting() {
    if (Done open = m_register.reopen(); !open) {
        m_why_waiting = open.error();
        emit waitingChanged();
        return open;
    }
    if (m_waiting.empty())
        return {};
    if (const QString other = otherWriter(); !other.isEmpty())
        return tl::unexpected(anotherWrites(other));
    // What is refused for its own sake stays, and holds up nothing that comes after it; a fault of
    // the register, which is the same for the next, ends the trying.
    Done first_fault;
    Complaint last_fault;
    std::vector<Waiting> unsaved;
    bool goes_on = true;
    for (Waiting& batch : std::exchange(m_waiting, {})) {
        Done saved = goes_on ? save(batch) : first_fault;
        if (!saved) {
            goes_on = saved.error() != last_fault;
            last_fault = saved.error();
            if (first_fault)
                first_fault = std::move(saved);
            unsaved.push_back(std::move(batch));
            continue;
        }
        m_taps.keep(batch.facts, m_ledger);
        takeIn(batch.facts);
    }
    m_waiting = std::move(unsaved);
    if (!first_fault)
        m_why_waiting = first_fault.error();
    keepWaiting();
    return first_fault;
}

void Round::takeIn(const std::vector<Fact>& facts) {
    m_items.reset();
    m_saved_at = m_outside.now();
    std::set<std::string> touched;
    bool walkdowns = false;
    for (const Fact& fact : facts) {
        m_ledger.add(fact);
        walkdowns = walkdowns || changesWalkdowns(fact, m_ledger);
        touched.insert(doorOf(fact, m_ledger));
    }
    if (walkdowns)
        showLatestWalkdown();
    for (GradedDoor& graded : m_doors)
        if (touched.contains(graded.door->number))
            graded = gradeDoor(m_arrangement, m_ledger, *m_walkdown, *graded.door, m_catalogue);
    if (walkdowns)
        emit walkdownChanged();
    for (const std::string& number : touched)
        if (!number.empty())
            emit doorChanged(QString::fromStdString(number));
    emit recorded();
}

Result<std::vector<std::byte>> Round::photograph(std::string_view sha256) const {
    return m_register.photograph(sha256);
}

} // namespace latchround::ui

#include "moc_round.cpp"
