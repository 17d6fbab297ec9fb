// Something the person is told: a sentence, or every fault of something that was refused.
#pragma once

#include <QString>

#include "core/error/error.h"

class QWidget;

namespace latchround::ui {

/// Over the window of `over`.
void showMessage(QWidget* over, const QString& title, const QString& words);

/// Each fault a paragraph, on a sheet that is moved by finger and arrow keys where they are many.
void showErrors(QWidget* over, const QString& title, const Errors& faults);

} // namespace latchround::ui
