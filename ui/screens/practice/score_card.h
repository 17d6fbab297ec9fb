// How an exercise went in figures: the score, passed or not, and what it is made of.
#pragma once

#include "core/practice/debrief.h"
#include "ui/frames/card.h"

class QBoxLayout;
class QVBoxLayout;

namespace latchround::ui {

class FigureLabel;
class Label;

class ScoreCard : public Card {
    Q_OBJECT
public:
    explicit ScoreCard(QWidget* parent = nullptr);

    void show(const practice::Exercise& exercise, const practice::Debrief& debrief);
    void setUpright(bool upright);
    /// Without the panel, where it lies on another card.
    void setBare(bool bare);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    bool m_bare = false;
    QBoxLayout* m_sides;
    QVBoxLayout* m_score_lines;
    QVBoxLayout* m_parts_lines;
    Label* m_title;
    FigureLabel* m_percent;
    Label* m_passed;
    Label* m_rows;
    Label* m_faults;
    Label* m_people;
    Label* m_cautions;
    Label* m_how;
};

} // namespace latchround::ui
