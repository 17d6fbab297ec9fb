// Each kind of door, moving: a sliding leaf from the front as it leaves its pocket, hinged leaves
// in plan as they swing home. The drawing moves only when told; nothing in it flashes.
#pragma once

#include "core/vessel/door.h"
#include "ui/parts/part.h"

namespace latchround::ui {

class DoorDrawing : public Part {
    Q_OBJECT
public:
    explicit DoorDrawing(QWidget* parent = nullptr);

    /// `opening_m`: clear opening, drawn as a dimension; 0 where it is not known.
    void setDoor(DoorKind kind, double opening_m);
    /// 0 fully open to 1 shut. With calm motion it is drawn in quarter steps.
    void setProgress(double progress);
    /// The second leaf of a double door, where it moves apart from the first.
    void setSecondProgress(double progress);
    void setAlarm(bool sounding);

    double progress() const { return m_progress; }
    bool alarm() const { return m_alarm; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double shown(double progress) const;
    void paintSliding(QPainter& painter, const QRectF& area) const;
    void paintHinged(QPainter& painter, const QRectF& area) const;
    void paintLeaf(QPainter& painter, const QPointF& hinge, double length, double sign,
                   double progress, double thickness) const;
    void paintDimension(QPainter& painter, double left, double right, double y,
                        const QString& what) const;
    void paintAlarm(QPainter& painter, const QRectF& area) const;
    void speak();

    DoorKind m_kind = DoorKind::SingleLeaf;
    double m_opening_m = 0;
    double m_progress = 0;
    std::optional<double> m_second;
    bool m_alarm = false;
};

} // namespace latchround::ui
