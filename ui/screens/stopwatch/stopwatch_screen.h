// The stopwatch: a drawing of this kind of door, the elapsed time, the allowed band, and one key
// whose name is the next event. Stop is always one touch away. Nothing here scrolls and no key
// moves while a run goes on.
#pragma once

#include <QTimer>

#include "ui/screens/screen.h"
#include "ui/screens/stopwatch/run_recorder.h"

class QGridLayout;
class QStackedWidget;

namespace latchround::ui {

class DoorDrawing;
class Readings;
class RunResult;
class SideKeys;

class StopwatchScreen : public Screen {
    Q_OBJECT
public:
    explicit StopwatchScreen(VesselSession& session, QWidget* parent = nullptr);

    /// A new run. Complains, and shows nothing new, where it may not be armed.
    Result<> begin(const QString& door, Release release, RunKind kind, const QString& group = {});
    void enter() override;
    /// A mark was taken and the run has not ended.
    bool isRunning() const;
    /// As its key does.
    void stop();

    /// In place of the drawing: a door that is seen to move by itself.
    void setScene(QWidget* scene);

signals:
    /// The stopwatch stands ready for this run; `group` as of begin().
    void ready(QString door, latchround::Release release, latchround::RunKind kind, QString group);
    void stopped();
    /// The run has ended, whichever way.
    void ended(latchround::FactId run);
    /// Back to the door.
    void done(QString door);
    void againAsked(QString door, latchround::Release release, latchround::RunKind kind);

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void connectKeys();
    void place();
    void placeFew(bool over);
    void mark(MarkKind kind, const MarkPress& press);
    void voidRun();
    void leave();
    void endWith(RunOutcome outcome, const Wording& reason);
    void refresh();
    void showKeys();
    /// In front, and no sheet over it has the keyboard.
    bool mayTakeKeyboard() const;
    void showBand();
    void showDrawing(const std::vector<MarkKind>& taken);
    void tick();
    bool isDouble() const;
    QWidget* picture() const;
    std::optional<double> secondsSince(MarkKind kind) const;

    RunRecorder m_recorder;
    QTimer m_clock{this};
    DoorDrawing* m_drawing;
    QWidget* m_scene = nullptr; ///< in place of the drawing; never gives way
    Readings* m_readings;
    QStackedWidget* m_keys; ///< the mark key, or what came of the run
    MarkKey* m_key;
    RunResult* m_result;
    SideKeys* m_side;
    QGridLayout* m_grid;
    std::optional<RunOutcome> m_called_off; ///< stopped or void here, saved or not
    int m_placed = -1;                      ///< for which window and moment; not yet known
    double m_expected_s = 20; ///< for the drawing only: about how long this door takes
};

} // namespace latchround::ui
