// Before a remote release: which doors will move and what they can do, and the questions that must
// each be confirmed. The stopwatch cannot be armed before; every answer is a fact with who and
// when. Where there is room for one at a time, what will move comes first.
#pragma once

#include <map>

#include "ui/screens/screen.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class DoorListView;
class EnglishLabel;
class Label;
class ReadingPane;
class RowPager;
class ValueRow;

class CautionScreen : public Screen {
    Q_OBJECT
public:
    explicit CautionScreen(VesselSession& session, QWidget* parent = nullptr);

    void setDoor(const QString& number);
    QString group() const { return m_group; }
    void enter() override;

signals:
    void armed(QString door, QString group);

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void limitMoving();
    void makeMoving();
    void makeQuestions();
    void fillGroups();
    void fillMoving();
    void fillTold();
    /// The questions, or what will move; only where there is room for one of them.
    void turnTo(bool questions);
    void refresh();
    void answer(std::string_view question, bool confirmed);
    void confirmAll();

    QString m_door;
    FactId m_walkdown; ///< in which the door was shown
    QString m_group;
    QBoxLayout* m_columns;
    QWidget* m_moving_side;
    QWidget* m_question_side;
    QVBoxLayout* m_moving_lines = nullptr;
    QVBoxLayout* m_question_lines = nullptr;
    QBoxLayout* m_moving_parts = nullptr; ///< the doors, and what is to be known of them
    QHBoxLayout* m_groups = nullptr;
    QHBoxLayout* m_keys = nullptr;
    Label* m_moving_title = nullptr;
    DoorListView* m_moving = nullptr;
    ReadingPane* m_told = nullptr; ///< what the blow amounts to; small: the words agreed, too
    Label* m_question_title = nullptr;
    QPushButton* m_to_questions = nullptr;
    QPushButton* m_to_moving = nullptr;
    RowPager* m_rows = nullptr;
    std::map<std::string, ValueRow*> m_questions;
    Label* m_words = nullptr; ///< agreed with the control station
    EnglishLabel* m_words_english = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_arm = nullptr;
};

} // namespace latchround::ui
