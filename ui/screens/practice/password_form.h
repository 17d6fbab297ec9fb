// Asks for the word with which an instructor sealed an exercise.
#pragma once

#include "ui/look/part.h"

class QLineEdit;

namespace latchround::ui {

class PasswordForm : public Part {
    Q_OBJECT
public:
    explicit PasswordForm(QWidget* parent = nullptr);

signals:
    void given(QString word);

private:
    QLineEdit* m_word;
};

} // namespace latchround::ui
