// Says that doors are graded otherwise since the rules changed, until somebody has seen it; else it
// is not there.
#pragma once

#include "ui/frames/card.h"
#include "ui/session/vessel_session.h"

class QHBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;

class ChangedRulesCard : public Card {
    Q_OBJECT
public:
    explicit ChangedRulesCard(VesselSession& session, QWidget* parent = nullptr);

    /// Grades by the former catalogue, where there is one.
    void refresh();
    /// Where there is little room it says no more than that.
    void setBrief(bool brief);
    /// There is something to say.
    bool isNeeded() const { return m_needed; }

signals:
    /// Which doors, and why.
    void asked();

protected:
    void lookChanged() override;

private:
    void giveMargins();

    VesselSession& m_session;
    QHBoxLayout* m_line;
    Label* m_words;
    Label* m_detail; ///< what happened to the rules
    QPushButton* m_look;
    bool m_brief = false;
    bool m_needed = false;
};

} // namespace latchround::ui
