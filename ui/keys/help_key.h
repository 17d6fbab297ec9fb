// The words of a row as a key that asks for help: a question mark in a ring stands before them, and
// the whole of it can be touched. The words stay labels of the row's own.
#pragma once

#include <QAbstractButton>

#include "ui/look/look.h"

class QBoxLayout;
class QHBoxLayout;

namespace latchround::ui {

class HelpKey : public QAbstractButton {
    Q_OBJECT
public:
    /// Takes `words`, which was the first thing of `line`, and stands in its place. `asked`: what
    /// the row asks, for those who hear the screen.
    HelpKey(QBoxLayout& line, QBoxLayout& words, const QString& asked);

    /// Takes the sizes of the look it is shown in; the row calls it when it learns of another.
    void dress();

    /// Words that wrap have no least height of their own: the row's height follows its width.
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    double across() const; ///< of the ring, px

    QHBoxLayout* m_line;
};

} // namespace latchround::ui
