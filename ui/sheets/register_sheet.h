// Takes in the register of a vessel from a CSV, and offers to open the vessel.
#pragma once

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

/// Asks for the file; tells every fault where it cannot be taken in. Over the window of `over`.
void takeInRegister(VesselSession& session, QWidget* over);

} // namespace latchround::ui
