// How long grading the largest sample vessel afresh takes: all 400 doors with their evidence. Aim:
// under 10 ms. The baseline of the same run only visits every fact once.
#include <cstdio>
#include <filesystem>
#include <string>
#include <vector>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "core/grading/graded_walkdown.h"
#include "tests/bench/best_ms.h"

using namespace latchround;

int main() {
    const std::filesystem::path folder =
        std::filesystem::path(LATCHROUND_SOURCE) / "sample_vessels" / "oriveth-meridian";
    const std::string csv = bytesOf(folder / "register.csv", 64u << 20).value();
    const Arrangement arrangement =
        arrangementFromCsv(std::span<const char>(csv.data(), csv.size()), "register.csv").value();
    const std::vector<Fact> facts =
        factsFromJsonLines(bytesOf(folder / "history.jsonl", 64u << 20).value(), "history").value();
    const Catalogue catalogue = builtInCatalogue().value();
    Ledger ledger;
    for (const Fact& fact : facts)
        ledger.add(fact);
    Walkdown whole = ledger.walkdowns().front();
    whole.plan.doors.clear();
    for (const Door& door : arrangement.doors)
        whole.plan.doors.push_back(door.number);

    std::size_t seen = 0;
    const double visit = bestMs(20, [&] {
        for (const Fact& fact : facts)
            seen += fact.stamp.id.size() + fact.body.index();
    });
    std::size_t rows = 0;
    const double grading = bestMs(20, [&] {
        rows = 0;
        for (const GradedDoor& door : gradeWalkdown(arrangement, ledger, whole, catalogue))
            rows += door.grade.rows.size();
    });
    std::printf("grading %zu doors, %zu rows, %zu facts: %.2f ms (aim 10), %.0f times a bare visit "
                "of the facts [%zu]\n",
                arrangement.doors.size(), rows, facts.size(), grading, grading / visit, seen % 10);
    return 0;
}
