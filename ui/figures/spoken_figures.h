// Figures that run, for who listens: a FigureLabel and a BandGauge are read as they stand when a
// screen reader asks. Nothing is told at each step, or it would never end.
#pragma once

namespace latchround::ui {

/// Once is enough; again does nothing.
void readFiguresWhenAsked();

} // namespace latchround::ui
