// The key by which a device is known to others: Ed25519 (RFC 8032). What it signs can be checked
// with the public half alone; the secret half stays in the register it was made in.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

#include "app/register/sqlite_register.h"

namespace latchround {

class DeviceKey {
public:
    /// The key of the device that this register lies on; made when first asked for.
    static Result<DeviceKey> of(SqliteRegister& file);
    explicit DeviceKey(const SqliteRegister::KeySeed& seed);

    /// 64 lower-case hex digits.
    std::string publicHex() const;
    using Signature = std::array<std::byte, 64>;
    Signature sign(std::string_view bytes) const;

    using Secret = std::array<std::byte, 64>;
    const Secret& secret() const { return m_secret; }

private:
    std::array<std::byte, 32> m_public{};
    Secret m_secret{};
};

/// `key` and `signature` in hex. False as well where one of them is no key or signature at all.
bool isSignedBy(std::string_view key, std::string_view bytes, std::string_view signature);

/// The public key as a SubjectPublicKeyInfo (RFC 8410) in PEM, as openssl reads it. `key` in hex.
std::string pemOf(std::string_view key);

/// Of a public key in hex, short enough to be read out over the telephone: the first twenty hex
/// digits of its SHA-256, in groups of four.
std::string fingerprintOf(std::string_view key);

} // namespace latchround
