#include "ui/words/exercise_words.h"

#include <QCoreApplication>

namespace latchround::ui {

namespace {

struct ExerciseWords {
    Q_DECLARE_TR_FUNCTIONS(ExerciseWords)
};

} // namespace

QString levelWords(practice::Level level) {
    switch (level) {
    case practice::Level::First:
        return ExerciseWords::tr("first steps");
    case practice::Level::Easy:
        return ExerciseWords::tr("easy");
    case practice::Level::Hard:
        return ExerciseWords::tr("hard");
    case practice::Level::Exam:
        break;
    }
    return ExerciseWords::tr("exam");
}

QString faultWords(practice::Fault fault) {
    using practice::Fault;
    switch (fault) {
    case Fault::TooFast:
        return ExerciseWords::tr("closes too fast");
    case Fault::TooSlow:
        return ExerciseWords::tr("closes too slowly");
    case Fault::NearLimit:
        return ExerciseWords::tr("too close to a limit to call");
    case Fault::AlarmShort:
        return ExerciseWords::tr("alarm too short");
    case Fault::AlarmStops:
        return ExerciseWords::tr("alarm stops early");
    case Fault::ReopensTooFar:
        return ExerciseWords::tr("re-opens too far");
    case Fault::LeavesReversed:
        return ExerciseWords::tr("leaves in the wrong order");
    case Fault::NoLatch:
        return ExerciseWords::tr("does not latch");
    case Fault::MagnetLate:
        return ExerciseWords::tr("magnet releases late");
    case Fault::MagnetOneSide:
        return ExerciseWords::tr("no release from one side");
    case Fault::Hook:
        return ExerciseWords::tr("hook");
    case Fault::Wedge:
        return ExerciseWords::tr("wedge");
    case Fault::PocketLitter:
        return ExerciseWords::tr("litter in the pocket");
    case Fault::SillMissing:
        return ExerciseWords::tr("sill missing");
    case Fault::Gap:
        return ExerciseWords::tr("gap under the leaf");
    case Fault::WrongPlate:
        return ExerciseWords::tr("wrong plate for the boundary");
    case Fault::PaintedSeal:
        return ExerciseWords::tr("seal painted over");
    case Fault::IndicatorLies:
        return ExerciseWords::tr("false indication");
    case Fault::HosePortStuck:
        return ExerciseWords::tr("hose port stuck");
    case Fault::StaysOpen:
        return ExerciseWords::tr("stays open");
    case Fault::PeopleInPath:
        break;
    }
    return ExerciseWords::tr("people in the path");
}

QString outcomeWords(practice::Outcome outcome) {
    switch (outcome) {
    case practice::Outcome::Found:
        return ExerciseWords::tr("found");
    case practice::Outcome::Missed:
        return ExerciseWords::tr("missed");
    case practice::Outcome::Absent:
        break;
    }
    return ExerciseWords::tr("reported but absent");
}

} // namespace latchround::ui
