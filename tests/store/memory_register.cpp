#include "tests/store/memory_register.h"

#include <algorithm>

#include <QByteArray>
#include <QCryptographicHash>

#include "core/error/register_errors.h"
#include "core/evidence/admission.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

std::string sha256Of(std::span<const std::byte> bytes) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(QByteArrayView(bytes.data(), qsizetype(bytes.size())));
    return hash.result().toHex().toStdString();
}

tl::unexpected<Error> refuse(Phrase where, Phrase why) {
    return tl::unexpected(Error{std::move(where), errors::not_saved(std::move(why))});
}

} // namespace

void MemoryRegister::keepDoors() {
    for (const Door& door : m_arrangement.doors)
        m_doors.insert(door.number);
}

void MemoryRegister::put(Fact fact) {
    m_ledger.add(std::move(fact));
}

Result<> MemoryRegister::adopt(const Arrangement& arrangement, Moment) {
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
        return tl::unexpected(
            Error{place::door(dropped), errors::not_adopted(errors::door_with_fact_dropped())});
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

std::optional<Error> MemoryRegister::refusal(std::span<const Fact> facts) const {
    std::map<FactId, const Fact*> along;
    std::optional<Error> found;
    const auto find = [&](const FactId& id) -> const Fact* {
        const auto fresh = along.find(id);
        return fresh != along.end() ? fresh->second : m_ledger.find(id);
    };
    const auto complain = [&](Phrase where, Phrase why) {
        if (!found)
            found = refuse(std::move(where), std::move(why)).value();
    };
    for (const Fact& fact : facts) {
        const Fact* same = find(fact.stamp.id);
        if (same && *same != fact)
            complain(place::fact(fact.stamp.id), errors::fact_id_taken());
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
                complain(place::door(door), errors::no_such_door());
        });
        eachReference(fact, [&](const PhraseCode<1>& what, const FactId& id,
                                std::optional<std::size_t> kind) {
            const Fact* other = find(id);
            if (!other || (kind && other->body.index() != *kind))
                complain(place::fact(fact.stamp.id), errors::reference_not_here(what(id)));
        });
        if (!found)
            found = refusalOf(fact, known);
    }
    return found;
}

Result<> MemoryRegister::record(std::span<const Fact> facts) {
    if (while_recording)
        while_recording();
    if (failure)
        return tl::unexpected(*failure);
    if (!other_writer.empty())
        return refuse(place::this_register(), errors::register_written_elsewhere(other_writer));
    if (const auto refused = refusal(facts))
        return tl::unexpected(*refused);
    transactions.emplace_back(facts.begin(), facts.end());
    for (const Fact& fact : facts)
        m_ledger.add(fact);
    return {};
}

Result<> MemoryRegister::recordPhotograph(const Fact& photograph,
                                          std::span<const std::byte> bytes) {
    const auto* body = std::get_if<Photograph>(&photograph.body);
    if (!body || body->sha256 != sha256Of(bytes))
        return refuse(place::fact(photograph.stamp.id), errors::photograph_hash_differs());
    if (const Result<> done = record({&photograph, 1}); !done)
        return done;
    m_photographs[body->sha256] = {bytes.begin(), bytes.end()};
    return {};
}

Result<std::vector<std::byte>> MemoryRegister::photograph(std::string_view sha256) const {
    const auto found = m_photographs.find(sha256);
    if (found == m_photographs.end())
        return tl::unexpected(Error{place::photograph(sha256), errors::photograph_not_here()});
    return found->second;
}

Result<> MemoryRegister::reopen() {
    ++reopened;
    if (failure)
        return tl::unexpected(*failure);
    return {};
}

} // namespace latchround
