#include "ui/lists/two_line_delegate.h"

#include <algorithm>
#include <cmath>

#include <QAbstractItemView>
#include <QPainter>

#include "ui/ink/glyph_drawing.h"
#include "ui/lists/two_line_model.h"
#include "ui/lists/two_line_plan.h"
#include "ui/look/button_drawing.h"
#include "ui/look/mirrored.h"

namespace latchround::ui {

namespace {

constexpr double bar_mm = 1.2;
constexpr double least_width_mm = 40;

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, int row,
                 const TwoLineStyle& style, const Appearance& look) {
    using Hairline = TwoLineStyle::Hairline;
    const QRectF area(option.rect);
    const double mm = look.sizes.px_per_mm;
    const bool chosen = option.state & style.chosen;
    if (chosen)
        painter.fillRect(area, look.colours.selected);
    if (chosen && style.bar) {
        const QRectF bar(area.topLeft(), QSizeF(bar_mm * mm, area.height()));
        painter.fillRect(mirrored(bar, area, option.direction), look.colours.accent);
    } else if (style.hairline != Hairline::Between || row > 0) {
        const double from = style.bar ? style.before * mm : 0;
        const double y = style.hairline == Hairline::Below ? area.bottom() - 0.5 : area.top() + 0.5;
        const QRectF line(area.left() + from, y, area.width() - from, 0);
        const QRectF there = mirrored(line, area, option.direction);
        painter.setPen(QPen(look.colours.hairline, 1));
        painter.drawLine(there.topLeft(), there.topRight());
    }
}

} // namespace

TwoLineDelegate::TwoLineDelegate(const TwoLineStyle& style, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_style(style) {}

void TwoLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    const auto* model = qobject_cast<const TwoLineModel*>(index.model());
    if (model == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const TwoLineRow& row = model->at(index.row());
    const QRectF area(option.rect);
    const TwoLinePlan plan = twoLinePlan(row, m_style, area.width(), look);
    const auto at = [&](const QRectF& piece) {
        return mirrored(piece.translated(area.topLeft()), area, option.direction);
    };
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (!row.isHeading())
        paintGround(*painter, option, index.row(), m_style, look);
    if (row.glyph)
        drawDoorGlyph(*painter, at(plan.glyph), *row.glyph, look.colours);
    for (const TwoLinePlan::Words& each : plan.words) {
        painter->setFont(each.font);
        painter->setPen(each.ink);
        painter->drawText(at(each.place), plan.flags, each.words);
    }
    painter->restore();
    if (option.state & QStyle::State_HasFocus)
        drawFocusRing(*painter, area, look);
}

QSize TwoLineDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
    const Appearance& look = lookOf(option.widget);
    const int least = int(least_width_mm * look.sizes.px_per_mm);
    if (m_style.lines > 0)
        return {least, twoLineHeight(m_style, look.sizes)};
    const auto* model = qobject_cast<const TwoLineModel*>(index.model());
    if (model == nullptr)
        return {};
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = view ? view->viewport()->width() : option.rect.width();
    const TwoLinePlan plan = twoLinePlan(model->at(index.row()), m_style, width, look);
    return {std::min(least, width), int(std::ceil(plan.height))};
}

} // namespace latchround::ui

#include "moc_two_line_delegate.cpp"
