// Open items in their groups, by their ids.
#pragma once

#include "core/evidence/stamp.h"
#include "ui/lists/chosen_list.h"

namespace latchround::ui {

class ItemList : public ChosenList {
    Q_OBJECT
public:
    explicit ItemList(QWidget* parent = nullptr);

    /// The key of an item's line is its id.
    FactId current() const { return chosenKey().toStdString(); }
    void setCurrent(const FactId& id) { choose(QString::fromStdString(id)); }

signals:
    /// Also when the list became empty: then with an empty id.
    void currentItemChanged(latchround::FactId id);
};

} // namespace latchround::ui
