// Figures with their unit, as the person chose to read them: as the texts and the register have
// them, or in US customary units. What is recorded and what a limit says keep the unit of the text;
// only what is shown beside it is converted. Seconds and degrees are the same in both.
//
// Factors: by definition where there is one (yard and pound of 1959: 1 ft = 0.3048 m, 1 in = 25.4
// mm, 1 lb = 0.45359237 kg; standard gravity 9.80665 m/s2), the rest follows from these; NIST SP
// 811 (2008), appendix B, has the same.
#pragma once

#include <string_view>

#include <QString>

namespace latchround::ui {

enum class Units { OfTheText, UsCustomary };

/// For the whole process, like QLocale::setDefault. What is on the screen already stays as it is.
void useUnits(Units units);
Units unitsInUse();

/// The setting "units": "us" or empty.
Units unitsFrom(const QString& setting);

/// While one lives every figure has the unit of its text: for papers and for words that are
/// recorded.
class InTextUnits {
public:
    InTextUnits();
    ~InTextUnits();
    InTextUnits(const InTextUnits&) = delete;
    InTextUnits& operator=(const InTextUnits&) = delete;

private:
    Units m_before;
};

struct Shown {
    double value = 0;
    QString unit; ///< as it is written on a screen: "m²", "ft/s"; empty for none
    int places;   ///< after the point
};

/// A value of "m", "mm", "m/s", "m2", "N", "kg", "J"; others stay. `places` after the point in that
/// unit become as many in the other as keep the fineness, neither more nor less.
Shown inUsUnits(double value, std::string_view unit, int places);
Shown inUse(double value, std::string_view unit, int places);

/// A figure with its sign and unit as one piece: where lines begin on the right it is read from the
/// left all the same, and "0.198 ± 0.007 m/s" is not turned round.
QString inOnePiece(const QString& figure);

/// The unit alone, as in use and written on a screen.
QString unitInUse(std::string_view unit);

/// "0.65 ft/s": in use, by locale, the unit after a space that does not break.
QString quantityWords(double value, std::string_view unit, int places);

/// A length of a door or a ship: "0.90 m"; "35.4 in", and from 10 ft on "131 ft".
QString lengthWords(double metres, int places);

/// A limit, in the unit of its text whatever is in use, with the other beside it: "40 m (131 ft)".
QString statedWords(double value, std::string_view unit, int places);

/// What was recorded, in its own unit and with all its places: "80 mm", "80 mm (3.15 in)".
QString recordedWords(double value, std::string_view unit);

/// Beside a figure in the unit of its text: "3.15 in". Empty where units are those of the text or
/// the two are the same.
QString alsoWords(double value, std::string_view unit, int places);

} // namespace latchround::ui
