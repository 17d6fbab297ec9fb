// A list in groups, one row of which is chosen and shown beside it: a heading a group, two lines a
// row. Arrow keys, mouse and finger choose alike.
#pragma once

#include "ui/lists/two_line_list.h"

namespace latchround::ui {

class ChosenList : public TwoLineList {
    Q_OBJECT
public:
    explicit ChosenList(QWidget* parent = nullptr);

    /// Keeps the chosen row where its key is still there, else takes the first.
    void setLines(std::vector<TwoLineRow> lines);
    QString chosenKey() const; ///< empty where there is no row
    void choose(const QString& key);

signals:
    /// Also when the list became empty: then with an empty key.
    void chosenChanged(QString key);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    QString keyOf(const QModelIndex& index) const;
};

} // namespace latchround::ui
