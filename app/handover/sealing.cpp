#include "app/handover/sealing.h"

#include <array>

#include <sodium.h>

#include "app/exchange/hex.h"
#include "core/error/handover_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

constexpr std::string_view sealed_line = "latchround sealed handover 1\n";
constexpr std::size_t key_line_size = 65;

unsigned char* uchars(std::string& bytes, std::size_t from = 0) {
    return reinterpret_cast<unsigned char*>(bytes.data() + from);
}
const unsigned char* uchars(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}
const unsigned char* uchars(const std::byte* bytes) {
    return reinterpret_cast<const unsigned char*>(bytes);
}

using BoxKey = std::array<unsigned char, crypto_box_PUBLICKEYBYTES>;

} // namespace

Result<std::string> sealedFor(std::string_view receiver, std::string_view bytes) {
    const auto key = bytesOfHex<32>(receiver);
    BoxKey box{};
    if (!key || crypto_sign_ed25519_pk_to_curve25519(box.data(), uchars(key->data())) != 0)
        return tl::unexpected(Error{place::key(receiver), errors::receiver_not_a_key()});
    std::string sealed = std::string(sealed_line) + std::string(receiver) + "\n";
    const std::size_t header = sealed.size();
    sealed.resize(header + bytes.size() + crypto_box_SEALBYTES);
    crypto_box_seal(uchars(sealed, header), uchars(bytes), bytes.size(), box.data());
    return sealed;
}

bool isSealed(std::string_view bytes) {
    return bytes.starts_with(sealed_line);
}

Result<std::string> unsealed(std::string_view sealed, const DeviceKey& own,
                             const std::string& name) {
    sealed.remove_prefix(sealed_line.size());
    const std::string_view key_line = sealed.substr(0, key_line_size);
    const std::string_view receiver = key_line.substr(0, 64);
    const auto damaged = [&] { return tl::unexpected(Error{name, errors::sealed_file_damaged()}); };
    if (key_line.size() != key_line_size || key_line.back() != '\n' || !bytesOfHex<32>(receiver))
        return damaged();
    if (receiver != own.publicHex())
        return tl::unexpected(
            Error{name, errors::sealed_for_another(fingerprintOf(receiver),
                                                   fingerprintOf(own.publicHex()))});
    sealed.remove_prefix(key_line_size);
    if (sealed.size() < crypto_box_SEALBYTES)
        return damaged();
    BoxKey public_box{};
    BoxKey secret_box{};
    const auto own_public = bytesOfHex<32>(own.publicHex());
    if (crypto_sign_ed25519_pk_to_curve25519(public_box.data(), uchars(own_public->data())) != 0)
        return damaged();
    crypto_sign_ed25519_sk_to_curve25519(secret_box.data(), uchars(own.secret().data()));
    std::string bytes(sealed.size() - crypto_box_SEALBYTES, '\0');
    const bool opened = crypto_box_seal_open(uchars(bytes), uchars(sealed), sealed.size(),
                                             public_box.data(), secret_box.data()) == 0;
    sodium_memzero(secret_box.data(), secret_box.size());
    if (!opened)
        return damaged();
    return bytes;
}

} // namespace latchround
