// Where the parts of the stopwatch lie.
#include <utility>

#include <QGridLayout>
#include <QPushButton>
#include <QStackedWidget>

#include "ui/screens/stopwatch/readings.h"
#include "ui/screens/stopwatch/run_result.h"
#include "ui/screens/stopwatch/side_keys.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/ship/door_drawing.h"

namespace latchround::ui {

QWidget* StopwatchScreen::picture() const {
    return m_scene ? m_scene : m_drawing;
}

void StopwatchScreen::arrange(bool) {
    place();
}

/// Where the parts lie, for this window and this moment. Either way up the mark key gets a third of
/// the screen, and nothing moves while a run goes on.
void StopwatchScreen::place() {
    const bool small = isSmall();
    const bool upright = isUpright();
    const bool over = m_keys->currentWidget() == m_result;
    const bool called_off = over && m_result->isCalledOff();
    const int wanted = (small ? 1 : 0) + (upright ? 2 : 0) + (over ? 4 : 0) + (called_off ? 8 : 0);
    if (std::exchange(m_placed, wanted) == wanted)
        return;
    for (QWidget* part : {picture(), static_cast<QWidget*>(m_readings),
                          static_cast<QWidget*>(m_keys), static_cast<QWidget*>(m_side)})
        m_grid->removeWidget(part);
    for (int i = 0; i < 4; ++i) {
        m_grid->setRowStretch(i, 0);
        m_grid->setRowMinimumHeight(i, 0);
        m_grid->setColumnStretch(i, 0);
    }
    m_side->setSmall(small);
    m_side->setOver(over);
    m_grid->setSpacing(small ? sizes().gap : sizes().main_gap);
    picture()->setVisible(m_scene ? upright || !(small && over) : !(small || called_off));
    // Lying, a small window has no height for scene and readings: the scene shows the time itself.
    const bool crowded = small && m_scene && !upright;
    if (crowded)
        m_grid->setSpacing(sizes().gap / 2);
    m_readings->setVisible(!called_off && !(small && over) && !crowded);
    // A scene is as wide as the window; a drawing shares it with the readings.
    m_readings->arrange(small || upright || !m_scene, small, small && m_scene);
    m_readings->setSizePolicy(QSizePolicy::Ignored,
                              m_scene ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    m_result->setRoomy(!small);
    m_side->setVisible(!called_off);
    if (small || called_off)
        return placeFew(over);
    // Three columns: above, drawing and readings meet in the middle; below, the mark key takes two.
    const bool across = upright || m_scene;
    m_grid->addWidget(picture(), 0, 0, 1, across ? 3 : 1);
    m_grid->addWidget(m_readings, across ? 1 : 0, across ? 0 : 1, 1, across ? 3 : 2);
    m_grid->addWidget(m_keys, 2, 0, 1, upright ? 3 : 2);
    m_grid->addWidget(m_side, upright ? 3 : 2, upright ? 0 : 2, 1, upright ? 3 : 1);
    m_grid->setColumnStretch(0, 9);
    m_grid->setColumnStretch(1, 4);
    m_grid->setColumnStretch(2, 5);
    m_grid->setRowStretch(0, upright ? 10 : m_scene ? 9 : 14);
    m_grid->setRowStretch(1, upright ? 16 : m_scene ? 5 : 0);
    m_grid->setRowStretch(2, upright ? 30 : m_scene ? 17 : 20);
    m_grid->setRowStretch(3, upright ? 18 : 0);
}

/// The drawing gives way. A run that is over needs neither its readings nor stop, and one that was
/// called off nothing but its reason.
void StopwatchScreen::placeFew(bool over) {
    const bool upright = isUpright();
    if (m_scene)
        m_grid->addWidget(m_scene, 0, 0, 1, 2);
    if (over) {
        m_grid->addWidget(m_keys, 1, 0, 1, 2);
        m_grid->addWidget(m_side, 2, 0, 1, 2);
        m_grid->setRowStretch(1, 1);
        m_grid->setRowMinimumHeight(2, m_side->isHidden() ? 0 : sizes().target);
    } else if (upright) {
        m_grid->addWidget(m_readings, 1, 0, 1, 2);
        m_grid->addWidget(m_keys, 2, 0, 1, 2);
        m_grid->addWidget(m_side, 3, 0, 1, 2);
        m_grid->setRowStretch(1, 4);
        m_grid->setRowStretch(2, 9);
        m_grid->setRowStretch(3, 6);
    } else {
        m_grid->addWidget(m_keys, 1, 0, 2, 1);
        m_grid->addWidget(m_readings, 1, 1);
        m_grid->addWidget(m_side, 2, 1);
        m_grid->setRowStretch(1, m_readings->isHidden() ? 0 : 1);
        m_grid->setRowStretch(2, 1);
        m_grid->setColumnStretch(0, 4);
        m_grid->setColumnStretch(1, 5);
    }
}

} // namespace latchround::ui
