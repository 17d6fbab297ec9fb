// The walkdown under way, or the last one: what for, how far it has come, and the key that carries
// on with it or begins the next.
#pragma once

#include <vector>

#include "ui/parts/card.h"
#include "ui/round/round.h"

class QPushButton;
class QHBoxLayout;
class QVBoxLayout;

namespace latchround::ui {

class FigureLabel;
class Lettering;

class WalkdownCard : public Card {
    Q_OBJECT
public:
    explicit WalkdownCard(Round& round, QWidget* parent = nullptr);

    void refresh();
    /// The one main action of the screen, for the keyboard to start from.
    QPushButton* mainKey() const { return m_main; }

signals:
    void doorChosen(const QString& number);
    void beginAsked();
    void endAsked();
    void allDoorsAsked();

protected:
    void lookChanged() override;

private:
    struct Figure {
        FigureLabel* figure = nullptr;
        QColor Colours::*colour = nullptr;
    };
    void addFigure(QHBoxLayout& line, const char* name, const QString& words,
                   QColor Colours::*colour);
    void press();

    Round& m_round;
    QVBoxLayout* m_lines;
    Lettering* m_title;
    Lettering* m_aim;
    QWidget* m_figures_box;
    std::vector<Figure> m_figures;
    QPushButton* m_main;
    QPushButton* m_all;
    QPushButton* m_end;
    QString m_next; ///< the door to carry on at
};

} // namespace latchround::ui
