// What the sections of the documents speak of, worked out once: the walkdown, its doors graded, the
// vessel's items, the facts all of it rests on. Outlives none of what the WalkdownReport refers to.
#pragma once

#include <QString>

#include "app/report/walkdown_report.h"
#include "core/deficiency/item.h"
#include "core/grading/graded_walkdown.h"

namespace latchround::report {

struct ReportData {
    const WalkdownReport& asked;
    Walkdown walkdown;
    std::vector<GradedDoor> doors; ///< in the order of the walk
    Tally tally;
    ZoneIntegrity zones;
    std::vector<Item> items;                 ///< all of the vessel, in the order they were found
    std::vector<const Fact*> basis;          ///< of the walkdown (evidence/basis)
    CalendarDate today{};                    ///< of the printing, by ship's time
    std::vector<const Fact*> vessel_basis{}; ///< what a report rests on (evidence/basis)
    std::string vessel_sha256{};             ///< of those facts
};

Result<ReportData> matterOf(const WalkdownReport& report);

/// "Isbel Thornquay (surveyor)"; the id where nobody is known by it.
QString personWords(const ReportData& data, const std::string& person);

/// Name alone, for narrow columns.
QString personName(const ReportData& data, const std::string& person);

/// Number of an item in every document made of the same register: its place among all, from 1.
int numberOf(const ReportData& data, const Item& item);

/// Open items, most severe first, then by the day they are due, then as they were found.
std::vector<const Item*> openItems(const ReportData& data);

/// Unsatisfactory, to be judged or to be timed again.
bool needsAttention(Verdict verdict);

/// Whether a door has a block of its own in the report: it needs attention, or somebody wrote or
/// photographed something at it, or could not test it.
bool hasDetails(const GradedDoor& door);

} // namespace latchround::report
