// Three tablets of one ship with random histories: in whatever order their files are taken, and
// through whatever other tablet, the registers end equal, to the byte of all that they show.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "app/handover/walkdown_signature.h"
#include "core/evidence/differences.h"
#include "tests/handover/tablet.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

/// Three tablets that share a vessel and a walkdown and have accepted each other's keys.
class Fleet {
public:
    Fleet() {
        Tablet first = Tablet::ofSampleVessel();
        const FactId ahn = first.join("A. Ahn");
        m_walk = first.beginWalk(ahn);
        m_tablets.push_back(std::move(first));
        m_people.push_back(ahn);
        for (const char* name : {"B. Brandt", "C. Cole"}) {
            Tablet other;
            EXPECT_TRUE(other.take(m_tablets.front().give()));
            m_people.push_back(other.join(name));
            m_tablets.push_back(std::move(other));
        }
        for (std::size_t one = 0; one < 3; ++one)
            for (std::size_t other = 0; other < 3; ++other)
                if (one != other)
                    m_tablets[one].accept(m_tablets[other], m_people[one]);
    }
    Fleet copy() {
        Fleet other(m_people, m_walk);
        for (Tablet& tablet : m_tablets)
            other.m_tablets.push_back(tablet.copy());
        return other;
    }

    Tablet& operator[](std::size_t at) { return m_tablets[at]; }
    void act(std::size_t at);

private:
    Fleet(std::vector<FactId> people, FactId walk)
        : m_people(std::move(people))
        , m_walk(std::move(walk)) {}

    std::vector<Tablet> m_tablets;
    std::vector<FactId> m_people;
    FactId m_walk;
};

template <class T>
T anyOf(const std::vector<T>& all) {
    return all[*rc::gen::inRange<std::size_t>(0, all.size())];
}

template <class Body>
std::vector<Fact> ofKind(const Ledger& ledger) {
    std::vector<Fact> facts;
    for (const auto& [id, fact] : ledger.facts())
        if (std::holds_alternative<Body>(fact.body))
            facts.push_back(fact);
    return facts;
}

std::string someDoor() {
    return anyOf(std::vector<std::string>{"5-32", "5-33"});
}

/// Something that somebody might do on the tablet.
void Fleet::act(std::size_t at) {
    Tablet& tablet = m_tablets[at];
    const FactId& person = m_people[at];
    const Ledger ledger = tablet.ledger();
    const Observation seen{m_walk, someDoor(), anyOf(std::vector<std::string>{"r1", "r2"}),
                           anyOf(std::vector{Side::None, Side::One}),
                           anyOf(std::vector{Answer::Yes, Answer::No, Answer::NotApplicable})};
    const auto observations = ofKind<Observation>(ledger);
    const auto deficiencies = ofKind<Deficiency>(ledger);
    const auto differences = differencesOf(ledger);
    switch (*rc::gen::inRange(0, 14)) {
    case 0:
    case 1:
        tablet.record(seen, person);
        break;
    case 2:
        if (!observations.empty()) {
            const Fact slip = anyOf(observations);
            Observation better = std::get<Observation>(slip.body);
            better.answer = seen.answer;
            tablet.record(better, person, slip.stamp.id);
        }
        break;
    case 3:
        if (!observations.empty())
            tablet.record(TakenBack{"slip"}, person, anyOf(observations).stamp.id);
        break;
    case 4:
        tablet.record(Deficiency{m_walk, seen.door, "r1", "text", {}}, person);
        break;
    case 5:
        if (!deficiencies.empty())
            tablet.record(Rectification{anyOf(deficiencies).stamp.id, "mended", "bosun"}, person);
        break;
    case 6:
        if (!deficiencies.empty())
            tablet.record(Withdrawal{anyOf(deficiencies).stamp.id, "none"}, person);
        break;
    case 7:
        if (!differences.empty()) {
            const Difference difference = anyOf(differences);
            DifferenceSettled settled{difference.facts.front()->stamp.id, {}, "looked again"};
            for (std::size_t i = 1; i < difference.facts.size(); ++i)
                settled.over.push_back(difference.facts[i]->stamp.id);
            tablet.record(settled, person);
        }
        break;
    case 8: {
        Arrangement changed = tablet.file().arrangement().value();
        changed.particulars.passengers = *rc::gen::inRange(1, 4);
        Moment when = sampleMoment();
        when.utc_ms += *rc::gen::inRange(1, 4);
        RC_ASSERT(tablet.file().adopt(changed, when).has_value());
        break;
    }
    case 9: {
        const FactId run = tablet.record(
            RunStarted{m_walk, seen.door, RunKind::Closing, Release::LetGo, 0, {}}, person);
        tablet.record(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Touch, {}}, person);
        const auto shut = static_cast<std::uint32_t>(*rc::gen::inRange(5000, 60000));
        tablet.record(Mark{run, MarkKind::Shut, shut, {}, InputDevice::Touch, {}}, person);
        tablet.record(RunEnded{run, RunOutcome::Complete, ""}, person);
        break;
    }
    case 10:
        tablet.photograph(m_walk, person, anyOf(std::vector<std::string>{"one", "two", "three"}));
        break;
    case 11:
        tablet.record(DecisionLimits{anyOf(std::vector{0.9, 0.95}), 0.05, "ours"}, person);
        break;
    case 12: {
        const DeviceKey key = DeviceKey::of(tablet.file()).value();
        Fact fact{{tablet.id(), {}, person, tablet.file().device(), {}},
                  WalkdownSigned{m_walk, Capacity::Inspector, {}, "", "", ""}};
        fact = signedWalkdown(ledger, fact, key).value();
        RC_ASSERT(tablet.file().record({&fact, 1}).has_value());
        break;
    }
    default: // something of another tablet comes over in between
        const std::size_t other = (at + *rc::gen::element(1u, 2u)) % 3;
        RC_ASSERT(tablet.take(m_tablets[other].give()).has_value());
    }
}

Fleet someFleet() {
    static Fleet base;
    Fleet fleet = base.copy();
    const int acts = *rc::gen::inRange(3, 20);
    for (int i = 0; i < acts; ++i)
        fleet.act(*rc::gen::inRange<std::size_t>(0, 3));
    return fleet;
}

void takeAll(Tablet& into, const std::vector<std::string>& files) {
    for (const std::string& file : files) {
        const auto taken = into.take(file);
        if (!taken)
            RC_FAIL(ui::inOneLine(taken.error()));
    }
}

RC_GTEST_PROP(Merging, EveryOrderGivesTheSameRegisterAndVerdicts, ()) {
    Fleet fleet = someFleet();
    const std::string a = fleet[0].give();
    const std::string b = fleet[1].give();
    const std::string c = fleet[2].give();
    // Each tablet takes the others' files, in an order of its own: commutative, and the union is
    // the same wherever it is made.
    takeAll(fleet[0], *rc::gen::element(std::vector{b, c}, std::vector{c, b}));
    takeAll(fleet[1], *rc::gen::element(std::vector{a, c}, std::vector{c, a}));
    const std::string exported = fleet[0].exported();
    RC_ASSERT(fleet[1].exported() == exported);
    // Associative: the third takes what the first two have put together.
    takeAll(fleet[2], {fleet[1].give()});
    RC_ASSERT(fleet[2].exported() == exported);
    // Idempotent, with its own file and all others.
    takeAll(fleet[0], {a, b, c, fleet[0].give(), fleet[2].give()});
    RC_ASSERT(fleet[0].exported() == exported);
    RC_ASSERT(fleet[0].file().examine().has_value());
}

} // namespace
} // namespace latchround::test
