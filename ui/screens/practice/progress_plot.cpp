#include "ui/screens/practice/progress_plot.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "core/evidence/moment_text.h"
#include "core/measure/spread.h"
#include "ui/words/cue_words.h"
#include "ui/words/date_words.h"

namespace latchround::ui {

namespace {

constexpr std::size_t most_points = 24;
constexpr std::size_t least_marks = 3;
constexpr double widest_ms = 1000;

/// Each cue has its shape, so that colour alone says nothing.
void drawCue(QPainter& painter, QPointF at, double half, Cue cue) {
    switch (cue) {
    case Cue::AlarmHeard:
        painter.drawPolygon(QPolygonF({{at.x() - half, at.y() + half * 0.8},
                                       {at.x() + half, at.y() + half * 0.8},
                                       {at.x(), at.y() - half}}));
        return;
    case Cue::LeafStarts:
        painter.drawRect(QRectF(at.x() - half * 0.8, at.y() - half * 0.8, 1.6 * half, 1.6 * half));
        return;
    case Cue::LeafStops:
        painter.drawEllipse(at, half, half);
        return;
    }
}

QColor inkOf(Cue cue, const Colours& c) {
    return cue == Cue::AlarmHeard ? c.muted : cue == Cue::LeafStarts ? c.accent : c.ink;
}

} // namespace

/// Where things lie on the widget.
struct ProgressPlot::Plan {
    QRectF scores;
    QRectF thumb;
    double days_top = 0;
    double low_ms = -100;
    double high_ms = 400;

