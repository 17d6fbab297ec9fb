// A signature shown again is not worked out again, and never stands for what it was before.
#include <gmock/gmock.h>

#include "app/handover/signature_checks.h"
#include "tests/handover/tablet.h"

namespace latchround::test {
namespace {

class KeptChecks : public ::testing::Test {
protected:
    Tablet m_tablet = Tablet::ofSampleVessel();
    FactId m_ahn = m_tablet.join("A. Ahn");
    FactId m_walk = m_tablet.beginWalk(m_ahn);
    int m_checked = 0;
    SignatureChecks m_checks{[this](const Ledger& ledger, const Fact& signature) {
        ++m_checked;
        return checkedSignature(ledger, signature);
    }};

    Fact signature() {
        const Fact fact{{m_tablet.id(), {}, m_ahn, m_tablet.file().device(), {}},
                        WalkdownSigned{m_walk, Capacity::Inspector, {}, "", "", ""}};
        return signedWalkdown(m_tablet.ledger(), fact, DeviceKey::of(m_tablet.file()).value())
            .value();
    }
};

TEST_F(KeptChecks, OneCheckForASignatureHoweverOftenItIsShown) {
    const Fact one = signature();
    const Fact other = signature();
    const Ledger ledger = m_tablet.ledger();
    for (int i = 0; i < 3; ++i) {
        EXPECT_FALSE(m_checks.of(ledger, one).fault);
        EXPECT_EQ(m_checks.of(ledger, one).later, 0u);
        EXPECT_FALSE(m_checks.of(ledger, other).fault);
    }
    EXPECT_EQ(m_checked, 2);
}

TEST_F(KeptChecks, AnotherFactAsksForAnotherCheck) {
    const Fact fact = signature();
    EXPECT_EQ(m_checks.of(m_tablet.ledger(), fact).later, 0u);
    m_tablet.record(Note{m_walk, "5-32", "after it"}, m_ahn);
    EXPECT_EQ(m_checks.of(m_tablet.ledger(), fact).later, 1u);
    EXPECT_EQ(m_checked, 2);
}

TEST_F(KeptChecks, AnotherSignatureOfTheSameIdIsCheckedForItself) {
    Fact fact = signature();
    const Ledger ledger = m_tablet.ledger();
    EXPECT_FALSE(m_checks.of(ledger, fact).fault);
    std::get<WalkdownSigned>(fact.body).signature.back() ^= 1;
    EXPECT_TRUE(m_checks.of(ledger, fact).fault);
}

} // namespace
} // namespace latchround::test
