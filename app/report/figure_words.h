// Plain numbers as a report prints them. Measured values with their uncertainty have their words in
// ui/words/grade_words.
#pragma once

#include <QString>

namespace latchround::report {

QString metres(double length_m, int decimals = 2); ///< "1.40 m"
QString seconds(double time_s);                    ///< "8.31": two places, no thumb is finer
QString degrees(double angle_deg);                 ///< "0.2°"
QString lengthOfZone(double length_m);             ///< "69 m", "77.6 m"

} // namespace latchround::report
