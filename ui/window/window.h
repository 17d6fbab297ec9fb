// A window of the program: the screens of one vessel, one at a time, and the banner that says when
// something is not saved. While practising a window of its own shows the same screens in a frame.
#pragma once

#include <QWidget>

#include "core/planning/walk_order.h"
#include "ui/session/vessel_session.h"

class QShortcut;
class QStackedWidget;
class QTimer;

namespace latchround::practice {
class Stage;
}

namespace latchround::ui {

class CautionScreen;
class CutShort;
class DebriefScreen;
class DoorScreen;
class DrillScreen;
class HomeScreen;
class Look;
class NotSavedBanner;
class PlanScreen;
class PracticeFrame;
class PracticeScreen;
class ReviewScreen;
class RulesScreen;
class SceneScreen;
class Screen;
class Sheet;
class StopwatchScreen;

class Window : public QWidget {
    Q_OBJECT
public:
    /// `stage`: the doors of an exercise where the vessel is not there; must outlive the window.
    Window(VesselSession& session, Look& look, practice::Stage* stage = nullptr);

    /// A sentence to show at the start: another catalogue in use, a register opened read-only.
    void showMessage(const QString& title, const QString& words);

    DoorScreen& doorScreen() const { return *m_door; }
    /// The page of the very first start; says so in the settings, so that it comes once.
    void showFirst();
    /// The exercises, and how people come on.
    void showPractice();

signals:
    /// The language or the units were chosen: every word has to be written anew.
    void madeAnewAsked();
    /// Of an exercise: a run is over, and the stage knows it.
    void runFinished();
    /// Of an exercise: back to the vessel that was on the screen before.
    void practiceLeft();

protected:
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    /// What nobody took: the screen in front is asked, wherever the keyboard has gone. Escape stops
    /// a run also from the banner, or when no widget has the keyboard.
    void keyPressEvent(QKeyEvent* event) override;
    /// Tab goes as the screen is read.
    bool focusNextPrevChild(bool next) override;

private:
    void addScreen(Screen* screen);
    void turnTo(Screen* screen);
    void showHome();
    void showReview(const FactId& item = {});
    /// `door`: its number, to come back to it; empty: of the vessel. `row`: its id, or empty.
    void showRules(const QString& door = {}, const QString& row = {});
    void leaveRules();
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
    void leaveFlagRules();
    void showLanguages();
    void makeAnew();
    void nextLight();
    void leaveEndedWalkdown();
    // What closing would lose (window_closing.cpp).
    QString unfinishedWords() const;
    void askBeforeClosing(const QString& what);
    void undo();
    /// Null where none lies over the screen.
    const Sheet* openSheet() const;
    void tellTap(const QString& undone = {});
    void tellTime();

    // In the window of an exercise (window_practice.cpp).
    void addPractice(QWidget* inside);
    void showScene();
    void askToEnd();
    void debrief();
    void offerPracticeKeys();

    VesselSession& m_session;
    Look& m_look;
    practice::Stage* m_stage;
    QStackedWidget* m_screens;
    NotSavedBanner* m_banner;
    HomeScreen* m_home;
    PlanScreen* m_plan;
    ReviewScreen* m_review;
    DoorScreen* m_door;
    CautionScreen* m_caution;
    DrillScreen* m_drill;
    StopwatchScreen* m_stopwatch;
    PracticeScreen* m_practice;
    RulesScreen* m_rules;
    CutShort* m_cut_short;
    bool m_closes = false; ///< it was asked, and answered
    QTimer* m_wall;
    QShortcut* m_undo_keys;
    // In the window of an exercise only.
    PracticeFrame* m_frame = nullptr;
    SceneScreen* m_scene = nullptr;
    DebriefScreen* m_debrief = nullptr;
    Screen* m_before_scene = nullptr;
};

} // namespace latchround::ui
