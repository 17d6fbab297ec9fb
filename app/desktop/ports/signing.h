// Signatures by the key that lies in the register of the vessel that is open.
#pragma once

#include "app/desktop/open_vessel.h"
#include "app/handover/signature_checks.h"
#include "ui/ports/signing.h"

namespace latchround {

class DesktopSigning : public ui::Signing {
public:
    explicit DesktopSigning(const OpenVessel& open)
        : m_open(open) {}

    Result<Fact> sign(const Fact& unsigned_fact) override;
    ui::SignatureHolds check(const Recorded<WalkdownSigned>& signature) override;
    Result<QString> ownKey() override;

    /// Another vessel is open: what was found of the signatures of the one before is of no use.
    void forget() { m_checks = SignatureChecks(); }

private:
    const OpenVessel& m_open;
    SignatureChecks m_checks;
};

} // namespace latchround
