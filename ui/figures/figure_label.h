// A figure with its unit that counts without jumping: the stopwatch's running time, a count, a
// measure. A screen reader is told what it is when it asks, never at each step.
#pragma once

#include "ui/look/part.h"

namespace latchround::ui {

class FigureLabel : public Part {
    Q_OBJECT
public:
    explicit FigureLabel(TextSize size, const QString& unit = {}, QWidget* parent = nullptr);

    QString figure() const { return m_figure; }
    /// Figure and unit.
    QString spoken() const;
    void setFigure(const QString& figure);
    void setUnit(const QString& unit);
    /// The widest text to keep room for, e.g. "00.00".
    void setRoomFor(const QString& figure);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double scaleToFit() const;

    TextSize m_size;
    QString m_unit;
    QString m_figure;
    QString m_room;
};

} // namespace latchround::ui
