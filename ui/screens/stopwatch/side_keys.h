// Beside the stopwatch's mark key: stop, large; the marks that may be taken out of turn; and what
// puts a slip right. No key moves while a run goes on, but where there is little room marks and
// slips share one place, and a key turns from one to the other.
#pragma once

#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class MarkKey;

class SideKeys : public Part {
    Q_OBJECT
public:
    explicit SideKeys(QWidget* parent = nullptr);

    MarkKey& halfWay() const { return *m_half_way; }
    /// What is marked of the alarm out of its turn; its words are the caller's.
    MarkKey& alarm() const { return *m_alarm; }
    QPushButton& stop() const { return *m_stop; }
    QPushButton& takeBack() const { return *m_take_back; }
    QPushButton& voidRun() const { return *m_void; }

    /// The marks out of turn that a run of this kind may have.
    void offer(bool half_way, bool alarm);
    void setSmall(bool small);
    /// Where there is little room the run's result needs what stop had.
    void setOver(bool over);

protected:
    void lookChanged() override;

private:
    void showKeys();
    bool isOffered() const { return m_offers_half_way || m_offers_alarm; }

    QPushButton* m_stop;
    MarkKey* m_half_way;
    MarkKey* m_alarm;
    QPushButton* m_take_back;
    QPushButton* m_void;
    QPushButton* m_turn; ///< from the marks to the slips, and back
    QWidget* m_marks;
    QWidget* m_slips;
    QVBoxLayout* m_lines;
    QBoxLayout* m_row;
    bool m_offers_half_way = false;
    bool m_offers_alarm = false;
    bool m_small = false;
    bool m_over = false;
};

} // namespace latchround::ui
