// Practice, as it is offered in a real vessel's window: the exercises of this tablet from the first
// to the exam, and how the people who did them come on.
#pragma once

#include "ui/ports/exercises.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class ExerciseRow;
class Label;
class PageTabs;
class ProgressCard;
class RowPager;

class PracticeScreen : public Screen {
    Q_OBJECT
public:
    explicit PracticeScreen(VesselSession& session, QWidget* parent = nullptr);

    void enter() override;

protected:
    void arrange(bool upright) override;
    void lookChanged() override;

private:
    void showExercises();
    void showBest();
    void choose(const ExerciseOffered& exercise);
    void askForPassword(const ExerciseOffered& exercise);
    bool practise(const QString& place, const QString& password);
    void offerUnfinished();
    bool goOn(const QString& password);
    void takeIn();

    std::vector<ExerciseOffered> m_offered; ///< as they stand on the screen
    std::vector<ExerciseRow*> m_rows;       ///< one for each
    PageTabs* m_tabs;
    QBoxLayout* m_head; ///< above the parts of a small screen
    QBoxLayout* m_sides;
    QVBoxLayout* m_left;
    Label* m_none;
    RowPager* m_list;
    QPushButton* m_take_in;
    ProgressCard* m_progress;
};

} // namespace latchround::ui
