// The answer to "why" for one row: the requirement in plain words, limit, what was measured, the
// text it comes from, why it is asked and what would settle it. Where the row is left to judgement,
// the two keys to decide it.
#pragma once

#include "core/grading/grade.h"
#include "ui/look/part.h"

class QFormLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class DoorGlyph;
class Label;
class PhrasePicker;
class ReadingPane;

class WhyPanel : public Part {
    Q_OBJECT
public:
    explicit WhyPanel(QWidget* parent = nullptr);

    /// Everything shown is copied out of `row`. `asked_because`: why it is asked (askedBecause).
    /// `inclined`: what arithmetic says of an inclination the text asks for; may be empty.
    void setRow(const RowGrade& row, const QString& asked_because, const QString& inclined = {});
    /// Offers no decision: nothing is recorded there any more.
    void leaveUndecided();

    /// Heading and words of every paragraph now shown, in order; for tests and for reading aloud.
    QStringList paragraphs() const;
    QSize sizeHint() const override;

signals:
    void decided(QString requirement, bool satisfactory, latchround::Wording reason);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    void say(const QString& heading, const QString& words);
    void decide(bool satisfactory);
    QWidget* makeDecision();

    QString m_requirement;
    DoorGlyph* m_glyph;
    Label* m_title;
    Label* m_verdict;
    ReadingPane* m_scroll;
    QWidget* m_text;
    QVBoxLayout* m_lines;
    QWidget* m_decision;
    PhrasePicker* m_phrases = nullptr;
    QPushButton* m_good = nullptr;
    QPushButton* m_bad = nullptr;
    QStringList m_paragraphs;
};

} // namespace latchround::ui
