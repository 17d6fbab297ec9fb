#include "ui/look/sizes.h"

#include <algorithm>
#include <cmath>

#include <QGuiApplication>
#include <QScreen>

namespace latchround::ui {
namespace {

constexpr double mm_per_inch = 25.4;

int rounded(double px) {
    return int(std::lround(px));
}

/// Height of the em in millimetres. Body: 3.4 mm, a cap height near 2.4 mm, 16 arc minutes at arm's
/// length.
double emOf(TextSize size) {
    switch (size) {
    case TextSize::Small:
        return 3.1;
    case TextSize::Body:
        return 3.5;
    case TextSize::Lead:
        return 4.1;
    case TextSize::Heading:
        return 4.5;
    case TextSize::Title:
        return 5.6;
    case TextSize::Display:
        return 11.0;
    case TextSize::Clock:
        return 30.0;
    }
    return 3.5;
}

} // namespace

double pxPerMmFrom(double physical_dots_per_inch) {
    constexpr double trusted_from = 110;
    if (!std::isfinite(physical_dots_per_inch) || physical_dots_per_inch < trusted_from)
        return unknown_px_per_mm;
    return std::min(physical_dots_per_inch, 400.0) / mm_per_inch;
}

double pxPerMmOf(const QScreen* screen) {
    if (screen == nullptr || QGuiApplication::platformName() == QLatin1String("offscreen"))
        return unknown_px_per_mm;
    return pxPerMmFrom(screen->physicalDotsPerInch());
}

Sizes sizesOf(double px_per_mm, bool gloves) {
    const double density = std::clamp(px_per_mm, 80.0 / mm_per_inch, 400.0 / mm_per_inch);
    Sizes s;
    s.px_per_mm = density;
    s.gloves = gloves;
    s.main_target = rounded((gloves ? 25 : 20) * density);
    s.target = rounded((gloves ? 15 : 12) * density);
    s.row = s.target;
    s.gap = rounded((gloves ? 3 : 2) * density);
    s.main_gap = rounded(4 * density);
    s.pad = rounded(3.2 * density);
    s.corner = rounded(2 * density);
    s.border = std::max(1, rounded(0.4 * density));
    s.ring = std::max(2, rounded(0.6 * density));
    s.scroll_bar = rounded((gloves ? 8 : 4.8) * density);
    s.indicator = rounded((gloves ? 7 : 5.6) * density);
    return s;
}

int pixelsOf(TextSize size, const Sizes& sizes) {
    return rounded(emOf(size) * sizes.px_per_mm);
}

QFont textFont(TextSize size, const Sizes& sizes, bool bold) {
    QFont font({QStringLiteral("B612"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(pixelsOf(size, sizes));
    font.setBold(bold);
    font.setStyleHint(QFont::SansSerif);
    return font;
}

} // namespace latchround::ui
