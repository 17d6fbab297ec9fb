#include "ui/ink/glyph_strokes.h"

#include <algorithm>

#include "ui/ink/verdict_colour.h"

namespace latchround::ui {
namespace {

/// The glyph's own measures, worked out once for a box.
struct GlyphFrame {
    QRectF outer; ///< the frame's outline; open at the foot
    QRectF leaf;  ///< a shut leaf inside it
    double line = 1;
};

GlyphFrame glyphFrameIn(const QRectF& box) {
    const double height = std::min(box.height(), box.width() / 0.82);
    const double width = height * 0.82;
    GlyphFrame f;
    f.line = std::max(1.25, height * 0.075);
    f.outer = QRectF(box.center().x() - width / 2, box.center().y() - height / 2, width, height)
                  .adjusted(f.line / 2, f.line / 2, -f.line / 2, 0);
    const double gap = std::max(1.0, height * 0.06) + f.line / 2;
    f.leaf = f.outer.adjusted(gap, gap, -gap, -height * 0.05);
    return f;
}

QPainterPath lineThrough(const QPolygonF& points) {
    QPainterPath path;
    path.addPolygon(points);
    return path;
}

QPainterPath pathOf(const QRectF& box) {
    QPainterPath path;
    path.addRect(box);
    return path;
}

QPainterPath circlePath(const QPointF& centre, double radius) {
    QPainterPath path;
    path.addEllipse(centre, radius, radius);
    return path;
}

GlyphStroke glyphFrame(const GlyphFrame& f, const QColor& colour) {
    return {lineThrough({f.outer.bottomLeft(), f.outer.topLeft(), f.outer.topRight(),
                         f.outer.bottomRight()}),
            colour, f.line};
}

GlyphStroke glyphLeaf(const GlyphFrame& f, const QColor& colour) {
    const double line = f.line * 0.85;
    return {pathOf(f.leaf.adjusted(line / 2, line / 2, -line / 2, -line / 2)), colour, line};
}

GlyphStroke ajarLeaf(const GlyphFrame& f, const QColor& colour) {
    // Seen from the front, hung on the left: the free edge stands towards us, larger than the
    // frame's.
    const QRectF& leaf = f.leaf;
    const double reach = leaf.width() * 0.58;
    const double drop = leaf.height() * 0.13;
    return {lineThrough({leaf.topLeft(), QPointF(leaf.left() + reach, leaf.top() + drop),
                         QPointF(leaf.left() + reach, leaf.bottom() + drop * 0.35),
                         QPointF(leaf.left(), leaf.bottom() - drop * 0.35), leaf.topLeft()}),
            colour};
}

void addClock(std::vector<GlyphStroke>& strokes, const GlyphFrame& f, const QColor& colour) {
    const double side = std::min(f.leaf.width(), f.leaf.height()) * 0.72;
    const QPointF c = f.leaf.center();
    strokes.push_back({circlePath(c, side / 2), colour, f.line * 0.85});
    strokes.push_back(
        {lineThrough({c - QPointF(0, side * 0.3), c, c + QPointF(side * 0.22, side * 0.08)}),
         colour, f.line * 0.85});
}

/// A level beam on a wedge, a weight at either end, where the leaf would be: one solid shape, so
/// that its outline alone tells it at arm's length, and nothing like the help key's question mark.
QPainterPath balance(const GlyphFrame& f) {
    constexpr double weight_wide = 0.27; // shares of the leaf's width and height
    constexpr double weight_top = 0.18;
    constexpr double beam_top = 0.375;
    constexpr double beam_foot = 0.465;
    constexpr double half_edge = 0.03;
    constexpr double half_foot = 0.42;
    QPolygonF points;
    const auto add = [&](double x, double y) {
        points << f.leaf.topLeft() + QPointF(x * f.leaf.width(), y * f.leaf.height());
    };
    add(0, weight_top);
    add(weight_wide, weight_top);
    add(weight_wide, beam_top);
    add(1 - weight_wide, beam_top);
    add(1 - weight_wide, weight_top);
    add(1, weight_top);
    add(1, beam_foot);
    add(0.5 + half_edge, beam_foot);
    add(0.5 + half_foot, 1);
    add(0.5 - half_foot, 1);
    add(0.5 - half_edge, beam_foot);
    add(0, beam_foot);
    add(0, weight_top);
    return lineThrough(points);
}

void addLetterI(std::vector<GlyphStroke>& strokes, const GlyphFrame& f, const QColor& colour) {
    const QPointF c = f.leaf.center();
    const double h = f.leaf.height() * 0.52;
    strokes.push_back(
        {lineThrough({QPointF(c.x(), c.y() - h * 0.12), QPointF(c.x(), c.y() + h / 2)}), colour,
         f.line * 1.2});
    strokes.push_back({circlePath(QPointF(c.x(), c.y() - h * 0.44), f.line * 0.8), colour});
}

} // namespace

std::vector<GlyphStroke> glyphStrokes(const QRectF& box, Verdict verdict, const Colours& colours) {
    const GlyphFrame f = glyphFrameIn(box);
    const QColor colour = colourOf(verdict, colours);
    std::vector<GlyphStroke> strokes{
        glyphFrame(f, verdict == Verdict::NotApplicable ? colours.muted : colours.ink)};
    if (verdict == Verdict::TimeAgain || verdict == Verdict::Untested || verdict == Verdict::Advice)
        strokes.push_back(glyphLeaf(f, colour));
    switch (verdict) {
    case Verdict::Satisfactory:
        strokes.push_back({pathOf(f.leaf), colour});
        break;
    case Verdict::Unsatisfactory:
        strokes.push_back(ajarLeaf(f, colour));
        break;
    case Verdict::TimeAgain:
        addClock(strokes, f, colour);
        break;
    case Verdict::Judge:
        strokes.push_back({balance(f), colour});
        break;
    case Verdict::Untested:
        strokes.back().dashes = {1.6, 1.3};
        break;
    case Verdict::Advice:
        addLetterI(strokes, f, colour);
        break;
    case Verdict::NotApplicable:
        strokes.push_back(
            {lineThrough({f.leaf.bottomLeft(), f.leaf.topRight()}), colour, f.line * 1.3});
        break;
    }
    return strokes;
}

} // namespace latchround::ui
