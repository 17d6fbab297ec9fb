// Taking a handover file: what the preview says, whose keys are believed, what is refused.
#include <functional>

#include <gmock/gmock.h>

#include "app/exchange/facts_hash.h"
#include "app/handover/give.h"
#include "core/error/handover_errors.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "tests/handover/tablet.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Pair;
using ::testing::UnorderedElementsAre;

class HandoverTaken : public ::testing::Test {
protected:
    HandoverTaken()
        : m_giver(Tablet::ofSampleVessel()) {
        m_ahn = m_giver.join("A. Ahn");
        m_walk = m_giver.beginWalk(m_ahn);
        m_giver.record(Observation{m_walk, "5-32", "leaf-gap", Side::None, Answer::No}, m_ahn);
        m_giver.photograph(m_walk, m_ahn, "picture");
    }

    Result<Preview> look(Tablet& into, const std::string& bytes) const {
        return previewOf(readHandover(bytes), into.file(), into.ledger());
    }

    Tablet m_giver;
    FactId m_ahn;
    FactId m_walk;
};

TEST_F(HandoverTaken, ANewRegisterMayBeginFromIt) {
    Tablet taker;
    const auto preview = look(taker, m_giver.give());
    ASSERT_TRUE(preview) << ui::inOneLine(preview.error());
    EXPECT_EQ(preview->added, (Added{4, 1, 1}));
    EXPECT_EQ(preview->key, KeyStanding::Asks);
    EXPECT_THAT(preview->facts_by_kind,
                UnorderedElementsAre(Pair("person-joined", 1u), Pair("walkdown-begun", 1u),
                                     Pair("observation", 1u), Pair("photograph", 1u)));
    EXPECT_THAT(preview->people, ElementsAre("A. Ahn"));
    EXPECT_THAT(preview->walkdowns, ElementsAre(m_walk));
    EXPECT_EQ(preview->doors.size(), 3u);
    EXPECT_TRUE(taker.file().facts().value().empty()) << "a look changes nothing";
    EXPECT_TRUE(taker.file().issues().value().empty());

    const auto added = taker.take(m_giver.give());
    ASSERT_TRUE(added) << ui::inOneLine(added.error());
    EXPECT_EQ(*added, (Added{4, 1, 1}));
    EXPECT_EQ(taker.file().arrangement().value(), sampleArrangement());
    EXPECT_EQ(taker.file().photographs().value(), m_giver.file().photographs().value());
    EXPECT_TRUE(taker.file().examine());
}

TEST_F(HandoverTaken, TwiceChangesNothing) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    const std::string before = taker.exported();
    const auto again = taker.take(m_giver.give());
    ASSERT_TRUE(again) << ui::inOneLine(again.error());
    EXPECT_EQ(*again, Added{});
    EXPECT_EQ(taker.exported(), before);
}

TEST_F(HandoverTaken, ItSaysWhichDifferencesItWouldOpen) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    const FactId mate = taker.join("B. Brandt");
    taker.record(Observation{m_walk, "5-32", "leaf-gap", Side::None, Answer::Yes}, mate);
    m_giver.accept(taker, m_ahn);
    const auto preview = look(m_giver, taker.give());
    ASSERT_TRUE(preview) << ui::inOneLine(preview.error());
    EXPECT_EQ(preview->differences, 1u);
    EXPECT_EQ(preview->key, KeyStanding::Accepted);
    EXPECT_EQ(look(taker, taker.give())->differences, 0u);
    EXPECT_EQ(look(taker, taker.give())->key, KeyStanding::Own);
}

/// An import would refuse that arrangement; so does the handover that brings it.
TEST_F(HandoverTaken, NoDoorWithFactsVanishesByTheOthersArrangement) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    const FactId mate = taker.join("B. Brandt");
    taker.record(Note{m_walk, "5-33", "looked at"}, mate);
    Arrangement without = sampleArrangement();
    std::erase_if(without.doors, [](const Door& door) { return door.number == "5-33"; });
    ASSERT_TRUE(m_giver.file().adopt(without, {1'900'000'000'000, 60}));
    const std::string before = taker.exported();
    const auto refused = taker.take(m_giver.give());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where, place::door("5-33"));
    EXPECT_EQ(refused.error().what, errors::not_taken_in(errors::incoming_drops_door_with_fact()));
    EXPECT_EQ(taker.exported(), before);
    ASSERT_TRUE(m_giver.file().adopt(sampleArrangement(), {1'900'000'100'000, 60}));
    EXPECT_TRUE(taker.take(m_giver.give())) << "with the door in it again";
}

