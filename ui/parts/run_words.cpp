#include "ui/parts/run_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "core/measure/closing.h"
#include "core/measure/interval.h"
#include "ui/parts/door_words.h"

namespace latchround::ui {

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("RunWords", text);
}

} // namespace

QString runWords(const RunRecord& run, const Door& door) {
    if (!run.end)
        return say("cut short");
    if (run.end->outcome != RunOutcome::Complete)
        return outcomeWords(run.end->outcome);
    if (run.kind == RunKind::Contact) {
        const auto contact = intervalBetween(run, MarkKind::Touched, MarkKind::Stopped);
        return contact ? say("stopped after %1 s").arg(QLocale().toString(contact->seconds, 'f', 2))
                       : outcomeWords(RunOutcome::Complete);
    }
    const auto time = closingTime(run, door.kind, ThumbError{});
    return time ? say("%1 s").arg(QLocale().toString(time->value, 'f', 2))
                : outcomeWords(RunOutcome::Complete);
}

QString plateWords(const PlateRead& plate) {
    if (plate.fire_class) {
        const std::string_view text = word(*plate.fire_class);
        return say("reads %1").arg(QString::fromUtf8(text.data(), qsizetype(text.size())));
    }
    return plate.state == PlateState::None ? say("no plate") : say("illegible");
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
