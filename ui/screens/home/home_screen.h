// The first screen: which boundaries hold, the walkdown under way, what is not in order, and what
// else there is of this vessel.
#pragma once

#include <set>

#include "core/planning/walk_order.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Card;
class ChangedRulesCard;
class HomeSheets;
class PageTabs;
class Legend;
class Label;
class OpenItemsCard;
class VesselCard;
class WalkdownCard;
class ZoneProfile;

class HomeScreen : public Screen {
    Q_OBJECT
public:
    explicit HomeScreen(VesselSession& session, QWidget* parent = nullptr);

    void enter() override;
    /// The vessel is not there: no other one is offered beside it, and no practice.
    void setPractising();

signals:
    void doorChosen(QString number);
    void beginAsked();
    /// All open items; `item`: the one to show, empty for none in particular.
    void reviewAsked(latchround::FactId item);
    void reportAsked(QString walkdown);
    void settingsAsked();
    void drillAsked();
    void practiceAsked();
    /// The rule book of the vessel.
    void rulesAsked();
    void planAsked(latchround::Purpose purpose, latchround::ScopeKind scope);
    /// A run of the walkdown under way that was cut short, of which nothing waits to be saved; once
    /// a run.
    void unfinishedRunFound(QString door);

protected:
    void arrange(bool upright) override;
    double leastHeight() const override { return 7.3; } // the profile above the cards
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void giveLegendRoom();
    void placeRulesKey();
    /// What a small screen shows one at a time, in the order of the keys.
    enum Page { Walk, Zones, Open, Vessel, Rules };

    void setSpacings();
    void refresh();
    void showRules();
    void refreshDoor();
    void showChangedRules();
    void placeChangedRules();
    void showBoundaries();
    void lookForUnfinishedRun();
    void choose(const QString& number);

    std::set<FactId> m_told; ///< unfinished runs that were reported
    QVBoxLayout* m_lines;
    QBoxLayout* m_head;
    QBoxLayout* m_cards;
    QHBoxLayout* m_now; ///< the walkdown and what is open in it
    Card* m_profile_card;
    ZoneProfile* m_profile;
    WalkdownCard* m_walkdown;
    OpenItemsCard* m_open_items;
    VesselCard* m_vessel;
    ChangedRulesCard* m_changed_rules;
    QBoxLayout* m_foot_line;
    Label* m_foot; ///< what grades go by, and what stands above it
    QPushButton* m_rules_key;
    Label* m_title;
    Legend* m_legend;
    PageTabs* m_tabs;
    HomeSheets* m_sheets;
};

} // namespace latchround::ui
