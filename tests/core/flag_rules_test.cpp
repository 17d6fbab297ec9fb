// A flag's own rules over the catalogue.
#include <gmock/gmock.h>

#include "core/grading/grade.h"
#include "core/requirement/flag_rules.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::HasSubstr;

namespace {

std::string file(const std::string& rows) {
    return R"({"edition":"Harbour order 7 of 2026","issuer":"Port of Skerry","rows":[)" + rows +
           "]}";
}

Checked<Catalogue> over(const std::string& rows) {
    return withFlagRules(given::catalogue(), file(rows), "flag.json");
}

std::string faults(const std::string& rows) {
    const auto read = over(rows);
    std::string all;
    if (!read)
        for (const Complaint& each : read.error())
            all += inOneLine(each) + "\n";
    return all;
}

Verdict hingedVerdict(const Catalogue& catalogue, double seconds) {
    DoorEvidence evidence;
    evidence.door = "5-31";
    evidence.runs = {
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, seconds}})};
    const Boundary boundary = given::zoneBulkhead();
    for (const RowGrade& row :
         grade(given::solasVessel(), given::hingedDoor(), &boundary, evidence, catalogue).rows)
        if (row.requirement->id == "hinged-time")
            return row.verdict;
    return Verdict::NotApplicable;
}

constexpr auto tighter =
    R"({"id":"hinged-time","change":"tighten","high":30,"cite":"Harbour order 7, para 2"})";

} // namespace

TEST(FlagRules, TightenedLimitIsGradedByAndSaysWhoseItIs) {
    const auto catalogue = over(tighter);
    ASSERT_TRUE(catalogue);
    EXPECT_EQ(hingedVerdict(given::catalogue(), 35), Verdict::Satisfactory);
    EXPECT_EQ(hingedVerdict(*catalogue, 35), Verdict::Unsatisfactory);
    const Requirement& row = *findRequirement(*catalogue, "hinged-time");
    EXPECT_EQ(row.issuer, "Port of Skerry");
    EXPECT_EQ(catalogue->flag, "Port of Skerry");
    EXPECT_EQ(row.cite, "Harbour order 7, para 2");
    EXPECT_EQ(row.edition, "Harbour order 7 of 2026");
    EXPECT_EQ(row.low, 10) << "the other limit stays";
    EXPECT_THAT(catalogue->edition, HasSubstr("Harbour order 7 of 2026 (Port of Skerry)"));
}

TEST(FlagRules, AddedRowIsAskedAndReplacedRowStandsInItsPlace) {
    const auto catalogue = over(
        R"({"id":"sounder","change":"add","words":"A sounder at the door","question":"Sounder?",)"
        R"("check":"seen","cite":"para 3","status":"read","severity":"minor","step":"look"},)"
        R"({"id":"hinged-time","change":"replace","words":"Hinged door shuts in 5 to 60 s",)"
        R"("check":"within-band","source":"closing-time","low":5,"high":60,"unit":"s",)"
        R"("cite":"para 4","status":"read","severity":"grave","step":"release"})");
    ASSERT_TRUE(catalogue);
    EXPECT_EQ(catalogue->rows.size(), given::catalogue().rows.size() + 1);
    EXPECT_EQ(catalogue->rows.back().id, "sounder");
    EXPECT_EQ(hingedVerdict(*catalogue, 55), Verdict::Satisfactory);
}

TEST(FlagRules, TighteningReachesEveryVariant) {
    const auto catalogue =
        over(R"({"id":"undercut","change":"tighten","high":10,"cite":"para 5"})");
    ASSERT_TRUE(catalogue);
    for (const Requirement& variant : findRequirement(*catalogue, "undercut")->variants)
        EXPECT_EQ(variant.high, 10);
}

TEST(FlagRules, EveryFaultComesByPointerAndNothingIsHalfTaken) {
    EXPECT_THAT(faults(R"({"id":"hinged-time","change":"tighten","high":50,"cite":"c"})"),
                HasSubstr("flag.json at /rows/0/high: 50.0 s is wider than the 40.0 s"));
    EXPECT_THAT(faults(R"({"id":"hinged-time","change":"tighten","low":5,"cite":"c"})"),
                HasSubstr("/rows/0/low: 5.0 s is wider"));
    EXPECT_THAT(faults(R"({"id":"hinged-tim","change":"tighten","high":30,"cite":"c"})"),
                HasSubstr("/rows/0/id: 'hinged-tim' is not in the catalogue"));
    EXPECT_THAT(faults(R"({"id":"plate","change":"add"})"),
                HasSubstr("/rows/0/id: 'plate' is in the catalogue already"));
    EXPECT_THAT(faults(R"({"id":"plate","change":"loosen"})"),
                HasSubstr("/rows/0/change: 'loosen' is not known here"));
    const std::string all = faults(std::string(tighter) + R"(,{"id":"x","change":"add"},7)");
    EXPECT_THAT(all, HasSubstr("/rows/1/words"));
    EXPECT_THAT(all, HasSubstr("/rows/2: a row must be an object"));
    EXPECT_FALSE(withFlagRules(given::catalogue(), "{", "flag.json"));
    EXPECT_FALSE(withFlagRules(given::catalogue(), "{}", "flag.json"));
}
