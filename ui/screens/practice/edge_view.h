// The leaf that is timed, close by: a hinged one from above with its edge and the frame that it
// meets, a sliding one from the front along its whole way. Beside the scene on the stopwatch, where
// the first movement and the touch of the frame must be seen.
#pragma once

#include <optional>

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/look/part.h"

class QPainter;

namespace latchround::ui {

class EdgeView : public Part {
    Q_OBJECT
public:
    explicit EdgeView(QWidget* parent = nullptr);

    void setDoor(const Door& door, const practice::DoorTruth& truth);
    void setSide(Side side);
    void setView(const practice::DoorView& view);
    /// In a contact run a block is held before the frame.
    void setBlock(bool held);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintFromAbove(QPainter& painter, const QRectF& area) const;
    void paintFromFront(QPainter& painter, const QRectF& area) const;
    void paintLeafFromAbove(QPainter& painter, const QPointF& hinge, double length, double way,
                            double up, double angle, bool lip) const;

    std::optional<Door> m_door;
    practice::DoorTruth m_truth;
    practice::DoorView m_view;
    Side m_side = Side::One;
    bool m_block = false;
};

} // namespace latchround::ui
