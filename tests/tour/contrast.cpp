#include "tests/tour/contrast.h"

#include <algorithm>
#include <map>
#include <set>

#include <QAbstractButton>
#include <QImage>

#include "tests/tour/in_front.h"
#include "tests/tour/painted_text.h"
#include "ui/ink/palette.h"

namespace latchround::tour {

namespace {

constexpr double words_ratio = 7.0;
constexpr double least_ratio = 4.5; ///< of the strongest pixel
constexpr double shape_ratio = 3.0;
constexpr double rounding = 0.05;

/// Calls `see` with every pixel of `box` that the picture has, row by row.
template <class See>
void eachPixel(const QImage& picture, const QRect& box, See see) {
    Q_ASSERT(picture.format() == QImage::Format_ARGB32);
    const QRect inside = box & picture.rect();
    for (int y = inside.top(); y <= inside.bottom(); ++y) {
        const auto* row = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
        std::for_each(row + inside.left(), row + inside.right() + 1, see);
    }
}

/// The colour that most pixels of the frame around `box` have, two pixels wide.
QColor groundAround(const QImage& picture, const QRect& box) {
    const QRect outer = box.adjusted(-3, -3, 3, 3);
    const QRect inner = box.adjusted(-1, -1, 1, 1);
    std::map<QRgb, int> counts;
    const auto count = [&counts](QRgb colour) { ++counts[colour]; };
    eachPixel(picture, {outer.topLeft(), QPoint(outer.right(), inner.top() - 1)}, count);
    eachPixel(picture, {QPoint(outer.left(), inner.bottom() + 1), outer.bottomRight()}, count);
    eachPixel(picture, {outer.left(), inner.top(), 2, inner.height()}, count);
    eachPixel(picture, {inner.right() + 1, inner.top(), 2, inner.height()}, count);
    const auto most =
        std::ranges::max_element(counts, {}, [](const auto& each) { return each.second; });
    return most == counts.end() ? QColor() : QColor(most->first);
}

double strongestIn(const QImage& picture, const QRect& box, const QColor& ground) {
    std::set<QRgb> known;
    double strongest = 1;
    QRgb last = 0;
    eachPixel(picture, box, [&](QRgb colour) {
        if (colour == last)
            return; // most pixels are like the one before
        last = colour;
        if (known.insert(colour).second)
            strongest = std::max(strongest, ui::contrastOf(QColor(colour), ground));
    });
    return strongest;
}

/// A colour that lets some of the ground through.
QColor over(const QColor& ink, const QColor& ground) {
    const double share = double(ink.alphaF());
    const auto mixed = [share](int above, int below) {
        return int(share * above + (1 - share) * below + 0.5);
    };
    return {mixed(ink.red(), ground.red()), mixed(ink.green(), ground.green()),
            mixed(ink.blue(), ground.blue())};
}

} // namespace

QStringList faintWords(QWidget& window, const QImage& picture) {
    QStringList faults;
    for (QWidget* widget : widgetsInFront(window)) {
        if (!widget->isEnabled() || widget->testAttribute(Qt::WA_TransparentForMouseEvents))
            continue;
        const QPointF at = placeIn(window, *widget).topLeft();
        const QRectF seen = QRectF(widget->visibleRegion().boundingRect());
        for (const PaintedText& text : paintedBy(*widget)) {
            const QRectF shown = text.ink_box & text.clip & seen;
            if (shown.width() < 2 || shown.height() < 2)
                continue;
            const QRect box = shown.translated(at).toAlignedRect();
            const QColor ground = groundAround(picture, box);
            const double meant = ui::contrastOf(over(text.ink, ground), ground);
            const double strongest = strongestIn(picture, box, ground);
            if (meant < words_ratio - rounding || strongest < least_ratio)
                faults << QStringLiteral("“%1” of %2 has %3:1 (strongest pixel %4:1), %5 on %6")
                              .arg(text.words, nameOf(*widget))
                              .arg(meant, 0, 'f', 2)
                              .arg(strongest, 0, 'f', 2)
                              .arg(text.ink.name(), ground.name());
        }
    }
    return faults;
}

QStringList faintKeys(QWidget& window, const QImage& picture) {
    constexpr int edge_px = 8;
    QStringList faults;
    for (QWidget* control : controlsInFront(window)) {
        if (!control->isEnabled() || !qobject_cast<QAbstractButton*>(control))
            continue;
        const QRect place = placeIn(window, *control);
        const QColor ground = groundAround(picture, place);
        const QRect sides[] = {
            {place.left(), place.center().y(), edge_px, 1},
            {place.right() - edge_px + 1, place.center().y(), edge_px, 1},
            {place.center().x(), place.top(), 1, edge_px},
            {place.center().x(), place.bottom() - edge_px + 1, 1, edge_px},
        };
        double best = 1;
        for (const QRect& side : sides)
            best = std::max(best, strongestIn(picture, side, ground));
        if (best < shape_ratio - rounding)
            faults << QStringLiteral("the edge of %1 has %2:1")
                          .arg(nameOf(*control))
                          .arg(best, 0, 'f', 2);
    }
    return faults;
}

} // namespace latchround::tour
