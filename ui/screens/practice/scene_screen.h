// At the door: the scene from either side, what can be looked at close by, what can be tried and
// asked. It records nothing; what was seen is answered on the door's own screen. A small screen
// shows one of it at a time.
#pragma once

#include <map>

#include <QTimer>

#include "core/practice/stage.h"
#include "ui/screens/practice/spot.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QGridLayout;
class QPushButton;
class QStackedWidget;

namespace latchround::ui {

class CloseUp;
class KeyGrid;
class Label;
class PageTabs;
class PapersPage;
class SceneView;
class SpotPages;

class SceneScreen : public Screen {
    Q_OBJECT
public:
    SceneScreen(VesselSession& session, practice::Stage& stage, QWidget* parent = nullptr);

    void setDoor(const QString& door);
    void enter() override;
    /// Shows the door as it is now. A timer calls it while the screen is shown.
    void refresh();

protected:
    void arrange(bool upright) override;
    void lookChanged() override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Shown { Picture, Spots, Trials };
    void makePicture();
    void makeFoot();
    void makeTrials();
    void makeSpotKeys();
    void place();
    void placeSmall();
    void showParts();
    void turnTo(Shown part);
    void showKeysOf(const Door& door);
    void lookAt(Spot spot);
    void standBack();
    bool isStandingBack() const;
    void liftPort();
    void otherSide();
    void tryPush();
    void tryOpening();
    void clearPath();
    void askPanel();
    void tell(const QString& words);
    std::int64_t now() const { return session().clock().steadyNow_ns(); }
    bool isShut() const;
    std::optional<double> reopened_m() const;

    practice::Stage& m_stage;
    QTimer m_clock{this};
    QString m_door;
    Shown m_shown = Shown::Picture; ///< of a small screen
    PageTabs* m_tabs;
    SceneView* m_view;
    CloseUp* m_close_up;
    PapersPage* m_papers;
    QStackedWidget* m_pictures;
    QWidget* m_foot; ///< the keys that belong to the picture
    QBoxLayout* m_foot_line;
    QPushButton* m_side;
    QPushButton* m_back;
    QPushButton* m_lift;
    Label* m_voice;
    KeyGrid* m_trials;
    QPushButton* m_push = nullptr;
    QWidget* m_list; ///< of what can be looked at
    Label* m_look_title;
    SpotPages* m_spots;
    std::map<Spot, QPushButton*> m_spot_keys;
    QGridLayout* m_grid;
    QString m_told; ///< said by hand; a voice on the channel is heard over it
};

} // namespace latchround::ui
