// A property of a whole walkdown: another door, with whatever is recorded about it, changes no row
// of the doors that are there.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/grading/graded_walkdown.h"
#include "tests/exchange/grade_sample.h"
#include "tests/exchange/random_arrangement.h"

namespace latchround::test {
namespace {

class Recorder {
public:
    explicit Recorder(Ledger& ledger)
        : m_ledger(ledger) {}
    FactId add(FactBody body) {
        Fact fact;
        fact.stamp.id = "fact-" + std::to_string(1000 + m_count++);
        fact.body = std::move(body);
        const FactId id = fact.stamp.id;
        m_ledger.add(std::move(fact));
        return id;
    }

private:
    Ledger& m_ledger;
    int m_count = 0;
};

void recordSomething(Recorder& recorder, const FactId& walkdown, const std::string& door) {
    for (const Requirement& row : solasCatalogue().rows) {
        const Answer answer = answerWords[*rc::gen::inRange<std::size_t>(0, 3)].value;
        if (!row.question.empty() && *rc::gen::arbitrary<bool>())
            recorder.add(Observation{walkdown, door, row.id, Side::None, answer});
        if (row.source == Source::Gauge && *rc::gen::arbitrary<bool>())
            recorder.add(MeasuredValue{walkdown, door, row.id,
                                       double(*rc::gen::inRange(0, 300)) / 10, row.unit});
    }
    const FactId run =
        recorder.add(RunStarted{walkdown, door, RunKind::Closing, Release::LetGo, 0});
    const auto shut_ms = *rc::gen::inRange<std::uint32_t>(2000, 50000);
    recorder.add(Mark{run, MarkKind::LeafMoves, 1000u, 1, InputDevice::Key, {}});
    recorder.add(Mark{run, MarkKind::Shut, 1000u + shut_ms, 1, InputDevice::Key, {}});
    recorder.add(RunEnded{run, RunOutcome::Complete, ""});
}

Walkdown walkOver(const Arrangement& arrangement, const FactId& id) {
    Walkdown walk;
    walk.id = id;
    for (const Door& door : arrangement.doors)
        walk.plan.doors.push_back(door.number);
    return walk;
}

bool sameRows(const DoorGrade& one, const DoorGrade& other) {
    if (one.verdict != other.verdict || one.rows.size() != other.rows.size())
        return false;
    for (std::size_t i = 0; i < one.rows.size(); ++i)
        if (one.rows[i].verdict != other.rows[i].verdict ||
            one.rows[i].inside != other.rows[i].inside ||
            one.rows[i].reason.text != other.rows[i].reason.text)
            return false;
    return true;
}

RC_GTEST_PROP(AnotherDoor, ChangesNoRowOfTheOthers, ()) {
    Arrangement ship = *soundArrangement();
    RC_PRE(!ship.doors.empty());
    Ledger ledger;
    Recorder recorder(ledger);
    const FactId walk = recorder.add(WalkdownBegun{});
    for (const Door& door : ship.doors)
        recordSomething(recorder, walk, door.number);
    const auto before = gradeWalkdown(ship, ledger, walkOver(ship, walk), solasCatalogue());
    std::vector<DoorGrade> were;
    for (const GradedDoor& door : before)
        were.push_back(door.grade);

    Arrangement larger = ship;
    larger.doors.push_back(ship.doors[*rc::gen::inRange<std::size_t>(0, ship.doors.size())]);
    larger.doors.back().number += "+";
    recordSomething(recorder, walk, larger.doors.back().number);
    const auto after = gradeWalkdown(larger, ledger, walkOver(larger, walk), solasCatalogue());
    RC_ASSERT(after.size() == were.size() + 1);
    for (std::size_t i = 0; i < were.size(); ++i)
        RC_ASSERT(sameRows(were[i], after[i].grade));
}

} // namespace
} // namespace latchround::test
