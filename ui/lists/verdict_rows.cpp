#include "ui/lists/verdict_rows.h"

#include <algorithm>
#include <cmath>

#include <QAbstractItemView>
#include <QPainter>
#include <QStyle>

#include "ui/ink/glyph_drawing.h"
#include "ui/ink/verdict_colour.h"
#include "ui/look/button_drawing.h"
#include "ui/look/look.h"
#include "ui/look/mirrored.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {
namespace {

/// Where the pieces of a row go, for a row of this width.
struct RowPlan {
    QRectF glyph;
    QRectF title;
    QRectF detail;
    double height = 0;
};

RowPlan planOf(const VerdictRows::Row& row, double width, const Appearance& look) {
    const double mm = look.sizes.px_per_mm;
    const QFontMetricsF bold(textFont(TextSize::Body, look.sizes, true));
    const QFontMetricsF plain(textFont(TextSize::Small, look.sizes));
    const double pad = 2 * mm;
    RowPlan plan;
    plan.glyph = QRectF(mm, pad, 4.6 * mm, 5.4 * mm);
    const double left = plan.glyph.right() + 2.2 * mm;
    const double room = std::max(40.0, width - left - mm);
    const QRectF endless(0, 0, room, 100000);
    plan.title = bold.boundingRect(endless, Qt::TextWordWrap, row.title);
    plan.title.moveTo(left, pad);
    plan.title.setWidth(room);
    plan.detail = plain.boundingRect(endless, Qt::TextWordWrap, row.detail);
    plan.detail.moveTo(left, plan.title.bottom() + 0.4 * mm);
    plan.detail.setWidth(room);
    plan.height = std::max(double(look.sizes.row), plan.detail.bottom() + pad);
    return plan;
}

/// Words, measure, verdict, reason, limit, citation, in one breath.
QString spokenRow(const VerdictRows::Row& row) {
    QString spoken = row.title + QStringLiteral(", ") + row.detail;
    return spoken.replace(QStringLiteral(" · "), QStringLiteral(", "));
}

double widthFor(const QStyleOptionViewItem& option) {
    if (const auto* view = qobject_cast<const QAbstractItemView*>(option.widget))
        return view->viewport()->width();
    return option.rect.width();
}

} // namespace

void VerdictRows::setRows(const std::vector<const RowGrade*>& rows) {
    beginResetModel();
    m_rows.clear();
    for (const RowGrade* grade : rows) {
        if (grade == nullptr || grade->requirement == nullptr)
            continue;
        Row row;
        row.id = QString::fromStdString(grade->requirement->id);
        row.verdict = grade->verdict;
        row.title = rowWords(*grade->requirement);
        const QString measured = measuredWords(*grade);
        if (!measured.isEmpty())
            row.title += QStringLiteral(": ") + measured;
        row.detail =
            verdictWords(grade->verdict) + QStringLiteral(": ") + reasonWords(grade->reason);
        const QString limit = limitWords(*grade->requirement);
        if (!limit.isEmpty())
            row.detail += QStringLiteral(" · ") + limit;
        row.detail += QStringLiteral(" · ") + citeWords(*grade->requirement);
        m_rows.push_back(std::move(row));
    }
    endResetModel();
}

int VerdictRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant VerdictRows::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Row& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return row.title;
    case Qt::AccessibleTextRole:
        return spokenRow(row);
    case Qt::AccessibleDescriptionRole:
        return tr("press Return to be told why");
    case Qt::UserRole:
        return row.id;
    default:
        return {};
    }
}

void VerdictRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
    const auto* model = qobject_cast<const VerdictRows*>(index.model());
    if (model == nullptr)
        return;
    const Appearance& look = lookOf(option.widget);
    const VerdictRows::Row& row = model->at(index.row());
    painter->save();
    painter->translate(option.rect.topLeft());
    const QRectF whole(0, 0, option.rect.width(), option.rect.height());
    const auto at = [&](const QRectF& piece) { return mirrored(piece, whole, option.direction); };
    const RowPlan plan = planOf(row, option.rect.width(), look);
    if (option.state & QStyle::State_Selected)
        painter->fillRect(whole, look.colours.selected);
    if (index.row() > 0) {
        painter->setPen(QPen(look.colours.hairline, 1));
        painter->drawLine(QPointF(0, 0.5), QPointF(option.rect.width(), 0.5));
    }
    drawDoorGlyph(*painter, at(plan.glyph), row.verdict, look.colours);
    painter->setFont(textFont(TextSize::Body, look.sizes, true));
    painter->setPen(colourOf(row.verdict, look.colours));
    painter->drawText(at(plan.title), Qt::TextWordWrap, row.title);
    painter->setFont(textFont(TextSize::Small, look.sizes));
    painter->setPen(look.colours.muted);
    painter->drawText(at(plan.detail), Qt::TextWordWrap, row.detail);
    painter->restore();
    if (option.state & QStyle::State_HasFocus)
        drawFocusRing(*painter, QRectF(option.rect), look);
}

QSize VerdictRowDelegate::sizeHint(const QStyleOptionViewItem& option,
                                   const QModelIndex& index) const {
    const auto* model = qobject_cast<const VerdictRows*>(index.model());
    if (model == nullptr)
        return {};
    const double width = widthFor(option);
    const RowPlan plan = planOf(model->at(index.row()), width, lookOf(option.widget));
    return {int(width), int(std::ceil(plan.height))};
}

} // namespace latchround::ui

#include "moc_verdict_rows.cpp"
