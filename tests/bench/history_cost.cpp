// Twenty years of quarterly walkdowns of 400 doors: how long it takes to grade the last one with
// the full uncertainty budget of persons who did their drill, to look ahead for every door, to find
// the shortest walk, and to say what became of 400 deficiencies. Aims: 50 ms, none, 1 s, none. The
// baseline of the same run visits every fact once.
#include <cstdio>
#include <string>
#include <vector>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "core/deficiency/item.h"
#include "core/grading/graded_walkdown.h"
#include "core/planning/due.h"
#include "core/planning/walk_order.h"
#include "core/trend/outlook.h"
#include "tests/bench/best_ms.h"

using namespace latchround;

namespace {

constexpr int walkdowns = 80;
constexpr std::size_t found_a_walk = 5;

class History {
public:
    explicit History(const Arrangement& arrangement)
        : m_arrangement(arrangement) {
        ThumbDrill drill;
        for (int i = 0; i < 20; ++i)
            for (const Word<Cue>& entry : cueWords)
                drill.trials.push_back({entry.value, 0.2 + 0.003 * (i * 7 % 20)});
        add(std::move(drill));
        for (int i = 0; i < walkdowns; ++i)
            walk(i);
    }

    std::vector<Fact> facts;

private:
    FactId add(FactBody body) {
        std::string id = std::to_string(10'000'000 + facts.size());
        facts.push_back({{id, {m_utc_ms, 0}, "p", "tablet", {}}, std::move(body)});
        return id;
    }

    void walk(int number) {
        m_utc_ms = 1'100'000'000'000 + std::int64_t{7'862'400'000} * number;
        WalkdownBegun plan;
        plan.purpose = Purpose::Quarterly;
        for (const Door& door : m_arrangement.doors)
            plan.doors.push_back(door.number);
        const FactId walkdown = add(std::move(plan));
        for (std::size_t i = 0; i < m_arrangement.doors.size(); ++i) {
            const Door& door = m_arrangement.doors[i];
            add(Observation{walkdown, door.number, "local-release", Side::None, Answer::Yes});
            for (int run = 0; run < 2; ++run)
                time(walkdown, door, number, static_cast<int>(i) + run);
        }
        for (std::size_t i = 0; i < found_a_walk; ++i)
            find(walkdown,
                 m_arrangement
                     .doors[(found_a_walk * std::size_t(number) + i) % m_arrangement.doors.size()],
                 i > 0);
        add(WalkdownEnded{walkdown, {}});
    }

    /// Found and, but for one a walk, rectified before the next.
    void find(const FactId& walkdown, const Door& door, bool rectified) {
        const FactId found =
            add(Deficiency{walkdown, door.number, "local-release", "The switch sticks"});
        if (rectified)
            add(Rectification{found, "switch replaced", "the fitter"});
    }

    void time(const FactId& walkdown, const Door& door, int number, int scatter) {
        const FactId run =
            add(RunStarted{walkdown, door.number, RunKind::Closing, Release::LetGo, 0.2});
        const MarkKind home =
            door.kind == DoorKind::DoubleLeaf ? MarkKind::SecondLeafHome : MarkKind::Shut;
        const auto closing_ms = static_cast<std::uint32_t>(
            (door.kind == DoorKind::Sliding ? door.opening_m / 0.15 : 16) * 1000 - number * 20 +
            scatter * 37 % 100);
        add(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Touch, {}});
        add(Mark{run, home, 1000 + closing_ms, {}, InputDevice::Touch, {}});
        add(RunEnded{run, RunOutcome::Complete, {}});
    }

    const Arrangement& m_arrangement;
    std::int64_t m_utc_ms = 0;
};

const Requirement* timeRow(const Catalogue& catalogue, const Door& door) {
    return findRequirement(catalogue,
                           door.kind == DoorKind::Sliding ? "sliding-rate" : "hinged-time");
}

} // namespace

int main() {
    const std::string csv =
        bytesOf(std::string(LATCHROUND_SOURCE) + "/sample_vessels/oriveth-meridian/register.csv",
                64u << 20)
            .value();
    const Arrangement arrangement = arrangementFromCsv(csv, "register.csv").value();
    const Catalogue catalogue = builtInCatalogue().value();
    const History history(arrangement);
    Ledger ledger;
    for (const Fact& fact : history.facts)
        ledger.add(fact);
    const std::vector<Walkdown> all = ledger.walkdowns();
    const CalendarDate today = calendarDateFrom("2025-01-01").value();

    std::size_t seen = 0;
    const double visit = bestMs(5, [&] {
        for (const Fact& fact : history.facts)
            seen += fact.stamp.id.size() + fact.body.index();
    });
    std::size_t parts = 0;
    const double grading = bestMs(10, [&] {
        parts = 0;
        for (const GradedDoor& door : gradeWalkdown(arrangement, ledger, all.back(), catalogue))
            for (const RowGrade& row : door.grade.rows)
                parts += row.figure ? row.figure->budget.size() : 0;
    });
    int in_sight = 0;
    const double ahead = bestMs(3, [&] {
        in_sight = 0;
        for (const Door& door : arrangement.doors) {
            const Requirement& row = *timeRow(catalogue, door);
            const Outlook outlook =
                outlookOf(timedDays(ledger, all, door, row), row.low, row.high, today);
            in_sight += outlook.prospect == Prospect::InSight ? 1 : 0;
        }
    });
    const double due =
        bestMs(3, [&] { seen += whatFallsDue(arrangement, ledger, catalogue, today).size(); });
    std::size_t open = 0;
    const double items = bestMs(3, [&] {
        open = 0;
        for (const Item& item : itemsOf(arrangement, ledger, catalogue))
            open += item.isOpen() ? 1 : 0;
    });
    WalkRoute route;
    const double walk = bestMs(3, [&] { route = walkRoute(arrangement, all.back().plan.doors); });
    std::printf("%zu doors, %zu facts of 20 years [%zu]\n"
                "  grading with full uncertainty, %zu parts: %.1f ms (aim 50), %.1f visits\n"
                "  looking ahead for every door, %d limits in sight: %.0f ms, %.0f visits\n"
                "  what falls due: %.0f ms, %.0f visits\n"
                "  items, %zu open: %.0f ms, %.0f visits\n"
                "  shortest walk %.0f m, by number %.0f m: %.0f ms (aim 1000), %.0f visits\n",
                arrangement.doors.size(), history.facts.size(), seen % 10, parts, grading,
                grading / visit, in_sight, ahead, ahead / visit, due, due / visit, open, items,
                items / visit, route.length_m, route.by_number_m, walk, walk / visit);
    return 0;
}
