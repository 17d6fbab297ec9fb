// The hatched border of a window, below its strip, and the word PRACTICE, thin, all over it. Lies
// above everything in the window, sheets too, and lets every touch through: whatever part is
// photographed, it shows.
#pragma once

#include <QPixmap>

#include "ui/look/part.h"

namespace latchround::ui {

/// A window that lies flat and low, as at 200 %: the screens need all the height there is.
bool isLow(const QWidget& window);
/// Of the border: thin in a low window.
double practiceBorderMm(const QWidget& window);

class PracticeCover : public Part {
    Q_OBJECT
public:
    explicit PracticeCover(QWidget* window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    void makeWord();
    void paintBorder(QPainter& painter) const;

    QPixmap m_word; ///< one tile of it
};

} // namespace latchround::ui
