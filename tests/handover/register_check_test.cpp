// Signatures under a walkdown, reports, and the look through a whole register.
#include <functional>

#include <gmock/gmock.h>

#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"
#include "app/handover/register_check.h"
#include "core/evidence/basis.h"
#include "tests/handover/tablet.h"
#include "tests/register/raw_sqlite.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

class RegisterLookedThrough : public ::testing::Test {
protected:
    RegisterLookedThrough()
        : m_tablet(Tablet::ofSampleVessel()) {
        m_ahn = m_tablet.join("A. Ahn");
        m_walk = m_tablet.beginWalk(m_ahn);
        m_seen =
            m_tablet.record(Observation{m_walk, "5-32", "leaf-gap", Side::None, Answer::No}, m_ahn);
        m_tablet.photograph(m_walk, m_ahn, "picture");
    }

    Fact signedBy(Tablet& tablet, const FactId& person) const {
        const Fact fact{{tablet.id(), {}, person, tablet.file().device(), {}},
                        WalkdownSigned{m_walk, Capacity::Inspector, {}, "", "", ""}};
        return signedWalkdown(tablet.ledger(), fact, DeviceKey::of(tablet.file()).value()).value();
    }
    /// As another program could write it: record() would refuse it.
    void smuggle(FactBody body, const FactId& supersedes) {
        const Fact fact{{m_tablet.id(), {}, m_ahn, m_tablet.file().device(), supersedes},
                        std::move(body)};
        ASSERT_TRUE(m_tablet.file().takeIn(m_tablet.file().arrangement().value(), {&fact, 1}, {}));
    }
    void record(const Fact& fact) { ASSERT_TRUE(m_tablet.file().record({&fact, 1})); }
    RegisterCheck check() const {
        return checkedRegister(m_tablet.file(), m_tablet.ledger()).value();
    }
    std::string faults() const {
        std::string all;
        for (const Error& fault : check().faults)
            all += ui::inOneLine(fault) + "\n";
        return all;
    }
    /// Something other than this program has a hand in the file.
    void tamper(const std::string& sql) {
        m_tablet.close();
        {
            RawSqlite raw(m_tablet.path());
            raw.run("PRAGMA foreign_keys = OFF");
            raw.run("DROP TRIGGER observation_stays");
            raw.run("DROP TRIGGER photograph_bytes_stays");
            raw.run("DROP TRIGGER walkdown_signed_stays");
            ASSERT_EQ(raw.run(sql), SQLITE_OK) << raw.message();
        }
        m_tablet.open();
    }

    Tablet m_tablet;
    FactId m_ahn;
    FactId m_walk;
    FactId m_seen;
};

TEST_F(RegisterLookedThrough, FindsNothingWrongWithWhatTheProgramWrites) {
    record(signedBy(m_tablet, m_ahn));
    const Ledger ledger = m_tablet.ledger();
    const auto basis = vesselBasisOf(ledger);
    m_tablet.record(ReportMade{m_walk, ReportKind::Survey, "", "2015", coverOf(basis),
                               factsSha256(basis), std::string(64, 'a')},
                    m_ahn);
    m_tablet.record(Observation{m_walk, "5-32", "leaf-gap", Side::None, Answer::Yes}, m_ahn,
                    m_seen);
    const RegisterCheck found = check();
    EXPECT_EQ(faults(), "");
    ASSERT_EQ(found.signatures.size(), 1u);
    EXPECT_EQ(found.signatures[0].later, 1u) << "the correction came after it";
    EXPECT_EQ(found.signatures[0].key, KeyStanding::Own);
    ASSERT_EQ(found.reports.size(), 1u);
    EXPECT_EQ(found.reports[0].later, 1u);
    EXPECT_EQ(found.superseded, 1u);
    EXPECT_EQ(found.photographs, 1u);
    EXPECT_THAT(found.photographs_missing, IsEmpty());
}

