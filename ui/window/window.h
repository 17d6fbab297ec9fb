// The program's one window: the screens, one at a time, and the banner that says when something is
// not saved.
#pragma once

#include <QWidget>

#include "core/planning/walk_order.h"
#include "ui/round/round.h"

class QStackedWidget;
class QTimer;

namespace latchround::ui {

class CautionScreen;
class CutShort;
class DoorScreen;
class DrillScreen;
class HomeScreen;
class Look;
class NotSavedBanner;
class PlanScreen;
class ReviewScreen;
class Screen;
class StopwatchScreen;

class Window : public QWidget {
    Q_OBJECT
public:
    Window(Round& round, Look& look);

    /// A sentence to show at the start: another catalogue in use, a register opened read-only.
    void tell(const QString& title, const QString& words);

    DoorScreen& doorScreen() const { return *m_door; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void turnTo(Screen* screen);
    void showHome();
    void showReview(const FactId& item = {});
    void plan(Purpose purpose, ScopeKind scope);
    void showDoor(const QString& number);
    void time(const QString& door, Release release, RunKind kind);
    void arm(const QString& door, Release release, RunKind kind, const QString& group = {});
    void printReport(const QString& walkdown);
    void showSettings();
    void showDecision();
    void startDrill();
    QString thumbWords() const;
    void takeInFlagRules();
    void nextLight();
    void tellTime();

    Round& m_round;
    Look& m_look;
    QStackedWidget* m_screens;
    NotSavedBanner* m_banner;
    HomeScreen* m_home;
    PlanScreen* m_plan;
    ReviewScreen* m_review;
    DoorScreen* m_door;
    CautionScreen* m_caution;
    DrillScreen* m_drill;
    StopwatchScreen* m_stopwatch;
    CutShort* m_cut_short;
    QTimer* m_wall;
};

} // namespace latchround::ui
