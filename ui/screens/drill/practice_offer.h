// What practice says of the thumb of whoever records, and the key that takes it for the thumb's
// own figures. Nothing else of practice ever reaches a real register.
#pragma once

#include "ui/look/part.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

class ValueRow;

class PracticeOffer : public Part {
    Q_OBJECT
public:
    explicit PracticeOffer(VesselSession& session, QWidget* parent = nullptr);

    /// Shown only where enough marks of a kind count and were not made before the last drill.
    void refresh();

signals:
    void used();

private:
    void use();

    VesselSession& m_session;
    ThumbDrill m_drill;
    ValueRow* m_row;
};

} // namespace latchround::ui
