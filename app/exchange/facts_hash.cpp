#include "app/exchange/facts_hash.h"

#include <array>
#include <memory>

#include <openssl/evp.h>

#include "app/exchange/fact_json.h"
#include "app/exchange/hex.h"
#include "core/requirement/catalogue.h"

namespace latchround {

namespace {

/// By OpenSSL, which uses the processor's own instructions: a report checks hundreds of megabytes
/// of photographs.
class Sha256 {
public:
    Sha256() { EVP_DigestInit_ex(m_context.get(), EVP_sha256(), nullptr); }
    void take(const void* bytes, std::size_t size) {
        EVP_DigestUpdate(m_context.get(), bytes, size);
    }
    std::string hex() {
        std::array<unsigned char, 32> hash{};
        EVP_DigestFinal_ex(m_context.get(), hash.data(), nullptr);
        return hexOf(std::as_bytes(std::span(hash)));
    }

private:
    struct Free {
        void operator()(EVP_MD_CTX* context) const { EVP_MD_CTX_free(context); }
    };
    std::unique_ptr<EVP_MD_CTX, Free> m_context{EVP_MD_CTX_new()};
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

std::string catalogueSha256(const Catalogue& catalogue) {
    const std::string texts = ruleTextsOf(catalogue);
    return texts.empty() ? texts : sha256Hex(std::as_bytes(std::span(texts)));
}

} // namespace latchround
