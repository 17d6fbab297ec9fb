#include "app/desktop/clock_and_chance.h"

#include <QDateTime>
#include <QRandomGenerator>

namespace latchround {

Moment momentNow() {
    const QDateTime now = QDateTime::currentDateTime();
    return {now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60};
}

FactId nextFactId(FactIdSequence& sequence) {
    std::array<std::uint8_t, 10> random{};
    for (std::uint8_t& byte : random)
        byte = static_cast<std::uint8_t>(QRandomGenerator::system()->bounded(256));
    return sequence.next(QDateTime::currentMSecsSinceEpoch(), random);
}

} // namespace latchround
