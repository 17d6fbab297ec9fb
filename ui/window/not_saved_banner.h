// Says that something recorded is not saved yet, why, and offers to try again; what the register
// will never take can be put aside, where it is kept in a file. Shown above every screen until
// nothing waits; not for what is only held up for a moment.
#pragma once

#include "ui/look/part.h"
#include "ui/session/vessel_session.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;

class NotSavedBanner : public Part {
    Q_OBJECT
public:
    explicit NotSavedBanner(VesselSession& session, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void refresh();
    /// The keys beside the words, or below them where the words would have too little room.
    void place();
    void askToPutAside();

    VesselSession& m_session;
    QBoxLayout* m_line;
    Label* m_words;
    QPushButton* m_again;
    QPushButton* m_aside;
};

} // namespace latchround::ui
