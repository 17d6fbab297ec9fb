#include "ui/ink/verdict_colour.h"

namespace latchround::ui {

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
