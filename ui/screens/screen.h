// What every screen is: a page of the window with a bar at its top. Screens read the session,
// record through it, and ask for other screens by signals; they never know each other.
#pragma once

#include "ui/look/part.h"
#include "ui/session/vessel_session.h"

class QVBoxLayout;

namespace latchround::ui {

class TopBar;

class Screen : public Part {
    Q_OBJECT
public:
    explicit Screen(VesselSession& session, QWidget* parent = nullptr);

    TopBar& bar() const { return *m_bar; }
    /// Called each time the screen comes to the front.
    virtual void enter() {}
    /// Whether the window stands upright: parts then lie one above the other.
    bool isUpright() const { return height() > width(); }
    /// Less than a small tablet at its usual size, as at 200 %: parts then come one at a time.
    bool isSmall() const;

protected:
    /// How many main targets must fit below each other in a window that lies flat, or it is small:
    /// with gloves they are large.
    virtual double leastHeight() const { return 0; }
    VesselSession& session() const { return m_session; }
    /// Below the bar, within the page's margins.
    QWidget* page() const { return m_page; }
    /// `isUpright` or `isSmall` changed: the window was turned, or its text made larger. Called
    /// once before the first show.
    virtual void arrange(bool upright) { (void)upright; }
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    void arrangeAnew();

    VesselSession& m_session;
    TopBar* m_bar;
    QWidget* m_page;
    QVBoxLayout* m_lines;
    int m_arranged = -1; ///< for which of the four; not yet known
};

} // namespace latchround::ui
