// Where the mark key was, once the run is over: what it gave, or why it was ended, and what comes
// next. Its keys answer only after a moment, so that a second tap of the last mark presses nothing.
#pragma once

#include "core/evidence/door_evidence.h"
#include "core/grading/graded_walkdown.h"
#include "ui/parts/part.h"

class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Lettering;
class PhrasePicker;

class RunResult : public Part {
    Q_OBJECT
public:
    explicit RunResult(QWidget* parent = nullptr);

    void show(const GradedDoor& door, const RunRecord& run);
    /// The run was called off: says what to do now, and asks why.
    void showEnded(RunOutcome outcome, const QString& stop_word);

signals:
    void reasonPicked(const QString& reason);
    void againAsked();
    void doneAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void clearLines();
    void holdKeys();

    Lettering* m_title;
    QVBoxLayout* m_lines;
    PhrasePicker* m_reasons;
    QPushButton* m_again;
    QPushButton* m_done;
};

} // namespace latchround::ui
