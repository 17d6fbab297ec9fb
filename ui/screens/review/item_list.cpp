#include "ui/screens/review/item_list.h"

namespace latchround::ui {

ItemList::ItemList(QWidget* parent)
    : ChosenList(parent) {
    setAccessibleName(tr("Open items"));
    connect(this, &ChosenList::chosenChanged, this,
            [this](const QString& key) { emit currentItemChanged(key.toStdString()); });
}

} // namespace latchround::ui

#include "moc_item_list.cpp"
