// A line of a door's page that opens something: what it is, what is known so far, and one key.
// Where help is offered, the words are a key of their own; F1 asks for it as well.
#pragma once

#include <optional>

#include "core/grading/verdict.h"
#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class EnglishLabel;
class HelpKey;
class Label;

class ValueRow : public Part {
    Q_OBJECT
public:
    explicit ValueRow(const QString& words, const QString& key, QWidget* parent = nullptr);

    /// The quieter second line: help, or what was recorded.
    void setDetail(const QString& detail);
    void setKey(const QString& key);
    /// Stands small beneath the words: their English (ui/words/english_beneath.h). On a narrow page
    /// both have the width, and the key lies below them.
    void setEnglish(const QString& english);
    /// The words can be asked what they mean: `helpAsked`.
    void offerHelp();
    QString detail() const;
    QPushButton* key() const { return m_key; }

signals:
    void asked();
    void helpAsked();

protected:
    void lookChanged() override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void placeKey();

    QBoxLayout* m_line;
    QBoxLayout* m_lines;
    HelpKey* m_help = nullptr;
    Label* m_words;
    EnglishLabel* m_english;
    Label* m_detail;
    QPushButton* m_key;
};

} // namespace latchround::ui
