#include "app/handover/key_rules.h"

#include <algorithm>
#include <vector>

#include "app/handover/device_key.h"
#include "core/evidence/ledger.h"
#include "core/evidence/references.h"

namespace latchround {

namespace {

/// Only the facts that bear on keys: a whole register would take a second to index.
Result<std::vector<KeyAccepted>> keysAccepted(SqliteRegister& here) {
    Ledger ledger;
    for (const std::size_t kind : {kindOf<KeyAccepted>(), kindOf<TakenBack>(),
                                   kindOf<DifferenceSettled>(), kindOf<Undone>()}) {
        auto facts = here.factsOfKind(kind);
        if (!facts)
            return tl::unexpected(facts.error());
        for (Fact& fact : *facts)
            ledger.add(std::move(fact));
    }
    return ledger.keysAcceptedOn(here.device());
}

bool isAcceptance(const Fact& fact, const std::string& key, const std::string& of_device,
                  const std::string& on_device) {
    const auto* body = std::get_if<KeyAccepted>(&fact.body);
    return body && body->key == key && body->of_device == of_device &&
           fact.stamp.device == on_device;
}

} // namespace

Result<KeyStanding> standingOf(const CoverSheet& sheet, SqliteRegister& here) {
    const std::string fingerprint = "the fingerprint " + fingerprintOf(sheet.key);
    if (sheet.device == here.device()) {
        const auto own = DeviceKey::of(here);
        if (!own)
            return tl::unexpected(own.error());
        if (own->publicHex() == sheet.key)
            return KeyStanding::Own;
        return tl::unexpected(
            Complaint{"device " + sheet.device,
                      "the file says that it comes from this very device, but its key has " +
                          fingerprint + ", which is not this device's",
                      "Do not take it; find out who made it."});
    }
    const auto keys = keysAccepted(here);
    if (!keys)
        return tl::unexpected(keys.error());
    const KeyAccepted* other = nullptr;
    for (const KeyAccepted& accepted : *keys) {
        if (accepted.of_device != sheet.device)
            continue;
        if (accepted.key == sheet.key)
            return KeyStanding::Accepted;
        other = &accepted;
    }
    if (other != nullptr)
        return tl::unexpected(Complaint{
            "device " + sheet.device + (other->remark.empty() ? "" : " (" + other->remark + ")"),
            "it comes with another key than the one accepted for it: " + fingerprint +
                " instead of " + fingerprintOf(other->key),
            "Do not take it before you have asked whoever has that tablet; if its key "
            "really is new, take the old acceptance back first."});
    return KeyStanding::Asks;
}

Done acceptsNothingInOurName(std::span<const Fact> brought, SqliteRegister& here,
                             std::span<const Fact> acceptance) {
    const auto recorded = here.factsOfKind(kindOf<KeyAccepted>());
    if (!recorded)
        return tl::unexpected(recorded.error());
    const std::string device = here.device();
    for (const Fact& fact : brought) {
        const auto* body = std::get_if<KeyAccepted>(&fact.body);
        if (!body || fact.stamp.device != device)
            continue;
        const auto same = [&](const Fact& other) {
            return isAcceptance(other, body->key, body->of_device, device);
        };
        if (std::ranges::any_of(*recorded, same) || std::ranges::any_of(acceptance, same))
            continue;
        return tl::unexpected(Complaint{
            "fact " + fact.stamp.id,
            "it accepts, in the name of this device, a key that nobody here has accepted: "
            "key " +
                body->key + " of device " + body->of_device + ", fingerprint " +
                fingerprintOf(body->key),
            "If this register was put back from a backup, compare that key as well and "
            "accept it; else do not take the file."});
    }
    return {};
}

Done acceptedBy(std::span<const Fact> facts, const CoverSheet& sheet, const std::string& device) {
    const bool accepted = std::ranges::any_of(facts, [&](const Fact& fact) {
        return isAcceptance(fact, sheet.key, sheet.device, device);
    });
    if (accepted)
        return {};
    return tl::unexpected(Complaint{
        "device " + sheet.device,
        "nobody here has accepted its key yet; it has the fingerprint " + fingerprintOf(sheet.key),
        "Compare the fingerprint with what that tablet shows, and accept it."});
}

} // namespace latchround
