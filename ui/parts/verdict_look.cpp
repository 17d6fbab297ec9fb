#include "ui/parts/verdict_look.h"

#include <QCoreApplication>

namespace latchround::ui {
namespace {} // namespace

QString verdictWords(Verdict verdict) {
    switch (verdict) {
    case Verdict::Unsatisfactory:
        return QCoreApplication::translate("Verdict", "unsatisfactory");
    case Verdict::Judge:
        return QCoreApplication::translate("Verdict", "needs your judgement");
    case Verdict::TimeAgain:
        return QCoreApplication::translate("Verdict", "time again");
    case Verdict::Untested:
        return QCoreApplication::translate("Verdict", "untested");
    case Verdict::Satisfactory:
        return QCoreApplication::translate("Verdict", "satisfactory");
    case Verdict::Advice:
        return QCoreApplication::translate("Verdict", "advice");
    case Verdict::NotApplicable:
        return QCoreApplication::translate("Verdict", "not applicable");
    }
    return {};
}

QString verdictTitle(Verdict verdict) {
    QString words = verdictWords(verdict);
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QColor colourOf(Verdict verdict, const Colours& colours) {
    switch (verdict) {
    case Verdict::Unsatisfactory:
        return colours.bad;
    case Verdict::Judge:
        return colours.judge;
    case Verdict::TimeAgain:
        return colours.again;
    case Verdict::Untested:
        return colours.untested;
    case Verdict::Satisfactory:
        return colours.good;
    case Verdict::Advice:
        return colours.advice;
    case Verdict::NotApplicable:
        return colours.muted;
    }
    return colours.ink;
}

} // namespace latchround::ui
