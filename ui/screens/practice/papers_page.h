// What the drawing of a door cannot show: one sentence for each row that is tried with the
// engineers or stands on paper, as they say it. Turned by keys where it is long.
#pragma once

#include "core/grading/graded_walkdown.h"
#include "ui/look/part.h"

namespace latchround::ui {

class RowPager;

class PapersPage : public Part {
    Q_OBJECT
public:
    explicit PapersPage(QWidget* parent = nullptr);

    /// Of the rows that are asked of this door.
    void setDoor(const GradedDoor& door);

private:
    RowPager* m_rows;
};

} // namespace latchround::ui
