// One walkdown of the home screen's list: when and what for, how it came out, and the key that
// prints its report.
#pragma once

#include "ui/look/part.h"
#include "ui/session/past_walkdown.h"

class QHBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;

class ReportRow : public Part {
    Q_OBJECT
public:
    explicit ReportRow(const PastWalkdown& walkdown, QWidget* parent = nullptr);

    void setWalkdown(const PastWalkdown& walkdown);

signals:
    void reportAsked();

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    QHBoxLayout* m_line;
    Label* m_title;
    Label* m_detail;
    QPushButton* m_key;
};

} // namespace latchround::ui
