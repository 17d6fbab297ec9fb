// Each kind of door, moving: a sliding leaf from the front as it leaves its pocket, hinged leaves
// in plan as they swing home. Both are drawn as they are seen by who stands at the door: from side
// two the pocket is on the other hand, and a leaf that swung away swings near. The drawing moves
// only when told; nothing in it flashes.
#pragma once

#include <optional>

#include "core/evidence/fact_words.h"
#include "core/vessel/door.h"
#include "ui/look/part.h"

namespace latchround::ui {

class DoorDrawing : public Part {
    Q_OBJECT
public:
    explicit DoorDrawing(QWidget* parent = nullptr);

    /// `opening_m`: clear opening, drawn as a dimension; 0 where it is not known.
    void setDoor(DoorKind kind, double opening_m);
    /// The side it is looked at from; None is drawn as One.
    void setSide(Side side);
    /// A soft block stands in the way of the leaf, for a run that tries the contact.
    void setBlock(bool there);
    /// Where the leaf meets the block, as progress.
    static constexpr double block_at = 0.6;
    /// 0 fully open to 1 shut. With calm motion it is drawn in quarter steps.
    void setProgress(double progress);
    /// The second leaf of a double door, where it moves apart from the first.
    void setSecondProgress(std::optional<double> progress);
    void setAlarm(bool sounding);

    double progress() const { return m_progress; }
    std::optional<double> secondProgress() const { return m_second; }
    bool alarm() const { return m_alarm; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// Which way things are drawn: across, +1 as from side one, and away from who looks, -1 up.
    double hand() const { return m_side == Side::Two ? -1 : 1; }
    double shown(double progress) const;
    void paintSliding(QPainter& painter, const QRectF& area) const;
    void paintArrow(QPainter& painter, const QPointF& from) const;
    void paintHinged(QPainter& painter, const QRectF& area) const;
    void paintLeaf(QPainter& painter, const QPointF& hinge, double length, double sign,
                   double progress, double thickness) const;
    void paintBlock(QPainter& painter, const QPointF& middle) const;
    void paintDimension(QPainter& painter, double left, double right, double y,
                        const QString& what) const;
    void paintAlarm(QPainter& painter, const QRectF& area) const;
    void updateSpokenText();

    DoorKind m_kind = DoorKind::SingleLeaf;
    Side m_side = Side::One;
    double m_opening_m = 0;
    double m_progress = 0;
    std::optional<double> m_second;
    bool m_alarm = false;
    bool m_block = false;
};

} // namespace latchround::ui
