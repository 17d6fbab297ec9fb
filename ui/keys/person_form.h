// Who somebody is: a line for the name, and what this person is aboard to tap.
#pragma once

#include "core/evidence/wording.h"
#include "ui/look/part.h"

class QLineEdit;

namespace latchround::ui {

class PersonForm : public Part {
    Q_OBJECT
public:
    explicit PersonForm(QWidget* parent = nullptr);

signals:
    void given(QString name, latchround::Wording role);
};

} // namespace latchround::ui
