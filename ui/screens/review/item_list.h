// Open items in their groups: a heading a group, two lines an item. The current one is shown beside
// the list; arrow keys, mouse and finger move it alike.
#pragma once

#include "core/evidence/stamp.h"
#include "ui/lists/two_line_list.h"

namespace latchround::ui {

class ItemList : public TwoLineList {
    Q_OBJECT
public:
    explicit ItemList(QWidget* parent = nullptr);

    /// The key of an item's line is its id. Keeps the current item where it is still there, else
    /// takes the first.
    void setLines(std::vector<TwoLineRow> lines);
    FactId current() const;
    void setCurrent(const FactId& id);

signals:
    /// Also when the list became empty: then with an empty id.
    void currentItemChanged(latchround::FactId id);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    FactId idOf(const QModelIndex& index) const;
};

} // namespace latchround::ui
