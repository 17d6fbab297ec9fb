// The thumb drill: what it is for, twenty trials with the stopwatch's own key, and what they say.
// Nothing is recorded until the person says that the figures may be used.
#pragma once

#include <memory>

#include <QTimer>

#include "ui/screens/drill/drill_course.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;
class QStackedWidget;

namespace latchround::ui {

class DoorDrawing;
class DrillResult;
class Label;
class MarkKey;
class PracticeOffer;
struct MarkPress;

class DrillScreen : public Screen {
    Q_OBJECT
public:
    /// `pace`: of the trials; 1 is that of a person.
    explicit DrillScreen(VesselSession& session, double pace = 1, QWidget* parent = nullptr);

    void enter() override;

signals:
    /// Kept or left.
    void done();

protected:
    void arrange(bool upright) override;
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    QWidget* makeIntroduction();
    QWidget* makeTrial();
    void begin(bool sound);
    void beginTrial();
    void tick();
    void mark(const MarkPress& press);
    void finishTrial();
    void showAwaited();
    void keep();
    double secondsNow() const;

    double m_pace;
    QStackedWidget* m_pages;
    QWidget* m_introduction = nullptr;
    QWidget* m_trial = nullptr;
    DrillResult* m_result;
    QBoxLayout* m_sides = nullptr;
    Label* m_sound_words = nullptr;
    PracticeOffer* m_offer = nullptr;
    QPushButton* m_try = nullptr;
    QPushButton* m_begin = nullptr;
    QPushButton* m_begin_silent = nullptr;
    DoorDrawing* m_drawing = nullptr;
    Label* m_count = nullptr;
    Label* m_said = nullptr;
    MarkKey* m_key = nullptr;
    std::unique_ptr<DrillCourse> m_course;
    QTimer m_frames{this};
    QTimer m_pause{this};        ///< between two trials
    std::int64_t m_began_ns = 0; ///< of the trial, on the steady clock
    bool m_sound = false;
};

} // namespace latchround::ui
