// Which door is meant, where several lie under one fingertip: a key each, deck by deck from the top
// and from aft to forward, so that they lie as they do in the ship.
#pragma once

#include <vector>

#include "core/grading/verdict.h"
#include "ui/look/part.h"

namespace latchround::ui {

struct DoorOffered {
    QString number;
    QString deck;
    Verdict verdict = Verdict::Untested;
    int deck_row = 0; ///< 0 is the topmost deck
    double x = 0;     ///< along the ship, in any unit
};

class DoorPicker : public Part {
    Q_OBJECT
public:
    /// `nearest_first`: as many of them are offered as lie within `room`, in px.
    DoorPicker(std::vector<DoorOffered> nearest_first, const QSize& room, const Appearance& look,
               QWidget* parent = nullptr);

signals:
    void doorChosen(QString number);
};

} // namespace latchround::ui
