// How the people of this tablet come on with practice: one of them at a time, with the plot and
// what it adds up to.
#pragma once

#include "core/complaint.h"
#include "core/practice/debrief.h"
#include "ui/parts/card.h"

class QVBoxLayout;

namespace latchround::ui {

class ChoiceKeys;
class Lettering;
class ProgressPlot;

class ProgressCard : public Card {
    Q_OBJECT
public:
    explicit ProgressCard(QWidget* parent = nullptr);

    /// `person`: the one to show first, where that one has practised; else who did last.
    void setAttempts(const Result<std::vector<practice::Attempt>>& attempts, const QString& person);
    const QString& person() const { return m_person; }
    /// Of the person shown.
    std::vector<practice::Attempt> attemptsShown() const;

signals:
    void personChosen();

protected:
    void lookChanged() override;

private:
    void showPerson();

    std::vector<practice::Attempt> m_attempts;
    QStringList m_people; ///< who practised last stands first
    QString m_person;
    QVBoxLayout* m_lines;
    ChoiceKeys* m_keys;
    Lettering* m_nobody;
    ProgressPlot* m_plot;
    Lettering* m_sum;
    Lettering* m_thumb;
};

} // namespace latchround::ui
