#include "ui/look/label.h"

#include <QEvent>

#include "ui/ink/verdict_colour.h"

namespace latchround::ui {
namespace {

QColor colourOf(Ink ink, const Colours& c) {
    switch (ink) {
    case Ink::Plain:
        return c.ink;
    case Ink::Muted:
        return c.muted;
    case Ink::Accent:
        return c.accent;
    case Ink::Bad:
        return c.bad;
    case Ink::Good:
        return c.good;
    case Ink::Again:
        return c.again;
    case Ink::Bar:
        return c.bar_ink;
    case Ink::BarMuted:
        return c.bar_muted;
    }
    return c.ink;
}

} // namespace

Label::Label(const QString& text, TextSize size, Ink ink, bool bold, QWidget* parent)
    : QLabel(text, parent)
    , m_size(size)
    , m_ink(ink)
    , m_bold(bold) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText); // words of a register or a person are never markup
    setTextInteractionFlags(Qt::NoTextInteraction);
    dress();
}

void Label::setInk(Ink ink) {
    m_ink = ink;
    m_verdict.reset();
    dress();
}

void Label::setVerdictInk(Verdict verdict) {
    m_verdict = verdict;
    dress();
}

void Label::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::ParentChange)
        dress();
}

void Label::showEvent(QShowEvent* event) {
    dress(); // a parent's look may have come after the label was made
    QLabel::showEvent(event);
}

void Label::dress() {
    if (m_dressing)
        return;
    m_dressing = true;
    const Appearance& look = lookOf(this);
    QPalette inks = palette();
    const QColor colour =
        m_verdict ? colourOf(*m_verdict, look.colours) : colourOf(m_ink, look.colours);
    inks.setColor(QPalette::WindowText, colour);
    setPalette(inks);
    setFont(textFont(m_size, look.sizes, m_bold));
    m_dressing = false;
}

} // namespace latchround::ui

#include "moc_label.cpp"
