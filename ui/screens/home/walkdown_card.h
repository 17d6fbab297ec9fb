// The walkdown under way, or the last one: what for, how far it has come, and the key that carries
// on with it or begins the next.
#pragma once

#include <vector>

#include "ui/frames/card.h"
#include "ui/session/vessel_session.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class FigureLabel;
class Label;

class WalkdownCard : public Card {
    Q_OBJECT
public:
    explicit WalkdownCard(VesselSession& session, QWidget* parent = nullptr);

    void refresh();
    /// The one main action of the screen, for the keyboard to start from.
    QPushButton* mainKey() const { return m_main; }
    /// It takes what height there is, from what its words need.
    bool hasHeightForWidth() const override { return false; }
    QSize minimumSizeHint() const override;

signals:
    void doorChosen(QString number);
    void beginAsked();
    /// The register has no doors.
    void registerAsked();
    void endAsked();
    void allDoorsAsked();

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Figure {
        FigureLabel* figure = nullptr;
        QColor Colours::*colour = nullptr;
    };
    void addFigure(QHBoxLayout& line, const char* name, const QString& words,
                   QColor Colours::*colour);
    void press();
    void showAim();

    VesselSession& m_session;
    QBoxLayout* m_sides; ///< what is said, and the keys
    QVBoxLayout* m_said;
    QVBoxLayout* m_keys;
    Label* m_title;
    Label* m_aim;
    QWidget* m_figures_box;
    std::vector<Figure> m_figures;
    QPushButton* m_main;
    QWidget* m_walk_keys; ///< of a walkdown; without one the main key has their room
    QPushButton* m_all;
    QPushButton* m_end;
    QString m_next; ///< the door to carry on at
    bool m_no_doors = false;
};

} // namespace latchround::ui
