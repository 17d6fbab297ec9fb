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
        return ClaimWords::tr("The claim is supported.");
    case NextStep::Continue:
        return ClaimWords::tr("Continue: test %1 more.").arg(result.more);
    case NextStep::Extend:
        return ClaimWords::tr(
                   "Extend: test %1 more. If none of those fails, the claim is supported, with "
                   "slightly "
                   "less confidence than stated, because the results enlarged the sample.")
            .arg(result.more);
    case NextStep::TestAll:
        break;
    }
    if (result.more == 0)
        return ClaimWords::tr("Every door has been tested: the claim fails.");
    return result.more == 1
               ? ClaimWords::tr("Test all: the remaining door as well.")
               : ClaimWords::tr("Test all: the remaining %1 doors as well.").arg(result.more);
}

} // namespace

QString confidenceWords(ConfidencePpm confidence) {
    return QLocale().toString(confidence / 10'000.0, 'g', 7) + QStringLiteral("\u00a0%");
}

QString claimedWords(int doors, int defective) {
    if (defective == 0)
        return doors == 1 ? ClaimWords::tr("the one door is not defective")
                          : ClaimWords::tr("none of %1 doors is defective").arg(doors);
    if (doors == 1)
        return ClaimWords::tr("at most 1 of 1 door is defective");
    return (defective == 1 ? ClaimWords::tr("at most %1 of %2 doors is defective")
                           : ClaimWords::tr("at most %1 of %2 doors are defective"))
        .arg(defective)
        .arg(doors);
}

QString planWords(const SampleClaim& claim, int n) {
    const QString confidence = confidenceWords(claim.confidence);
    const QString claimed = claimedWords(claim.doors, claim.defective);
    return n == 1
               ? ClaimWords::tr(
                     "Test 1 door, drawn at random. If it does not fail: %1 confidence that %2.")
                     .arg(confidence, claimed)
               : ClaimWords::tr("Test %1 doors, drawn at random. If none fails: %2 confidence that "
                                "%3.")
                     .arg(QString::number(n), confidence, claimed);
}

QString findWords(const SampleClaim& claim, int n) {
    return ClaimWords::tr(
               "A different claim, not to be confused with this one: if exactly %1 of %2 "
               "doors are defective, testing %3 gives at least a %4 chance of finding "
               "one or more of them.")
        .arg(QString::number(claim.defective), QString::number(claim.doors), QString::number(n),
             confidenceWords(claim.confidence));
}

QString resultWords(const SampleSoFar& so_far) {
    const QString tested = QString::number(so_far.tested);
    const QString doors = QString::number(so_far.claim.doors);
    const QString confidence = confidenceWords(so_far.claim.confidence);
    const QString claimed = claimedWords(so_far.claim.doors, so_far.result.at_most);
    const QString next = nextStepWords(so_far.result);
    const bool one_door = so_far.claim.doors == 1;
    if (so_far.failed == 0)
        return one_door
                   ? ClaimWords::tr("%1 of 1 door tested, none failed: %2 confidence that %3. %4")
                         .arg(tested, confidence, claimed, next)
                   : ClaimWords::tr("%1 of %2 doors tested, none failed: %3 confidence that %4. %5")
                         .arg(tested, doors, confidence, claimed, next);
    return one_door
               ? ClaimWords::tr("1 of 1 door tested, 1 failed: %1 confidence that %2. %3")
                     .arg(confidence, claimed, next)
               : ClaimWords::tr("%1 of %2 doors tested, %3 failed: %4 confidence that %5. %6")
                     .arg(tested, doors, QString::number(so_far.failed), confidence, claimed, next);
}

QString resultSoFarWords(const SampleDrawn& sample, const Tally& tally) {
    const auto so_far = sampleSoFar(sample, tally);
    return so_far ? resultWords(*so_far) : QString();
}

} // namespace latchround::ui
