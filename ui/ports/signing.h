// Signatures by this device's key.
#pragma once

#include <QString>

#include "core/error/error.h"
#include "core/evidence/door_evidence.h"
#include "ui/ports/port.h"

namespace latchround::ui {

/// What a signature is worth now.
struct SignatureHolds {
    bool holds = false;
    int facts = 0; ///< it covers
    int later = 0; ///< facts of the walkdown recorded or taken in since
    Phrase why{};  ///< where it does not hold
};

class Signing : public Port {
public:
    /// The walkdown's signature; `unsigned_fact` has everything but that.
    virtual Result<Fact> sign(const Fact& unsigned_fact) = 0;
    virtual SignatureHolds check(const Recorded<WalkdownSigned>& signature) = 0;
    /// This device's public key, hex.
    virtual Result<QString> ownKey() = 0;
};

} // namespace latchround::ui
