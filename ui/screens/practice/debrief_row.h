// One thing of the debrief to be read: a sign, a headline, and lines below it.
#pragma once

#include <functional>

#include "core/grading/verdict.h"
#include "ui/look/button_drawing.h"
#include "ui/look/label.h"
#include "ui/look/part.h"

class QHBoxLayout;
class QVBoxLayout;

namespace latchround::ui {

class DebriefRow : public Part {
    Q_OBJECT
public:
    /// The sign is a shape in this ink.
    DebriefRow(MarkShape shape, Ink ink, const QString& headline);
    /// The sign is a grade.
    DebriefRow(Verdict verdict, const QString& headline);

    void addLine(const QString& words, Ink ink = Ink::Plain, TextSize size = TextSize::Body);
    /// A line by which people keep clear, with its English beneath (ui/words/english_beneath.h).
    void addWarning(const std::function<QString()>& words);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    DebriefRow(QWidget* sign, Ink ink, const QString& headline);

    QHBoxLayout* m_line;
    QVBoxLayout* m_words;
    QString m_spoken;
};

} // namespace latchround::ui
