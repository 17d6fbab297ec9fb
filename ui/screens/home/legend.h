// What the door glyphs mean: in one line where it fits, else in as many as it takes.
#pragma once

#include <vector>

#include "ui/parts/part.h"

class QGridLayout;

namespace latchround::ui {

class Legend : public Part {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);

    /// Pairs of glyph and word beside each other.
    void setColumns(int columns);

protected:
    void lookChanged() override;

private:
    QGridLayout* m_grid;
    std::vector<QWidget*> m_pairs;
    int m_columns = 0;
};

} // namespace latchround::ui
