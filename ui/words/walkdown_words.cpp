#include "ui/words/walkdown_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <QTimeZone>

#include "core/evidence/moment_text.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"

namespace latchround::ui {

namespace {

int countOf(const Tally& tally, Verdict verdict) {
    const auto found = tally.by_verdict.find(verdict);
    return found == tally.by_verdict.end() ? 0 : found->second;
}

} // namespace

QDateTime shipTime(const Moment& moment) {
    return QDateTime::fromMSecsSinceEpoch(moment.utc_ms,
                                          QTimeZone(moment.ship_offset_minutes * 60));
}

QString dayWords(const Moment& moment) {
    return dateWords(shipsDay(moment));
}

QString clockWords(const Moment& moment) {
    return shipTime(moment).toString(QStringLiteral("HH:mm"));
}

QString aimWords(const WalkdownBegun& plan) {
    const QString purpose = purposeWords(plan.purpose);
    QString scope = wordingWords(plan.scope);
    if (scope.startsWith(purpose)) // "quarterly: zone bulkheads" says both
        return scope;
    return QCoreApplication::translate("Walkdown", "%1, %2").arg(purpose, scope);
}

QString nameOf(const Ledger& ledger, const FactId& person) {
    const std::string& name = ledger.nameOf(person);
    return QString::fromStdString(name.empty() ? person : name);
}

TallyFigures figuresOf(const Tally& tally) {
    return {tally.done, countOf(tally, Verdict::Satisfactory),
            countOf(tally, Verdict::TimeAgain) + countOf(tally, Verdict::Judge),
            countOf(tally, Verdict::Unsatisfactory), countOf(tally, Verdict::Untested)};
}

QString tallyWords(const Tally& tally) {
    const TallyFigures figures = figuresOf(tally);
    QStringList parts;
    const auto add = [&parts](const char* text, int n) {
        if (n > 0)
            parts << QCoreApplication::translate("Walkdown", text).arg(n);
    };
    add(QT_TRANSLATE_NOOP("Walkdown", "%1 SAT"), figures.satisfactory);
    add(QT_TRANSLATE_NOOP("Walkdown", "%1 undecided"), figures.to_settle);
    add(QT_TRANSLATE_NOOP("Walkdown", "%1 UNSAT"), figures.unsatisfactory);
    add(QT_TRANSLATE_NOOP("Walkdown", "%1 untested"), figures.untested);
    return parts.isEmpty() ? QCoreApplication::translate("Walkdown", "no doors")
                           : parts.join(QStringLiteral(", "));
}

} // namespace latchround::ui
