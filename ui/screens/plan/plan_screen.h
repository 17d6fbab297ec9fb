// Plans a walkdown on two pages and begins it: the plan, then the brief that must be read out
// first.
#pragma once

#include "ui/screens/plan/plan_draft.h"
#include "ui/screens/screen.h"

class QStackedWidget;

namespace latchround::ui {

class BriefPage;
class PlanPage;

class PlanScreen : public Screen {
    Q_OBJECT
public:
    explicit PlanScreen(VesselSession& session, QWidget* parent = nullptr);

    void enter() override;
    /// A plan already begun for a purpose and its doors; before enter(), which chooses them.
    void propose(Purpose purpose, ScopeKind scope);

signals:
    /// The walkdown is on disk; its first door.
    void begun(QString door);

protected:
    void arrange(bool upright) override;
    double leastHeight() const override { return 6; } // every choice in two columns
    void lookChanged() override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showPlan();
    void showBrief();
    void begin();
    void lookWhetherBegun();

    PlanDraft m_draft;
    FactId m_begun; ///< the walkdown that waits to be saved; empty where none does
    QStackedWidget* m_pages;
    PlanPage* m_plan;
    BriefPage* m_brief;
};

} // namespace latchround::ui
