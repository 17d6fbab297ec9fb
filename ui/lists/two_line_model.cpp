#include "ui/lists/two_line_model.h"

#include <algorithm>

namespace latchround::ui {

void TwoLineModel::setRows(std::vector<TwoLineRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void TwoLineModel::setRow(int row, TwoLineRow content) {
    if (content == at(row))
        return;
    m_rows[std::size_t(row)] = std::move(content);
    emit dataChanged(index(row), index(row));
}

int TwoLineModel::rowOf(const QString& key) const {
    const auto found = std::ranges::find(m_rows, key, &TwoLineRow::key);
    return key.isEmpty() || found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int TwoLineModel::firstItem() const {
    const auto found =
        std::ranges::find_if(m_rows, [](const TwoLineRow& row) { return !row.isHeading(); });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int TwoLineModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant TwoLineModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const TwoLineRow& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return row.name;
    case Qt::AccessibleTextRole:
        return row.spoken.isEmpty() ? row.name : row.spoken;
    case Qt::AccessibleDescriptionRole:
        return row.spoken_help.isEmpty() ? QVariant() : row.spoken_help;
    case Qt::UserRole:
        return row.key.isEmpty() ? QVariant() : row.key;
    default:
        return {};
    }
}

Qt::ItemFlags TwoLineModel::flags(const QModelIndex& index) const {
    if (index.isValid() && at(index.row()).isHeading())
        return Qt::NoItemFlags;
    return QAbstractListModel::flags(index);
}

} // namespace latchround::ui

#include "moc_two_line_model.cpp"
