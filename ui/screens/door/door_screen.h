// One door, in three steps: look, release, function. Left its neighbours, right its verdict, live.
#pragma once

#include "core/requirement/requirement.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;
class QStackedWidget;

namespace latchround::ui {

class BulkheadPanel;
class DoorHead;
class DoorSheets;
class RowPager;
class StepRows;
class TypedRun;
class VerdictList;

class DoorScreen : public Screen {
    Q_OBJECT
public:
    explicit DoorScreen(Round& round, QWidget* parent = nullptr);

    void setDoor(const QString& number);
    QString door() const { return m_door; }
    void setStep(Step step);
    Step step() const { return m_step; }
    /// Everything of the door at once, to type in what stands on a paper form; stays so from door
    /// to door until a step is chosen. The letters y, n and a answer the next open question.
    void setFromPaper();
    void enter() override;

signals:
    void timeAsked(const QString& door, latchround::Release release, latchround::RunKind kind);
    void walkDone();

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool answerNext(Answer answer);
    QWidget* makeSteps();
    QWidget* makeActions();
    void forward();
    void refresh(const QString& changed);
    void fillRows();
    void fillBar();
    void fillForward();

    QString m_door;
    Step m_step = Step::Look;
    bool m_from_paper = false;
    BulkheadPanel* m_bulkhead;
    DoorHead* m_head;
    std::vector<QPushButton*> m_steps;
    QPushButton* m_paper = nullptr;
    RowPager* m_rows;
    StepRows* m_maker;
    TypedRun* m_typed_run;
    QPushButton* m_forward = nullptr;
    QPushButton* m_photograph = nullptr;
    QPushButton* m_note = nullptr;
    QPushButton* m_could_not = nullptr;
    VerdictList* m_verdict;
    QPushButton* m_not_asked = nullptr;
    DoorSheets* m_sheets;
    QBoxLayout* m_columns;
};

} // namespace latchround::ui
