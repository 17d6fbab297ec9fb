// Before a remote release: which doors will move and what they can do, and the questions that must
// each be confirmed. The stopwatch cannot be armed before; every answer is a fact with who and
// when.
#pragma once

#include <map>

#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;
class QHBoxLayout;

namespace latchround::ui {

class DoorListView;
class Lettering;
class RowPager;
class ValueRow;

class CautionScreen : public Screen {
    Q_OBJECT
public:
    explicit CautionScreen(Round& round, QWidget* parent = nullptr);

    void setDoor(const QString& number);
    QString group() const { return m_group; }
    void enter() override;

signals:
    void armed(const QString& door, const QString& group);

protected:
    void arrange(bool upright) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* makeMoving();
    QWidget* makeQuestions();
    void fillGroups();
    void fillMoving();
    void refresh();
    void answer(std::string_view question, bool confirmed);
    void confirmAll();

    QString m_door;
    QString m_group;
    QBoxLayout* m_columns;
    QHBoxLayout* m_groups = nullptr;
    Lettering* m_moving_title = nullptr;
    DoorListView* m_moving = nullptr;
    Lettering* m_energy = nullptr;
    RowPager* m_rows = nullptr;
    std::map<std::string, ValueRow*> m_questions;
    Lettering* m_words = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_arm = nullptr;
};

} // namespace latchround::ui
