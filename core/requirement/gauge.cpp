#include "core/requirement/gauge.h"

#include <algorithm>

namespace latchround {

double stepOf(Instrument instrument, std::string_view unit) {
    if (instrument == Instrument::SpringGauge)
        return unit == "N" ? 1 : 0;
    const double mm_in_unit = unit == "mm" ? 1 : unit == "m" ? 1000 : 0;
    if (mm_in_unit == 0)
        return 0;
    switch (instrument) {
    case Instrument::Rule:
        return 1 / mm_in_unit;
    case Instrument::Caliper:
        return 0.1 / mm_in_unit;
    case Instrument::GapGauge:
        return 0.5 / mm_in_unit;
    case Instrument::Tape:
        return 5 / mm_in_unit;
    case Instrument::SpringGauge:
        break;
    }
    return 0;
}

Instrument usualInstrument(const Requirement& row) {
    const std::string unit = gaugeUnit(row);
    if (unit == "N")
        return Instrument::SpringGauge;
    return row.gauge.value_or(unit == "m" ? Instrument::Tape : Instrument::Rule);
}

double usualStep(const Requirement& row) {
    constexpr double of_area_m2 = 0.0005;
    const std::string unit = gaugeUnit(row);
    return unit == "m2" ? of_area_m2 : stepOf(usualInstrument(row), unit);
}

double coarsestStep(const Requirement& row) {
    return std::max(usualStep(row), stepOf(Instrument::Tape, gaugeUnit(row)));
}

} // namespace latchround
