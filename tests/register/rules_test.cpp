// What a register accepts and what it refuses, and that a refusal leaves nothing behind.
#include <limits>
#include <span>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/sqlite_register.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

using ::testing::HasSubstr;

class RegisterRules : public ::testing::Test {
protected:
    void SetUp() override {
        auto opened = SqliteRegister::open(m_file);
        ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
        m_register = std::move(*opened);
        ASSERT_TRUE(m_register->adopt(sampleArrangement(), sampleMoment()));
        const Result<> done = m_register->record(samplePersonAndWalkdown());
        ASSERT_TRUE(done) << ui::inOneLine(done.error());
        m_before = *m_register->facts();
    }
    Result<> record(const Fact& fact) { return m_register->record(std::vector{fact}); }
    void expectRefused(const std::vector<Fact>& facts, const Phrase& where, const Phrase& why) {
        const Result<> done = m_register->record(facts);
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().where, where) << ui::inOneLine(done.error());
        EXPECT_EQ(done.error().what, errors::not_saved(why)) << ui::inOneLine(done.error());
        EXPECT_NE(ui::remedyWords(done.error().what), "");
        EXPECT_EQ(m_register->facts(), m_before) << "nothing of it stays";
    }
    /// Whatever SQLite says of it.
    template <std::size_t Places>
    void expectValueRefused(const Fact& fact, const PhraseCode<Places>& why) {
        const Result<> done = record(fact);
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().where, m_file.toStdString());
        ASSERT_TRUE(errors::not_saved.isOf(done.error().what)) << ui::inOneLine(done.error());
        EXPECT_TRUE(why.isOf(done.error().what.parts.front())) << ui::inOneLine(done.error());
        EXPECT_NE(ui::remedyWords(done.error().what), "");
        EXPECT_EQ(m_register->facts(), m_before) << "nothing of it stays";
    }
    Fact note(int n, const std::string& text) const {
        return sampleFact(n, Note{m_walkdown, "5-32", text});
    }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(QStringLiteral("ship.db"));
    std::unique_ptr<SqliteRegister> m_register;
    std::vector<Fact> m_before;
    const FactId m_walkdown = sampleId(1);
};

TEST_F(RegisterRules, TheSameFactAgainChangesNothing) {
    ASSERT_TRUE(record(note(5, "dry")));
    const auto once = m_register->facts();
    EXPECT_TRUE(record(note(5, "dry")));
    EXPECT_TRUE(m_register->record(samplePersonAndWalkdown())) << "with its lists";
    EXPECT_EQ(m_register->facts(), once);
}

TEST_F(RegisterRules, AnotherFactUnderTheSameIdIsRefusedWithItsWholeBatch) {
    ASSERT_TRUE(record(note(5, "dry")));
    m_before = *m_register->facts();
    expectRefused({note(4, "new"), note(5, "wet")}, place::fact(sampleId(5)),
                  errors::fact_id_taken());
    Fact later = note(5, "dry");
    later.stamp.when.utc_ms += 1;
    expectRefused({later}, place::fact(sampleId(5)), errors::fact_id_taken());
    expectRefused({sampleFact(5, Deficiency{m_walkdown, "5-32", "", "dry"})},
                  place::fact(sampleId(5)), errors::fact_id_taken());
    Fact begun = samplePersonAndWalkdown()[1];
    std::get<WalkdownBegun>(begun.body).team.pop_back();
    expectRefused({begun}, place::fact(sampleId(1)), errors::fact_id_taken());
}

TEST_F(RegisterRules, TwoDifferentFactsOfOneIdInOneBatchAreRefused) {
    expectRefused({note(5, "dry"), note(5, "wet")}, place::fact(sampleId(5)),
                  errors::fact_id_taken());
}

TEST_F(RegisterRules, AnEmptyBatchIsDone) {
    EXPECT_TRUE(m_register->record({}));
    EXPECT_EQ(m_register->facts(), m_before);
}

