#include "app/exchange/facts_hash.h"

#include <array>

#include <sodium/crypto_hash_sha256.h>
#include <sodium/utils.h>

#include "app/exchange/fact_json.h"

namespace latchround {

namespace {

class Sha256 {
public:
    Sha256() { crypto_hash_sha256_init(&m_state); }
    void take(const void* bytes, std::size_t size) {
        crypto_hash_sha256_update(&m_state, static_cast<const unsigned char*>(bytes), size);
    }
    std::string hex() {
        std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
        crypto_hash_sha256_final(&m_state, hash.data());
        std::string text(2 * hash.size() + 1, '\0');
        sodium_bin2hex(text.data(), text.size(), hash.data(), hash.size());
        text.pop_back();
        return text;
    }

private:
    crypto_hash_sha256_state m_state{};
};

} // namespace

std::string sha256Hex(std::span<const std::byte> bytes) {
    Sha256 hash;
    hash.take(bytes.data(), bytes.size());
    return hash.hex();
}

std::string factsSha256(std::span<const Fact* const> facts) {
    Sha256 hash;
    for (const Fact* fact : facts) {
        const std::string line = jsonLineFrom(*fact) + '\n';
        hash.take(line.data(), line.size());
    }
    return hash.hex();
}

} // namespace latchround
