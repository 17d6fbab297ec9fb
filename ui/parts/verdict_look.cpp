#include "ui/parts/verdict_look.h"

#include <QCoreApplication>

namespace latchround::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Verdict", text);
}

} // namespace

QString verdictWords(Verdict verdict) {
    switch (verdict) {
    case Verdict::Unsatisfactory:
        return tr(QT_TRANSLATE_NOOP("Verdict", "unsatisfactory"));
    case Verdict::Judge:
        return tr(QT_TRANSLATE_NOOP("Verdict", "needs your judgement"));
    case Verdict::TimeAgain:
        return tr(QT_TRANSLATE_NOOP("Verdict", "time again"));
    case Verdict::Untested:
        return tr(QT_TRANSLATE_NOOP("Verdict", "untested"));
    case Verdict::Satisfactory:
        return tr(QT_TRANSLATE_NOOP("Verdict", "satisfactory"));
    case Verdict::Advice:
        return tr(QT_TRANSLATE_NOOP("Verdict", "advice"));
    case Verdict::NotApplicable:
        return tr(QT_TRANSLATE_NOOP("Verdict", "not applicable"));
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
