// What is open aboard, as the home screen lists it: items that were written up, and doors of the
// walkdown shown that are not in order without one.
#pragma once

#include <vector>

#include <QString>

#include "ui/session/vessel_session.h"

namespace latchround::ui {

struct OpenItem {
    FactId item; ///< empty: a door that nobody has written up
    QString door;
    Verdict glyph = Verdict::Unsatisfactory;
    QString what; ///< what is wrong, or the requirement that weighs most
    QString why;  ///< state and day due, or what was found and how many rows more
};

/// Items first, the most severe and what is due first of them first; then doors, worst first.
std::vector<OpenItem> openItems(const VesselSession& session);

} // namespace latchround::ui
