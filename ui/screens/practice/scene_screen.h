// At the door: the scene from either side, what can be looked at close by, what can be tried and
// asked. It records nothing; what was seen is answered on the door's own screen.
#pragma once

#include <map>

#include <QTimer>

#include "core/practice/stage.h"
#include "ui/screens/practice/spot.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;
class QStackedWidget;

namespace latchround::ui {

class CloseUp;
class KeyGrid;
class Lettering;
class PapersPage;
class SceneView;

class SceneScreen : public Screen {
    Q_OBJECT
public:
    SceneScreen(Round& round, practice::Stage& stage, QWidget* parent = nullptr);

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
    QWidget* makePicture();
    QWidget* makeTrials();
    void makeSpotKeys();
    void showKeysOf(const Door& door);
    void lookAt(Spot spot);
    void standBack();
    void liftPort();
    void otherSide();
    void tryPush();
    void tryOpening();
    void clearPath();
    void askPanel();
    void tell(const QString& words);
    std::int64_t now() const { return round().outside().steadyNow_ns(); }
    bool isShut() const;
    std::optional<double> reopened_m() const;

    practice::Stage& m_stage;
    QTimer m_clock;
    QString m_door;
    SceneView* m_view;
    CloseUp* m_close_up;
    PapersPage* m_papers;
    QStackedWidget* m_pictures;
    QPushButton* m_side;
    QPushButton* m_back;
    QPushButton* m_lift;
    Lettering* m_voice;
    KeyGrid* m_trials;
    QPushButton* m_push = nullptr;
    KeyGrid* m_spots;
    std::map<Spot, QPushButton*> m_spot_keys;
    Lettering* m_look_title;
    QBoxLayout* m_sides;
    QString m_told; ///< said by hand; a voice on the channel is heard over it
};

} // namespace latchround::ui
