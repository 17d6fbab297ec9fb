// What core/store/register.h promises, asked of every register there is: that of the program and
// that which stands in for it in the tests of the screens.
#include <functional>
#include <memory>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/sqlite_register.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "tests/register/sample_facts.h"
#include "tests/store/memory_register.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

enum class Kind { InMemory, OnDisk };

void PrintTo(Kind kind, std::ostream* out) {
    *out << (kind == Kind::InMemory ? "InMemory" : "OnDisk");
}

class RegisterContract : public ::testing::TestWithParam<Kind> {
protected:
    void SetUp() override {
        if (GetParam() == Kind::InMemory) {
            m_register = std::make_unique<MemoryRegister>();
        } else {
            auto opened = SqliteRegister::open(m_folder.filePath(QStringLiteral("ship.db")));
            ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
            m_register = std::move(*opened);
        }
        ASSERT_TRUE(m_register->adopt(sampleArrangement(), sampleMoment()));
        keep(samplePersonAndWalkdown());
    }
    void keep(const std::vector<Fact>& facts) {
        const Result<> done = m_register->record(facts);
        ASSERT_TRUE(done) << ui::inOneLine(done.error());
    }
    void expectRefused(const std::vector<Fact>& facts, const Phrase& why) {
        const auto before = *m_register->facts();
        const Result<> done = m_register->record(facts);
        ASSERT_FALSE(done) << "not refused: " << why.code;
        EXPECT_EQ(done.error().what, errors::not_saved(why)) << ui::inOneLine(done.error());
        EXPECT_EQ(m_register->obstacle(), Register::Obstacle::Refused) << why.code;
        EXPECT_EQ(*m_register->facts(), before) << "nothing of it stays";
    }
    Fact note(int n, const std::string& text, const std::string& door = "5-32") const {
        return sampleFact(n, Note{m_walkdown, door, text});
    }
    Fact answer(int n, Answer given, int replaces = 0, const std::string& row = "leaf-gap") const {
        return correcting(sampleFact(n, Observation{m_walkdown, "5-32", row, Side::One, given}),
                          replaces);
    }
    static Fact correcting(Fact fact, int replaces) {
        if (replaces > 0)
            fact.stamp.supersedes = sampleId(replaces);
        return fact;
    }
    static Fact takenBack(int n, int slip) {
        return correcting(sampleFact(n, TakenBack{"slip"}), slip);
    }

    static Fact undone(int n, int what) { return correcting(sampleFact(n, Undone{}), what); }

    QTemporaryDir m_folder;
    std::unique_ptr<Register> m_register;
    const FactId m_walkdown = sampleId(1);
};

} // namespace

TEST_P(RegisterContract, TheSameFactAgainChangesNothing) {
    keep({note(5, "dry")});
    const auto once = *m_register->facts();
    keep({note(5, "dry")});
    keep(samplePersonAndWalkdown());
    EXPECT_EQ(*m_register->facts(), once);
}

TEST_P(RegisterContract, AnotherFactOfTheSameIdIsRefusedWithItsWholeBatch) {
    keep({note(5, "dry")});
    expectRefused({note(4, "new"), note(5, "wet")}, errors::fact_id_taken());
    expectRefused({note(6, "one"), note(6, "other")}, errors::fact_id_taken());
}

TEST_P(RegisterContract, ARunIsBegunOnce) {
    RunStarted run{m_walkdown, "5-32", RunKind::Closing, Release::LetGo, 0};
    keep({sampleFact(10, run)});
    run.heel_deg = 1;
    expectRefused({sampleFact(10, run)}, errors::fact_id_taken());
}

