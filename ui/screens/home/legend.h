// What the door glyphs mean: in one line where it fits, else in as many as it takes.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QGridLayout;

namespace latchround::ui {

class Legend : public Part {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);

    /// How wide it may become, px: pairs of glyph and word stand beside each other as far as they
    /// fit.
    void setRoom(int room);

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;

private:
    void setColumns(int columns);

    QGridLayout* m_grid;
    std::vector<QWidget*> m_pairs;
    int m_room = QWIDGETSIZE_MAX;
    int m_columns = 0;
};

} // namespace latchround::ui
