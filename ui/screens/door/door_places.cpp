// Where the parts of a door's page lie.
#include <QGridLayout>
#include <QPushButton>
#include <QStackedWidget>

#include "ui/lists/verdict_list.h"
#include "ui/look/touch_style.h"
#include "ui/screens/door/bulkhead_panel.h"
#include "ui/screens/door/door_head.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/door/part_keys.h"

namespace latchround::ui {

void DoorScreen::arrange(bool upright) {
    m_parts->setPlace(PartKeys::Rows);
    m_place->setCurrentWidget(m_work);
    if (isOneAtATime())
        placeSmall(upright);
    else
        placeLarge(upright);
    sizeKeys();
    fillBar();
}

/// With gloves the keys leave an upright tablet too few of the questions.
bool DoorScreen::isOneAtATime() const {
    return isSmall() || (isUpright() && sizes().gloves);
}

/// Everything at once: neighbours, work and verdict side by side, or one above the other.
void DoorScreen::placeLarge(bool upright) {
    m_work_lines->insertWidget(0, m_head);
    m_step_line->addWidget(m_paper, 2);
    m_foot->insertWidget(1, m_actions, 8);
    m_foot->setDirection(QBoxLayout::LeftToRight);
    m_foot->setStretch(m_foot->indexOf(m_forward), 5);
    placeActions(true);
    m_columns->insertWidget(0, m_bulkhead);
    m_columns->addWidget(m_verdict_side);
    m_middle->setDirection(QBoxLayout::TopToBottom);
    m_middle->setStretch(0, 1);
    m_middle->setStretch(1, 0);
    m_columns->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_columns->setStretch(0, 22);
    m_columns->setStretch(1, upright ? 68 : 62);
    m_columns->setStretch(2, upright ? 32 : 38);
    m_bulkhead->arrange(upright);
    m_verdict->setGlyphShown(true);
    m_parts->hide();
    for (QWidget* part : {m_actions, static_cast<QWidget*>(m_bulkhead), m_verdict_side,
                          static_cast<QWidget*>(m_head)})
        part->show();
}

/// One thing at a time, with the keys that turn to the others always in sight.
void DoorScreen::placeSmall(bool upright) {
    m_notes_lines->addWidget(m_head);
    m_notes_lines->addWidget(m_actions, 1);
    placeActions(false);
    for (QWidget* part : {static_cast<QWidget*>(m_bulkhead), m_verdict_side, m_notes_page})
        m_place->addWidget(part);
    m_foot->setDirection(QBoxLayout::TopToBottom);
    m_foot->setStretch(m_foot->indexOf(m_forward), 1);
    m_parts->arrange(upright);
    m_parts->show();
    for (QWidget* part : {m_actions, static_cast<QWidget*>(m_head)})
        part->show();
    m_columns->setDirection(QBoxLayout::TopToBottom);
    m_middle->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_middle->setStretch(0, upright ? 1 : 7);
    m_middle->setStretch(1, upright ? 0 : 3);
    m_bulkhead->arrange(!upright);
    m_verdict->setGlyphShown(false); // the key beside it is the glyph
    m_place->setCurrentWidget(m_work);
}

void DoorScreen::placeActions(bool in_one_line) {
    const std::vector<QPushButton*> keys =
        in_one_line ? std::vector{m_photograph, m_note, m_could_not}
                    : std::vector{m_photograph, m_note, m_could_not, m_paper};
    const int columns = in_one_line ? 3 : 2;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        m_action_grid->removeWidget(keys[i]);
        m_action_grid->addWidget(keys[i], int(i) / columns, int(i) % columns);
    }
    // In one line each has the share that its words need.
    for (int i = 0; i < 3; ++i) {
        m_action_grid->setColumnStretch(i, in_one_line ? keys[std::size_t(i)]->sizeHint().width()
                                                       : int(i < 2));
        m_action_grid->setColumnMinimumWidth(i, i < columns ? sizes().target : 0);
    }
}

void DoorScreen::turnTo(int place) {
    if (!isOneAtATime())
        return;
    m_parts->setPlace(PartKeys::Place(place));
    m_place->setCurrentWidget(place == PartKeys::VerdictPlace ? m_verdict_side
                              : place == PartKeys::DoorsPlace ? static_cast<QWidget*>(m_bulkhead)
                              : place == PartKeys::NotesPlace ? m_notes_page
                                                              : m_work);
}

/// What is pressed once a step is a main action: 20 mm high where the window has them to give.
void DoorScreen::sizeKeys() {
    // Elsewhere one more question on each page is worth more than the last millimetres of a key.
    const int high =
        isUpright() && !sizes().gloves ? sizes().main_target : sizes().target + 2 * sizes().gap;
    for (QPushButton* key : {m_photograph, m_note, m_could_not, m_forward}) {
        key->setMinimumHeight(isOneAtATime() ? sizes().target : high);
        key->setMaximumHeight(isOneAtATime() ? QWIDGETSIZE_MAX : high);
    }
    m_paper->setSizePolicy(QSizePolicy::Ignored,
                           isOneAtATime() ? QSizePolicy::Expanding : QSizePolicy::Fixed);
    setRole(*m_paper, isOneAtATime() ? "plain" : "choice");
}

void DoorScreen::lookChanged() {
    Screen::lookChanged();
    arrange(isUpright()); // gloves may have come or gone
    const int gap = sizes().gap;
    m_columns->setSpacing(sizes().main_gap);
    for (QLayout* lines :
         std::initializer_list<QLayout*>{m_middle, m_work_lines, m_notes_lines, m_foot, m_step_line,
                                         m_action_grid, m_verdict_side->layout()})
        lines->setSpacing(gap);
    // The parts must not push the columns apart: their shares are set by arrange().
    for (QWidget* part : {static_cast<QWidget*>(m_bulkhead), m_verdict_side})
        part->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

} // namespace latchround::ui
