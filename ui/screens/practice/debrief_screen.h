// What an exercise said about the trainee, when it has ended: the score, the faults, the rows that
// differ, the people, the marks.
#pragma once

#include <map>

#include "core/practice/debrief.h"
#include "ui/screens/screen.h"

class QBoxLayout;
class QButtonGroup;
class QPushButton;

namespace latchround::ui {

class Card;
class KeyGrid;
class Label;
class ReadingPane;
class ScoreCard;

class DebriefScreen : public Screen {
    Q_OBJECT
public:
    explicit DebriefScreen(VesselSession& session, QWidget* parent = nullptr);

    using Screen::show;
    /// The session is that of the exercise: rows and citations are those of its doors.
    void show(const practice::Exercise& exercise, const practice::Debrief& debrief);
    void enter() override;

signals:
    void done();

protected:
    void arrange(bool upright) override;
    void lookChanged() override;

private:
    enum class Section { Score, Faults, Rows, People, Marks };
    void addSection(Section section, const char* name);
    void turnTo(Section section);

    void place();

    practice::Debrief m_debrief;
    Section m_section = Section::Faults;
    QBoxLayout* m_sides;
    ScoreCard* m_score;
    Card* m_card;
    KeyGrid* m_sections;
    QButtonGroup* m_group;
    std::map<Section, QPushButton*> m_keys;
    ReadingPane* m_pane;
    ReadingPane* m_score_pane; ///< where a small screen has the score
    Label* m_notice;
    QBoxLayout* m_foot;
    QPushButton* m_back; ///< to the score, on a small screen
    QPushButton* m_done;
};

} // namespace latchround::ui
