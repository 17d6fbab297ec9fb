#include "ui/words/cue_words.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QLocale>

namespace latchround::ui {

QString cueTitle(Cue cue) {
    switch (cue) {
    case Cue::AlarmHeard:
        return QCoreApplication::translate("CueWords", "Alarm heard");
    case Cue::LeafStarts:
        return QCoreApplication::translate("CueWords", "Leaf seen to start");
    case Cue::LeafStops:
        break;
    }
    return QCoreApplication::translate("CueWords", "Leaf seen to stop");
}

QString lateWords(double late_s) {
    const auto ms = std::lround(late_s * 1000);
    return (ms < 0 ? QCoreApplication::translate("CueWords", "%1 ms early")
                   : QCoreApplication::translate("CueWords", "%1 ms late"))
        .arg(QLocale().toString(qlonglong(std::abs(ms))));
}

QString thumbLine(Cue cue, const ThumbDrill& drill) {
    const auto marks = std::ranges::count(drill.trials, cue, &ThumbTrial::cue);
    if (marks == 0)
        return QCoreApplication::translate("CueWords", "no marks");
    const Sifted sifted = rejectOutliers(cue, drill);
    if (!sifted.reaction)
        return QCoreApplication::translate("CueWords", "%1 of %2 marks count, %3 needed")
            .arg(int(marks) - sifted.too_early - sifted.set_aside)
            .arg(marks)
            .arg(min_trials);
    return QCoreApplication::translate("CueWords", "%1 marks, %2, scatter %3\u00a0ms")
        .arg(sifted.reaction->trials)
        .arg(lateWords(sifted.reaction->bias_s))
        .arg(std::lround(sifted.reaction->spread_s * 1000));
}

} // namespace latchround::ui
