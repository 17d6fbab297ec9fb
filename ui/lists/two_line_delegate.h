// Paints the rows of a TwoLineModel: glyph, words and what shows that a row is chosen.
#pragma once

#include <QStyledItemDelegate>

#include "ui/lists/two_line_style.h"

namespace latchround::ui {

class TwoLineDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit TwoLineDelegate(const TwoLineStyle& style, QObject* parent = nullptr);

    /// The view lays out anew by itself.
    void setRowStyle(const TwoLineStyle& style) { m_style = style; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    TwoLineStyle m_style;
};

} // namespace latchround::ui
