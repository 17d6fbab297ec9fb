#include "ui/session/vessel_session.h"

#include <algorithm>
#include <set>
#include <type_traits>
#include <utility>

#include "core/error/desktop_errors.h"
#include "core/error/register_errors.h"
#include "core/evidence/admission.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"
#include "ui/ports/signing.h"

namespace latchround::ui {

namespace {

bool regradesEveryDoor(const Fact& fact, const Ledger& ledger) {
    const Fact* subject = ledger.subjectOf(fact);
    if (!subject)
        return false;
    switch (rulesFor(subject->body).regrades) {
    case Regrades::EveryDoor:
        return true;
    case Regrades::EveryDoorOnceUndone:
        return subject != &fact;
    case Regrades::ItsDoor:
        break;
    }
    return false;
}

} // namespace

VesselSession::VesselSession(Register& vessel_register, const Ports& ports, Catalogue catalogue)
    : m_register(vessel_register)
    , m_ports(ports)
    , m_catalogue(std::move(catalogue)) {
    connect(&m_again, &QTimer::timeout, this, &VesselSession::tryAgain);
}

Result<> VesselSession::load() {
    auto arrangement = m_register.arrangement();
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    auto facts = m_register.facts();
    if (!facts)
        return tl::unexpected(facts.error());
    m_arrangement = std::move(*arrangement);
    for (Fact& fact : *facts) {
        if (fact.stamp.device == m_register.device())
            m_moments.insert(fact.stamp.when.utc_ms);
        m_ledger.add(std::move(fact));
    }
    showLatestWalkdown();
    if (m_walkdown)
        m_person = m_walkdown->begun_by.person;
    return {};
}

void VesselSession::showLatestWalkdown() {
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

const GradedDoor* VesselSession::door(const QString& number) const {
    const auto found = std::ranges::find(m_doors, number.toStdString(),
                                         [](const GradedDoor& door) { return door.door->number; });
    return found == m_doors.end() ? nullptr : &*found;
}

QString VesselSession::nextOpenDoor(const QString& from) const {
    const GradedDoor* start = door(from);
    const std::size_t offset = start ? std::size_t(start - m_doors.data()) + 1 : 0;
    for (std::size_t i = 0; i < m_doors.size(); ++i) {
        const GradedDoor& candidate = m_doors[(offset + i) % m_doors.size()];
        if (!isDone(candidate) && &candidate != start)
            return QString::fromStdString(candidate.door->number);
    }
    return {};
}

const std::vector<Item>& VesselSession::items() const {
    if (!m_items)
        m_items = itemsOf(m_arrangement, m_ledger, m_catalogue);
    return *m_items;
}

const Item* VesselSession::item(const FactId& id) const {
    const auto found = std::ranges::find(items(), id, &Item::id);
    return found == items().end() ? nullptr : &*found;
}

FactId VesselSession::join(const QString& name, const Wording& role) {
    FactId id = newId();
    std::vector<Entry> entries;
    entries.push_back({PersonJoined{name.toStdString(), role}, std::nullopt, id});
    (void)record(std::move(entries));
    if (m_person.empty() && knows(id))
        m_person = id;
    return id;
}

std::uint32_t VesselSession::chance() {
    return QString::fromStdString(newId()).right(8).toUInt(nullptr, 16);
}

QString VesselSession::personName() const {
    return QString::fromStdString(m_ledger.nameOf(m_person));
}

Result<> VesselSession::record(FactBody body, std::optional<FactId> supersedes) {
    std::vector<Entry> entries;
    entries.push_back({std::move(body), std::move(supersedes), {}});
    return record(std::move(entries));
}

Result<> VesselSession::record(std::vector<Entry> entries) {
    const Moment now = nextMoment();
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
    if (batch.facts.empty())
        return {};
    if (auto note = noteOfTyping(batch.facts.front()))
        batch.facts.push_back(std::move(*note));
    return saveOrKeep(std::move(batch));
}

Moment VesselSession::freeMoment(Moment when) {
    while (!m_moments.insert(when.utc_ms).second)
        ++when.utc_ms;
    return when;
}

Fact VesselSession::stamped(FactBody body) {
    return {{m_ports.clock->newId(), m_ports.clock->now(), recorder(), m_register.device(), {}},
            std::move(body)};
}

std::optional<Tap> VesselSession::tapToTakeBack(const QString& door) const {
    if (!m_waiting.empty())
        return std::nullopt;
    return onThisPaper(latchround::tapToTakeBack(m_ledger, hand(), door.toStdString()));
}

std::optional<Tap> VesselSession::tapToPutBack(const QString& door) const {
    if (!m_waiting.empty())
        return std::nullopt;
    return onThisPaper(latchround::tapToPutBack(m_ledger, hand(), door.toStdString()));
}

Result<> VesselSession::undo(const Tap& tap) {
    const Moment now = freeMoment(m_ports.clock->now());
    std::vector<Fact> facts;
    for (const FactId& id : tap.facts) {
        facts.push_back(stamped(Undone{}));
        facts.back().stamp.when = now;
        facts.back().stamp.supersedes = id;
    }
    if (Result<> saved = m_register.record(facts); !saved)
        return saved; // all stands as it was, and can be undone again
    takeIn(facts);
    return {};
}

Result<QString> VesselSession::makePaper(Paper paper, const FactId& walkdown, const QString& door,
                                         PaperLanguage language, const Progress& progress) {
    if (const Result<> may = mayPassOn(); !may && restsOnRecord(paper))
        return tl::unexpected(may.error());
    const Result<PaperMade> made =
        m_ports.documents->make(paper, walkdown, door, language, progress);
    if (!made)
        return tl::unexpected(made.error());
    if (made->made && !m_person.empty())
        (void)record(*made->made);
    return made->path;
}

Result<> VesselSession::sign(const FactId& walkdown, Capacity capacity) {
    if (Result<> may = mayPassOn(); !may)
        return may;
    WalkdownSigned body;
    body.walkdown = walkdown;
    body.capacity = capacity;
    const Result<Fact> fact = m_ports.signing->sign(stamped(std::move(body)));
    if (!fact)
        return tl::unexpected(fact.error());
    return saveOrKeep({{*fact}, {}});
}

Result<> VesselSession::recordPhotograph(Photograph photograph, const PickedPhotograph& picture) {
    photograph.sha256 = picture.sha256;
    photograph.media_type = picture.media_type;
    Waiting batch;
    batch.photograph = picture.bytes;
    batch.facts.push_back(stamped(std::move(photograph)));
    batch.facts.front().stamp.when = nextMoment();
    if (auto note = noteOfTyping(batch.facts.front()))
        (void)saveOrKeep({{std::move(*note)}, {}});
    return saveOrKeep(std::move(batch));
}

const Fact* VesselSession::find(const FactId& id) const {
    for (const Waiting& batch : m_waiting)
        for (const Fact& fact : batch.facts)
            if (fact.stamp.id == id)
                return &fact;
    return m_ledger.find(id);
}

/// Asked before anything is saved, so that nothing waits which the register would never take.
std::optional<Error> VesselSession::refusalOfAny(const std::vector<Fact>& facts) const {
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
            return Error{place::door(*number), errors::not_saved(errors::door_not_on_walkdown())};
    }
    return std::nullopt;
}

Result<> VesselSession::readAgain() {
    auto facts = m_register.facts();
    if (!facts)
        return tl::unexpected(facts.error());
    std::erase_if(*facts, [this](const Fact& fact) { return m_ledger.find(fact.stamp.id); });
    if (!facts->empty())
        takeIn(*facts);
    return {};
}

void VesselSession::takeIn(const std::vector<Fact>& facts) {
    m_items.reset();
    m_saved_at = m_ports.clock->now();
    std::set<std::string> touched;
    bool walkdowns = false;
    for (const Fact& fact : facts) {
        m_ledger.add(fact);
        walkdowns = walkdowns || regradesEveryDoor(fact, m_ledger);
        touched.insert(m_ledger.doorOf(fact));
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

Result<std::vector<std::byte>> VesselSession::photograph(std::string_view sha256) const {
    return m_register.photograph(sha256);
}

} // namespace latchround::ui

#include "moc_vessel_session.cpp"
