// The mark for a grade: a frame with its leaf. Shut and solid: satisfactory; ajar: unsatisfactory;
// a clock in it: time again; a question mark: needs judgement; dotted: untested; a bar across: not
// applicable; an i: advice.
#pragma once

#include <QByteArray>

#include "core/grading/verdict.h"
#include "ui/parts/part.h"

class QPainter;

namespace latchround::ui {

/// Fills the middle of `box`, upright, from 16 px up.
void drawDoorGlyph(QPainter& painter, const QRectF& box, Verdict verdict, const Colours& colours);

/// The same shape as an SVG document of 82 by 100 units, its title the verdict's words.
QByteArray doorGlyphSvg(Verdict verdict, const Colours& colours);

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
