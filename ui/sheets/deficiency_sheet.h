// Writing up a row that is not in order, in the words of the requirement. Where the same row of the
// same door was written up on an earlier walk, it is offered as the same defect found again.
#pragma once

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

/// What is wrong in the words of the requirement, with what was measured against what is asked.
QString deficiencyWords(const RowGrade& row);
/// The same as it goes on record.
Wording recordedDeficiency(const RowGrade& row);

/// "found on 12 May 2026, open since", "found on 12 May 2026, closed since".
QString foundBeforeWords(const Item& item);

/// Opens a sheet that records it against the walkdown shown.
void writeUp(VesselSession& session, const GradedDoor& door, const RowGrade& row, QWidget* over);

} // namespace latchround::ui
