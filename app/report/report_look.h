// How the printed page looks: type, sizes and colours. Ink on white; red only for what is wrong.
#pragma once

#include <QColor>
#include <QFont>
#include <QString>

namespace latchround::report {

inline constexpr double body_pt = 9;
inline constexpr double small_pt = 7.5;
inline constexpr double css_px_per_mm = 96 / 25.4; ///< the unit of sizes and margins in HTML

inline const QColor ink{0x1a, 0x1a, 0x1a};
inline const QColor muted_ink{0x55, 0x55, 0x55};
inline const QColor bad_ink{0xa3, 0x1f, 0x1a};
inline const QColor rule_ink{0x88, 0x88, 0x88};

/// B612 where it is installed, else the system's plain sans. ui::readyTypeface() must have been
/// called before the application was made, or Qt may take its fixed-width cut.
QFont reportFont(double size_pt);

/// Style sheet of the document, in the subset that QTextDocument knows.
QString styleSheet();

} // namespace latchround::report
