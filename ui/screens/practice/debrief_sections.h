// The parts of a debrief as rows to be read.
#pragma once

#include "core/practice/debrief.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

class ReadingPane;

/// Missed first, then reported but absent, then found: each with what was wrong and the row it
/// shows in.
void readFaults(ReadingPane& pane, const practice::Debrief& debrief, const VesselSession& session);
/// Rows that were graded otherwise than they are.
void readVerdicts(ReadingPane& pane, const practice::Debrief& debrief);
/// Who was endangered, which cautions were not true, and what that means aboard.
void readPeople(ReadingPane& pane, const practice::Debrief& debrief);
/// What the marks say of the thumb, and each against the truth.
void readMarks(ReadingPane& pane, const practice::Debrief& debrief);

} // namespace latchround::ui
