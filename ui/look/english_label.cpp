#include "ui/look/english_label.h"

#include <QVBoxLayout>

#include "ui/look/part.h"

namespace latchround::ui {

EnglishLabel::EnglishLabel(const QString& english)
    : Label(english, TextSize::Small, Ink::Muted) {
    if (english.isEmpty())
        hide();
}

void EnglishLabel::setEnglish(const QString& english) {
    setText(english);
    setVisible(!english.isEmpty());
}

QWidget* withEnglish(const QString& words, TextSize size, const QString& english) {
    auto* label = new Label(words, size);
    if (english.isEmpty())
        return label;
    auto* both = new Part; // stays whole where a sheet turns pages
    auto* lines = new QVBoxLayout(both);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(2);
    lines->addWidget(label);
    lines->addWidget(new EnglishLabel(english));
    return both;
}

} // namespace latchround::ui

#include "moc_english_label.cpp"
