// The stopwatch: a drawing of this kind of door, the elapsed time, the allowed band, and one key
// whose name is the next event. Stop is always one touch away. Nothing here scrolls and no key
// moves while a run goes on.
#pragma once

#include <QElapsedTimer>
#include <QTimer>

#include "ui/screens/screen.h"
#include "ui/screens/stopwatch/run_recorder.h"

class QBoxLayout;
class QPushButton;
class QStackedWidget;

namespace latchround::ui {

class BandGauge;
class DoorDrawing;
class FigureLabel;
class Lettering;
class RunResult;

class StopwatchScreen : public Screen {
    Q_OBJECT
public:
    explicit StopwatchScreen(Round& round, QWidget* parent = nullptr);

    /// A new run. Complains, and shows nothing new, where it may not be armed.
    Done begin(const QString& door, Release release, RunKind kind, const QString& group = {});
    void enter() override;

    /// In place of the drawing: a door that is seen to move by itself.
    void setScene(QWidget* scene);

signals:
    /// The stopwatch stands ready for this run; `group` as of begin().
    void ready(const QString& door, latchround::Release release, latchround::RunKind kind,
               const QString& group);
    void stopped();
    /// The run has ended, whichever way.
    void ended(const latchround::FactId& run);
    /// Back to the door.
    void done(const QString& door);
    void againAsked(const QString& door, latchround::Release release, latchround::RunKind kind);

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* makeKeys();
    QWidget* makeReadings();
    void mark(MarkKind kind, const MarkPress& press);
    void stop();
    void spoil();
    void leave();
    void endWith(RunOutcome outcome, const QString& reason);
    void refresh();
    void showKeys();
    void showBand();
    void tick();
    bool isRunning() const;
    std::optional<double> secondsSince(MarkKind kind) const;

    RunRecorder m_recorder;
    QTimer m_clock;
    DoorDrawing* m_drawing;
    FigureLabel* m_figure = nullptr;
    BandGauge* m_gauge = nullptr;
    Lettering* m_marks = nullptr;
    QStackedWidget* m_keys;
    MarkKey* m_key = nullptr;
    MarkKey* m_half_way = nullptr;
    MarkKey* m_alarm_stopped = nullptr;
    RunResult* m_result = nullptr;
    QPushButton* m_stop = nullptr;
    QPushButton* m_take_back = nullptr;
    QPushButton* m_spoiled = nullptr;
    QBoxLayout* m_readings = nullptr;
    QBoxLayout* m_lower = nullptr;
    QBoxLayout* m_lines;
    double m_expected_s = 20; ///< for the drawing only: about how long this door takes
};

} // namespace latchround::ui
