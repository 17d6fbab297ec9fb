// The allowed band of a figure on a scale, with its uncertain edges hatched: inside them a reading
// cannot be told from the limit. A needle stands at the running value. Either limit may be absent.
// Who listens instead is told the value when they ask, and by itself only when it comes from one
// stretch of the scale into the next.
#pragma once

#include <optional>

#include "ui/look/part.h"

namespace latchround::ui {

class BandGauge : public Part {
    Q_OBJECT
public:
    explicit BandGauge(QWidget* parent = nullptr);

    /// Words at the left of the head line: "Leaf moving".
    void setTitle(const QString& title);
    /// Limits in `unit`; `figures` digits after the point are shown.
    void setBand(std::optional<double> low, std::optional<double> high, const QString& unit,
                 int decimals = 1);
    /// Half width of the uncertain edge around each limit (k = 2), in the unit of the band.
    void setUncertainty(double expanded);
    void setScale(double from, double to);
    void setValue(std::optional<double> value);
    /// Without the figures below the scale, for where there is little room.
    void setCompact(bool compact);

    std::optional<double> value() const { return m_value; }
    double from() const { return m_from; }
    double to() const { return m_to; }
    /// "allowed 7.0 to 14.0 s", "at most 14.0 s".
    QString limitWords() const;
    /// "below the limit", "at the limit", ...: where the value lies; empty without one.
    QString placeWords() const;
    /// Title, limits, the value and where it lies.
    QString spoken() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double xOf(double value, const QRectF& track) const;
    QString figureOf(double value) const;
    void drawHead(QPainter& painter, const QRectF& head) const;
    void drawBand(QPainter& painter, const QRectF& track) const;
    void drawTicks(QPainter& painter, const QRectF& track) const;
    void drawNeedle(QPainter& painter, const QRectF& track) const;
    /// Which stretch of the scale: nothing, below, at a limit, within, above.
    enum class Stretch { None, Below, AtLimit, Within, Above };
    Stretch stretch() const;
    void updateSpokenText();

    QString m_title;
    QString m_unit;
    std::optional<double> m_low;
    std::optional<double> m_high;
    std::optional<double> m_value;
    double m_uncertainty = 0;
    double m_from = 0;
    double m_to = 1;
    int m_decimals = 1;
    bool m_compact = false;
    Stretch m_told = Stretch::None; ///< last
};

} // namespace latchround::ui
