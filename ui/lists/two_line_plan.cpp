#include "ui/lists/two_line_plan.h"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QTextLayout>

#include "ui/ink/verdict_colour.h"

namespace latchround::ui {

namespace {

constexpr int words_wrapped = int(Qt::AlignLeft) | int(Qt::AlignTop) | int(Qt::TextWordWrap);
constexpr int words_cut = int(Qt::AlignLeft) | int(Qt::AlignVCenter);
constexpr double least_room = 40; ///< for words, px: a list may be asked before it has a width

/// Words in at most this many lines; the last one ends in an ellipsis where they do not fit.
QStringList linesOf(const QString& words, const QFont& font, double width, int most) {
    QTextLayout layout(words, font);
    layout.beginLayout();
    QStringList lines;
    while (lines.size() < most) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(width);
        const bool last = lines.size() + 1 == most;
        lines << (last ? QFontMetricsF(font).elidedText(words.mid(line.textStart()), Qt::ElideRight,
                                                        width)
                       : words.mid(line.textStart(), line.textLength()));
    }
    layout.endLayout();
    return lines;
}

double widthOf(const QString& words, const QFont& font, double gap) {
    return words.isEmpty() ? 0 : std::ceil(QFontMetricsF(font).horizontalAdvance(words) + gap);
}

/// Adds words where `place` begins, as wide as it is: all of them, or `most` lines. Where they end.
double addWords(TwoLinePlan& plan, const TwoLinePlan::Words& all, int most) {
    const QFontMetricsF metrics(all.font);
    TwoLinePlan::Words part = all;
    if (most == 0) {
        const QRectF endless(0, 0, all.place.width(), 1e5);
        part.place.setHeight(std::max(
            metrics.boundingRect(endless, words_wrapped, all.words).height(), metrics.height()));
        plan.words.push_back(part);
        return part.place.bottom();
    }
    part.place.setHeight(metrics.height());
    for (const QString& line : linesOf(all.words, all.font, all.place.width(), most)) {
        part.words = line.trimmed();
        plan.words.push_back(part);
        part.place.translate(0, metrics.height());
    }
    return part.place.top();
}

TwoLinePlan headingPlan(const QString& words, const TwoLineStyle& style, double width,
                        const Appearance& look) {
    const double mm = look.sizes.px_per_mm;
    const double room = std::max(least_room, width - (style.before + style.after) * mm);
    TwoLinePlan plan;
    plan.flags = words_wrapped;
    plan.height = mm + addWords(plan,
                                {QRectF(style.before * mm, 2 * mm, room, 0), words,
                                 textFont(TextSize::Small, look.sizes, true), look.colours.muted},
                                0);
    return plan;
}

} // namespace

int twoLineHeight(const TwoLineStyle& style, const Sizes& sizes) {
    const double first = QFontMetricsF(textFont(style.name_size, sizes)).height();
    const double second = QFontMetricsF(textFont(TextSize::Small, sizes)).height();
    const double words = style.lines * first + second + 2 * style.above * sizes.px_per_mm;
    return std::max(sizes.row, int(std::ceil(words)));
}

TwoLinePlan twoLinePlan(const TwoLineRow& row, const TwoLineStyle& style, double width,
                        const Appearance& look) {
    if (row.isHeading())
        return headingPlan(row.name, style, width, look);
    const double mm = look.sizes.px_per_mm;
    const Colours& c = look.colours;
    const QFont bold = textFont(style.name_size, look.sizes, true);
    const QFont small = textFont(TextSize::Small, look.sizes);
    const double left = (style.before + (row.glyph ? style.glyph.width() + style.beside : 0)) * mm;
    const double room = std::max(least_room, width - left - style.after * mm);
    const QColor name_ink = style.coloured && row.glyph ? colourOf(*row.glyph, c) : c.ink;
    TwoLinePlan plan;
    plan.flags = style.lines == 0 ? words_wrapped : words_cut;

    // Without a title the name has the line for itself.
    double name = 0;
    double bottom = 0;
    if (row.title.isEmpty()) {
        bottom = addWords(plan, {QRectF(left, 0, room, 0), row.name, bold, name_ink}, style.lines);
    } else {
        name = widthOf(row.name, bold, style.name_gap * mm);
        bottom = addWords(plan,
                          {QRectF(left + name, 0, room - name, 0), row.title,
                           textFont(style.name_size, look.sizes), c.ink},
                          style.lines);
        const double high = plan.words.front().place.height();
        plan.words.push_back({QRectF(left, 0, name, high), row.name, bold, name_ink});
    }

    const double figure = widthOf(row.figure, small, mm);
    const double inset = style.detail_below_title ? name : 0;
    const double second = bottom + style.between * mm;
    const double beside = figure > 0 ? figure + mm : 0;
    bottom = addWords(plan,
                      {QRectF(left + inset, second, room - inset - beside, 0), row.detail, small,
                       row.is_overdue ? c.bad : c.muted},
                      std::min(style.lines, 1));
    if (figure > 0)
        plan.words.push_back({QRectF(left + room - figure, second, figure, bottom - second),
                              row.figure, small, c.muted});

    const double pad = style.above * mm;
    plan.height = style.lines > 0 ? twoLineHeight(style, look.sizes)
                                  : std::max(double(look.sizes.row), bottom + 2 * pad);
    const double down = style.from_top ? pad : (plan.height - bottom) / 2;
    for (TwoLinePlan::Words& words : plan.words)
        words.place.translate(0, down);
    const QSizeF glyph = style.glyph * mm;
    const double top = style.from_top ? pad : (plan.height - glyph.height()) / 2;
    plan.glyph = QRectF(QPointF(style.before * mm, top), glyph);
    return plan;
}

} // namespace latchround::ui
