// A list of rows of two lines, one of them chosen by a tap or Return. What the rows stand for and
// how they are set is said by the lists that build on it.
#pragma once

#include <QListView>

#include "ui/lists/two_line_model.h"
#include "ui/lists/two_line_style.h"

namespace latchround::ui {

class TwoLineDelegate;

class TwoLineList : public QListView {
    Q_OBJECT
public:
    explicit TwoLineList(const TwoLineStyle& style, QWidget* parent = nullptr);

    TwoLineModel& rows() const { return *m_rows; }
    /// Lays out anew.
    void setRowStyle(const TwoLineStyle& style);

private:
    TwoLineModel* m_rows;
    TwoLineDelegate* m_drawing;
};

} // namespace latchround::ui
