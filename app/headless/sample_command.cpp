#include "app/headless/sample_command.h"

#include <cmath>

#include "app/headless/json_answer.h"
#include "core/planning/failure_rate.h"
#include "core/planning/sample.h"
#include "core/planning/sample_words.h"

namespace latchround::headless {

namespace {

Complaints faultsOf(const SampleAsked& asked) {
    Complaints faults;
    const auto complain = [&](const char* option, std::string what, std::string remedy) {
        faults.push_back({option, std::move(what), std::move(remedy)});
    };
    if (asked.doors < 1 || asked.doors > most_doors)
        complain("--doors",
                 "there must be at least 1 door and at most " + std::to_string(most_doors),
                 "Give the number of doors.");
    else if (asked.defective < 0 || asked.defective >= asked.doors)
        complain("--defective", "must be 0 or more and less than the number of doors",
                 "Give the number of defective doors that the claim allows.");
    if (!(asked.confidence > 0 && asked.confidence < 1) ||
        std::abs(asked.confidence * certain_ppm - std::round(asked.confidence * certain_ppm)) >
            1e-6)
        complain("--confidence", "must lie between 0 and 1, in whole millionths",
                 "Write 0.95 for 95 %.");
    if (asked.failed.has_value() != asked.tested.has_value())
        complain(asked.failed ? "--tested" : "--failed",
                 "a result is how many were tested and how many of those failed",
                 "Give both, or neither.");
    else if (asked.tested &&
             (*asked.failed < 0 || *asked.failed > *asked.tested || *asked.tested > asked.doors))
        complain("--tested",
                 "no more can fail than were tested, and no more be tested than there are",
                 "Check the three numbers.");
    return faults;
}

const char* wordOf(NextStep step) {
    switch (step) {
    case NextStep::Proven:
        return "proven";
    case NextStep::GoOn:
        return "go-on";
    case NextStep::Extend:
        return "extend";
    case NextStep::TestAll:
        break;
    }
    return "test-all";
}

/// How often doors in general would fail, by this result; nothing where none was tested.
OrderedJson rateJson(int failed, int tested) {
    const auto rate = failureRate(failed, tested, 0.95);
    return rate ? OrderedJson{{"confidence", 0.95},
                              {"fail_at_least", rate->low},
                              {"fail_at_most", rate->high}}
                : OrderedJson(nullptr);
}

} // namespace

Answer planSample(const SampleAsked& asked) {
    if (Complaints faults = faultsOf(asked); !faults.empty())
        return tl::unexpected(std::move(faults));
    const SampleClaim claim{
        asked.doors, asked.defective,
        static_cast<ConfidencePpm>(std::lround(asked.confidence * certain_ppm))};
    const int n = *sampleForAtMost(claim.doors, claim.defective, claim.confidence);
    OrderedJson json;
    json["claim"] = claimWords(claim);
    json["doors"] = asked.doors;
    json["at_most_defective"] = asked.defective;
    json["confidence"] = asked.confidence;
    json["n"] = n;
    json["says"] = planWords(claim, n);
    if (const auto find = sampleToFind(claim.doors, claim.defective, claim.confidence))
        json["chance_to_find"] = {{"n", *find}, {"says", findWords(claim, *find)}};
    if (asked.tested) {
        const SampleResult result = *sampleResult(claim.doors, claim.defective, claim.confidence,
                                                  *asked.tested, *asked.failed);
        json["result"] = {{"tested", *asked.tested},
                          {"failed", *asked.failed},
                          {"at_most_defective", result.at_most},
                          {"next", wordOf(result.next)},
                          {"more", result.more},
                          {"doors_like_these", rateJson(*asked.failed, *asked.tested)},
                          {"says", resultWords(claim, *asked.tested, *asked.failed, result)}};
    }
    return inLines(json);
}

} // namespace latchround::headless
