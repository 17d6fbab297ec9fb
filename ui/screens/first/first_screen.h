// What is shown once, at the very first start: what this is, what is dangerous, whose rules stand
// above it, how large it is to be, and three ways to begin. On a small screen its parts come one at
// a time.
#pragma once

#include <array>

#include "ui/screens/screen.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Card;
class ChoiceKeys;
class Label;

class FirstScreen : public Screen {
    Q_OBJECT
public:
    explicit FirstScreen(VesselSession& session, QWidget* parent = nullptr);

    void enter() override;

signals:
    /// Home, of the vessel that is open.
    void lookRoundAsked();
    void practiceAsked();
    void registerAsked();
    void scaleChosen(double scale);
    void glovesChosen(bool gloves);

protected:
    void arrange(bool upright) override;
    void lookChanged() override;

private:
    /// `english`: beneath the last paragraph; may be empty.
    Card* makeWords(const QString& title, const QStringList& paragraphs,
                    const QString& english = {});
    Card* makeSizes();
    Card* makeBeginning();
    void turn(int by);
    void showLook();

    int m_at = 0; ///< which part a small screen shows
    QBoxLayout* m_lines;
    QBoxLayout* m_sides;
    std::array<Card*, 4> m_parts{}; ///< danger, rules, sizes, beginning
    std::vector<Label*> m_explained;
    QWidget* m_gives_way = nullptr; ///< words for which there may be no room beside the English
    QWidget* m_turner;
    QPushButton* m_before;
    QPushButton* m_after;
    Label* m_where;
    ChoiceKeys* m_scale = nullptr;
    ChoiceKeys* m_gloves = nullptr;
    QPushButton* m_look_round = nullptr;
    QPushButton* m_practise = nullptr;
    QPushButton* m_take_in = nullptr;
};

} // namespace latchround::ui
