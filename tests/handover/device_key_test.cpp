// The device's key against published vectors, and how it is kept.
#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/exchange/hex.h"
#include "app/handover/device_key.h"

namespace latchround::test {
namespace {

// RFC 8032, section 7.1, test 1 (from memory; libsodium gives the same).
constexpr auto seed_1 = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
constexpr auto key_1 = "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a";
constexpr auto signature_1 = "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8"
                             "821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b";

TEST(DeviceKey, SignsAsRfc8032Says) {
    const DeviceKey key(bytesOfHex<32>(seed_1).value());
    EXPECT_EQ(key.publicHex(), key_1);
    EXPECT_EQ(hexOf(key.sign("")), signature_1);
    EXPECT_TRUE(isSignedBy(key_1, "", signature_1));
    EXPECT_FALSE(isSignedBy(key_1, "x", signature_1));
    EXPECT_FALSE(isSignedBy(key_1, "", std::string(128, '0')));
    EXPECT_FALSE(isSignedBy("no key", "", signature_1));
    EXPECT_FALSE(isSignedBy(key_1, "", "no signature"));
}

TEST(DeviceKey, IsWrittenAsRfc8410Says) {
    // RFC 8410, section 10.1 (from memory).
    EXPECT_EQ(pemOf("19bf44096984cdfe8541bac167dc3b96c85086aa30b6b6cb0c5c38ad703166e1"),
              "-----BEGIN PUBLIC KEY-----\n"
              "MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=\n"
              "-----END PUBLIC KEY-----\n");
}

TEST(DeviceKey, HasAFingerprintOfFiveGroups) {
    EXPECT_THAT(fingerprintOf(key_1), ::testing::MatchesRegex("([0-9a-f]{4} ){4}[0-9a-f]{4}"));
    EXPECT_EQ(fingerprintOf("no key"), "");
}

TEST(DeviceKey, IsMadeOnceAndKeptWithTheRegister) {
    const QTemporaryDir folder;
    const auto keyAt = [&](const char* name) {
        auto file = SqliteRegister::open(folder.filePath(QString::fromLatin1(name))).value();
        return DeviceKey::of(*file).value().publicHex();
    };
    const std::string first = keyAt("a.db");
    EXPECT_EQ(keyAt("a.db"), first);
    EXPECT_NE(keyAt("b.db"), first);
}

} // namespace
} // namespace latchround::test
