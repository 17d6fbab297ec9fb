// The mark for a grade as a widget.
#pragma once

#include "core/grading/verdict.h"
#include "ui/look/part.h"

namespace latchround::ui {

class DoorGlyph : public Part {
    Q_OBJECT
public:
    /// `height_mm`: of the glyph; the widget asks for that much and no more.
    explicit DoorGlyph(Verdict verdict = Verdict::Untested, double height_mm = 7.2,
                       QWidget* parent = nullptr);

    Verdict verdict() const { return m_verdict; }
    void setVerdict(Verdict verdict);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Verdict m_verdict;
    double m_height_mm;
};

} // namespace latchround::ui
