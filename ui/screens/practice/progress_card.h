// How the people of this tablet come on with practice: one of them at a time, with the plot and
// what it adds up to.
#pragma once

#include "core/error/error.h"
#include "core/practice/debrief.h"
#include "ui/frames/card.h"

class QGridLayout;

namespace latchround::ui {

class ChoiceKeys;
class Label;
class ProgressPlot;
class ReadingPane;

class ProgressCard : public Card {
    Q_OBJECT
public:
    explicit ProgressCard(QWidget* parent = nullptr);

    /// `person`: the one to show first, where that one has practised; else who did last.
    void setAttempts(const Result<std::vector<practice::Attempt>>& attempts, const QString& person);
    const QString& person() const { return m_person; }
    /// Of the person shown.
    std::vector<practice::Attempt> attemptsShown() const;
    /// The whole of a small screen is its own; lying, the plot stands beside the words.
    void setSmall(bool small, bool upright);

signals:
    void personChosen();

protected:
    void lookChanged() override;

private:
    void place();
    void showPerson();

    bool m_small = false;
    bool m_upright = false;
    std::vector<practice::Attempt> m_attempts;
    QStringList m_people; ///< who practised last stands first
    QString m_person;
    QGridLayout* m_grid;
    Label* m_title;
    ChoiceKeys* m_keys;
    Label* m_nobody;
    ProgressPlot* m_plot;
    Label* m_sum;
    Label* m_thumb;
    ReadingPane* m_pane; ///< where a small screen has the words
};

} // namespace latchround::ui
