// A question about a door with its answers: Yes, No, n/a. The chosen key shows it by colour, shape
// and word; pressing it again takes the answer back. For rules that ask about both sides the keys
// stand twice. Where help is offered, the question is a key of its own; F1 asks for it as well.
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/fact_words.h"
#include "ui/look/part.h"

class QPushButton;
class QBoxLayout;

namespace latchround::ui {

class HelpKey;
class Label;

/// "Yes", "No", "n/a", as the keys read.
QString answerWords(Answer answer);

class ChoiceRow : public Part {
    Q_OBJECT
public:
    /// `help`: a second, quieter line; may be empty. `both_sides`: keys for side one and side two.
    explicit ChoiceRow(const QString& question, const QString& help = {}, bool both_sides = false,
                       QWidget* parent = nullptr);

    /// The question can be asked what it means: `helpAsked`.
    void offerHelp();

    /// Side None is the one set of keys of a row without sides. Setting emits nothing.
    void setAnswer(std::optional<Answer> answer, Side side = Side::None);
    std::optional<Answer> answer(Side side = Side::None) const;
    /// The letters of the keyboard answer this row: a bar beside it says so.
    void setMarked(bool marked);
    /// The key of an answer, for the screen's tab order.
    QPushButton* key(Answer answer, Side side = Side::None) const;

    /// Of the keys as they are at that width, also before the row is shown at it.
    int heightForWidth(int width) const override;

signals:
    void answered(latchround::Answer answer, latchround::Side side);
    /// The answer that stands was pressed again, later: it stands until it is set otherwise.
    void clearAsked(latchround::Side side);
    void helpAsked();

protected:
    void lookChanged() override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Keys {
        Side side = Side::None;
        QWidget* box = nullptr;
        std::vector<QPushButton*> buttons; ///< yes, no, n/a
        std::optional<Answer> answer;
    };
    void addKeys(Side side, const QString& question);
    void press(Side side, Answer answer);
    Keys* keysOf(Side side);
    const Keys* keysOf(Side side) const;
    void sizeKeys(int row_width) const;

    std::vector<Keys> m_keys;
    QBoxLayout* m_layout;
    QBoxLayout* m_words;
    HelpKey* m_help = nullptr;
    bool m_marked = false;
    QBoxLayout* m_sides;
};

} // namespace latchround::ui