    double x(std::size_t point, std::size_t of) const {
        return scores.left() + scores.width() * (double(point) + 0.5) / double(of);
    }
    double ofPercent(double percent) const {
        return scores.bottom() - scores.height() * percent / 100;
    }
    double ofMs(double ms) const {
        return thumb.bottom() -
               thumb.height() * (std::clamp(ms, low_ms, high_ms) - low_ms) / (high_ms - low_ms);
    }
};

ProgressPlot::ProgressPlot(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(
        Qt::LeftToRight); // a scale runs as figures do, whichever side words begin on
    setObjectName(QStringLiteral("progress-plot"));
    setMinimumHeight(int(mm(48)));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
}

QSize ProgressPlot::sizeHint() const {
    return {int(mm(110)), int(mm(64))};
}

/// As the stopwatch would take it; with fewer marks, the plain mean of what is no guess.
std::optional<ProgressPlot::Late> ProgressPlot::lateOf(Cue cue,
                                                       const std::vector<ThumbTrial>& delays) {
    if (const auto own = rejectOutliers(cue, ThumbDrill{delays}).reaction)
        return Late{own->bias_s * 1000, own->spread_s * 1000};
    std::vector<double> seconds;
    for (const ThumbTrial& trial : delays)
        if (trial.cue == cue && std::abs(trial.delay_s) * 1000 <= widest_ms)
            seconds.push_back(trial.delay_s);
    if (seconds.size() < least_marks)
        return std::nullopt;
    return Late{meanOf(seconds) * 1000, standardDeviation(seconds) * 1000};
}

void ProgressPlot::setAttempts(const std::vector<practice::Attempt>& attempts) {
    m_pass_percent = 0;
    m_points.clear();
    const std::size_t skipped = attempts.size() - std::min(attempts.size(), most_points);
    for (std::size_t i = skipped; i < attempts.size(); ++i) {
        const practice::Attempt& attempt = attempts[i];
        Point point;
        point.percent = attempt.percent;
        point.exam = attempt.level == practice::Level::Exam;
        if (attempt.pass_percent > 0)
            m_pass_percent = attempt.pass_percent; // the newest exam's
        point.day = dateWords(shipsDay(attempt.ended));
        for (const Word<Cue>& entry : cueWords)
            point.late[std::size_t(entry.value)] = lateOf(entry.value, attempt.delays);
        m_points.push_back(std::move(point));
    }
    say();
    update();
}

void ProgressPlot::say() {
    QStringList words;
    for (const Point& point : m_points) {
        QString line =
            (point.exam ? tr("%1, exam: %2 %") : tr("%1: %2 %")).arg(point.day).arg(point.percent);
        for (const Word<Cue>& entry : cueWords)
            if (const auto& late = point.late[std::size_t(entry.value)])
                line += tr(", %1 %2, scatter %3 ms")
                            .arg(cueTitle(entry.value).toLower(), lateWords(late->bias_ms / 1000))
                            .arg(std::lround(late->spread_ms));
        words << line;
    }
    setAccessibleName(tr("Progress"));
    setAccessibleDescription(words.join(QStringLiteral(". ")));
}

ProgressPlot::Plan ProgressPlot::planOf() const {
    Plan plan;
    const double line = QFontMetricsF(font(TextSize::Small)).height();
    const double left = mm(15);
    const double head = line * 1.6; // of each band: its title, clear of the scale's figures
    const double room = height() - 2 * head - line * 1.8;
    plan.scores = QRectF(left, head, width() - left - mm(2), room * 0.5);
    plan.thumb =
        QRectF(left, plan.scores.bottom() + line * 0.5 + head, plan.scores.width(), room * 0.5);
    plan.days_top = plan.thumb.bottom() + line * 0.3;
    for (const Point& point : m_points)
        for (const auto& late : point.late)
            if (late) {
                plan.low_ms = std::min(plan.low_ms, late->bias_ms - late->spread_ms);
                plan.high_ms = std::max(plan.high_ms, late->bias_ms + late->spread_ms);
            }
    plan.low_ms = std::max(-widest_ms, std::floor(plan.low_ms / 100) * 100);
    plan.high_ms = std::min(widest_ms, std::ceil(plan.high_ms / 100) * 100);
    return plan;
}

void ProgressPlot::paintEvent(QPaintEvent*) {
    if (m_points.empty())
        return;
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    const Plan plan = planOf();
    paintScores(painter, plan);
    paintThumb(painter, plan);
    paintDays(painter, plan);
}

/// A line across with its figure at the left.
void ProgressPlot::paintScale(QPainter& painter, double y, const QRectF& area, const QString& words,
                              bool strong) const {
    painter.setPen(QPen(strong ? colours().edge : colours().hairline, strong ? mm(0.3) : 1));
    painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    painter.setPen(colours().muted);
    painter.drawText(QRectF(0, y - mm(3), area.left() - mm(1), mm(6)),
                     Qt::AlignRight | Qt::AlignVCenter, words);
}

void ProgressPlot::paintScores(QPainter& painter, const Plan& plan) const {
    painter.setFont(font(TextSize::Small));
    painter.setPen(colours().muted);
    painter.drawText(QPointF(0, QFontMetricsF(font(TextSize::Small)).ascent()),
                     tr("Score of each exercise"));
    for (const int percent : {0, 50, 100})
        paintScale(painter, plan.ofPercent(percent), plan.scores, tr("%1 %").arg(percent),
                   percent == 0);
    if (m_pass_percent > 0) {
        const double y = plan.ofPercent(m_pass_percent);
        painter.setPen(QPen(colours().accent, mm(0.4), Qt::DashLine));
        painter.drawLine(QPointF(plan.scores.left(), y), QPointF(plan.scores.right(), y));
        painter.setPen(colours().accent);
        painter.drawText(QRectF(plan.scores.left(), y - mm(6), plan.scores.width(), mm(6)),
                         Qt::AlignRight | Qt::AlignBottom,
                         tr("exam pass mark %1 %").arg(m_pass_percent));
    }
    QPolygonF line;
    for (std::size_t i = 0; i < m_points.size(); ++i)
        line << QPointF(plan.x(i, m_points.size()), plan.ofPercent(m_points[i].percent));
    painter.setPen(QPen(colours().edge, mm(0.3)));
    painter.drawPolyline(line);
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const double half = mm(1.2);
        painter.setPen(QPen(colours().ink, mm(0.4)));
        painter.setBrush(m_points[i].exam ? colours().card : colours().ink);
        const QPointF at = line[qsizetype(i)];
        if (m_points[i].exam) // an exam stands out by its shape
            painter.drawPolygon(QPolygonF({{at.x() - 1.4 * half, at.y()},
                                           {at.x(), at.y() - 1.4 * half},
                                           {at.x() + 1.4 * half, at.y()},
                                           {at.x(), at.y() + 1.4 * half}}));
        else
            painter.drawEllipse(at, half, half);
    }
    const QPointF last = line.last();
    const bool above = last.y() > plan.scores.top() + mm(5);
    painter.setFont(font(TextSize::Small, true));
    painter.setPen(colours().ink);
    painter.drawText(
        QRectF(last.x() - mm(12), above ? last.y() - mm(7) : last.y() + mm(1.5), mm(24), mm(5.5)),
        Qt::AlignCenter, tr("%1 %").arg(m_points.back().percent));
}

