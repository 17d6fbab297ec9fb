// Phrases to tap instead of typing, and a line for own words where no phrase fits.
#pragma once

#include <vector>

#include <QStringList>

#include "core/evidence/wording.h"
#include "ui/look/part.h"

class QLineEdit;
class QPushButton;

namespace latchround::ui {

class FlowGrid;

class PhrasePicker : public Part {
    Q_OBJECT
public:
    /// What a key says, and what goes on record where it is picked.
    struct Choice {
        QString shown;
        Wording recorded;
        QString english{}; ///< stands beneath; empty for none
    };

    /// Names and other texts that are no phrases: they stand for themselves. `own_words`: offer a
    /// line to write in.
    explicit PhrasePicker(const QStringList& texts = {}, bool own_words = true,
                          QWidget* parent = nullptr);

    /// Shown in the language of the screen.
    void setPhrases(const std::vector<Wording>& phrases);
    void setChoices(std::vector<Choice> choices);
    /// What was picked last; empty until then.
    const Wording& chosen() const { return m_chosen; }
    void clear();

signals:
    /// As it stands on the key, or was written; and as it goes on record.
    void picked(QString shown, latchround::Wording recorded);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void arrange();
    void pick(const Choice& choice);

    Wording m_chosen;
    FlowGrid* m_grid;
    QLineEdit* m_own;
    QPushButton* m_use;
    std::vector<QPushButton*> m_keys;
};

} // namespace latchround::ui
