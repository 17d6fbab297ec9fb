#include "tests/store/memory_register.h"

#include <algorithm>

#include <QByteArray>
#include <QCryptographicHash>

#include "core/evidence/admission.h"
#include "core/evidence/references.h"

namespace latchround {

namespace {

std::string sha256Of(std::span<const std::byte> bytes) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(QByteArrayView(bytes.data(), qsizetype(bytes.size())));
    return hash.result().toHex().toStdString();
}

tl::unexpected<Complaint> refuse(const std::string& where, const std::string& what) {
    return tl::unexpected(Complaint{where, what + ": NOT saved.", "Record it otherwise."});
}

} // namespace

void MemoryRegister::keepDoors() {
    for (const Door& door : m_arrangement.doors)
        m_doors.insert(door.number);
}

void MemoryRegister::put(Fact fact) {
    m_ledger.add(std::move(fact));
}

Done MemoryRegister::adopt(const Arrangement& arrangement, Moment) {
    if (failure)
        return tl::unexpected(*failure);
    std::set<std::string> listed;
    for (const Door& door : arrangement.doors)
        listed.insert(door.number);
    std::string dropped;
    for (const auto& [id, fact] : m_ledger.facts())
        if (const std::string* door = referencesOf(fact.body).door; door && !listed.contains(*door))
            dropped = *door;
    if (!dropped.empty())
        return refuse("door " + dropped, "facts are recorded about it");
    m_arrangement = arrangement;
    keepDoors();
    return {};
}

Result<std::vector<Fact>> MemoryRegister::facts() const {
    std::vector<Fact> all;
    for (const auto& [id, fact] : m_ledger.facts())
        all.push_back(fact);
    return all;
}

std::optional<Complaint> MemoryRegister::refusal(std::span<const Fact> facts) const {
    std::map<FactId, const Fact*> along;
    std::optional<Complaint> found;
    const auto find = [&](const FactId& id) -> const Fact* {
        const auto fresh = along.find(id);
        return fresh != along.end() ? fresh->second : m_ledger.find(id);
    };
    const auto complain = [&](const std::string& where, const std::string& what) {
        if (!found)
            found = refuse(where, what).value();
    };
    for (const Fact& fact : facts) {
        const Fact* same = find(fact.stamp.id);
        if (same && *same != fact)
            complain("fact " + fact.stamp.id, "another fact with this id is recorded already");
        along.emplace(fact.stamp.id, &fact);
    }
    const OnRecord known{[&](const FactId& id) {
                             const Fact* fact = find(id);
                             return fact ? std::optional(*fact) : std::nullopt;
                         },
                         [&](const FactId& walkdown) {
                             const auto walk = m_ledger.walkdown(walkdown);
                             return walk && walk->end;
                         }};
    for (const Fact& fact : facts) {
        if (m_ledger.find(fact.stamp.id))
            continue;
        eachDoorNamed(fact.body, [&](const std::string& door) {
            if (!m_doors.contains(door))
                complain("door " + door, "there is no such door");
        });
        eachReference(fact, [&](const char* what, const FactId& id,
                                std::optional<std::size_t> kind) {
            const Fact* other = find(id);
            if (!other || (kind && other->body.index() != *kind))
                complain("fact " + fact.stamp.id, std::string(what) + " is not in this register");
        });
        if (const auto refused = refusalOf(fact, known))
            complain(refused->where, refused->what);
    }
    return found;
}

Done MemoryRegister::record(std::span<const Fact> facts) {
    if (while_recording)
        while_recording();
    if (failure)
        return tl::unexpected(*failure);
    if (!other_writer.empty())
        return refuse("register", "another program writes in this register");
    if (const auto refused = refusal(facts))
        return tl::unexpected(*refused);
    transactions.emplace_back(facts.begin(), facts.end());
    for (const Fact& fact : facts)
        m_ledger.add(fact);
    return {};
}

Done MemoryRegister::recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) {
    const auto* body = std::get_if<Photograph>(&photograph.body);
    if (!body || body->sha256 != sha256Of(bytes))
        return refuse("fact " + photograph.stamp.id, "these are not the photograph's bytes");
    if (const Done done = record({&photograph, 1}); !done)
        return done;
    m_photographs[body->sha256] = {bytes.begin(), bytes.end()};
    return {};
}

Result<std::vector<std::byte>> MemoryRegister::photograph(std::string_view sha256) const {
    const auto found = m_photographs.find(sha256);
    if (found == m_photographs.end())
        return tl::unexpected(
            Complaint{"photograph " + std::string(sha256), "its bytes are not here.", ""});
    return found->second;
}

Done MemoryRegister::reopen() {
    ++reopened;
    if (failure)
        return tl::unexpected(*failure);
    return {};
}

} // namespace latchround