TEST_F(RegisterRules, AnUnknownDoorIsRefusedByItsNumber) {
    expectRefused({note(4, "kept out as well"), sampleFact(5, Note{m_walkdown, "5-99", "?"})},
                  place::door("5-99"), errors::no_such_door());
    expectRefused({sampleFact(5, Note{m_walkdown, "", "?"})}, place::door_without_number(),
                  errors::no_such_door());
    WalkdownBegun begun;
    begun.doors = {"5-32", "7-77"};
    expectRefused({sampleFact(5, begun)}, place::door("7-77"), errors::no_such_door());
}

TEST_F(RegisterRules, WhateverAFactRefersToMustBeThere) {
    const auto expectMissing = [this](const Fact& fact, const Phrase& reference) {
        expectRefused({fact}, place::fact(sampleId(5)), errors::reference_not_here(reference));
    };
    expectMissing(sampleFact(5, Note{sampleId(70), "5-32", "?"}),
                  errors::its_walkdown(sampleId(70)));
    expectMissing(sampleFact(5, Mark{sampleId(70), MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
                  errors::its_run(sampleId(70)));
    expectMissing(sampleFact(5, Mark{m_walkdown, MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
                  errors::its_run(m_walkdown));
    Fact orphan = note(5, "?");
    orphan.stamp.person = sampleId(70);
    expectMissing(orphan, errors::its_person(sampleId(70)));
    orphan.stamp.person = m_walkdown; // a fact, but no person
    expectMissing(orphan, errors::its_person(m_walkdown));
    Fact correction = sampleFact(5, TakenBack{"?"});
    correction.stamp.supersedes = sampleId(70);
    expectMissing(correction, errors::what_it_replaces(sampleId(70)));
}

TEST_F(RegisterRules, ABatchMayComeInAnyOrder) {
    const FactId run = sampleId(10);
    Fact back = sampleFact(12, TakenBack{"slip"});
    back.stamp.supersedes = sampleId(11);
    const std::vector<Fact> facts{
        back, sampleFact(11, Mark{run, MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
        sampleFact(10, RunStarted{m_walkdown, "5-32", RunKind::Closing, Release::LetGo, 0})};
    const Result<> done = m_register->record(facts);
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    EXPECT_EQ(m_register->facts()->size(), m_before.size() + 3);
}

TEST_F(RegisterRules, ValuesThatAreNoneAreRefused) {
    expectValueRefused(sampleFact(5, PlateRead{m_walkdown, "5-32", PlateState::Read, std::nullopt}),
                       errors::value_not_allowed);
    expectValueRefused(sampleFact(5, MeasuredValue{m_walkdown, "5-32", "gap",
                                                   std::numeric_limits<double>::quiet_NaN(), "mm"}),
                       errors::value_missing);
    expectValueRefused(note(5, "no UTF-8: \xc3\x28"), errors::value_of_wrong_kind);
    expectValueRefused(sampleFact(5, DecisionLimits{1.5, 0.05, ""}), errors::value_not_allowed);
    expectValueRefused(
        sampleFact(5, ThumbDrill{{{Cue::LeafStops, std::numeric_limits<double>::quiet_NaN()}}}),
        errors::value_missing);
    WalkdownBegun nonsense;
    nonsense.sample = SampleDrawn{0, 5, 950'000, 1};
    expectValueRefused(sampleFact(5, nonsense), errors::value_not_allowed);
    Fact far = note(5, "?");
    far.stamp.when.ship_offset_minutes = 841;
    expectValueRefused(far, errors::value_not_allowed);
    expectValueRefused(sampleFact(5, Photograph{m_walkdown, "5-32", "ABC", "image/png", "", ""}),
                       errors::value_not_allowed);
}

TEST_F(RegisterRules, APhotographMustHaveTheHashItNames) {
    const std::vector<std::byte> bytes(100, std::byte{7});
    std::vector<std::byte> other = bytes;
    other.back() = std::byte{8};
    const Fact photograph =
        sampleFact(5, Photograph{m_walkdown, "5-32", sha256Of(bytes), "image/png", "", ""});
    const Result<> done = m_register->recordPhotograph(photograph, other);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().what, errors::not_saved(errors::photograph_hash_differs()));
    EXPECT_EQ(m_register->facts(), m_before);
    EXPECT_FALSE(m_register->photograph(sha256Of(bytes)));
    EXPECT_FALSE(m_register->photograph(sha256Of(other)));
    EXPECT_FALSE(m_register->recordPhotograph(note(5, "not a photograph"), bytes));
}

TEST_F(RegisterRules, APhotographsBytesMayFollowItsFactAndAreKeptOnce) {
    const std::vector<std::byte> bytes(100, std::byte{7});
    const Fact first =
        sampleFact(5, Photograph{m_walkdown, "5-32", sha256Of(bytes), "image/png", "", ""});
    const Fact second =
        sampleFact(6, Photograph{m_walkdown, "5-33", sha256Of(bytes), "image/png", "", ""});
    ASSERT_TRUE(record(first));
    const auto missing = m_register->photograph(sha256Of(bytes));
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().what, errors::photograph_not_here());
    EXPECT_TRUE(m_register->recordPhotograph(first, bytes));
    EXPECT_TRUE(m_register->recordPhotograph(second, bytes));
    EXPECT_EQ(m_register->photograph(sha256Of(bytes)), bytes);
    EXPECT_EQ(RawSqlite(m_file).single("SELECT count(*) FROM photograph_bytes"), "1");
}

TEST_F(RegisterRules, AdoptingKeepsEarlierIssues) {
    Arrangement changed = sampleArrangement();
    changed.doors.pop_back();
    // The walkdown only planned that door; nothing is recorded about it.
    const Result<> adopted = m_register->adopt(changed, sampleMoment());
    ASSERT_TRUE(adopted) << ui::inOneLine(adopted.error());
    EXPECT_EQ(m_register->arrangement(), changed);
    RawSqlite raw(m_file);
    EXPECT_EQ(raw.single("SELECT count(*) FROM arrangement"), "2");
    EXPECT_EQ(raw.single("SELECT count(*) FROM door WHERE arrangement = 1"), "3");
    EXPECT_EQ(raw.single("SELECT count(*) FROM door WHERE arrangement = 2"), "2");
}

TEST_F(RegisterRules, ArrangementAndHistoryAreTakenTogetherOrNotAtAll) {
    Arrangement changed = sampleArrangement();
    changed.particulars.name = "Another Name";
    changed.doors.push_back(changed.doors.front());
    changed.doors.back().number = "9-99";
    const std::vector good{sampleFact(20, Note{m_walkdown, "9-99", "new door"})};
    const std::vector bad{sampleFact(21, Note{m_walkdown, "9-98", "no such door"})};
    using Ending = SqliteRegister::Ending;
    for (const Ending ending : {Ending::TryOnly, Ending::Keep}) {
        const Result<> refused = m_register->takeIn(changed, bad, sampleMoment(), ending);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().where, place::door("9-98"));
        EXPECT_EQ(m_register->arrangement(), sampleArrangement());
    }
    const std::size_t facts = m_register->facts()->size();
    ASSERT_TRUE(m_register->takeIn(changed, good, sampleMoment(), Ending::TryOnly));
    EXPECT_EQ(m_register->arrangement(), sampleArrangement());
    EXPECT_EQ(m_register->facts()->size(), facts);
    ASSERT_TRUE(m_register->takeIn(changed, good, sampleMoment()));
    EXPECT_EQ(m_register->arrangement(), changed);
    EXPECT_EQ(m_register->facts()->size(), facts + 1);
}

TEST_F(RegisterRules, ADoorWithFactsIsNotDropped) {
    const FactId run = sampleId(10);
    ASSERT_TRUE(m_register->record(std::vector{
        sampleFact(10, RunStarted{m_walkdown, "5-32", RunKind::Closing, Release::LetGo, 0}),
        sampleFact(11, Mark{run, MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
        sampleFact(12, RunEnded{run, RunOutcome::Complete, ""}),
        sampleFact(13, Note{m_walkdown, "6-01 Ä", "?"})}));
    Arrangement changed = sampleArrangement();
    changed.doors.erase(changed.doors.begin());
    Result<> adopted = m_register->adopt(changed, sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_EQ(adopted.error().where, place::door("5-32"));
    EXPECT_EQ(adopted.error().what, errors::not_adopted(errors::door_with_facts_dropped(3)));
    EXPECT_EQ(m_register->arrangement(), sampleArrangement());
    changed.doors.clear();
    adopted = m_register->adopt(changed, sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_EQ(adopted.error().what,
              errors::not_adopted(errors::and_one_more_door(errors::door_with_facts_dropped(3))));
}

TEST_F(RegisterRules, AnArrangementThatDoesNotHangTogetherIsRefusedWhole) {
    Arrangement twice = sampleArrangement();
    twice.doors.push_back(twice.doors.front());
    Result<> adopted = m_register->adopt(twice, sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_THAT(ui::inOneLine(adopted.error()), HasSubstr("5-32"));
    EXPECT_THAT(ui::inOneLine(adopted.error()), HasSubstr("twice"));
    Arrangement nowhere = sampleArrangement();
    nowhere.doors.front().boundary = "9/9";
    adopted = m_register->adopt(nowhere, sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_THAT(ui::inOneLine(adopted.error()), HasSubstr("9/9"));
    EXPECT_EQ(m_register->arrangement(), sampleArrangement());
    EXPECT_TRUE(m_register->examine());
}

TEST_F(RegisterRules, NoRowOfAnyTableIsEverChangedOrDeleted) {
    const std::vector<std::byte> bytes(10, std::byte{1});
    const std::vector<Action> walk = sampleWalk(1);
    for (const Action& action : std::span(walk).first(walk.size() - 1))
        ASSERT_TRUE(m_register->record(action.facts));
    ASSERT_TRUE(m_register->recordPhotograph(
        sampleFact(90, Photograph{m_walkdown, "5-32", sha256Of(bytes), "image/png", "", ""}),
        bytes));
    const std::string door = "5-32";
    WalkdownBegun sampled;
    sampled.sample = SampleDrawn{10, 1, 950'000, 1};
    ASSERT_TRUE(m_register->record(
        std::vector{sampleFact(91, MeasuredValue{m_walkdown, door, "gap", 3, "mm"}),
                    sampleFact(92, Note{m_walkdown, door, "?"}),
                    sampleFact(93, Deficiency{m_walkdown, door, "", ""}),
                    sampleFact(94, CouldNotTest{m_walkdown, door, "", ""}),
                    sampleFact(95, Judgement{m_walkdown, door, "", true, ""}),
                    sampleFact(96, TakenBack{""}),
                    sampleFact(97, ThumbDrill{{{Cue::LeafStops, 0.1}}}),
                    sampleFact(98, DecisionLimits{}),
                    sampleFact(99, UpkeepDone{"weekly", ""}),
                    sampleFact(100, CertificateSeen{calendarDateFrom("2027-02-28").value()}),
                    sampleFact(101, sampled),
                    sampleFact(102, DeficiencyTerms{sampleId(93), Severity::Minor}),
                    sampleFact(103, Rectification{sampleId(93), "", ""}),
                    sampleFact(104, AwaitingRetest{sampleId(93), ""}),
                    sampleFact(105, Withdrawal{sampleId(93), ""}),
                    sampleFact(106, DifferenceSettled{sampleId(92), {sampleId(93)}, ""}),
                    sampleFact(107, KeyAccepted{std::string(64, 'a'), "", ""}),
                    sampleFact(108, WalkdownSigned{m_walkdown,
                                                   Capacity::Inspector,
                                                   {{"tablet", sampleId(93), 1}},
                                                   std::string(64, 'a'),
                                                   std::string(64, 'b'),
                                                   std::string(128, 'c')}),
                    sampleFact(109, ReportMade{m_walkdown,
                                               ReportKind::Survey,
                                               "",
                                               "",
                                               {{"tablet", sampleId(93), 1}},
                                               std::string(64, 'a'),
                                               std::string(64, 'b')}),
                    sampleFact(110, Undone{})}));
    ASSERT_TRUE(m_register->record(walk.back().facts)); // the end of the walkdown
    m_register.reset();
    RawSqlite raw(m_file);
    ASSERT_EQ(raw.run("INSERT INTO this_device_key VALUES (1, zeroblob(32))"), SQLITE_OK);
    ASSERT_EQ(
        raw.run("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"),
        SQLITE_OK);
    const std::vector<std::string> tables = raw.column;
    EXPECT_EQ(tables.size(), 48u);
    for (const std::string& table : tables) {
        ASSERT_NE(raw.single("SELECT count(*) FROM " + table), "0") << table << " is not exercised";
        const std::string column =
            raw.single("SELECT name FROM pragma_table_info('" + table + "') LIMIT 1");
        EXPECT_EQ(raw.run("UPDATE " + table + " SET " + column + " = " + column),
                  SQLITE_CONSTRAINT_TRIGGER)
            << table;
        EXPECT_EQ(raw.message(), "rows are never changed") << table;
        EXPECT_EQ(raw.run("DELETE FROM " + table), SQLITE_CONSTRAINT_TRIGGER) << table;
        EXPECT_EQ(raw.message(), "rows are never deleted") << table;
    }
}

TEST_F(RegisterRules, ABodyBelongsToAFactOfItsKind) {
    RawSqlite raw(m_file);
    EXPECT_EQ(raw.run("INSERT INTO note (fact, text) VALUES ('" + sampleId(0) + "', '?')"),
              SQLITE_CONSTRAINT_TRIGGER);
    EXPECT_EQ(raw.run("INSERT INTO note (fact, text) VALUES ('nobody', '?')"),
              SQLITE_CONSTRAINT_TRIGGER);
}

TEST_F(RegisterRules, AHalfFactWrittenByAnotherProgramIsFoundOnExamination) {
    EXPECT_TRUE(m_register->examine());
    ASSERT_EQ(RawSqlite(m_file).run(
                  "INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device)"
                  " VALUES ('half', 'taken-back', 0, 0, '" +
                  sampleId(0) + "', 'x')"),
              SQLITE_OK);
    const Result<> sound = m_register->examine();
    ASSERT_FALSE(sound);
    EXPECT_EQ(sound.error().what, errors::register_unsound(errors::fact_half_there("half")));
}

TEST_F(RegisterRules, AWriteDuringAnotherProgramsWriteIsRefusedInPlainWords) {
    OpenOptions impatient;
    impatient.busy_timeout_ms = 50;
    const auto second = SqliteRegister::open(m_file, impatient);
    ASSERT_TRUE(second);
    RawSqlite other(m_file);
    ASSERT_EQ(other.run("BEGIN IMMEDIATE"), SQLITE_OK);
    const Result<> done = (*second)->record(std::vector{note(5, "dry")});
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().what, errors::not_saved(errors::somebody_is_writing()));
    EXPECT_EQ((*second)->facts(), m_before) << "reading goes on";
    ASSERT_EQ(other.run("ROLLBACK"), SQLITE_OK);
    EXPECT_TRUE((*second)->record(std::vector{note(5, "dry")}));
    EXPECT_EQ(m_register->facts()->size(), m_before.size() + 1) << "the first instance sees it";
}

} // namespace
} // namespace latchround
