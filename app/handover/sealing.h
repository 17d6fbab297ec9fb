// A handover file for one receiver's eyes alone: encrypted to the key of the receiver's device
// (libsodium's sealed box to the X25519 key that belongs to its Ed25519 key). Behind a first line
// that says what it is and a second that says for which key.
#pragma once

#include <string>
#include <string_view>

#include "app/handover/device_key.h"

namespace latchround {

/// `receiver`: the public key in hex.
Result<std::string> sealedFor(std::string_view receiver, std::string_view bytes);

bool isSealed(std::string_view bytes);

/// `name` stands in the error: sealed for somebody else, or damaged.
Result<std::string> unsealed(std::string_view sealed, const DeviceKey& own,
                             const std::string& name);

} // namespace latchround
