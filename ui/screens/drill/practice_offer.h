// What practice says of the thumb of whoever records, and the key that takes it for the thumb's
// own figures. Nothing else of practice ever reaches a real register.
#pragma once

#include "ui/look/part.h"
#include "ui/round/round.h"

namespace latchround::ui {

class ValueRow;

class PracticeOffer : public Part {
    Q_OBJECT
public:
    explicit PracticeOffer(Round& round, QWidget* parent = nullptr);

    /// Shown only where enough marks of a kind count and were not made before the last drill.
    void refresh();

signals:
    void used();

private:
    void use();

    Round& m_round;
    ThumbDrill m_drill;
    ValueRow* m_row;
};

} // namespace latchround::ui
