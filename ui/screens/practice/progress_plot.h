// Progress over the exercises of one person, the oldest at the left: the score of each with the
// mark that an exam asks, and below it how late the thumb was, with its spread. Three marks of a
// kind in an exercise are the least that a bar is drawn for (our choice, no source).
#pragma once

#include <optional>
#include <vector>

#include "core/practice/debrief.h"
#include "ui/look/part.h"

namespace latchround::ui {

class ProgressPlot : public Part {
    Q_OBJECT
public:
    explicit ProgressPlot(QWidget* parent = nullptr);

    /// Of one person, the oldest first; where there are many, the latest are shown.
    void setAttempts(const std::vector<practice::Attempt>& attempts);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Late {
        double bias_ms = 0;
        double spread_ms = 0;
    };
    struct Point {
        int percent = 0;
        bool exam = false;
        QString day;
        std::array<std::optional<Late>, cueWords.size()> late;
    };
    struct Plan;
    static std::optional<Late> lateOf(Cue cue, const std::vector<ThumbTrial>& delays);
    Plan planOf() const;
    void say();
    void paintScores(QPainter& painter, const Plan& plan) const;
    void paintThumb(QPainter& painter, const Plan& plan) const;
    void paintDays(QPainter& painter, const Plan& plan) const;
    void paintScale(QPainter& painter, double y, const QRectF& area, const QString& words,
                    bool strong) const;

    std::vector<Point> m_points;
    int m_pass_percent = 0; ///< that the newest exam asked; 0: none is drawn
};

} // namespace latchround::ui
