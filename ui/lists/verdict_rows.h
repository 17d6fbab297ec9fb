// The rows of a verdict list as Qt's views want them: a model over plain rows, and how a row is
// drawn.
#pragma once

#include <vector>

#include <QAbstractListModel>
#include <QStyledItemDelegate>

#include "core/grading/grade.h"

namespace latchround::ui {

class VerdictRows : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    /// Rows in the order they are to stand. Everything shown is copied; nothing points into the
    /// grade.
    void setRows(const std::vector<const RowGrade*>& rows);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    struct Row {
        QString id;
        Verdict verdict = Verdict::Untested;
        QString title;  ///< the requirement and what was measured
        QString detail; ///< why, and by which text
    };
    const Row& at(int row) const { return m_rows[std::size_t(row)]; }

private:
    std::vector<Row> m_rows;
};

class VerdictRowDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace latchround::ui
