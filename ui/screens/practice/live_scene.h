// What stands on the stopwatch in place of its drawing while practising: the door as it is seen,
// its leaf close by, and one large key that works the release. The door then moves by itself, and
// its alarm is seen and heard.
#pragma once

#include <QTimer>

#include "core/practice/stage.h"
#include "ui/look/part.h"
#include "ui/session/vessel_session.h"

class QPushButton;
class QVBoxLayout;
class QHBoxLayout;

namespace latchround::ui {

class EdgeView;
class FigureLabel;
class Label;
class Screen;
class SceneView;

class LiveScene : public Part {
    Q_OBJECT
public:
    LiveScene(VesselSession& session, practice::Stage& stage, QWidget* parent = nullptr);

    /// The stopwatch stands ready for this run: the door is open and held.
    void setReady(const QString& door, Release release, RunKind kind, const QString& group = {});
    void stop();
    void finish(const FactId& run);
    /// Shows the door as it is now. A timer calls it while the scene is on the screen.
    void refresh();
    /// The stopwatch's running time: shown here where a low window has no room for it elsewhere.
    void setElapsed(const FigureLabel* elapsed) { m_stopwatch = elapsed; }

    /// One size whatever keys are shown: no key of the stopwatch moves while a run goes on.
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return false; }

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void work();
    void showKeys(const practice::DoorView& view);
    void showElapsed();
    Screen* screen() const;
    void sound(bool alarm);

    VesselSession& m_session;
    practice::Stage& m_stage;
    QTimer m_clock{this};
    QString m_door;
    Release m_release = Release::LetGo;
    RunKind m_kind = RunKind::Closing;
    bool m_is_ready = false; ///< and not yet released
    bool m_stopped = false;  ///< the last run was; said until the next one stands ready
    bool m_sounds = false;
    SceneView* m_view;
    EdgeView* m_edge;
    FigureLabel* m_elapsed;
    const FigureLabel* m_stopwatch = nullptr;
    QHBoxLayout* m_lines;
    QWidget* m_column;
    QVBoxLayout* m_keys;
    QPushButton* m_work;
    QPushButton* m_clear;
    Label* m_alarm; ///< for whoever hears none
    Label* m_voice;
};

} // namespace latchround::ui
