#include "ui/words/units.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QVariant>

#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

constexpr double metres_per_foot = 0.3048;
constexpr double millimetres_per_inch = 25.4;
constexpr double kilograms_per_pound = 0.45359237;
constexpr double standard_gravity_m_s2 = 9.80665;
constexpr double newtons_per_pound_force = kilograms_per_pound * standard_gravity_m_s2;
constexpr double joules_per_foot_pound = newtons_per_pound_force * metres_per_foot;

constexpr double inches_up_to_ft = 10;

struct Customary {
    std::string_view unit;
    double per_one; ///< how many of `unit` make one of `name`
    const char* name;
};

constexpr std::array<Customary, 7> customary{{{"m", metres_per_foot, "ft"},
                                              {"mm", millimetres_per_inch, "in"},
                                              {"m/s", metres_per_foot, "ft/s"},
                                              {"m2", metres_per_foot* metres_per_foot, "ft²"},
                                              {"N", newtons_per_pound_force, "lbf"},
                                              {"kg", kilograms_per_pound, "lb"},
                                              {"J", joules_per_foot_pound, "ft·lbf"}}};

Units in_use = Units::OfTheText;

QString written(std::string_view unit) {
    return unit == "m2" ? QStringLiteral("m²") : plainText(unit);
}

QString joined(const Shown& shown) {
    const QString figure = QLocale().toString(shown.value, 'f', shown.places);
    return inOnePiece(shown.unit.isEmpty() ? figure : figure + QChar(0x00a0) + shown.unit);
}

/// Doors are built to inches, ships to feet.
QString inchesOrFeet(double metres, int places) {
    if (std::abs(metres) >= inches_up_to_ft * metres_per_foot)
        return joined(inUsUnits(metres, "m", places));
    return joined({metres * 1000 / millimetres_per_inch, QStringLiteral("in"), 1});
}

} // namespace

void useUnits(Units units) {
    in_use = units;
}

Units unitsInUse() {
    return in_use;
}

Units unitsFrom(const QString& setting) {
    return setting == QLatin1String("us") ? Units::UsCustomary : Units::OfTheText;
}

InTextUnits::InTextUnits()
    : m_before(in_use) {
    in_use = Units::OfTheText;
}

InTextUnits::~InTextUnits() {
    in_use = m_before;
}

Shown inUsUnits(double value, std::string_view unit, int places) {
    const auto found = std::ranges::find(customary, unit, &Customary::unit);
    if (found == customary.end())
        return {value, written(unit), places};
    // One step of the last place, in the other unit, needs so many places to be seen.
    const double step = std::pow(10.0, -places) / found->per_one;
    return {value / found->per_one, QString::fromUtf8(found->name),
            std::max(0, int(std::ceil(-std::log10(step) - 1e-9)))};
}

Shown inUse(double value, std::string_view unit, int places) {
    return in_use == Units::UsCustomary ? inUsUnits(value, unit, places)
                                        : Shown{value, written(unit), places};
}

QString inOnePiece(const QString& figure) {
    constexpr QChar left_to_right_isolate(0x2066);
    constexpr QChar pop_isolate(0x2069);
    const bool from_right =
        qApp && qApp->property("layoutDirection").toInt() == Qt::RightToLeft; // of a Qt Gui program
    return from_right ? left_to_right_isolate + figure + pop_isolate : figure;
}

QString unitInUse(std::string_view unit) {
    return inUse(0, unit, 0).unit;
}

QString quantityWords(double value, std::string_view unit, int places) {
    return joined(inUse(value, unit, places));
}

QString lengthWords(double metres, int places) {
    return in_use == Units::UsCustomary ? inchesOrFeet(metres, places)
                                        : quantityWords(metres, "m", places);
}

QString statedWords(double value, std::string_view unit, int places) {
    const QString also = alsoWords(value, unit, places);
    const QString stated = joined({value, written(unit), places});
    return also.isEmpty() ? stated : QStringLiteral("%1 (%2)").arg(stated, also);
}

QString recordedWords(double value, std::string_view unit) {
    const QString figure = QLocale().toString(value, 'g', 6);
    const QString own = written(unit);
    const QString stated = inOnePiece(own.isEmpty() ? figure : figure + QChar(0x00a0) + own);
    const QString point = QLocale().decimalPoint();
    const auto at = figure.indexOf(point);
    const QString also =
        alsoWords(value, unit, at < 0 ? 0 : int(figure.size() - at - point.size()));
    return also.isEmpty() ? stated : QStringLiteral("%1 (%2)").arg(stated, also);
}

QString alsoWords(double value, std::string_view unit, int places) {
    const bool same = std::ranges::find(customary, unit, &Customary::unit) == customary.end();
    return in_use == Units::OfTheText || same ? QString() : joined(inUsUnits(value, unit, places));
}

} // namespace latchround::ui
