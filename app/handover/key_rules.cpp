#include "app/handover/key_rules.h"

#include <algorithm>
#include <vector>

#include "app/handover/device_key.h"
#include "core/error/handover_errors.h"
#include "core/evidence/ledger.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"

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
    if (sheet.device == here.device()) {
        const auto own = DeviceKey::of(here);
        if (!own)
            return tl::unexpected(own.error());
        if (own->publicHex() == sheet.key)
            return KeyStanding::Own;
        return tl::unexpected(Error{place::device(sheet.device),
                                    errors::own_device_other_key(fingerprintOf(sheet.key))});
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
        return tl::unexpected(
            Error{other->remark.empty() ? place::device(sheet.device)
                                        : place::device_named(sheet.device, other->remark.text),
                  errors::device_other_key(fingerprintOf(sheet.key), fingerprintOf(other->key))});
    return KeyStanding::Asks;
}

Result<> acceptsNothingInOurName(std::span<const Fact> brought, SqliteRegister& here,
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
        return tl::unexpected(Error{
            place::fact(fact.stamp.id),
            errors::accepts_in_our_name(body->key, body->of_device, fingerprintOf(body->key))});
    }
    return {};
}

Result<> acceptedBy(std::span<const Fact> facts, const CoverSheet& sheet,
                    const std::string& device) {
    const bool accepted = std::ranges::any_of(facts, [&](const Fact& fact) {
        return isAcceptance(fact, sheet.key, sheet.device, device);
    });
    if (accepted)
        return {};
    return tl::unexpected(
        Error{place::device(sheet.device), errors::key_not_accepted(fingerprintOf(sheet.key))});
}

} // namespace latchround
