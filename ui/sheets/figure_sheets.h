// What lies behind a figure of a door, each on a sheet: the budget of its uncertainty, and the same
// figure through the years.
#pragma once

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

/// Opens the budget of this row's figure over the window; nothing where it has none.
void showBudget(const RowGrade& row, QWidget* over);

/// Opens the door's history of this row; `row` asks for its closing time or rate.
void showThroughTheYears(const VesselSession& session, const Door& door, const Requirement& row,
                         QWidget* over);

/// Whether there is such a history to show.
bool hasHistory(const Requirement& row);

} // namespace latchround::ui
