#include "app/handover/device_key.h"

#include <vector>

#include <sodium.h>

#include "app/exchange/facts_hash.h"
#include "app/exchange/hex.h"
#include "core/error/handover_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

const unsigned char* raw(const std::byte* bytes) {
    return reinterpret_cast<const unsigned char*>(bytes);
}
const unsigned char* raw(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}
unsigned char* raw(std::byte* bytes) {
    return reinterpret_cast<unsigned char*>(bytes);
}

SqliteRegister::KeySeed freshSeed() {
    SqliteRegister::KeySeed seed{};
    randombytes_buf(seed.data(), seed.size());
    return seed;
}

} // namespace

Result<DeviceKey> DeviceKey::of(SqliteRegister& file) {
    if (sodium_init() < 0)
        return tl::unexpected(Error{place::own_key(), errors::no_random_numbers()});
    const auto seed = file.keySeed(freshSeed);
    if (!seed)
        return tl::unexpected(seed.error());
    return DeviceKey(*seed);
}

DeviceKey::DeviceKey(const SqliteRegister::KeySeed& seed) {
    crypto_sign_ed25519_seed_keypair(raw(m_public.data()), raw(m_secret.data()), raw(seed.data()));
}

std::string DeviceKey::publicHex() const {
    return hexOf(m_public);
}

DeviceKey::Signature DeviceKey::sign(std::string_view bytes) const {
    Signature signature{};
    crypto_sign_ed25519_detached(raw(signature.data()), nullptr, raw(bytes), bytes.size(),
                                 raw(m_secret.data()));
    return signature;
}

bool isSignedBy(std::string_view key, std::string_view bytes, std::string_view signature) {
    const auto public_key = bytesOfHex<crypto_sign_ed25519_PUBLICKEYBYTES>(key);
    const auto signed_so = bytesOfHex<crypto_sign_ed25519_BYTES>(signature);
    return public_key && signed_so &&
           crypto_sign_ed25519_verify_detached(raw(signed_so->data()), raw(bytes), bytes.size(),
                                               raw(public_key->data())) == 0;
}

std::string pemOf(std::string_view key) {
    // RFC 8410, section 4: the sequence for id-Ed25519 (1.3.101.112), then the 32 bytes.
    const auto info = bytesOfHex<44>("302a300506032b6570032100" + std::string(key));
    if (!info)
        return {};
    std::string base64(sodium_base64_encoded_len(info->size(), sodium_base64_VARIANT_ORIGINAL),
                       '\0');
    sodium_bin2base64(base64.data(), base64.size(), raw(info->data()), info->size(),
                      sodium_base64_VARIANT_ORIGINAL);
    base64.pop_back(); // its closing NUL
    return "-----BEGIN PUBLIC KEY-----\n" + base64 + "\n-----END PUBLIC KEY-----\n";
}

std::string fingerprintOf(std::string_view key) {
    const auto bytes = bytesOfHex<32>(key);
    if (!bytes)
        return {};
    const std::string hash = sha256Hex(*bytes);
    std::string groups;
    for (std::size_t i = 0; i < 20; i += 4)
        groups += (i > 0 ? " " : "") + hash.substr(i, 4);
    return groups;
}

} // namespace latchround
