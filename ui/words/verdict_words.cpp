#include "ui/words/verdict_words.h"

#include <QCoreApplication>

namespace latchround::ui {

QString verdictWords(Verdict verdict) {
    switch (verdict) {
    case Verdict::Unsatisfactory:
        return QCoreApplication::translate("Verdict", "unsatisfactory");
    case Verdict::Judge:
        return QCoreApplication::translate("Verdict", "judgement needed");
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

} // namespace latchround::ui
