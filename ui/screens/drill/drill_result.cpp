#include "ui/screens/drill/drill_result.h"

#include <algorithm>
#include <cmath>

#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/measure/interval.h"
#include "ui/frames/reading_pane.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/cue_words.h"

namespace latchround::ui {

namespace {

QString seconds(double value) {
    return QLocale().toString(value, 'f', 3) + QStringLiteral(" s");
}

QString siftedWords(Cue cue, const ThumbDrill& drill) {
    if (std::ranges::find(drill.trials, cue, &ThumbTrial::cue) == drill.trials.end())
        return DrillResult::tr("no trials: published figures apply");
    const Sifted sifted = rejectOutliers(cue, drill);
    QString words =
        sifted.reaction
            ? DrillResult::tr("%1 late, scatter %2, from %3 trials")
                  .arg(seconds(sifted.reaction->bias_s), seconds(sifted.reaction->spread_s))
                  .arg(sifted.reaction->trials)
            : DrillResult::tr("too few usable trials: published figures apply");
    if (sifted.too_early > 0)
        words += DrillResult::tr("; %1 too early, not counted").arg(sifted.too_early);
    if (sifted.set_aside > 0)
        words += DrillResult::tr("; %1 far out, not counted").arg(sifted.set_aside);
    return words;
}

/// What becomes of a closing time.
QString effectWords(const ReactionModel& own) {
    constexpr double some_time_s = 15;
    const Interval interval{some_time_s, IntervalClock::InputEvent, {}};
    const auto edge = [&](const ReactionModel& thumb) {
        return expanded(timed(interval, MarkKind::LeafMoves, MarkKind::Shut, thumb));
    };
    const double correction = own.correction(Cue::LeafStarts, Cue::LeafStops);
    return DrillResult::tr("A closing time is corrected by %1%2 and has ± %3; with the published "
                           "figures it has ± %4.")
        .arg(correction < 0 ? QStringLiteral("−") : QStringLiteral("+"),
             seconds(std::abs(correction)), seconds(edge(own)), seconds(edge(ReactionModel())));
}

} // namespace

DrillResult::DrillResult(QWidget* parent)
    : Part(parent)
    , m_lines(new QVBoxLayout(this))
    , m_words(new ReadingPane(tr("Your reaction time on this tablet")))
    , m_keep(keyOf(tr("Use these figures"), "drill-keep", "primary"))
    , m_again(keyOf(tr("Do it again"), "drill-again")) {
    m_lines->addWidget(m_words, 1);
    auto* keys = new QHBoxLayout;
    keys->addWidget(m_again, 1);
    keys->addWidget(m_keep, 2);
    m_lines->addLayout(keys);
    connect(m_keep, &QPushButton::clicked, this, &DrillResult::keepAsked);
    connect(m_again, &QPushButton::clicked, this, &DrillResult::againAsked);
    lookChanged();
}

void DrillResult::show(const ThumbDrill& drill) {
    m_words->clear();
    m_words->add(tr("Your reaction time on this tablet"), TextSize::Heading, Ink::Plain, true);
    for (const Word<Cue>& entry : cueWords) {
        m_words->add(cueTitle(entry.value), TextSize::Lead, Ink::Plain, true);
        m_words->add(siftedWords(entry.value, drill), TextSize::Body);
    }
    auto* effect = new Label(effectWords(ReactionModel(drill)), TextSize::Body);
    effect->setObjectName(QStringLiteral("drill-effect"));
    m_words->add(effect);
    m_words->add(tr("Used for runs that you time on this tablet from now on. The tablet's own "
                    "delay, which a real door does not have, stays in the uncertainty. Worth "
                    "repeating every %1 months.")
                     .arg(drill_every_months),
                 TextSize::Small, Ink::Muted);
}

void DrillResult::lookChanged() {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(sizes().gap);
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_drill_result.cpp"
