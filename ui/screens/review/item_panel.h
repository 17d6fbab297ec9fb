// One item in full: what is wrong and by which text, what it does to the zones, what was set, what
// was done, and the keys for what comes next.
#pragma once

#include "ui/frames/card.h"
#include "ui/session/vessel_session.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class ItemSheets;
class Label;
class RowPager;
class ValueRow;

class ItemPanel : public Card {
    Q_OBJECT
public:
    ItemPanel(VesselSession& session, ItemSheets& sheets, QWidget* parent = nullptr);

    /// Empty: nothing is chosen.
    void show(const FactId& id);
    /// Whether it has the screen for itself: then a key leads back to the list. `upright`: there is
    /// more height than width.
    void setAlone(bool alone, bool upright);

signals:
    void listAsked();
    void historyAsked(QString door);
    void photographsAsked(latchround::FactId item);

protected:
    void lookChanged() override;

private:
    void refresh();
    void press(void (ItemSheets::*what)(const Item&));
    QWidget* wordsOf(const Item& item) const;
    ValueRow* value(const char* name, const QString& words, const QString& detail,
                    const QString& key, void (ItemSheets::*what)(const Item&));
    std::vector<QWidget*> rowsOf(const Item& item);
    QStringList courseOf(const Item& item) const;
    void showKeys(const Item* item);

    VesselSession& m_session;
    ItemSheets& m_sheets;
    FactId m_id;
    QVBoxLayout* m_lines;
    QBoxLayout* m_head;
    QPushButton* m_list; ///< back to it
    Label* m_title;
    Label* m_state;
    RowPager* m_pager;
    QWidget* m_keys;
    QPushButton* m_next; ///< rectified, awaiting retest
    QPushButton* m_away; ///< withdraw, or take that back
};

} // namespace latchround::ui
