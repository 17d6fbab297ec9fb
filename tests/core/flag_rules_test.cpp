// A flag's own rules over the catalogue.
#include <gmock/gmock.h>

#include "core/error/catalogue_errors.h"
#include "core/error/reading_errors.h"
#include "core/grading/grade.h"
#include "core/phrase/places.h"
#include "core/requirement/flag_rules.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::Contains;
using testing::HasSubstr;

namespace {

std::string file(const std::string& rows) {
    return R"({"edition":"Harbour order 7 of 2026","issuer":"Port of Skerry","rows":[)" + rows +
           "]}";
}

Checked<Catalogue> over(const std::string& rows) {
    return withFlagRules(given::catalogue(), file(rows), "flag.json");
}

Errors faults(const std::string& rows) {
    const auto read = over(rows);
    return read ? Errors() : read.error();
}

Error at(const char* pointer, Phrase what) {
    return {place::pointer("flag.json", pointer), std::move(what)};
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
        R"("cite":"para 4","status":"read","severity":"critical","step":"release"})");
    ASSERT_TRUE(catalogue);
    EXPECT_EQ(catalogue->rows.size(), given::catalogue().rows.size() + 1);
    EXPECT_EQ(catalogue->rows.back().id, "sounder");
    EXPECT_EQ(hingedVerdict(*catalogue, 55), Verdict::Satisfactory);
}

TEST(FlagRules, TighteningReachesEveryVariant) {
    const auto catalogue =
        over(R"({"id":"h-undercut","change":"tighten","high":10,"cite":"para 5"})");
    ASSERT_TRUE(catalogue);
    for (const Requirement& variant : findRequirement(*catalogue, "h-undercut")->variants)
        EXPECT_EQ(variant.high, 10);
}

TEST(FlagRules, EveryFaultComesByPointerAndNothingIsHalfTaken) {
    EXPECT_THAT(faults(R"({"id":"hinged-time","change":"tighten","high":50,"cite":"c"})"),
                Contains(at("/rows/0/high", errors::limit_widened("50.0", "s", "40.0"))));
    EXPECT_THAT(faults(R"({"id":"hinged-time","change":"tighten","low":5,"cite":"c"})"),
                Contains(at("/rows/0/low", errors::limit_widened("5.0", "s", "10.0"))));
    EXPECT_THAT(faults(R"({"id":"hinged-tim","change":"tighten","high":30,"cite":"c"})"),
                Contains(at("/rows/0/id", errors::row_not_in_catalogue("hinged-tim"))));
    EXPECT_THAT(faults(R"({"id":"plate","change":"add"})"),
                Contains(at("/rows/0/id", errors::row_there_already("plate"))));
    EXPECT_THAT(
        faults(R"({"id":"plate","change":"loosen"})"),
        Contains(at("/rows/0/change", errors::not_one_of("loosen", "add, tighten, replace"))));
    const Errors all = faults(std::string(tighter) + R"(,{"id":"x","change":"add"},7)");
    EXPECT_THAT(all, Contains(at("/rows/1/words", errors::field_missing())));
    EXPECT_THAT(all, Contains(at("/rows/2", errors::field_not_an_object())));
    EXPECT_FALSE(withFlagRules(given::catalogue(), "{", "flag.json"));
    EXPECT_FALSE(withFlagRules(given::catalogue(), "{}", "flag.json"));
}
