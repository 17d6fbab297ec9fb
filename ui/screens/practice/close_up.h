// One spot of a door close by. It says aloud what is seen, neutrally, for those who hear the
// screen; it never says what to think of it.
#pragma once

#include <optional>

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/look/part.h"
#include "ui/screens/practice/spot.h"

namespace latchround::ui {

class CloseUp : public Part {
    Q_OBJECT
public:
    explicit CloseUp(QWidget* parent = nullptr);

    void setDoor(const Door& door, const practice::DoorTruth& truth);
    void setSpot(Spot spot);
    Spot spot() const { return m_spot; }
    /// `now_ns`: of the steady clock; a hose port that was lifted falls shut by it.
    void setView(const practice::DoorView& view, std::int64_t now_ns);
    /// How far the safety edge re-opened in the last contact run; nothing before there was one.
    void setReopened(std::optional<double> metres);
    /// The cover of the hose port is lifted and let go. The drawing asks for it when it is touched.
    void liftPort(std::int64_t now_ns);

    QSize sizeHint() const override;

signals:
    void portTouched();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void updateSpokenText();

    std::optional<Door> m_door;
    practice::DoorTruth m_truth;
    practice::DoorView m_view;
    Spot m_spot = Spot::Sill;
    std::optional<bool> m_panel_shut;
    std::optional<double> m_reopened_m;
    std::optional<std::int64_t> m_lifted_ns;
    double m_port_open = 0;
};

} // namespace latchround::ui
