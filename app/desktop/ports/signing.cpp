#include "app/desktop/ports/signing.h"

#include "app/handover/device_key.h"
#include "app/handover/walkdown_signature.h"

namespace latchround {

Result<Fact> DesktopSigning::sign(const Fact& unsigned_fact) {
    const Result<DeviceKey> key = DeviceKey::of(*m_open.vessel_register);
    if (!key)
        return tl::unexpected(key.error());
    return signedWalkdown(m_open.session->ledger(), unsigned_fact, *key);
}

ui::SignatureHolds DesktopSigning::check(const Recorded<WalkdownSigned>& signature) {
    const SignatureChecks::Standing& check =
        m_checks.of(m_open.session->ledger(), {signature.stamp, signature.body});
    ui::SignatureHolds holds;
    holds.holds = !check.fault;
    for (const Covered& covered : signature.body.covers)
        holds.facts += covered.facts;
    holds.later = int(check.later);
    holds.why = check.fault.value_or(Phrase());
    return holds;
}

Result<QString> DesktopSigning::ownKey() {
    const Result<DeviceKey> key = DeviceKey::of(*m_open.vessel_register);
    if (!key)
        return tl::unexpected(key.error());
    return QString::fromStdString(key->publicHex());
}

} // namespace latchround
