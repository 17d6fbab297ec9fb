// Says that something recorded is not on disk yet, why, and offers to try again. Shown above every
// screen until all of it is saved.
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

    Round& m_round;
    Lettering* m_words;
    QPushButton* m_again;
};

} // namespace latchround::ui
