// The times of one door through the years: every point with its uncertainty, the limits, the
// present line with the band in which the next time is to be expected, and where that band meets a
// limit.
#pragma once

#include <optional>

#include "core/trend/outlook.h"
#include "ui/look/part.h"

namespace latchround::ui {

/// What the outlook says, in one or two sentences. `unit`: "s" or "m/s".
QString outlookWords(const Outlook& outlook, std::optional<double> low, std::optional<double> high,
                     const QString& unit);

class TrendChart : public Part {
    Q_OBJECT
public:
    explicit TrendChart(QWidget* parent = nullptr);

    void setOutlook(Outlook outlook, std::optional<double> low, std::optional<double> high,
                    const QString& unit);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int heightWithin(double most_mm) const;
    struct Frame;
    Frame frameOf() const;
    void paintAxes(QPainter& painter, const Frame& frame) const;
    void paintLimits(QPainter& painter, const Frame& frame) const;
    void paintLine(QPainter& painter, const Frame& frame) const;
    void paintDays(QPainter& painter, const Frame& frame) const;

    Outlook m_outlook;
    std::optional<double> m_low;
    std::optional<double> m_high;
    QString m_unit;
};

} // namespace latchround::ui
