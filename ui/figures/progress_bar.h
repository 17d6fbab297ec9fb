// How far a job is: a bar that fills from the side on which reading begins.
#pragma once

#include <QProgressBar>

namespace latchround::ui {

class ProgressBar : public QProgressBar {
    Q_OBJECT
public:
    explicit ProgressBar(QWidget* parent = nullptr);

    /// `done` of `of`; an `of` of 0 is a job that has not begun.
    void setDone(int done, int of);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace latchround::ui
