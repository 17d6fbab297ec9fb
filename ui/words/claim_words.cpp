#include "ui/words/claim_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace latchround::ui {

namespace {

struct ClaimWords {
    Q_DECLARE_TR_FUNCTIONS(ClaimWords)
};

QString nextStepWords(const SampleResult& result) {
    switch (result.next) {
    case NextStep::Proven:
        return ClaimWords::tr("The claim stands.");
    case NextStep::GoOn:
        return ClaimWords::tr("Go on: test %1 more.").arg(result.more);
    case NextStep::Extend:
        return ClaimWords::tr(
                   "Extend: test %1 more; if none of those fails, the claim stands, with a little "
                   "less confidence than stated, for the doors themselves made the sample larger.")
            .arg(result.more);
    case NextStep::TestAll:
        break;
    }
    return result.more == 0
               ? ClaimWords::tr("Every door was tested: the claim does not stand.")
               : ClaimWords::tr("Test all: the %1 doors that are left as well.").arg(result.more);
}

int countOfVerdict(const Tally& tally, Verdict verdict) {
    const auto found = tally.by_verdict.find(verdict);
    return found == tally.by_verdict.end() ? 0 : found->second;
}

} // namespace

QString confidenceWords(ConfidencePpm confidence) {
    return QLocale().toString(confidence / 10'000.0, 'g', 7) + QStringLiteral("\u00a0%");
}

QString claimedWords(int doors, int defective) {
    if (defective == 0)
        return ClaimWords::tr("none of %1 doors is defective").arg(doors);
    return (defective == 1 ? ClaimWords::tr("at most %1 of %2 doors is defective")
                           : ClaimWords::tr("at most %1 of %2 doors are defective"))
        .arg(defective)
        .arg(doors);
}

QString resultSoFarWords(const SampleDrawn& sample, const Tally& tally) {
    const int failed = countOfVerdict(tally, Verdict::Unsatisfactory);
    const int tested = failed + countOfVerdict(tally, Verdict::Satisfactory);
    const auto result =
        sampleResult(sample.of_doors, sample.at_most, sample.confidence_ppm, tested, failed);
    if (!result)
        return {};
    return ClaimWords::tr("%1 of %2 doors tested, %3 failed: %4 confident that %5. %6")
        .arg(QString::number(tested), QString::number(sample.of_doors), QString::number(failed),
             confidenceWords(sample.confidence_ppm), claimedWords(sample.of_doors, result->at_most),
             nextStepWords(*result));
}

} // namespace latchround::ui