TEST_F(HandoverTaken, AnUnknownKeyIsNotBelievedUntilSomebodyHereAcceptsIt) {
    Tablet taker;
    const Handover handover = readHandover(m_giver.give());
    const auto refused = take(handover, taker.file(), {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, errors::key_not_accepted(fingerprintOf(handover.sheet.key)));
    EXPECT_TRUE(taker.file().facts().value().empty());
    ASSERT_TRUE(taker.take(m_giver.give()));
    EXPECT_TRUE(take(handover, taker.file(), {})) << "accepted for good";
}

TEST_F(HandoverTaken, AcceptedByAnotherDeviceIsNotAcceptedHere) {
    Tablet other = Tablet::ofSampleVessel();
    const FactId person = other.join("C. Cole");
    other.accept(m_giver, person);
    Tablet taker;
    ASSERT_TRUE(taker.take(other.give()));
    EXPECT_EQ(standingOf(readHandover(m_giver.give()).sheet, taker.file()).value(),
              KeyStanding::Asks);
}

TEST_F(HandoverTaken, AKeyAcceptedInThisDevicesNameIsNotBelievedEither) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    const Tablet stranger;
    Fact forged{{m_giver.id(), {}, m_ahn, taker.file().device(), {}},
                KeyAccepted{DeviceKey::of(stranger.file()).value().publicHex(),
                            stranger.file().device(), ""}};
    ASSERT_TRUE(m_giver.file().record({&forged, 1}));
    const Handover handover = readHandover(m_giver.give());
    const auto refused = take(handover, taker.file(), {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where, place::fact(forged.stamp.id));
    EXPECT_TRUE(errors::accepts_in_our_name.isOf(refused.error().what));
    // The register came back from a backup, and somebody has compared that key too.
    Fact accepted = forged;
    accepted.stamp.id = taker.id();
    EXPECT_TRUE(take(handover, taker.file(), {{accepted}, {}}));
}

TEST_F(HandoverTaken, ADeviceThatComesWithAnotherKeyIsRefusedByName) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    Handover handover = readHandover(m_giver.give());
    handover.sheet.key = DeviceKey(SqliteRegister::KeySeed{}).publicHex();
    const auto other_key = take(handover, taker.file(), {});
    ASSERT_FALSE(other_key);
    EXPECT_EQ(other_key.error().where.parts.front(), m_giver.file().device());
    EXPECT_TRUE(errors::device_other_key.isOf(other_key.error().what));
    handover.sheet.device = taker.file().device();
    const auto as_this = take(handover, taker.file(), {});
    ASSERT_FALSE(as_this);
    EXPECT_EQ(as_this.error().what,
              errors::own_device_other_key(fingerprintOf(handover.sheet.key)));
}

TEST_F(HandoverTaken, AnotherVesselsFileIsRefused) {
    Tablet other;
    Arrangement arrangement = sampleArrangement();
    arrangement.particulars.number = "7654321";
    ASSERT_TRUE(other.file().adopt(arrangement, sampleMoment()));
    const auto taken = other.take(m_giver.give());
    ASSERT_FALSE(taken);
    EXPECT_TRUE(errors::handover_of_other_vessel.isOf(taken.error().what));
}

TEST_F(HandoverTaken, AFactRecordedHereOtherwiseIsRefusedByItsIdAndNothingIsTaken) {
    Tablet taker;
    ASSERT_TRUE(taker.take(m_giver.give()));
    const FactId note = m_giver.record(Note{m_walk, "5-32", "as it was"}, m_ahn);
    m_giver.record(Note{m_walk, "5-33", "more"}, m_ahn);
    Fact forged = *m_giver.ledger().find(note);
    std::get<Note>(forged.body).text = "as it was not";
    ASSERT_TRUE(taker.file().record({&forged, 1}));
    const std::string before = taker.exported();
    auto taken = taker.take(m_giver.give());
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().where, place::fact(note));
    EXPECT_EQ(taker.exported(), before);

    Tablet another;
    ASSERT_TRUE(another.take(m_giver.give()));
    Handover as_photograph = readHandover(m_giver.give());
    for (Fact& fact : as_photograph.facts)
        if (fact.stamp.id == note)
            fact.body = Deficiency{m_walk, "5-32", "", "under another kind", {}};
    taken = take(as_photograph, another.file(), {});
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().where, place::fact(note));
}

