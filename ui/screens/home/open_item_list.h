// Open items as rows: glyph, door, what is wrong and why. One row a door, of one height; a tap or
// Return goes there.
#pragma once

#include <vector>

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

#include "ui/screens/home/open_items.h"

namespace latchround::ui {

class OpenItemModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setItems(std::vector<OpenItem> items);
    const OpenItem& at(int row) const { return m_items[std::size_t(row)]; }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<OpenItem> m_items;
};

class OpenItemDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    bool roomy = false; ///< two lines for what is wrong instead of one
    static int heightOf(const QWidget* widget, bool roomy);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

class OpenItemList : public QListView {
    Q_OBJECT
public:
    explicit OpenItemList(QWidget* parent = nullptr);

    void setItems(std::vector<OpenItem> items);
    void setRoomy(bool roomy);
    int rowHeight(bool roomy) const { return OpenItemDelegate::heightOf(this, roomy); }
    int count() const { return m_model->rowCount(); }

signals:
    void chosen(latchround::ui::OpenItem item);

private:
    OpenItemModel* m_model;
    OpenItemDelegate* m_drawing;
};

} // namespace latchround::ui
