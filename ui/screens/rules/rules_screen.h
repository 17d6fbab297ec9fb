// The rule book: every row that doors are graded by, found by typing, with its limit, dates,
// exemptions and text; at one door or aboard, whether it binds there and why. It records nothing.
#pragma once

#include <memory>

#include "ui/screens/screen.h"

class QBoxLayout;
class QLineEdit;
class QPushButton;

namespace latchround::ui {

class Card;
class ChosenList;
class KeyGrid;
class Label;
class RulePage;
class RulesShown;

class RulesScreen : public Screen {
    Q_OBJECT
public:
    explicit RulesScreen(VesselSession& session, QWidget* parent = nullptr);
    ~RulesScreen() override;

    /// What enter() shows. `door`: its number; empty: of the whole vessel. `row`: its id; empty:
    /// the list.
    void openAt(const QString& door = {}, const QString& row = {});
    QString door() const { return m_door; }
    void enter() override;

protected:
    void arrange(bool upright) override;
    void lookChanged() override;

private:
    /// What a small screen shows.
    enum class Shown { List, Row };
    void turnTo(Shown shown);
    void showAll(bool all);
    void fillList();
    void fillPage();

    QString m_door;
    QString m_row;
    bool m_all = false; ///< rows that are not asked here too
    Shown m_shown = Shown::List;
    std::unique_ptr<RulesShown> m_rules; ///< from enter() on
    QBoxLayout* m_halves;
    Card* m_left;
    QLineEdit* m_search;
    KeyGrid* m_which;
    QPushButton* m_asked_key;
    QPushButton* m_all_key;
    Label* m_nothing;
    ChosenList* m_list;
    KeyGrid* m_openers; ///< on a small screen: to the row
    RulePage* m_page;
};

} // namespace latchround::ui
