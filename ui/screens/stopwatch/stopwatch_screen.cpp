#include "ui/screens/stopwatch/stopwatch_screen.h"

#include <algorithm>

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QStackedWidget>

#include "core/grading/live_band.h"
#include "core/measure/interval.h"
#include "ui/look/touch_style.h"
#include "ui/parts/band_gauge.h"
#include "ui/parts/door_drawing.h"
#include "ui/parts/door_words.h"
#include "ui/parts/figure_label.h"
#include "ui/parts/lettering.h"
#include "ui/parts/run_words.h"
#include "ui/parts/top_bar.h"
#include "ui/screens/stopwatch/run_result.h"

namespace latchround::ui {

namespace {

constexpr int frame_ms = 33;

} // namespace

StopwatchScreen::StopwatchScreen(Round& the_round, QWidget* parent)
    : Screen(the_round, parent)
    , m_recorder(the_round)
    , m_drawing(new DoorDrawing)
    , m_keys(new QStackedWidget)
    , m_lines(new QVBoxLayout(page())) {
    setObjectName(QStringLiteral("stopwatch-screen"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addWidget(m_drawing);
    m_lines->addWidget(makeReadings());
    m_lines->addWidget(makeKeys());
    for (MarkKey* key : {m_key, m_half_way, m_alarm_stopped})
        key->setClock([&outside = the_round.outside()] { return outside.steadyNow_ns(); });
    m_clock.setInterval(frame_ms);
    connect(&m_clock, &QTimer::timeout, this, &StopwatchScreen::tick);
    connect(&the_round, &Round::doorChanged, this, [this](const QString& door) {
        if (door == m_recorder.door())
            refresh();
    });
    connect(&the_round, &Round::waitingChanged, this, &StopwatchScreen::refresh);
    setFocusPolicy(Qt::StrongFocus);
    lookChanged();
}

QWidget* StopwatchScreen::makeReadings() {
    auto* strip = new QWidget;
    m_readings = new QBoxLayout(QBoxLayout::LeftToRight, strip);
    m_readings->setContentsMargins(0, 0, 0, 0);
    m_figure = new FigureLabel(TextSize::Clock, tr("s"));
    m_figure->setObjectName(QStringLiteral("elapsed"));
    m_figure->setRoomFor(QStringLiteral("00.00"));
    auto* right = new QVBoxLayout;
    m_gauge = new BandGauge;
    m_marks = new Lettering({}, TextSize::Body);
    m_marks->setObjectName(QStringLiteral("marks"));
    right->addStretch(1);
    right->addWidget(m_gauge);
    right->addWidget(m_marks);
    right->addStretch(1);
    m_readings->addWidget(m_figure, 1);
    m_readings->addLayout(right, 1);
    return strip;
}

QWidget* StopwatchScreen::makeKeys() {
    auto* strip = new QWidget;
    m_lower = new QBoxLayout(QBoxLayout::LeftToRight, strip);
    m_lower->setContentsMargins(0, 0, 0, 0);
    m_key = new MarkKey;
    m_key->setObjectName(QStringLiteral("mark"));
    m_result = new RunResult;
    m_keys->addWidget(m_key);
    m_keys->addWidget(m_result);
    m_lower->addWidget(m_keys);

    auto* side = new QVBoxLayout;
    m_stop = new QPushButton(tr("Stop the test"));
    m_stop->setObjectName(QStringLiteral("stop"));
    setRole(*m_stop, "danger", true);
    m_stop->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    side->addWidget(m_stop, 5);
    auto* extra = new QHBoxLayout;
    m_half_way = new MarkKey;
    m_half_way->setObjectName(QStringLiteral("mark-half-way"));
    m_half_way->setNameLine(markWords(MarkKind::HalfWay));
    m_alarm_stopped = new MarkKey;
    m_alarm_stopped->setObjectName(QStringLiteral("mark-alarm-stopped"));
    m_alarm_stopped->setNameLine(tr("Alarm stopped"));
    extra->addWidget(m_half_way);
    extra->addWidget(m_alarm_stopped);
    side->addLayout(extra, 3);
    auto* slips = new QHBoxLayout;
    m_take_back = new QPushButton(tr("Take back\nlast mark"));
    m_take_back->setObjectName(QStringLiteral("take-back"));
    m_spoiled = new QPushButton(tr("Spoiled,\nrun again"));
    m_spoiled->setObjectName(QStringLiteral("spoiled"));
    for (QPushButton* key : {m_take_back, m_spoiled}) {
        setRole(*key, "plain", true);
        key->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
        slips->addWidget(key);
    }
    side->addLayout(slips, 3);
    m_lower->addLayout(side);

    connect(m_key, &MarkKey::marked, this, [this](const MarkPress& press) {
        if (const SequenceStep* step = m_recorder.next())
            mark(step->mark, press);
    });
    connect(m_half_way, &MarkKey::marked, this,
            [this](const MarkPress& press) { mark(MarkKind::HalfWay, press); });
    connect(m_alarm_stopped, &MarkKey::marked, this,
            [this](const MarkPress& press) { mark(MarkKind::AlarmOff, press); });
    // At the press, not at the release: stop must not wait for the finger to lift.
    connect(m_stop, &QPushButton::pressed, this, &StopwatchScreen::stop);
    connect(m_take_back, &QPushButton::clicked, this, [this] { (void)m_recorder.takeBack(); });
    connect(m_spoiled, &QPushButton::clicked, this, &StopwatchScreen::spoil);
    connect(m_result, &RunResult::doneAsked, this, &StopwatchScreen::leave);
    connect(m_result, &RunResult::againAsked, this, [this] {
        emit againAsked(m_recorder.door(), m_recorder.release(), m_recorder.kind());
    });
    connect(m_result, &RunResult::reasonPicked, this, [this](const QString& reason) {
        if (const RunRecord* run = m_recorder.record(); run && run->end)
            (void)m_recorder.end(run->end->outcome, reason);
    });
    connect(&bar(), &TopBar::back, this, &StopwatchScreen::leave);
    return strip;
}

Done StopwatchScreen::begin(const QString& door, Release release, RunKind kind,
                            const QString& group) {
    Done may = m_recorder.begin(door, release, kind, group);
    if (!may)
        return may;
    const GradedDoor* graded = round().door(door);
    m_drawing->setDoor(graded->door->kind, graded->door->opening_m);
    m_drawing->setProgress(0);
    const QString how =
        kind == RunKind::Contact ? tr("contact") : tr("release %1").arg(releaseWords(release));
    QString armed = how;
    if (release == Release::Remote && kind == RunKind::Closing)
        armed += tr(" · cautions confirmed by %1").arg(round().personName());
    bar().setTitle(tr("Door %1 · run %2").arg(door).arg(m_recorder.number()), armed);
    m_keys->setCurrentWidget(m_key);
    refresh();
    emit ready(door, release, kind, group);
    return {};
}

void StopwatchScreen::setScene(QWidget* scene) {
    m_drawing->hide();
    delete m_lines->replaceWidget(m_drawing, scene); // in its place, with its share of the height
}

void StopwatchScreen::enter() {
    m_key->setFocus();
    refresh();
}

bool StopwatchScreen::isRunning() const {
    const RunRecord* run = m_recorder.record();
    return run && !run->marks.empty() && !run->end;
}

void StopwatchScreen::mark(MarkKind kind, const MarkPress& press) {
    // On disk before anything on screen says so; where it cannot be saved the key keeps its name
    // and the round's banner says what to do.
    (void)m_recorder.mark(kind, press);
}

void StopwatchScreen::stop() {
    endWith(RunOutcome::Stopped, tr("stopped, no reason given"));
}

void StopwatchScreen::spoil() {
    endWith(RunOutcome::Spoiled, tr("spoiled, no reason given"));
}

void StopwatchScreen::endWith(RunOutcome outcome, const QString& reason) {
    // The screen stops at once, saved or not: stopping is about people, recording comes second.
    m_clock.stop();
    if (outcome == RunOutcome::Stopped)
        emit stopped();
    m_result->showEnded(outcome, QString::fromStdString(round().walkdown()->plan.stop_word));
    m_keys->setCurrentWidget(m_result);
    (void)m_recorder.end(outcome, reason);
    if (const RunRecord* run = m_recorder.record())
        emit ended(run->id);
}

void StopwatchScreen::leave() {
    // The way back is shut while a leaf moves: a run is ended by its last mark, by stop, or as
    // spoiled.
    if (!isRunning())
        emit done(m_recorder.door());
}

void StopwatchScreen::refresh() {
    const RunRecord* run = m_recorder.record();
    const bool over = m_recorder.isOver();
    const bool running = isRunning();
    bar().setBack(!running);
    if (running && !m_clock.isActive())
        m_clock.start();
    if (!running)
        m_clock.stop();
    if (over && run->end->outcome == RunOutcome::Complete) {
        if (m_keys->currentWidget() != m_result) {
            m_result->show(*round().door(m_recorder.door()), *run);
            m_keys->setCurrentWidget(m_result);
            emit ended(run->id);
        }
    } else if (!over) {
        m_keys->setCurrentWidget(m_key);
    }
    m_marks->setText(run ? marksLine(*run) : tr("no mark yet"));
    showKeys();
    showBand();
    tick();
}

void StopwatchScreen::showKeys() {
    const SequenceStep* step = m_recorder.next();
    const bool saved = round().waiting() == 0;
    if (!saved) {
        m_key->setNameLine(tr("Not saved"));
        m_key->setHintLine(QString::fromStdString(round().whyWaiting().what));
    } else if (step) {
        m_key->setNameLine(markWords(step->mark));
        m_key->setHintLine(markHint(step->mark));
    }
    m_key->setEnabled(saved && step);
    m_half_way->setEnabled(saved && m_recorder.mayMarkHalfWay());
    m_alarm_stopped->setEnabled(saved && m_recorder.mayMarkAlarmStopped());
    const GradedDoor* graded = round().door(m_recorder.door());
    m_half_way->setVisible(graded && graded->door->kind == DoorKind::Sliding &&
                           m_recorder.kind() == RunKind::Closing);
    m_alarm_stopped->setVisible(graded && graded->door->kind == DoorKind::Sliding &&
                                m_recorder.release() == Release::Remote &&
                                m_recorder.kind() == RunKind::Closing);
    const RunRecord* run = m_recorder.record();
    const bool called_off = run && run->end && run->end->outcome != RunOutcome::Complete;
    m_take_back->setEnabled(saved && run && !run->marks.empty() && !called_off);
    m_spoiled->setEnabled(run && !called_off);
    m_stop->setEnabled(!m_recorder.isOver());
}

void StopwatchScreen::showBand() {
    const GradedDoor* graded = round().door(m_recorder.door());
    if (!graded)
        return;
    const std::vector<MarkKind> taken = m_recorder.taken();
    const bool moving = std::ranges::find(taken, MarkKind::LeafMoves) != taken.end();
    const bool alarmed = !moving && m_recorder.next() &&
                         (std::ranges::find(taken, MarkKind::AlarmOn) != taken.end() ||
                          m_recorder.next()->mark == MarkKind::AlarmOn);
    const Stand stand(graded->boundary);
    const auto band =
        liveBand(round().catalogue(), round().arrangement().particulars, *graded->door, stand,
                 alarmed ? MarkKind::AlarmOn : MarkKind::LeafMoves, round().thumb());
    m_gauge->setVisible(band && m_recorder.kind() == RunKind::Closing);
    if (!band)
        return;
    QString title = alarmed ? tr("Alarm before movement") : tr("Leaf moving");
    if (band->advice)
        title += tr(" (advice only)");
    m_gauge->setTitle(title);
    m_gauge->setBand(band->low_s, band->high_s, tr("s"));
    m_gauge->setUncertainty(band->expanded_s);
    m_gauge->setScale(0, band->high_s.value_or(20) * 1.4);
    if (!alarmed && band->low_s && band->high_s)
        m_expected_s = (*band->low_s + *band->high_s) / 2;
}

std::optional<double> StopwatchScreen::secondsSince(MarkKind kind) const {
    const RunRecord* run = m_recorder.record();
    if (!run)
        return std::nullopt;
    const auto found = std::ranges::find_if(
        run->marks, [kind](const auto& record) { return record.mark.kind == kind; });
    if (found == run->marks.end() || !found->mark.steady_ns)
        return std::nullopt;
    return double(round().outside().steadyNow_ns() - *found->mark.steady_ns) / 1e9;
}

void StopwatchScreen::tick() {
    const RunRecord* run = m_recorder.record();
    const std::vector<MarkKind> taken = m_recorder.taken();
    const auto has = [&](MarkKind kind) { return std::ranges::find(taken, kind) != taken.end(); };
    const bool double_leaf = round().door(m_recorder.door()) &&
                             round().door(m_recorder.door())->door->kind == DoorKind::DoubleLeaf;
    const MarkKind home = double_leaf ? MarkKind::SecondLeafHome : MarkKind::Shut;
    // The running time counts from the event whose limit is running; once the leaf is home it
    // stands.
    const MarkKind from = has(MarkKind::LeafMoves) ? MarkKind::LeafMoves
                          : taken.empty()          ? MarkKind::LeafMoves
                                                   : taken.front();
    std::optional<double> shown;
    if (run && has(home))
        if (const auto closed = intervalBetween(*run, MarkKind::LeafMoves, home))
            shown = closed->seconds;
    if (!shown && isRunning())
        shown = secondsSince(from);
    m_figure->setFigure(locale().toString(shown.value_or(0), 'f', 2));
    m_gauge->setValue(shown);
    const double progress =
        has(home) ? 1.0
        : has(MarkKind::LeafMoves)
            ? std::clamp(secondsSince(MarkKind::LeafMoves).value_or(0) / m_expected_s, 0.0, 0.96)
            : 0.0;
    m_drawing->setProgress(double_leaf && has(MarkKind::FirstLeafHome) ? 1.0 : progress);
    if (double_leaf)
        m_drawing->setSecondProgress(has(home) ? 1.0 : progress * 0.8);
    m_drawing->setAlarm(isRunning() && has(MarkKind::AlarmOn) && !has(MarkKind::AlarmOff));
}

void StopwatchScreen::arrange(bool upright) {
    m_readings->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_lower->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    // Either way up, the mark key gets about a third of the screen.
    m_lines->setStretch(0, upright ? 2 : 3);
    m_lines->setStretch(1, 3);
    m_lines->setStretch(2, upright ? 13 : 10);
    m_lower->setStretch(0, upright ? 7 : 5);
    m_lower->setStretch(1, upright ? 6 : 3);
}

void StopwatchScreen::lookChanged() {
    Screen::lookChanged();
    m_lines->setSpacing(sizes().main_gap);
    m_lower->setSpacing(sizes().main_gap);
    m_stop->setFont(font(TextSize::Heading, true));
}

void StopwatchScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (event->isAutoRepeat())
            return;
        if (m_recorder.isOver())
            leave();
        else
            stop();
    } else if (m_keys->currentWidget() != m_key || !m_key->press(event)) {
        Screen::keyPressEvent(event);
    }
}

} // namespace latchround::ui
