// Making a paper and saying where it lies, with a key that shows it.
#pragma once

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

void makePaper(VesselSession& session, Paper paper, const FactId& walkdown, const QString& door,
               QWidget* over, PaperLanguage language = PaperLanguage::English);

} // namespace latchround::ui
