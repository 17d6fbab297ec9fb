#include "ui/words/run_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "core/measure/closing.h"
#include "core/measure/interval.h"
#include "ui/words/door_words.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

QString runWords(const RunRecord& run, const Door& door) {
    if (!run.end)
        return QCoreApplication::translate("RunWords", "cut short");
    if (run.reversed)
        return QCoreApplication::translate("RunWords", "void: marks out of order");
    if (run.unmarked)
        return QCoreApplication::translate("RunWords", "void: “%1” was not marked")
            .arg(markWords(*run.unmarked).toLower());
    if (run.end->outcome != RunOutcome::Complete)
        return outcomeWords(run.end->outcome);
    if (run.kind == RunKind::Contact) {
        const auto contact = intervalBetween(run, MarkKind::Touched, MarkKind::Stopped);
        return contact ? QCoreApplication::translate("RunWords", "stopped after %1 s")
                             .arg(QLocale().toString(contact->seconds, 'f', 2))
                       : outcomeWords(RunOutcome::Complete);
    }
    const auto time = closingTime(run, door.kind, ReactionModel::of(run.drill.get()));
    return time ? QCoreApplication::translate("RunWords", "%1 s")
                      .arg(QLocale().toString(time->value, 'f', 2))
                : outcomeWords(RunOutcome::Complete);
}

QString plateWords(const PlateRead& plate) {
    if (plate.fire_class) {
        const std::string_view text = word(*plate.fire_class);
        return QCoreApplication::translate("RunWords", "reads %1").arg(plainText(text));
    }
    return plate.state == PlateState::None ? QCoreApplication::translate("RunWords", "no plate")
                                           : QCoreApplication::translate("RunWords", "illegible");
}

QString marksLine(const RunRecord& run) {
    QStringList words;
    for (const auto& record : run.marks) {
        const auto since = intervalBetween(run, run.marks.front().mark.kind, record.mark.kind);
        words << markWords(record.mark.kind).toLower() + QLatin1Char(' ') +
                     (since ? QLocale().toString(since->seconds, 'f', 2) : QStringLiteral("—"));
    }
    return words.join(QStringLiteral(" · "));
}

} // namespace latchround::ui
