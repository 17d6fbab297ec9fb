#include "app/report/figure_words.h"

#include <cmath>

#include <QLocale>

namespace latchround::report {

namespace {

constexpr QChar no_break_space(0x00a0);

QString fixed(double value, int decimals) {
    // "-0.00" would set a reader thinking.
    const double smallest = 0.5 * std::pow(10.0, -decimals);
    return QLocale().toString(std::abs(value) < smallest ? 0.0 : value, 'f', decimals);
}

} // namespace

QString metres(double length_m, int decimals) {
    return fixed(length_m, decimals) + no_break_space + QChar('m');
}

QString seconds(double time_s) {
    return fixed(time_s, 2);
}

QString degrees(double angle_deg) {
    return fixed(angle_deg, 1) + QChar(0x00b0);
}

QString lengthOfZone(double length_m) {
    const double tenths = std::round(length_m * 10) / 10;
    return metres(tenths, tenths == std::round(tenths) ? 0 : 1);
}

} // namespace latchround::report
