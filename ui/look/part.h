// What all painted parts share: the look they are drawn with, and a repaint when it changes.
#pragma once

#include <QWidget>

#include "ui/look/look.h"

namespace latchround::ui {

class Part : public QWidget {
    Q_OBJECT
public:
    explicit Part(QWidget* parent = nullptr);

    using QWidget::font; // stays in reach beside the look's own

protected:
    const Appearance& look() const { return lookOf(this); }
    const Colours& colours() const { return look().colours; }
    const Sizes& sizes() const { return look().sizes; }
    double mm(double millimetres) const { return millimetres * sizes().px_per_mm; }
    QFont font(TextSize size, bool bold = false) const { return textFont(size, sizes(), bold); }

    /// The whole of it as a card: rounded, with a hairline round it.
    void paintPanel();

    /// Sizes or colours changed; the base class lays out and paints anew.
    virtual void lookChanged();
    void changeEvent(QEvent* event) override;
};

} // namespace latchround::ui
