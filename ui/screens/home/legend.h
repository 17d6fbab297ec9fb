// What the door glyphs mean, in one line.
#pragma once

#include "ui/parts/part.h"

class QHBoxLayout;

namespace latchround::ui {

class Legend : public Part {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);

protected:
    void lookChanged() override;

private:
    QHBoxLayout* m_line;
};

} // namespace latchround::ui
