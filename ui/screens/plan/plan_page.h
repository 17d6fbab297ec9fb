// First page of a plan: what for, who walks, which doors, how far the ship heels. Where there is
// room for one of these at a time they come one after the other.
#pragma once

#include "ui/look/part.h"
#include "ui/screens/plan/plan_draft.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Card;
class ChoiceKeys;
class Label;
class PlanSheets;
class StageKeys;
class ValueRow;
class ZoneProfile;

class PlanPage : public Part {
    Q_OBJECT
public:
    PlanPage(VesselSession& session, PlanDraft& draft, QWidget* parent = nullptr);

    void refresh();
    void arrange(bool upright, bool small);
    /// The first of its parts, where they come one at a time.
    void begin();
    QPushButton* nextKey() const { return m_next; }

signals:
    void briefAsked();

protected:
    void lookChanged() override;

private:
    QWidget* partOf(std::initializer_list<QWidget*> lines);
    QWidget* makeWho();
    QWidget* makeDoors();
    void showPeople();
    void showScope();
    void showNext();
    void showProfile();
    void chooseScope(int index);
    void showSample();
    void setSample(std::optional<int> at_most, int confidence_ppm = 0);
    void setScope(ScopeKind kind, const std::string& which = {});

    VesselSession& m_session;
    PlanDraft& m_draft;
    PlanSheets* m_sheets;
    QVBoxLayout* m_lines;
    QBoxLayout* m_sides;
    StageKeys* m_stages;
    bool m_upright = false;
    std::vector<QVBoxLayout*> m_columns;
    ChoiceKeys* m_purpose = nullptr;
    ChoiceKeys* m_recorder = nullptr;
    ChoiceKeys* m_team = nullptr;
    Label* m_team_title = nullptr;
    ChoiceKeys* m_scope = nullptr;
    ValueRow* m_sample = nullptr;
    ValueRow* m_heel = nullptr;
    ZoneProfile* m_profile = nullptr; ///< the doors in scope, as they were graded last
    Label* m_sum = nullptr;
    Label* m_missing = nullptr;
    QPushButton* m_next = nullptr;
    std::vector<Person> m_people;  ///< as the recorder keys stand
    std::vector<Person> m_walkers; ///< as the team keys stand
};

} // namespace latchround::ui
