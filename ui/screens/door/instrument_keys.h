// What a length is read off: chosen once by each person for what is usually taken with one
// instrument, and remembered.
#pragma once

#include <array>

#include "core/requirement/gauge.h"
#include "ui/keys/choice_keys.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

class InstrumentKeys : public ChoiceKeys {
    Q_OBJECT
public:
    /// The row is measured in a length.
    InstrumentKeys(const VesselSession& session, const Requirement& row, QWidget* parent = nullptr);

    static bool isFor(const Requirement& row);

    /// Of the instrument that is chosen, in the unit of the row.
    double step() const { return stepOf(m_chosen, m_unit); }

private:
    static constexpr std::array offered{Instrument::Rule, Instrument::Caliper, Instrument::GapGauge,
                                        Instrument::Tape};

    std::string m_unit;
    Instrument m_chosen;
};

} // namespace latchround::ui
