// What goes into a register comes out the same: every kind of fact, every optional, every word.
#include <algorithm>
#include <limits>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/sqlite_register.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

class RoundTrip : public ::testing::Test {
protected:
    void SetUp() override {
        open();
        ASSERT_TRUE(m_register->adopt(sampleArrangement(), sampleMoment()));
        add(samplePersonAndWalkdown());
    }
    void open() {
        auto opened = SqliteRegister::open(m_file);
        ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
        m_register = std::move(*opened);
    }
    void add(const std::vector<Fact>& facts) {
        const Result<> done = m_register->record(facts);
        ASSERT_TRUE(done) << ui::inOneLine(done.error());
        m_expected.insert(m_expected.end(), facts.begin(), facts.end());
    }
    /// One more fact; the answer is its id.
    FactId add(FactBody body) {
        Fact fact = sampleFact(m_next++, std::move(body));
        add(std::vector{fact});
        return fact.stamp.id;
    }
    void expectAllBack() {
        EXPECT_EQ(m_register->facts(), m_expected);
        m_register.reset();
        open();
        EXPECT_EQ(m_register->facts(), m_expected) << "after closing and opening";
        EXPECT_TRUE(m_register->examine());
    }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(QStringLiteral("ship ä %20?#.db"));
    std::unique_ptr<SqliteRegister> m_register;
    std::vector<Fact> m_expected;
    const FactId m_walkdown = sampleId(1);
    const std::string m_door = "6-01 Ä";
    int m_next = 2;
};

