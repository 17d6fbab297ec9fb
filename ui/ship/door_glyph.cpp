#include "ui/ship/door_glyph.h"

#include <cmath>

#include <QPainter>

#include "ui/ink/glyph_drawing.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

DoorGlyph::DoorGlyph(Verdict verdict, double height_mm, QWidget* parent)
    : Part(parent)
    , m_verdict(verdict)
    , m_height_mm(height_mm) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setVerdict(verdict);
}

void DoorGlyph::setVerdict(Verdict verdict) {
    m_verdict = verdict;
    setAccessibleName(verdictWords(verdict));
    update();
}

QSize DoorGlyph::sizeHint() const {
    const double height = mm(m_height_mm);
    return {int(std::lround(height * 0.86)), int(std::lround(height))};
}

void DoorGlyph::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    drawDoorGlyph(painter, QRectF(rect()), m_verdict, colours());
}

} // namespace latchround::ui

#include "moc_door_glyph.cpp"