void ProgressPlot::paintThumb(QPainter& painter, const Plan& plan) const {
    painter.setFont(font(TextSize::Small));
    const QFontMetricsF small(font(TextSize::Small));
    const double base = plan.thumb.top() - small.height() * 1.6 + small.ascent();
    painter.setPen(colours().muted);
    QString title = tr("Reaction, ms:");
    painter.drawText(QPointF(0, base), title);
    const std::array names{std::pair(Cue::AlarmHeard, tr("alarm")),
                           std::pair(Cue::LeafStarts, tr("start")),
                           std::pair(Cue::LeafStops, tr("stop"))};
    double all = small.horizontalAdvance(title);
    for (const auto& [cue, name] : names)
        all += small.horizontalAdvance(name) + mm(6.4);
    const double apart_by = all > width() ? mm(1.4) : mm(3);
    double x = small.horizontalAdvance(title) + apart_by;
    for (const auto& [cue, name] : names) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(inkOf(cue, colours()));
        drawCue(painter, QPointF(x + mm(1.2), base - small.xHeight() / 2), mm(1.2), cue);
        painter.setPen(colours().muted);
        painter.drawText(QPointF(x + mm(3.4), base), name);
        x += mm(3.4) + small.horizontalAdvance(name) + apart_by;
    }
    for (const double ms : {plan.low_ms, 0.0, plan.high_ms})
        paintScale(painter, plan.ofMs(ms), plan.thumb, QString::number(int(ms)), ms == 0.0);
    const double apart = std::min(mm(3.2), plan.thumb.width() / double(m_points.size()) / 3.6);
    for (std::size_t i = 0; i < m_points.size(); ++i)
        for (const Word<Cue>& entry : cueWords) {
            const auto& late = m_points[i].late[std::size_t(entry.value)];
            if (!late)
                continue;
            const double at = plan.x(i, m_points.size()) + (double(entry.value) - 1) * apart;
            const QColor ink = inkOf(entry.value, colours());
            painter.setPen(QPen(ink, mm(0.4)));
            painter.drawLine(QPointF(at, plan.ofMs(late->bias_ms - late->spread_ms)),
                             QPointF(at, plan.ofMs(late->bias_ms + late->spread_ms)));
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink);
            drawCue(painter, QPointF(at, plan.ofMs(late->bias_ms)), mm(1), entry.value);
        }
}

/// The last day and the first, and between them as many as have room.
void ProgressPlot::paintDays(QPainter& painter, const Plan& plan) const {
    painter.setFont(font(TextSize::Small));
    painter.setPen(colours().muted);
    const QFontMetricsF small(font(TextSize::Small));
    std::vector<QRectF> taken;
    const auto label = [&](std::size_t i) {
        const double wide = small.horizontalAdvance(m_points[i].day);
        const double left =
            std::clamp(plan.x(i, m_points.size()) - wide / 2, 0.0, std::max(0.0, width() - wide));
        const QRectF place(left, plan.days_top, wide, small.height());
        for (const QRectF& other : taken)
            if (other.adjusted(-mm(3), 0, mm(3), 0).intersects(place))
                return;
        painter.drawText(place, Qt::AlignCenter | Qt::TextDontClip, m_points[i].day);
        taken.push_back(place);
    };
    label(m_points.size() - 1);
    for (std::size_t i = 0; i + 1 < m_points.size(); ++i)
        if (i == 0 || m_points[i].day != m_points[i - 1].day)
            label(i);
}

} // namespace latchround::ui

#include "moc_progress_plot.cpp"
