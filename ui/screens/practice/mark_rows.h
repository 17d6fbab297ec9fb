// The marks of an exercise against the truth, a line each: door, event, how late, drawn to one
// scale.
#pragma once

#include "core/practice/debrief.h"
#include "ui/look/part.h"

namespace latchround::ui {

/// Seconds that the lines reach to either side; wide enough for the marks, at most 1 s.
struct LateScale {
    double from_s = -0.1;
    double to_s = 0.4;
};
LateScale scaleOf(const std::vector<practice::MarkCompared>& marks);

class MarkRow : public Part {
    Q_OBJECT
public:
    MarkRow(const practice::MarkCompared& mark, LateScale scale);
    QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    bool isNarrow() const;
    QString m_door;
    QString m_event;
    QString m_late; ///< in words
    std::optional<double> m_late_s;
    LateScale m_scale;
};

} // namespace latchround::ui
