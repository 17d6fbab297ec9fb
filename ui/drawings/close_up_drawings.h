// What is seen at each spot of a door, drawn on a sheet. A drawing shows what is there and says
// nothing about it.
#pragma once

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/drawings/sketch.h"

namespace latchround::ui {

/// What a close-up is drawn from.
struct Seen {
    const Door& door;
    const practice::DoorTruth& truth;
    const practice::DoorView& view;
    double port_open = 0;               ///< cover of the hose port: 0 shut to 1 lifted
    std::optional<bool> panel_shut{};   ///< what was answered; nothing before it was asked
    std::optional<double> reopened_m{}; ///< after a contact run
};

void drawSill(Sketch& sketch, const Seen& seen);
void drawGap(Sketch& sketch, const Seen& seen);
void drawPath(Sketch& sketch, const Seen& seen);
void drawPocket(Sketch& sketch, const Seen& seen);
void drawRails(Sketch& sketch, const Seen& seen);
void drawSafetyEdge(Sketch& sketch, const Seen& seen);
void drawSeals(Sketch& sketch, const Seen& seen);
void drawLatch(Sketch& sketch, const Seen& seen);
void drawHinges(Sketch& sketch, const Seen& seen);
void drawCloserClose(Sketch& sketch, const Seen& seen);
void drawHoldBackClose(Sketch& sketch, const Seen& seen);
void drawLeafFace(Sketch& sketch, const Seen& seen);
void drawHosePortClose(Sketch& sketch, const Seen& seen);
void drawPlate(Sketch& sketch, const Seen& seen);
void drawSwitch(Sketch& sketch, const Seen& seen);
void drawPanel(Sketch& sketch, const Seen& seen);

/// Graduations of the rule that stands in the gap: one millimetre is so many units of the sheet.
inline constexpr double gap_units_per_mm = 1.7;
/// The tape along the safety edge: 5 cm are so many units of the sheet.
inline constexpr double tape_units_per_5cm = 4.2;

} // namespace latchround::ui