TEST_P(RegisterContract, WhateverAFactRefersToMustBeThere) {
    expectRefused({note(5, "?", "5-99")}, errors::no_such_door());
    const auto expectMissing = [this](const Fact& fact, const Phrase& reference) {
        expectRefused({fact}, errors::reference_not_here(reference));
    };
    expectMissing(sampleFact(5, Note{sampleId(70), "5-32", "?"}),
                  errors::its_walkdown(sampleId(70)));
    expectMissing(sampleFact(5, Mark{sampleId(70), MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
                  errors::its_run(sampleId(70)));
    Fact orphan = note(5, "?");
    orphan.stamp.person = m_walkdown; // a fact, but no person
    expectMissing(orphan, errors::its_person(m_walkdown));
    expectMissing(takenBack(5, 70), errors::what_it_replaces(sampleId(70)));
    expectMissing(sampleFact(5, Rectification{m_walkdown, "mended", "bosun"}),
                  errors::its_deficiency(m_walkdown));
}

TEST_P(RegisterContract, ABatchMayComeInAnyOrderAndFactsComeOutByTheirIds) {
    const FactId run = sampleId(10);
    keep({takenBack(12, 11), sampleFact(11, Mark{run, MarkKind::Shut, 1u, 1, InputDevice::Key, {}}),
          sampleFact(10, RunStarted{m_walkdown, "5-32", RunKind::Closing, Release::LetGo, 0})});
    keep({note(9, "late")});
    std::vector<FactId> ids;
    const auto facts = *m_register->facts();
    for (const Fact& fact : facts)
        ids.push_back(fact.stamp.id);
    EXPECT_EQ(
        ids, (std::vector{sampleId(0), sampleId(1), sampleId(9), run, sampleId(11), sampleId(12)}));
}

TEST_P(RegisterContract, AnEndedWalkdownTakesNothingMore) {
    const FactId run = sampleId(10);
    keep({sampleFact(10, RunStarted{m_walkdown, "5-32", RunKind::Closing, Release::LetGo, 0}),
          answer(11, Answer::Yes), sampleFact(12, Deficiency{m_walkdown, "5-32", "", "ajar", {}}),
          sampleFact(13, WalkdownEnded{m_walkdown, ""})});
    const Phrase ended = errors::walkdown_has_ended();
    expectRefused({note(20, "late")}, ended);
    expectRefused({answer(20, Answer::No, 11)}, ended);
    expectRefused({takenBack(20, 11)}, ended);
    expectRefused({sampleFact(20, Mark{run, MarkKind::Shut, 1u, 1, InputDevice::Key, {}})}, ended);
    expectRefused({sampleFact(20, WalkdownEnded{m_walkdown, "again"})}, ended);
    keep({answer(11, Answer::Yes)});                                        // it was there before
    keep({sampleFact(21, Rectification{sampleId(12), "mended", "bosun"})}); // goes on ashore
    keep({sampleFact(24, Deficiency{m_walkdown, "5-33", "", "written up after the walk", {}})});
    keep({takenBack(22, 13)});
    keep({note(23, "under way again")});
}

TEST_P(RegisterContract, AnEndIsUndoneAndPutBackLikeAnythingElse) {
    const Phrase ended = errors::walkdown_has_ended();
    keep({answer(10, Answer::Yes), sampleFact(11, WalkdownEnded{m_walkdown, ""})});
    expectRefused({undone(20, 10)}, ended);
    keep({undone(21, 11)});
    keep({note(22, "under way again")});
    keep({undone(23, 10)});
    keep({undone(24, 21)}); // the end is put back
    expectRefused({note(30, "late")}, ended);
    expectRefused({undone(30, 23)}, ended);
    keep({undone(31, 11)});
    keep({undone(32, 23)}); // and the answer
    expectRefused({undone(33, 32)}, errors::undo_does_not_reach(sampleId(32)));
}

TEST_P(RegisterContract, AnEndThatWasTakenBackIsAsTheUndoOfThatLeavesIt) {
    keep({sampleFact(10, WalkdownEnded{m_walkdown, ""}), takenBack(11, 10)});
    keep({note(12, "under way again")});
    keep({undone(20, 11)}); // the end counts
    expectRefused({note(21, "late")}, errors::walkdown_has_ended());
    keep({undone(22, 20)});
    keep({note(23, "under way once more")});
}

TEST_P(RegisterContract, UndoIsForWhoRecordedItOnThatTablet) {
    keep({answer(10, Answer::Yes)});
    Fact undo = undone(20, 10);
    undo.stamp.device = "tablet-2";
    expectRefused({undo}, errors::undo_does_not_reach(sampleId(10)));
}

TEST_P(RegisterContract, ACorrectionIsOfTheSameThing) {
    const auto other = [](int n) { return errors::would_replace_other(sampleId(n)); };
    keep({answer(10, Answer::Yes), note(11, "dry"),
          sampleFact(12, Observation{m_walkdown, "5-33", "leaf-gap", Side::One, Answer::Yes})});
    expectRefused({correcting(note(20, "another kind"), 10)}, other(10));
    expectRefused({answer(20, Answer::No, 12)}, other(12)); // another door
    expectRefused({answer(20, Answer::No, 10, "seals")}, other(10));
    keep({answer(21, Answer::No, 10)});
    keep({takenBack(22, 21)});
    expectRefused({answer(23, Answer::Yes, 22, "seals")}, other(22));
    keep({answer(24, Answer::Yes, 22)}); // gives again what had been taken back
}

TEST_P(RegisterContract, APhotographHasTheHashItNames) {
    const std::vector<std::byte> bytes(100, std::byte{7});
    const std::vector<std::byte> other(100, std::byte{8});
    const Fact photograph =
        sampleFact(5, Photograph{m_walkdown, "5-32", sha256Of(bytes), "image/png", "", ""});
    const auto before = *m_register->facts();
    EXPECT_FALSE(m_register->recordPhotograph(photograph, other));
    EXPECT_FALSE(m_register->recordPhotograph(note(5, "not a photograph"), bytes));
    EXPECT_EQ(*m_register->facts(), before);
    EXPECT_FALSE(m_register->photograph(sha256Of(bytes)));
    ASSERT_TRUE(m_register->recordPhotograph(photograph, bytes));
    EXPECT_EQ(m_register->photograph(sha256Of(bytes)), bytes);
    EXPECT_EQ(m_register->facts()->size(), before.size() + 1);
}

TEST_P(RegisterContract, ADoorWithFactsIsNotDropped) {
    keep({note(5, "dry")});
    Arrangement changed = sampleArrangement();
    changed.doors.erase(changed.doors.begin());
    const Result<> adopted = m_register->adopt(changed, sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_EQ(adopted.error().where, place::door("5-32"));
    EXPECT_EQ(*m_register->arrangement(), sampleArrangement());
}

TEST_P(RegisterContract, ReopeningLosesNothing) {
    keep({note(5, "dry")});
    const auto before = *m_register->facts();
    const std::string device = m_register->device();
    ASSERT_TRUE(m_register->reopen());
    EXPECT_EQ(*m_register->facts(), before);
    EXPECT_EQ(m_register->device(), device);
    keep({note(6, "wet")});
}

INSTANTIATE_TEST_SUITE_P(Registers, RegisterContract,
                         ::testing::Values(Kind::InMemory, Kind::OnDisk));

} // namespace latchround
