#include "app/report/fact_kind_words.h"

#include <array>

#include "app/report/report_words.h"

namespace latchround::report {

namespace {

/// In the order of factKindWords.
constexpr std::array<const char*, factKindWords.size()> fact_kinds{
    QT_TRANSLATE_NOOP("Report", "person joined"),
    QT_TRANSLATE_NOOP("Report", "walkdown begun"),
    QT_TRANSLATE_NOOP("Report", "walkdown ended"),
    QT_TRANSLATE_NOOP("Report", "observation"),
    QT_TRANSLATE_NOOP("Report", "plate read"),
    QT_TRANSLATE_NOOP("Report", "measured value"),
    QT_TRANSLATE_NOOP("Report", "run started"),
    QT_TRANSLATE_NOOP("Report", "mark"),
    QT_TRANSLATE_NOOP("Report", "run ended"),
    QT_TRANSLATE_NOOP("Report", "caution answered"),
    QT_TRANSLATE_NOOP("Report", "note"),
    QT_TRANSLATE_NOOP("Report", "photograph"),
    QT_TRANSLATE_NOOP("Report", "deficiency"),
    QT_TRANSLATE_NOOP("Report", "could not test"),
    QT_TRANSLATE_NOOP("Report", "decision"),
    QT_TRANSLATE_NOOP("Report", "taken back"),
    QT_TRANSLATE_NOOP("Report", "timing drill"),
    QT_TRANSLATE_NOOP("Report", "decision limits"),
    QT_TRANSLATE_NOOP("Report", "maintenance done"),
    QT_TRANSLATE_NOOP("Report", "certificate seen"),
    QT_TRANSLATE_NOOP("Report", "deficiency details"),
    QT_TRANSLATE_NOOP("Report", "rectification"),
    QT_TRANSLATE_NOOP("Report", "awaiting retest"),
    QT_TRANSLATE_NOOP("Report", "withdrawal"),
    QT_TRANSLATE_NOOP("Report", "conflict decided"),
    QT_TRANSLATE_NOOP("Report", "key accepted"),
    QT_TRANSLATE_NOOP("Report", "walkdown signed"),
    QT_TRANSLATE_NOOP("Report", "document created"),
    QT_TRANSLATE_NOOP("Report", "undone")};

} // namespace

QString factKind(const Fact& fact) {
    return Report::tr(fact_kinds[fact.body.index()]);
}

} // namespace latchround::report
