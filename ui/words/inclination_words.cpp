#include "ui/words/inclination_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/safety/inclination.h"
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
    const InclinationAnswer answer = couldCloseInclined(
        *door.door, *row.incline_deg,
        found == door.evidence.measured.end() ? std::nullopt
                                              : std::optional(found->second.body.value));
    const QString angle = QLocale().toString(*row.incline_deg, 'g', 3);
    switch (answer.could) {
    case CloserCould::NotKnown:
        return InclinationWords::tr(
                   "The leaf's mass is not in the register: what %1 degrees ask of the "
                   "closer cannot be worked out.")
            .arg(angle);
    case CloserCould::NotGauged:
        return InclinationWords::tr(
                   "At %1 degrees the leaf's weight alone pulls with up to %2 at its edge. "
                   "Hold a spring gauge there to see what the closer gives.")
            .arg(angle, newtons(answer.needed_N));
    case CloserCould::Falls:
        return InclinationWords::tr(
                   "The closer gives %1; at %2 degrees the leaf's weight alone pulls with "
                   "up to %3: it could not close against it.")
            .arg(newtons(*answer.measured_N), angle, newtons(answer.needed_N));
    case CloserCould::Exceeds:
        break;
    }
    return InclinationWords::tr(
               "The closer gives %1; at %2 degrees the leaf's weight alone pulls with up to "
               "%3: it could close, if hinges, seals and latch take less than the rest. "
               "Worked out, not tried: no verdict comes from this.")
        .arg(newtons(*answer.measured_N), angle, newtons(answer.needed_N));
}

} // namespace latchround::ui
