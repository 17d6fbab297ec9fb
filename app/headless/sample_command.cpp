#include "app/headless/sample_command.h"

#include <cmath>

#include "app/headless/json_answer.h"
#include "core/error/command_errors.h"
#include "core/planning/failure_rate.h"
#include "ui/words/claim_words.h"

namespace latchround::headless {

namespace {

Errors faultsOf(const SampleAsked& asked) {
    Errors faults;
    if (asked.doors < 1 || asked.doors > most_doors)
        faults.push_back({"--doors", errors::sample_of_too_many(most_doors)});
    else if (asked.defective < 0 || asked.defective >= asked.doors)
        faults.push_back({"--defective", errors::claim_of_too_many_defective()});
    if (!(asked.confidence > 0 && asked.confidence < 1) ||
        std::abs(asked.confidence * certain_ppm - std::round(asked.confidence * certain_ppm)) >
            1e-6)
        faults.push_back({"--confidence", errors::confidence_not_in_millionths()});
    if (asked.failed.has_value() != asked.tested.has_value())
        faults.push_back({asked.failed ? "--tested" : "--failed", errors::half_a_result()});
    else if (asked.tested &&
             (*asked.failed < 0 || *asked.failed > *asked.tested || *asked.tested > asked.doors))
        faults.push_back({"--tested", errors::impossible_result()});
    return faults;
}

const char* wordOf(NextStep step) {
    switch (step) {
    case NextStep::Proven:
        return "proven";
    case NextStep::Continue:
        return "continue";
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

/// Without the spaces that keep a figure and its sign on one line of a screen.
std::string plain(QString words) {
    return words.replace(QChar(0x00a0), QChar(' ')).toStdString();
}

} // namespace

Answer planSample(const SampleAsked& asked) {
    if (Errors faults = faultsOf(asked); !faults.empty())
        return tl::unexpected(std::move(faults));
    const SampleClaim claim{
        asked.doors, asked.defective,
        static_cast<ConfidencePpm>(std::lround(asked.confidence * certain_ppm))};
    const int n = *sampleForAtMost(claim.doors, claim.defective, claim.confidence);
    OrderedJson json;
    json["claim"] = plain(ui::claimedWords(claim.doors, claim.defective));
    json["doors"] = asked.doors;
    json["at_most_defective"] = asked.defective;
    json["confidence"] = asked.confidence;
    json["n"] = n;
    json["says"] = plain(ui::planWords(claim, n));
    if (const auto find = sampleToFind(claim.doors, claim.defective, claim.confidence))
        json["chance_to_find"] = {{"n", *find}, {"says", plain(ui::findWords(claim, *find))}};
    if (asked.tested) {
        const SampleSoFar so_far{claim, *asked.tested, *asked.failed,
                                 *sampleResult(claim.doors, claim.defective, claim.confidence,
                                               *asked.tested, *asked.failed)};
        const SampleResult& result = so_far.result;
        json["result"] = {{"tested", *asked.tested},
                          {"failed", *asked.failed},
                          {"at_most_defective", result.at_most},
                          {"next", wordOf(result.next)},
                          {"more", result.more},
                          {"doors_like_these", rateJson(*asked.failed, *asked.tested)},
                          {"says", plain(ui::resultWords(so_far))}};
    }
    return inLines(json);
}

} // namespace latchround::headless
