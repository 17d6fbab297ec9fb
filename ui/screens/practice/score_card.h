// How an exercise went in figures: the score, passed or not, and what it is made of.
#pragma once

#include "core/practice/debrief.h"
#include "ui/frames/card.h"

class QBoxLayout;
class QVBoxLayout;

namespace latchround::ui {

class FigureLabel;
class Lettering;

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
    Lettering* m_title;
    FigureLabel* m_percent;
    Lettering* m_passed;
    Lettering* m_rows;
    Lettering* m_faults;
    Lettering* m_people;
    Lettering* m_cautions;
    Lettering* m_how;
};

} // namespace latchround::ui
