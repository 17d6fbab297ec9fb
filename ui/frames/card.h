// The rounded panel that things lie on. Give it a layout; its margins are the look's padding.
#pragma once

#include "ui/look/part.h"

namespace latchround::ui {

class Card : public Part {
    Q_OBJECT
public:
    explicit Card(QWidget* parent = nullptr);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;
};

} // namespace latchround::ui
