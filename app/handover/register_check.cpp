#include "app/handover/register_check.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/exchange/facts_hash.h"
#include "core/error/handover_errors.h"
#include "core/evidence/admission.h"
#include "core/evidence/basis.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

Result<> checkPhotographs(const SqliteRegister& file, const Ledger& ledger, RegisterCheck& check) {
    const auto held = file.photographs();
    if (!held)
        return tl::unexpected(held.error());
    check.photographs = held->size();
    for (const std::string& sha256 : *held) {
        const auto bytes = file.photograph(sha256);
        if (!bytes)
            return tl::unexpected(bytes.error());
        if (sha256Hex(*bytes) != sha256)
            check.faults.push_back({place::photograph(sha256), errors::photograph_changed()});
    }
    std::set<std::string> missing;
    for (const auto& [id, fact] : ledger.facts())
        if (const auto* photograph = std::get_if<Photograph>(&fact.body))
            if (!std::ranges::binary_search(*held, photograph->sha256))
                missing.insert(photograph->sha256);
    check.photographs_missing.assign(missing.begin(), missing.end());
    return {};
}

/// Whether following what replaces what leads back to this fact.
bool runsInACircle(const Ledger& ledger, const Fact& fact) {
    std::set<FactId> passed{fact.stamp.id};
    const Fact* at = &fact;
    while (at != nullptr && at->stamp.supersedes) {
        if (*at->stamp.supersedes == fact.stamp.id)
            return true;
        if (!passed.insert(*at->stamp.supersedes).second)
            return false; // another fact's circle
        at = ledger.find(*at->stamp.supersedes);
    }
    return false;
}

void checkCorrections(const Ledger& ledger, RegisterCheck& check) {
    std::set<FactId> replaced;
    const auto copyOf = [&](const FactId& id) {
        const Fact* found = ledger.find(id);
        return found ? std::optional(*found) : std::nullopt;
    };
    for (const auto& [id, fact] : ledger.facts()) {
        const bool takes_back = takesBack(fact.body);
        const auto complain = [&, &where = id](Phrase what) {
            check.faults.push_back({place::fact(where), std::move(what)});
        };
        if (!fact.stamp.supersedes) {
            if (takes_back)
                complain(errors::takes_back_nothing());
            continue;
        }
        const FactId& slip = *fact.stamp.supersedes;
        replaced.insert(slip);
        const Fact* old = ledger.find(slip);
        if (old == nullptr)
            complain(errors::replaced_not_here(slip));
        else if (runsInACircle(ledger, fact))
            complain(errors::replaced_in_circle(slip));
        else if (!mayReplace(fact, *old, copyOf))
            complain(errors::replaced_other(slip));
        else if (id < slip)
            check.out_of_order.push_back(id);
    }
    check.superseded = replaced.size();
}

/// Keys by device: what is accepted here, and this device's own.
class Keys {
public:
    Keys(const std::vector<KeyAccepted>& accepted, const std::string& own_device,
         const std::string& own_key)
        : m_own_device(own_device) {
        m_keys[own_device].insert(own_key);
        for (const KeyAccepted& key : accepted)
            m_keys[key.of_device].insert(key.key);
    }
    KeyStanding standing(const std::string& device, const std::string& key) const {
        const auto known = m_keys.find(device);
        if (known == m_keys.end() || !known->second.contains(key))
            return KeyStanding::Asks;
        return device == m_own_device ? KeyStanding::Own : KeyStanding::Accepted;
    }
    bool knows(const std::string& device) const { return m_keys.contains(device); }

private:
    std::string m_own_device;
    std::map<std::string, std::set<std::string>> m_keys;
};

void checkSignature(const Ledger& ledger, const Keys& keys, const Fact& fact,
                    RegisterCheck& check) {
    const auto& body = std::get<WalkdownSigned>(fact.body);
    const BasisCheck basis = checkedSignature(ledger, fact);
    const KeyStanding standing = keys.standing(fact.stamp.device, body.key);
    const auto complain = [&](Phrase why) {
        check.faults.push_back(
            {place::signature(fact.stamp.id), errors::signature_fails(std::move(why))});
    };
    if (basis.fault)
        complain(*basis.fault);
    if (standing == KeyStanding::Asks && keys.knows(fact.stamp.device))
        complain(errors::signed_with_other_key());
    check.signatures.push_back({&fact, standing, basis.later.size()});
}

void checkReport(const Ledger& ledger, const Fact& fact, RegisterCheck& check) {
    const auto& body = std::get<ReportMade>(fact.body);
    const BasisCheck basis = checkedBasis(vesselBasisOf(ledger), body.covers, body.facts_sha256);
    if (basis.fault)
        check.faults.push_back(
            {place::report_made(fact.stamp.id), errors::report_fails(*basis.fault)});
    check.reports.push_back({&fact, basis.later.size()});
}

} // namespace

Result<RegisterCheck> checkedRegister(SqliteRegister& file, const Ledger& ledger) {
    RegisterCheck check;
    if (const Result<> sound = file.examine(); !sound)
        check.faults.push_back(sound.error());
    if (Result<> done = checkPhotographs(file, ledger, check); !done)
        return tl::unexpected(done.error());
    checkCorrections(ledger, check);
    const auto own = DeviceKey::of(file);
    if (!own)
        return tl::unexpected(own.error());
    check.keys = ledger.keysAcceptedOn(file.device());
    const Keys keys(check.keys, file.device(), own->publicHex());
    for (const auto& [id, fact] : ledger.facts()) {
        if (std::holds_alternative<WalkdownSigned>(fact.body))
            checkSignature(ledger, keys, fact, check);
        if (std::holds_alternative<ReportMade>(fact.body))
            checkReport(ledger, fact, check);
    }
    return check;
}

} // namespace latchround
