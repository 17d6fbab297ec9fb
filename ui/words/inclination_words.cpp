#include "ui/words/inclination_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/grading/gauge_check.h"
#include "core/measure/inclination.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

struct InclinationWords {
    Q_DECLARE_TR_FUNCTIONS(InclinationWords)
};

QString newtons(double force_N) {
    return quantityWords(force_N, "N", 0);
}

} // namespace

bool isGauged(const RowGrade& row, const GradedDoor& door) {
    return row.requirement->incline_deg && door.evidence.measured.contains(row.requirement->id);
}

QString inclinationWords(const Requirement& row, const GradedDoor& door) {
    if (!row.incline_deg)
        return {};
    const auto found = door.evidence.measured.find(row.id);
    const InclinationAnswer answer =
        couldCloseInclined(*door.door, *row.incline_deg,
                           found == door.evidence.measured.end()
                               ? std::nullopt
                               : std::optional(gaugeReading(row, found->second.body)));
    const QString angle = QLocale().toString(*row.incline_deg, 'g', 3);
    switch (answer.could) {
    case CloserCould::NotKnown:
        return InclinationWords::tr(
                   "The leaf's mass is not in the register: the closing force needed at "
                   "%1 degrees cannot be calculated.")
            .arg(angle);
    case CloserCould::NotGauged:
        return InclinationWords::tr(
                   "At %1 degrees the leaf's weight alone pulls with up to %2 at its edge. "
                   "Measure the closer's force there with a spring gauge.")
            .arg(angle, newtons(answer.needed_N));
    case CloserCould::Falls:
        return InclinationWords::tr(
                   "The closer gives %1; at %2 degrees the leaf's weight alone pulls with "
                   "up to %3: the closer could not close the door.")
            .arg(newtons(answer.measured->value), angle, newtons(answer.needed_N));
    case CloserCould::TooClose:
        return InclinationWords::tr(
                   "The closer gives %1; at %2 degrees the leaf's weight alone pulls with "
                   "up to %3: too close for the calculation to tell.")
            .arg(newtons(answer.measured->value), angle, newtons(answer.needed_N));
    case CloserCould::Exceeds:
        break;
    }
    return InclinationWords::tr(
               "The closer gives %1; at %2 degrees the leaf's weight alone pulls with up to "
               "%3: the closer could close the door if hinges, seals and latch take less than the "
               "rest. "
               "Calculated, not tested: this gives no verdict.")
        .arg(newtons(answer.measured->value), angle, newtons(answer.needed_N));
}

} // namespace latchround::ui
