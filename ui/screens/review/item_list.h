// Open items in their groups: a heading a group, two lines an item. The current one is shown beside
// the list; arrow keys, mouse and finger move it alike.
#pragma once

#include <vector>

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

#include "core/evidence/stamp.h"
#include "core/grading/verdict.h"

namespace latchround::ui {

/// A heading where `id` is empty.
struct ItemLine {
    FactId id;
    QString title;  ///< heading, or the door's number
    QString words;  ///< what is wrong
    QString detail; ///< state, due, assigned
    QString weight; ///< "grave"
    bool overdue = false;
    Verdict glyph = Verdict::Unsatisfactory;
};

class ItemLines : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setLines(std::vector<ItemLine> lines);
    const ItemLine& at(int row) const { return m_lines[std::size_t(row)]; }
    int rowOf(const FactId& id) const; ///< -1 where it is not there
    int firstItem() const;             ///< -1 where there is none

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<ItemLine> m_lines;
};

class ItemLineDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

class ItemList : public QListView {
    Q_OBJECT
public:
    explicit ItemList(QWidget* parent = nullptr);

    /// Keeps the current item where it is still there, else takes the first.
    void setLines(std::vector<ItemLine> lines);
    FactId current() const;
    void setCurrent(const FactId& id);

signals:
    /// Also when the list became empty: then with an empty id.
    void currentItemChanged(latchround::FactId id);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    ItemLines* m_lines;
};

} // namespace latchround::ui
