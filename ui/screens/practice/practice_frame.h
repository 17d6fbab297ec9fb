// What stands round every screen while practising, so that none of it can be taken for a real
// record: a strip that says so, a hatched border, and the word itself, thin, over all that is
// shown. It must fill the window. A low window has no room for a strip: what stands on it stands in
// the bar of the screen.
#pragma once

#include <QPointer>

#include "ui/look/part.h"

class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class TopBar;

class PracticeFrame : public Part {
    Q_OBJECT
public:
    /// Takes `inside` and lays it within the border, below the strip.
    explicit PracticeFrame(QWidget* inside, QWidget* parent = nullptr);

    /// Whether there is a door to stand at.
    void setSceneOffered(bool offered);
    /// Once the exercise has ended there is nothing left to end.
    void setEndOffered(bool offered);
    /// That of the screen now shown.
    void setBar(TopBar& bar);

signals:
    void sceneAsked();
    void endAsked();

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void place();
    void leaveBar();
    void showKeys();
    void sizeStrip();

    QVBoxLayout* m_lines;
    QWidget* m_strip;
    QHBoxLayout* m_strip_line;
    QWidget* m_words;
    QPushButton* m_scene;
    QPushButton* m_end;
    bool m_scene_offered = true;
    bool m_end_offered = true;
    QPointer<TopBar> m_bar;
    QPointer<TopBar> m_dressed; ///< the bar that has the keys now; none: they are on the strip
    QWidget* m_over = nullptr;  ///< border and word, over everything else in the window
};

} // namespace latchround::ui
