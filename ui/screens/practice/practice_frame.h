// What stands round every screen while practising, so that none of it can be taken for a real
// record: a strip that says so, a hatched border, and the word itself, thin, over all that is
// shown. It must fill the window.
#pragma once

#include "ui/parts/part.h"

class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class PracticeFrame : public Part {
    Q_OBJECT
public:
    /// Takes `inside` and lays it within the border, below the strip.
    explicit PracticeFrame(QWidget* inside, QWidget* parent = nullptr);

    /// Whether there is a door to stand at.
    void setSceneOffered(bool offered);
    /// Once the exercise has ended there is nothing left to end.
    void setEndOffered(bool offered);

signals:
    void sceneAsked();
    void endAsked();

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void sizeStrip();

    QVBoxLayout* m_lines;
    QWidget* m_strip;
    QHBoxLayout* m_strip_line;
    QWidget* m_words;
    QPushButton* m_scene;
    QPushButton* m_end;
    QWidget* m_over = nullptr; ///< border and word, over everything else in the window
};

} // namespace latchround::ui
