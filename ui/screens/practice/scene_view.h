// A door and its surroundings as one sees them standing before it, from either side. What is wrong
// with the door is there to be seen and never told. The leaf always glides, calm motion or not: its
// movement is what is timed.
#pragma once

#include <optional>
#include <vector>

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/look/part.h"
#include "ui/screens/practice/spot.h"

namespace latchround::ui {

class SceneView : public Part {
    Q_OBJECT
public:
    explicit SceneView(QWidget* parent = nullptr);

    void setDoor(const Door& door, const practice::DoorTruth& truth);
    void setSide(Side side);
    Side side() const { return m_side; }
    void setView(const practice::DoorView& view);
    /// Whether spots are marked and answer to a touch. They do unless this is taken away.
    void setTouchable(bool touchable);

    struct SpotArea {
        Spot spot;
        QRectF area; ///< within this widget, never smaller than a target
    };
    /// Those that can be touched here; what is not at the door (Panel, Papers) has no area.
    std::vector<SpotArea> spotAreas() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void spotTouched(latchround::ui::Spot spot);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void updateSpokenText();

    std::optional<Door> m_door;
    practice::DoorTruth m_truth;
    practice::DoorView m_view;
    Side m_side = Side::One;
    bool m_touchable = true;
};

} // namespace latchround::ui
