// Published shore figures for powered doors that are gentle enough to need no guard. A comparison
// for whoever stands in a doorway, never a rule for ships.
#pragma once

namespace latchround {

/// Kinetic energy of a low-energy door at most, joule: 1.25 lbf ft (ANSI/BHMA A156.19-1997).
inline constexpr double shore_low_energy_J = 1.69;

/// Least time from 90 to 10 degrees of a hinged low-energy leaf, seconds: width in inches times the
/// root of weight in pounds, over 133; the printed table rounds it up to half seconds and prints
/// none below 3 s (ANSI/BHMA A156.19-1997, table I; formula from memory).
double leastSwing_s(double width_m, double mass_kg);

/// Least time over nine tenths of the stroke of a sliding leaf, seconds: D sqrt(m / (2 x 1.69)),
/// rounded up to tenths as the printed table is (EN 16005, as operator manuals quote it).
double leastStroke_s(double stroke_m, double mass_kg);

} // namespace latchround