TEST_F(RoundTrip, EveryKindOfFactWithEverythingFilledIn) {
    const FactId run =
        add(RunStarted{m_walkdown, m_door, RunKind::Contact, Release::Remote, -1.25, "MVZ 2"});
    add(Mark{run, MarkKind::Touched, std::numeric_limits<std::uint32_t>::max(),
             std::numeric_limits<std::int64_t>::max(), InputDevice::Touch,
             std::numeric_limits<std::int64_t>::min()});
    add(RunEnded{run, RunOutcome::Void, "somebody walked through"});
    add(Observation{m_walkdown, m_door, "leaf-gap", Side::Two, Answer::NotApplicable});
    add(PlateRead{m_walkdown, m_door, PlateState::Read, FireClass::B0});
    add(MeasuredValue{m_walkdown, m_door, "sill-gap", 0.1 + 0.2, "mm", 0.1});
    add(CautionAnswered{m_walkdown, m_door, "clear", true});
    add(Note{m_walkdown, m_door, "frame 52, \"port\" side;\nsecond line – ünïcödé 門"});
    add(Photograph{m_walkdown, m_door, std::string(64, 'a'), "image/png", "sill", "leaf-gap"});
    add(Deficiency{m_walkdown, m_door, "latch-holds", "does not latch"});
    add(CouldNotTest{m_walkdown, m_door, "closing-time",
                     Wording("cargo or stores in the way", "cargo-or-stores-in-the-way")});
    add(Judgement{m_walkdown, m_door, "leaf-gap", true, "as approved"});
    WalkdownBegun sampled;
    sampled.scope = "a sample";
    sampled.sample = SampleDrawn{100, 5, 950'000, 4711};
    add(sampled);
    add(ThumbDrill{
        {{Cue::AlarmHeard, 0.21}, {Cue::LeafStarts, 0.1 + 0.2}, {Cue::LeafStops, -0.05}}});
    add(DecisionLimits{0.99, 0.01, "the Administration asks for it"});
    add(UpkeepDone{"weekly", "lamp 3 changed"});
    add(CertificateSeen{calendarDateFrom("2027-02-28").value()});
    const FactId once = add(Deficiency{m_walkdown, m_door, "latch-holds", "does not latch"});
    const FactId again =
        add(Deficiency{m_walkdown, m_door, "latch-holds", "does not latch again", once});
    add(DeficiencyTerms{again, Severity::Minor, PortAction::Within14Days, false,
                        calendarDateFrom("2026-12-09").value(), "fire patrol", "Ove Brandlund",
                        "fire-patrol"});
    const FactId mended = add(Rectification{again, "latch plate moved 2 mm", "Ove Brandlund"});
    add(Photograph{m_walkdown, m_door, std::string(64, 'b'), "image/png", "plate", "", mended});
    add(AwaitingRetest{again, "any time"});
    add(Withdrawal{once, "written twice"});
    add(DifferenceSettled{once, {again, mended}, "both saw it"});
    add(KeyAccepted{std::string(64, 'c'), "tablet-2", "the second surveyor's"});
    const std::vector<Covered> covers{{"tablet-1", again, 12}, {"tablet-2", mended, 1}};
    add(WalkdownSigned{m_walkdown, Capacity::ChiefOfficer, covers, std::string(64, 'd'),
                       std::string(64, 'e'), std::string(128, 'f')});
    add(ReportMade{m_walkdown, ReportKind::DoorRecord, m_door, "edition 1", covers,
                   std::string(64, '1'), std::string(64, '2'), std::string(64, '3'), "es"});
    Fact undone = sampleFact(m_next++, Undone{});
    undone.stamp.supersedes = again;
    add(std::vector{undone});
    add(WalkdownEnded{m_walkdown, "all done"});
    Fact back = sampleFact(m_next++, TakenBack{"wrong door"});
    back.stamp.supersedes = m_expected.back().stamp.id;
    back.stamp.when.ship_offset_minutes = 840;
    back.stamp.device = "tablet-2";
    add(std::vector{back});
    std::set<std::size_t> kinds;
    for (const Fact& fact : m_expected)
        kinds.insert(fact.body.index());
    EXPECT_EQ(kinds.size(), std::variant_size_v<FactBodies>) << "every kind is among them";
    expectAllBack();
}

TEST_F(RoundTrip, EveryKindOfFactWithEverythingLeftOut) {
    const FactId run = add(RunStarted{m_walkdown, m_door, {}, {}, 0});
    add(Mark{run, MarkKind::Shut, std::nullopt, std::nullopt, InputDevice::Hand, std::nullopt});
    add(RunEnded{run, RunOutcome::Complete, ""});
    add(Observation{m_walkdown, m_door, "", Side::None, Answer::Yes});
    add(PlateRead{m_walkdown, m_door, PlateState::None, std::nullopt});
    add(MeasuredValue{m_walkdown, m_door, "", 0, ""});
    add(CautionAnswered{m_walkdown, m_door, "", false});
    add(Note{m_walkdown, m_door, ""});
    add(Photograph{m_walkdown, m_door, std::string(64, '0'), "", "", ""});
    add(Deficiency{m_walkdown, m_door, "", ""});
    add(CouldNotTest{m_walkdown, m_door, "", ""});
    add(Judgement{m_walkdown, m_door, "", false, ""});
    const FactId found = add(Deficiency{m_walkdown, m_door, "", ""});
    add(DeficiencyTerms{found});
    add(Rectification{found, "", ""});
    add(AwaitingRetest{found, ""});
    add(Withdrawal{found, ""});
    add(DifferenceSettled{found, {}, ""});
    add(ReportMade{m_walkdown, {}, "", "", {}, std::string(64, '0'), std::string(64, '0')});
    add(WalkdownEnded{m_walkdown, ""});
    add(TakenBack{""});
    add(PersonJoined{"", ""});
    add(WalkdownBegun{});
    expectAllBack();
}

TEST_F(RoundTrip, EachOptionalOfAMarkAlone) {
    const FactId run = add(RunStarted{m_walkdown, m_door, {}, {}, 0});
    add(Mark{run, MarkKind::Shut, 0u, std::nullopt, InputDevice::Key, std::nullopt});
    add(Mark{run, MarkKind::Shut, std::nullopt, 0, InputDevice::Key, std::nullopt});
    add(Mark{run, MarkKind::Shut, std::nullopt, std::nullopt, InputDevice::Key, 0});
    expectAllBack();
}

TEST_F(RoundTrip, EveryWordOfTheClosedSetsOfFacts) {
    for (const auto& entry : purposeWords) {
        WalkdownBegun begun;
        begun.purpose = entry.value;
        add(begun);
    }
    for (const auto& entry : sideWords)
        add(Observation{m_walkdown, m_door, "r", entry.value, Answer::Yes});
    for (const auto& entry : answerWords)
        add(Observation{m_walkdown, m_door, "r", Side::One, entry.value});
    const FactId found = add(Deficiency{m_walkdown, m_door, "", ""});
    for (const auto& entry : severityWords)
        add(DeficiencyTerms{found, entry.value});
    for (const auto& entry : portActionWords)
        add(DeficiencyTerms{found, {}, entry.value});
    for (const auto& entry : capacityWords)
        add(WalkdownSigned{m_walkdown,
                           entry.value,
                           {},
                           std::string(64, 'd'),
                           std::string(64, 'e'),
                           std::string(128, 'f')});
    for (const auto& entry : reportKindWords)
        add(ReportMade{
            m_walkdown, entry.value, "", "", {}, std::string(64, '0'), std::string(64, '0')});
    for (const auto& entry : plateStateWords)
        add(PlateRead{m_walkdown, m_door, entry.value, FireClass::C});
    for (const auto& entry : fireClassWords)
        add(PlateRead{m_walkdown, m_door, PlateState::Read, entry.value});
    for (const auto& entry : runKindWords)
        add(RunStarted{m_walkdown, m_door, entry.value, Release::LetGo, 0});
    FactId run;
    for (const auto& entry : releaseWords)
        run = add(RunStarted{m_walkdown, m_door, RunKind::Closing, entry.value, 0});
    for (const auto& entry : markKindWords)
        add(Mark{run, entry.value, 1u, 2, InputDevice::Key, 3});
    for (const auto& entry : inputDeviceWords)
        add(Mark{run, MarkKind::Shut, 1u, 2, entry.value, 3});
    for (const auto& entry : runOutcomeWords)
        add(RunEnded{run, entry.value, ""});
    expectAllBack();
}

TEST_F(RoundTrip, FactsComeBackInTheOrderOfTheirIds) {
    const std::vector<Fact> backwards{sampleFact(7, Note{m_walkdown, m_door, "later"}),
                                      sampleFact(5, Note{m_walkdown, m_door, "earlier"})};
    ASSERT_TRUE(m_register->record(backwards));
    m_expected.push_back(backwards[1]);
    m_expected.push_back(backwards[0]);
    expectAllBack();
}

TEST_F(RoundTrip, AnArrangementAsAdopted) {
    EXPECT_EQ(m_register->arrangement(), sampleArrangement());
    Arrangement changed = sampleArrangement();
    changed.particulars.keel_laid =
        CalendarDate{std::chrono::year{1999}, std::chrono::December, std::chrono::day{31}};
    changed.particulars.sprinklers = false;
    changed.doors[1].leaf_mass_kg = 62.5;
    changed.doors[1].release_groups = {"B", "A", "B"};
    changed.doors[1].boundary.clear(); // empty references come back empty
    changed.doors[1].deck.clear();
    changed.boundaries[1].zone_aft.clear();
    changed.boundaries[1].zone_forward.clear();
    std::swap(changed.doors[0], changed.doors[2]);
    ASSERT_TRUE(m_register->adopt(changed, sampleMoment()));
    EXPECT_EQ(m_register->arrangement(), changed);
    ASSERT_TRUE(m_register->reopen());
    EXPECT_EQ(m_register->arrangement(), changed);
}

TEST_F(RoundTrip, EveryWordOfTheClosedSetsOfAnArrangement) {
    Arrangement all = sampleArrangement();
    const auto doorLike = [&](const std::string& number) -> Door& {
        all.doors.push_back(all.doors[1]);
        all.doors.back().number = number;
        return all.doors.back();
    };
    for (const auto& entry : doorKindWords)
        doorLike("kind " + std::string(entry.word)).kind = entry.value;
    for (const auto& entry : fireClassWords) {
        doorLike("class " + std::string(entry.word)).fire_class = entry.value;
        all.boundaries.push_back(
            {"class " + std::string(entry.word), Place::Other, "3", "4", 1, entry.value});
    }
    for (const auto& entry : normalPositionWords)
        doorLike("normally " + std::string(entry.word)).normally = entry.value;
    for (const auto& entry : placeWords)
        all.boundaries.push_back(
            {"place " + std::string(entry.word), entry.value, "3", "4", 1, std::nullopt});
    for (const auto& entry : regimeWords) {
        all.particulars.regime = entry.value;
        const Result<> done = m_register->adopt(all, sampleMoment());
        ASSERT_TRUE(done) << ui::inOneLine(done.error());
        EXPECT_EQ(m_register->arrangement(), all);
    }
}

TEST_F(RoundTrip, ThePhotographsBytes) {
    std::vector<std::byte> bytes(70000);
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<std::byte>(i % 256);
    const Fact photograph =
        sampleFact(m_next++, Photograph{m_walkdown, m_door, sha256Of(bytes), "image/jpeg", "", ""});
    ASSERT_TRUE(m_register->recordPhotograph(photograph, bytes));
    m_expected.push_back(photograph);
    EXPECT_EQ(m_register->photograph(sha256Of(bytes)), bytes);
    expectAllBack();
    EXPECT_EQ(m_register->photograph(sha256Of(bytes)), bytes);
}

TEST_F(RoundTrip, TheDevicesIdIsMadeOnceAndIsItsOwn) {
    const std::string device = m_register->device();
    EXPECT_EQ(device.size(), 36u);
    ASSERT_TRUE(m_register->reopen());
    EXPECT_EQ(m_register->device(), device);
    const auto other = SqliteRegister::open(m_folder.filePath(QStringLiteral("other.db")));
    ASSERT_TRUE(other);
    EXPECT_NE((*other)->device(), device);
}

TEST(NewRegister, KnowsNoVesselAndNoFacts) {
    const QTemporaryDir folder;
    const auto opened = SqliteRegister::open(folder.filePath(QStringLiteral("new.db")));
    ASSERT_TRUE(opened);
    EXPECT_EQ((*opened)->arrangement(), Arrangement{});
    EXPECT_EQ((*opened)->facts(), std::vector<Fact>{});
}

/// Numbers of rows say their order, and nothing more.
TEST_F(RoundTrip, GroupsOfADoorAreFoundByItsNumberInTheIssue) {
    m_register.reset();
    {
        RawSqlite raw(m_file);
        ASSERT_EQ(raw.run("DROP TRIGGER door_stays; DROP TRIGGER door_release_groups_stays;"
                          "UPDATE door SET seq = 100 - 2 * seq;"
                          "UPDATE door_release_groups SET door_seq = 100 - 2 * door_seq"),
                  SQLITE_OK)
            << raw.message();
    }
    open();
    Arrangement turned = sampleArrangement();
    std::ranges::reverse(turned.doors);
    EXPECT_EQ(m_register->arrangement(), turned);
}

} // namespace
} // namespace latchround
