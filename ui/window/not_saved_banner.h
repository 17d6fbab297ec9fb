// Says that something recorded is not saved yet, why, and offers to try again; what the register
// will never take can be put aside, where it is kept in a file. Shown above every screen until
// nothing waits; not for what is only held up for a moment.
#pragma once

#include "ui/look/part.h"
#include "ui/round/round.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Lettering;

class NotSavedBanner : public Part {
    Q_OBJECT
public:
    explicit NotSavedBanner(Round& round, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void refresh();
    /// The keys beside the words, or below them where the words would have too little room.
    void place();
    void askToPutAside();

    Round& m_round;
    QBoxLayout* m_line;
    Lettering* m_words;
    QPushButton* m_again;
    QPushButton* m_aside;
};

} // namespace latchround::ui