TEST_F(RegisterLookedThrough, ASignatureHoldsOnEveryTabletItComesTo) {
    record(signedBy(m_tablet, m_ahn));
    Tablet other;
    ASSERT_TRUE(other.take(m_tablet.give()));
    const FactId brandt = other.join("B. Brandt");
    other.record(Note{m_walk, "5-33", "later"}, brandt);
    const RegisterCheck found = checkedRegister(other.file(), other.ledger()).value();
    EXPECT_THAT(found.faults, IsEmpty());
    ASSERT_EQ(found.signatures.size(), 1u);
    EXPECT_EQ(found.signatures[0].key, KeyStanding::Accepted);
    EXPECT_GE(found.signatures[0].later, 1u);
}

TEST_F(RegisterLookedThrough, AChangedFactUnderASignatureIsFound) {
    record(signedBy(m_tablet, m_ahn));
    tamper("UPDATE observation SET answer = 'yes'");
    EXPECT_THAT(faults(), HasSubstr("the entries it is based on have changed since"));
}

TEST_F(RegisterLookedThrough, AChangedSignatureIsFound) {
    record(signedBy(m_tablet, m_ahn));
    tamper("UPDATE walkdown_signed SET capacity = 'chief-officer'");
    EXPECT_THAT(faults(), HasSubstr("the signature does not match"));
}

TEST_F(RegisterLookedThrough, ASignatureByAnotherKeyThanTheDevicesIsFound) {
    Fact fact{{m_tablet.id(), {}, m_ahn, m_tablet.file().device(), {}},
              WalkdownSigned{m_walk, Capacity::Inspector, {}, "", "", ""}};
    record(signedWalkdown(m_tablet.ledger(), fact, DeviceKey(SqliteRegister::KeySeed{})).value());
    EXPECT_THAT(faults(), HasSubstr("not made with its device's key"));
}

TEST_F(RegisterLookedThrough, ChangedBytesOfAPhotographAreFoundByItsHash) {
    tamper("UPDATE photograph_bytes SET bytes = x'00'");
    EXPECT_THAT(faults(),
                HasSubstr("photograph " + sha256Hex(std::as_bytes(std::span("picture", 7)))));
}

TEST_F(RegisterLookedThrough, AMissingPhotographIsListedAndNoFault) {
    const std::string hash(64, 'a');
    m_tablet.record(Photograph{m_walk, "5-32", hash, "image/jpeg", "", "", {}}, m_ahn);
    EXPECT_EQ(faults(), "");
    EXPECT_THAT(check().photographs_missing, ElementsAre(hash));
}

TEST_F(RegisterLookedThrough, CorrectionsThatAreNoneAreFound) {
    smuggle(Note{m_walk, "5-32", "another kind"}, m_seen);
    EXPECT_THAT(faults(), HasSubstr("which is about something else"));
    smuggle(Observation{m_walk, "5-33", "leaf-gap", Side::None, Answer::Yes}, m_seen);
    EXPECT_EQ(check().faults.size(), 2u) << "another door";
    m_tablet.record(TakenBack{"nothing"}, m_ahn);
    EXPECT_THAT(faults(), HasSubstr("does not say what"));
}

TEST_F(RegisterLookedThrough, ACorrectionWithAnEarlierIdIsAWrongClockAndNoFault) {
    Fact early{{factIdOf(1000, {1, 2, 3, 4, 5, 6, 7, 8, 9, 1}),
                {},
                m_ahn,
                m_tablet.file().device(),
                m_seen},
               TakenBack{"slip"}};
    record(early);
    EXPECT_EQ(faults(), "");
    EXPECT_THAT(check().out_of_order, ElementsAre(early.stamp.id));
}

TEST_F(RegisterLookedThrough, CorrectionsInACircleAreFound) {
    Fact one{{m_tablet.id(), {}, m_ahn, m_tablet.file().device(), m_tablet.id()},
             Note{m_walk, "5-32", "one"}};
    Fact other{{*one.stamp.supersedes, {}, m_ahn, m_tablet.file().device(), one.stamp.id},
               Note{m_walk, "5-32", "other"}};
    const std::vector<Fact> both{one, other};
    ASSERT_TRUE(m_tablet.file().record(both));
    EXPECT_THAT(faults(), HasSubstr("which replaces it in turn"));
}

} // namespace
} // namespace latchround::test
