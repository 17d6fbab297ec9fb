// Says that something recorded is not saved yet, why, and offers to try again; what the register
// will never take can be put aside, where it is kept in a file. Shown above every screen until
// nothing waits; not for what is only held up for a moment.
#pragma once

#include "ui/parts/part.h"
#include "ui/round/round.h"

class QPushButton;

namespace latchround::ui {

class Lettering;

class NotSavedBanner : public Part {
    Q_OBJECT
public:
    explicit NotSavedBanner(Round& round, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();
    void askToPutAside();

    Round& m_round;
    Lettering* m_words;
    QPushButton* m_again;
    QPushButton* m_aside;
};

} // namespace latchround::ui
