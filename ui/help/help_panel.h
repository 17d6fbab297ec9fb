// One panel of a picture of help: the drawing as large as it fits, a tick or a cross in its corner
// where it shows the good or the bad. Its words stand below it, in the caption that whoever shows
// it lays out.
#pragma once

#include "ui/help/help_picture.h"
#include "ui/look/part.h"

namespace latchround::ui {

class HelpPanelView : public Part {
    Q_OBJECT
public:
    explicit HelpPanelView(HelpPanel panel, QWidget* parent = nullptr);

    const HelpPanel& panel() const { return m_panel; }
    /// "Good: the bolt is home in its strike".
    QString words() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    HelpPanel m_panel;
};

} // namespace latchround::ui
