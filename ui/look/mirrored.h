// Rows that are painted begin on the right where the language does.
#pragma once

#include <QRectF>

namespace latchround::ui {

/// The place of a piece of a row: as it was set from the left, or as far from the right.
inline QRectF mirrored(const QRectF& piece, const QRectF& row, Qt::LayoutDirection direction) {
    return direction == Qt::LeftToRight
               ? piece
               : piece.translated(row.left() + row.right() - piece.left() - piece.right(), 0);
}

} // namespace latchround::ui
