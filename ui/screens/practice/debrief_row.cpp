#include "ui/screens/practice/debrief_row.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/look/english_label.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/english_beneath.h"

namespace latchround::ui {

namespace {

constexpr double sign_mm = 6;

class Sign : public Part {
public:
    Sign(MarkShape shape, Ink ink)
        : m_shape(shape)
        , m_ink(ink) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {int(mm(sign_mm)), int(mm(sign_mm))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const Colours& c = colours();
        const QColor colour = m_ink == Ink::Good    ? c.good
                              : m_ink == Ink::Bad   ? c.bad
                              : m_ink == Ink::Again ? c.again
                                                    : c.muted;
        drawMarkShape(painter, QRectF(rect()).adjusted(3, 3, -3, -3), m_shape, colour);
    }

private:
    MarkShape m_shape;
    Ink m_ink;
};

} // namespace

DebriefRow::DebriefRow(QWidget* sign, Ink ink, const QString& headline)
    : m_line(new QHBoxLayout(this))
    , m_words(new QVBoxLayout)
    , m_spoken(headline) {
    m_line->addWidget(sign, 0, Qt::AlignTop);
    m_line->addLayout(m_words, 1);
    m_words->addWidget(new Label(headline, TextSize::Body, ink, true));
    setAccessibleName(headline);
    DebriefRow::lookChanged();
}

DebriefRow::DebriefRow(MarkShape shape, Ink ink, const QString& headline)
    : DebriefRow(new Sign(shape, ink), ink, headline) {}

DebriefRow::DebriefRow(Verdict verdict, const QString& headline)
    : DebriefRow(new DoorGlyph(verdict, sign_mm), Ink::Plain, headline) {}

void DebriefRow::addLine(const QString& words, Ink ink, TextSize size) {
    if (words.isEmpty())
        return;
    m_words->addWidget(new Label(words, size, ink));
    m_spoken += QStringLiteral(". ") + words;
    setAccessibleName(m_spoken);
}

void DebriefRow::addWarning(const std::function<QString()>& words) {
    addLine(words());
    m_words->addWidget(new EnglishLabel(englishBeneath(words)));
}

void DebriefRow::lookChanged() {
    m_line->setContentsMargins(0, sizes().gap, sizes().gap, sizes().gap);
    m_line->setSpacing(sizes().gap);
    m_words->setSpacing(int(mm(0.6)));
    Part::lookChanged();
}

void DebriefRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
}

} // namespace latchround::ui

#include "moc_debrief_row.cpp"
