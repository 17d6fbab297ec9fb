// One row of the rule book with all that it says, to be read.
#pragma once

#include <vector>

#include <QStringList>

#include "ui/frames/card.h"
#include "ui/words/rule_words.h"

class QPushButton;

namespace latchround::ui {

class KeyGrid;
class Label;
class ReadingPane;

class RulePage : public Card {
    Q_OBJECT
public:
    explicit RulePage(QWidget* parent = nullptr);

    void show(const QString& title, const std::vector<RulePart>& parts);
    /// The only part in sight: with the key that goes back to the list.
    void setAlone(bool alone);
    /// A paper of it can be made.
    void setPrintable(bool printable);
    /// Heading and words of every line now shown, in order; for tests and for reading aloud.
    QStringList paragraphs() const { return m_paragraphs; }

signals:
    void listAsked();
    void printAsked();

protected:
    void lookChanged() override;

private:
    void fill();
    void say(const RulePart& part);

    Label* m_title;
    ReadingPane* m_words;
    KeyGrid* m_keys;
    QPushButton* m_list;
    QPushButton* m_print;
    bool m_alone = false;
    std::vector<RulePart> m_parts;
    QStringList m_paragraphs;
};

} // namespace latchround::ui
