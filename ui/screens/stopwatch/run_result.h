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

    /// Stopped or spoiled: shows the reasons, which want the room of everything else.
    bool isCalledOff() const { return m_called_off; }
    /// Whether there is room for the reasons, and for keys as high as a main target.
    void setRoomy(bool roomy);

signals:
    void reasonPicked(const QString& reason);
    void againAsked();
    void doneAsked();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void showTitle();
    void askWhy();
    void showReasons();
    void clearLines();
    void holdKeys();

    Lettering* m_title;
    QVBoxLayout* m_lines;
    PhrasePicker* m_reasons;
    QPushButton* m_why; ///< opens the reasons where there is no room for them here
    QPushButton* m_again;
    QPushButton* m_done;
    QStringList m_phrases;
    bool m_called_off = false;
    bool m_roomy = true;
};

} // namespace latchround::ui
