// Doors that are not in order in a walkdown: failed, left to judgement, or to be timed again.
#pragma once

#include <vector>

#include <QString>

#include "core/grading/graded_walkdown.h"

namespace latchround::ui {

struct OpenItem {
    QString door;
    Verdict verdict = Verdict::Unsatisfactory;
    QString what; ///< the requirement that weighs most
    QString why;  ///< what was found, and how many rows more
};

/// Worst first; doors of one verdict in the order of the walk.
std::vector<OpenItem> openItems(const std::vector<GradedDoor>& doors);

} // namespace latchround::ui
