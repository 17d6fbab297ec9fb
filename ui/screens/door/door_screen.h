// One door, in three steps: look, release, function. Left its neighbours, right its verdict, live.
// Where there is room for one thing at a time keys turn from the steps to the others and back.
#pragma once

#include "core/requirement/requirement.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QGridLayout;
class QHBoxLayout;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace latchround::ui {

class BulkheadPanel;
class DoorHead;
class DoorSheets;
class PartKeys;
class RowPager;
class StepRows;
class TypedRun;
class VerdictList;
class WalkedSheets;

class DoorScreen : public Screen {
    Q_OBJECT
public:
    explicit DoorScreen(VesselSession& session, QWidget* parent = nullptr);

    void setDoor(const QString& number);
    QString door() const { return m_door; }
    void setStep(Step step);
    Step step() const { return m_step; }
    /// Everything of the door at once, to type in what stands on a paper form, after who walked and
    /// when. Stays so until a step is chosen or the screen is left; at the next door only the time
    /// is asked for. The letters y, n and a answer the next open question.
    void setFromPaper();
    void enter() override;

signals:
    void timeAsked(QString door, latchround::Release release, latchround::RunKind kind);
    void walkDone();
    /// The rule book at this door; `requirement`: the row to open it at, or empty.
    void rulesAsked(QString door, QString requirement);

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void typeIn(const OnPaper& on_paper);
    bool answerNext(Answer answer);
    QWidget* makeWork();
    QWidget* makeSteps();
    QWidget* makeFoot();
    QWidget* makeVerdict();
    void connectParts();
    bool isOneAtATime() const;
    void placeLarge(bool upright);
    void placeSmall(bool upright);
    void placeActions(bool in_one_line);
    void sizeKeys();
    /// A place of PartKeys; only where there is little room.
    void turnTo(int place);
    void forward();
    void refresh(const QString& changed);
    void fillRows();
    void fillBar();
    void fillForward();

    QString m_door;
    Step m_step = Step::Look;
    bool m_from_paper = false;
    std::optional<OnPaper> m_on_paper; ///< given last for this door
    BulkheadPanel* m_bulkhead;
    DoorHead* m_head;
    std::vector<QPushButton*> m_steps;
    QPushButton* m_paper = nullptr;
    RowPager* m_rows;
    StepRows* m_maker;
    TypedRun* m_typed_run;
    WalkedSheets* m_walked;
    PartKeys* m_parts;
    QPushButton* m_forward = nullptr;
    QPushButton* m_photograph = nullptr;
    QPushButton* m_note = nullptr;
    QPushButton* m_could_not = nullptr;
    VerdictList* m_verdict;
    QPushButton* m_not_asked = nullptr;
    DoorSheets* m_sheets;
    QStackedWidget* m_place; ///< the work, or what takes its place
    QWidget* m_work = nullptr;
    QWidget* m_verdict_side = nullptr;
    QWidget* m_notes_page = nullptr;
    QWidget* m_actions = nullptr;
    QBoxLayout* m_columns;
    QBoxLayout* m_middle;
    QVBoxLayout* m_work_lines = nullptr;
    QVBoxLayout* m_notes_lines = nullptr;
    QHBoxLayout* m_step_line = nullptr;
    QGridLayout* m_action_grid = nullptr;
    QBoxLayout* m_foot = nullptr;
};

} // namespace latchround::ui
