// Where the mark key was, once the run is over: what it gave, or why it was ended, and what comes
// next. Its keys answer only after a moment, so that a second tap of the last mark presses nothing.
#pragma once

#include "core/evidence/door_evidence.h"
#include "core/grading/graded_walkdown.h"
#include "ui/look/part.h"

class QPushButton;
class QTimer;
class QVBoxLayout;

namespace latchround::ui {

class EnglishLabel;
class Label;
class PhrasePicker;
struct RadioWord;

class RunResult : public Part {
    Q_OBJECT
public:
    explicit RunResult(QWidget* parent = nullptr);

    /// `own`: what this run alone says (core/grading/run_grade.h). Below it stands what all runs of
    /// the door say together, where that is something else.
    void show(const GradedDoor& door, const RunRecord& run, const std::vector<RowGrade>& own);
    /// The run was called off: says what to do now, and asks why.
    void showEnded(RunOutcome outcome, const RadioWord& stop_word);

    /// Stopped or void: shows the reasons, which want the room of everything else.
    bool isCalledOff() const { return m_called_off; }
    /// Whether there is room for the reasons, and for keys as high as a main target.
    void setRoomy(bool roomy);

signals:
    void reasonPicked(latchround::Wording reason);
    void againAsked();
    void doneAsked();
    /// The second of two marks that came too close was one touch too many.
    void takeBackAsked();
    void voidAsked();

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
    /// Two marks that one finger may have made: asks before anything else.
    void askAboutDouble(const RunRecord& run);
    void showKeys(bool doubt);
    QWidget* makeDoubt();

    Label* m_title;
    EnglishLabel* m_title_english;
    QVBoxLayout* m_lines;
    PhrasePicker* m_reasons;
    QPushButton* m_why; ///< opens the reasons where there is no room for them here
    QPushButton* m_again;
    QPushButton* m_done;
    QWidget* m_doubt = nullptr;
    Label* m_doubt_words = nullptr;
    QPushButton* m_both_right = nullptr;
    QPushButton* m_one_wrong = nullptr;
    bool m_last_is_wrong = false; ///< of the two marks asked about, the second was the last
    QTimer* m_hold;               ///< keys come after it, lest the last mark's finger hits them
    std::vector<Wording> m_phrases;
    bool m_called_off = false;
    bool m_roomy = true;
};

} // namespace latchround::ui