TEST_F(HandoverTaken, FactsAboutADoorThatIsNoLongerListedAreTakenStill) {
    Arrangement smaller = sampleArrangement();
    smaller.doors.erase(smaller.doors.begin()); // 5-32, tested by the giver
    Moment later = sampleMoment();
    later.utc_ms += 1000;
    Tablet taker;
    ASSERT_TRUE(taker.file().adopt(smaller, later));
    const auto added = taker.take(m_giver.give());
    ASSERT_TRUE(added) << ui::inOneLine(added.error());
    EXPECT_EQ(added->issues, 1u);
    EXPECT_EQ(taker.file().arrangement().value(), smaller) << "adopted last";
    const auto back = m_giver.take(taker.give());
    ASSERT_FALSE(back) << "it would drop a door that was tested here";
    EXPECT_EQ(back.error().where, place::door("5-32"));
    EXPECT_EQ(m_giver.file().arrangement().value(), sampleArrangement());
}

TEST_F(HandoverTaken, OfIssuesOfOneMomentAllTabletsChooseTheSame) {
    Arrangement one = sampleArrangement();
    one.particulars.passengers = 1;
    Arrangement other = sampleArrangement();
    other.particulars.passengers = 2;
    Tablet first;
    Tablet second;
    ASSERT_TRUE(first.file().adopt(one, sampleMoment()));
    ASSERT_TRUE(second.file().adopt(other, sampleMoment()));
    const std::string from_first = first.give();
    ASSERT_TRUE(first.take(second.give()));
    ASSERT_TRUE(second.take(from_first));
    EXPECT_EQ(first.file().issues().value(), second.file().issues().value());
    EXPECT_EQ(first.file().arrangement().value(), second.file().arrangement().value());
}

TEST_F(HandoverTaken, ReferencesThatLeadNowhereOrInACircleAreRefusedByName) {
    const auto takenWith = [&](const std::function<void(Handover&)>& change) {
        Tablet taker;
        Handover handover = readHandover(m_giver.give());
        change(handover);
        taker.accept(m_giver, taker.join("D. Dunn"));
        const auto taken = take(handover, taker.file(), {});
        return taken ? "was taken" : ui::inOneLine(taken.error());
    };
    EXPECT_THAT(takenWith([](Handover& h) { h.facts.erase(h.facts.begin() + 1); }),
                HasSubstr("the walkdown \"" + m_walk + "\" is neither in this register"));
    EXPECT_THAT(takenWith([](Handover& h) { h.facts[2].stamp.supersedes = h.facts[3].stamp.id; }),
                "was taken")
        << "a fact may come before the one that it replaces";
    EXPECT_THAT(takenWith([](Handover& h) {
                    h.facts[2].stamp.supersedes = h.facts[3].stamp.id;
                    h.facts[3].stamp.supersedes = h.facts[2].stamp.id;
                }),
                HasSubstr("refers back to it"));
    EXPECT_THAT(takenWith([](Handover& h) { std::get<Observation>(h.facts[2].body).door = "9"; }),
                HasSubstr("no issue of the arrangement has a door \"9\""));
    EXPECT_THAT(takenWith([](Handover& h) {
                    std::get<Observation>(h.facts[2].body).walkdown = h.facts[0].stamp.id;
                }),
                HasSubstr("is neither in this register"))
        << "a person is no walkdown";
}

TEST_F(HandoverTaken, StoppingOnTheWayChangesNothing) {
    Tablet taker;
    taker.accept(m_giver, taker.join("E. Eder"));
    const std::string before = taker.exported();
    const Handover handover = readHandover(m_giver.give());
    // At the first asking, at the second, and so on until it is no longer asked.
    for (int stop_at = 1;; ++stop_at) {
        int asked = 0;
        const auto taken = take(handover, taker.file(), {{}, [&](int done, int of) {
                                                             EXPECT_LE(done, of);
                                                             return ++asked < stop_at;
                                                         }});
        if (taken) {
            EXPECT_GT(stop_at, 3) << "it was asked at all, on the way and at the end";
            break;
        }
        EXPECT_EQ(taken.error().what, errors::not_taken_in(errors::stopped()));
        EXPECT_EQ(asked, stop_at) << "nobody is asked again after a no";
        EXPECT_EQ(taker.exported(), before);
    }
    EXPECT_NE(taker.exported(), before);
}

TEST_F(HandoverTaken, BytesOfAPhotographMayComeAfterItsFact) {
    Tablet without;
    ASSERT_TRUE(without.file().adopt(sampleArrangement(), sampleMoment()));
    ASSERT_TRUE(without.file().record(m_giver.file().facts().value()));
    EXPECT_TRUE(without.file().photographs().value().empty());
    const auto added = without.take(m_giver.give());
    ASSERT_TRUE(added) << ui::inOneLine(added.error());
    EXPECT_EQ(*added, (Added{0, 0, 1}));
}

} // namespace
} // namespace latchround::test
