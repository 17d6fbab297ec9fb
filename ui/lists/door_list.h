// A list of doors: glyph, number, what kind and where. One row a door, rows of one height, chosen
// by a tap or Return.
#pragma once

#include <vector>

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

#include "core/grading/verdict.h"

namespace latchround::ui {

struct DoorListEntry {
    QString number;
    QString words; ///< "sliding, centreline"
    Verdict verdict = Verdict::Untested;
};

class DoorListModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setEntries(std::vector<DoorListEntry> entries);
    /// One door's grade changed; one row repaints.
    void setVerdict(const QString& number, Verdict verdict);
    int rowOf(const QString& number) const;
    const DoorListEntry& at(int row) const { return m_entries[std::size_t(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<DoorListEntry> m_entries;
};

class DoorListDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

class DoorListView : public QListView {
    Q_OBJECT
public:
    explicit DoorListView(QWidget* parent = nullptr);

    void setEntries(std::vector<DoorListEntry> entries);
    void setVerdict(const QString& number, Verdict verdict);
    /// Marks a door as the one on screen; emits nothing.
    void setCurrentDoor(const QString& number);
    QString currentDoor() const;
    QSize sizeHint() const override;

signals:
    void doorChosen(QString number);

private:
    DoorListModel* m_model;
};

} // namespace latchround::ui
