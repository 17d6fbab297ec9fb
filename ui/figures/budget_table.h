// What the uncertainty of a figure is made of, line by line: each part in its own unit and what it
// adds, and below the line what they come to.
#pragma once

#include "core/grading/grade.h"
#include "ui/look/part.h"

class QGridLayout;

namespace latchround::ui {

class BudgetTable : public Part {
    Q_OBJECT
public:
    /// The row must have a figure; everything shown is copied out of it.
    explicit BudgetTable(const RowGrade& row, QWidget* parent = nullptr);

    /// Cells of every line, for tests and for reading aloud.
    QStringList lines() const { return m_lines; }

private:
    void addLine(const QString& name, const QString& own, const QString& share, bool bold = false);

    QGridLayout* m_grid;
    QStringList m_lines;
};

} // namespace latchround::ui
