// What is open after the walk, for the bridge: items grouped as they are worked, one of them in
// full beside the list, and the keys for what concerns all of them. On a small screen these three
// come one at a time.
#pragma once

#include "core/deficiency/grouping.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Card;
class ItemList;
class ItemPanel;
class ItemSheets;
class KeyGrid;
class Label;
class ReviewSheets;

class ReviewScreen : public Screen {
    Q_OBJECT
public:
    explicit ReviewScreen(VesselSession& session, QWidget* parent = nullptr);

    void enter() override;
    /// Shows this item, where it is in the list; after enter().
    void choose(const FactId& item);
    ReviewSheets& sheets() const { return *m_sheets; }

signals:
    /// A walk over the doors that wait for their retest.
    void retestAsked();

protected:
    void arrange(bool upright) override;
    void lookChanged() override;

private:
    /// What a small screen shows.
    enum class Shown { List, Item, Keys };
    void show(Shown shown);
    void addOrders();
    void addKeys();
    void refresh();
    void fillList();
    void fillKeys();
    std::vector<Item> shown() const;

    ReviewSheets* m_sheets;
    ItemSheets* m_item_sheets;
    GroupBy m_by = GroupBy::Due;
    bool m_all = false; ///< closed and withdrawn ones too
    Shown m_shown = Shown::List;
    QBoxLayout* m_halves;
    Card* m_left;
    KeyGrid* m_order;
    Label* m_nothing;
    ItemList* m_list;
    ItemPanel* m_panel;
    KeyGrid* m_openers; ///< on a small screen: to the item, and to the keys
    KeyGrid* m_keys;
    QPushButton* m_back; ///< and back to the list
    QPushButton* m_who;
    QPushButton* m_which;
    QPushButton* m_write_up;
    QPushButton* m_retest;
    QPushButton* m_compare;
    QPushButton* m_differences;
    QPushButton* m_papers;
    QPushButton* m_hand_over;
    QPushButton* m_sign;
};

} // namespace latchround::ui
