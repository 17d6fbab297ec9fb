// Rows as Qt's views want them. Headings are shown, and passed over by the arrow keys.
#pragma once

#include <vector>

#include <QAbstractListModel>

#include "ui/lists/two_line_row.h"

namespace latchround::ui {

class TwoLineModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<TwoLineRow> rows);
    /// One row repaints, where it is another than before.
    void setRow(int row, TwoLineRow content);
    const TwoLineRow& at(int row) const { return m_rows[std::size_t(row)]; }
    int rowOf(const QString& key) const; ///< -1 where it is not there
    int firstItem() const;               ///< -1 where there are headings at most

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<TwoLineRow> m_rows;
};

} // namespace latchround::ui
