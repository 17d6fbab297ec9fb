#include "ui/screens/practice/exercise_words.h"

#include <QCoreApplication>

namespace latchround::ui {

namespace {

QString inExerciseWords(const char* text) {
    return QCoreApplication::translate("ExerciseWords", text);
}

} // namespace

QString levelWords(practice::Level level) {
    switch (level) {
    case practice::Level::First:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "first steps"));
    case practice::Level::Easy:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "easy"));
    case practice::Level::Hard:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "hard"));
    case practice::Level::Exam:
        break;
    }
    return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "exam"));
}

QString faultWords(practice::Fault fault) {
    using practice::Fault;
    switch (fault) {
    case Fault::TooFast:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "closes too fast"));
    case Fault::TooSlow:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "closes too slowly"));
    case Fault::NearLimit:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "too close to a limit to tell"));
    case Fault::AlarmShort:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "alarm too short"));
    case Fault::AlarmStops:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "alarm stops early"));
    case Fault::ReopensTooFar:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "opens again too far"));
    case Fault::LeavesReversed:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "leaves out of order"));
    case Fault::NoLatch:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "does not latch"));
    case Fault::MagnetLate:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "magnet lets go late"));
    case Fault::MagnetOneSide:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "no release from one side"));
    case Fault::Hook:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "hook"));
    case Fault::Wedge:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "wedge"));
    case Fault::PocketLitter:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "litter in the pocket"));
    case Fault::SillMissing:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "sill missing"));
    case Fault::Gap:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "gap under the leaf"));
    case Fault::WrongPlate:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "wrong plate for the boundary"));
    case Fault::PaintedSeal:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "painted seal"));
    case Fault::IndicatorLies:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "indicator lies"));
    case Fault::HosePortStuck:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "hose port stuck"));
    case Fault::StaysOpen:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "stays open"));
    case Fault::PeopleInPath:
        break;
    }
    return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "people in the path"));
}

QString outcomeWords(practice::Outcome outcome) {
    switch (outcome) {
    case practice::Outcome::Found:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "found"));
    case practice::Outcome::Missed:
        return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "missed"));
    case practice::Outcome::Imagined:
        break;
    }
    return inExerciseWords(QT_TRANSLATE_NOOP("ExerciseWords", "imagined"));
}

} // namespace latchround::ui
