// The English beneath words that warn of a moving door or are said over the radio
// (ui/words/english_beneath.h): small, below them, and not there where there is none.
#pragma once

#include "ui/look/label.h"

namespace latchround::ui {

class EnglishLabel : public Label {
    Q_OBJECT
public:
    explicit EnglishLabel(const QString& english = {});

    /// Once it has its place in a layout.
    void setEnglish(const QString& english);
};

/// Words as a label; with their English close beneath where there is some.
QWidget* withEnglish(const QString& words, TextSize size, const QString& english);

} // namespace latchround::ui
