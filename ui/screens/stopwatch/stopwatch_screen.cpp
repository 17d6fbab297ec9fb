#include "ui/screens/stopwatch/stopwatch_screen.h"

#include <algorithm>

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>

#include "core/grading/as_found.h"
#include "core/grading/live_band.h"
#include "core/grading/run_grade.h"
#include "core/measure/interval.h"
#include "ui/figures/band_gauge.h"
#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/ports/settings.h"
#include "ui/ports/sound.h"
#include "ui/screens/stopwatch/readings.h"
#include "ui/screens/stopwatch/run_result.h"
#include "ui/screens/stopwatch/side_keys.h"
#include "ui/ship/door_drawing.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"
#include "ui/words/radio_words.h"
#include "ui/words/run_words.h"

namespace latchround::ui {

namespace {

constexpr int frame_ms = 33;

bool has(const std::vector<MarkKind>& taken, MarkKind kind) {
    return std::ranges::find(taken, kind) != taken.end();
}

QString alarmKeyWords(MarkKind next) {
    switch (next) {
    case MarkKind::LeafMoves:
        return StopwatchScreen::tr("Moves,\nno alarm");
    case MarkKind::AlarmOff:
        return StopwatchScreen::tr("Alarm off");
    default:
        return StopwatchScreen::tr("Late\nalarm");
    }
}

} // namespace

StopwatchScreen::StopwatchScreen(VesselSession& the_round, QWidget* parent)
    : Screen(the_round, parent)
    , m_recorder(the_round)
    , m_drawing(new DoorDrawing(page()))
    , m_readings(new Readings(page()))
    , m_keys(new QStackedWidget(page()))
    , m_key(new MarkKey)
    , m_result(new RunResult)
    , m_side(new SideKeys(page()))
    , m_grid(new QGridLayout(page())) {
    setObjectName(QStringLiteral("stopwatch-screen"));
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_key->setObjectName(QStringLiteral("mark"));
    m_keys->addWidget(m_key);
    m_keys->addWidget(m_result);
    // By their shares alone, down to the least that can be touched.
    m_keys->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_side->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    for (MarkKey* key : {m_key, &m_side->halfWay(), &m_side->alarm()})
        key->setClock([&clock = the_round.clock()] { return clock.steadyNow_ns(); });
    connectKeys();
    m_clock.setInterval(frame_ms);
    connect(&m_clock, &QTimer::timeout, this, &StopwatchScreen::tick);
    connect(&the_round, &VesselSession::doorChanged, this, [this](const QString& door) {
        if (door == m_recorder.door())
            refresh();
    });
    connect(&the_round, &VesselSession::waitingChanged, this, &StopwatchScreen::refresh);
    setFocusPolicy(Qt::StrongFocus);
    lookChanged();
}

void StopwatchScreen::connectKeys() {
    connect(m_key, &MarkKey::marked, this, [this](const MarkPress& press) {
        if (const SequenceStep* step = m_recorder.next())
            mark(step->mark, press);
    });
    connect(&m_side->halfWay(), &MarkKey::marked, this,
            [this](const MarkPress& press) { mark(MarkKind::HalfWay, press); });
    connect(&m_side->alarm(), &MarkKey::marked, this, [this](const MarkPress& press) {
        if (const std::optional<MarkKind> kind = m_recorder.alarmMark())
            mark(*kind, press);
    });
    // At the press, not at the release: stop must not wait for the finger to lift.
    connect(&m_side->stop(), &QPushButton::pressed, this, &StopwatchScreen::stop);
    connect(&m_side->takeBack(), &QPushButton::clicked, this,
            [this] { (void)m_recorder.takeBack(); });
    connect(&m_side->voidRun(), &QPushButton::clicked, this, &StopwatchScreen::voidRun);
    connect(m_result, &RunResult::doneAsked, this, &StopwatchScreen::leave);
    connect(m_result, &RunResult::takeBackAsked, this, [this] { (void)m_recorder.takeBack(); });
    connect(m_result, &RunResult::voidAsked, this, &StopwatchScreen::voidRun);
    connect(m_result, &RunResult::againAsked, this, [this] {
        emit againAsked(m_recorder.door(), m_recorder.release(), m_recorder.kind());
    });
    connect(m_result, &RunResult::reasonPicked, this, [this](const Wording& reason) {
        if (m_called_off)
            (void)m_recorder.end(*m_called_off, reason);
    });
    connect(&bar(), &TopBar::back, this, &StopwatchScreen::leave);
}

Result<> StopwatchScreen::begin(const QString& door, Release release, RunKind kind,
                                const QString& group) {
    Result<> may = m_recorder.begin(door, release, kind, group);
    if (!may)
        return may;
    m_called_off.reset();
    const GradedDoor* graded = session().door(door);
    m_drawing->setDoor(graded->door->kind, graded->door->opening_m);
    m_drawing->setSide(release == Release::LocalSideTwo ? Side::Two : Side::One);
    m_drawing->setBlock(kind == RunKind::Contact);
    const bool sliding = graded->door->kind == DoorKind::Sliding && kind == RunKind::Closing;
    m_side->offer(sliding, m_recorder.alarmMark().has_value());
    const QString how =
        kind == RunKind::Contact ? tr("contact") : tr("release %1").arg(releaseWords(release));
    QString armed = how;
    if (release == Release::Remote && kind == RunKind::Closing)
        armed += tr(" · cautions confirmed by %1").arg(session().personName());
    bar().setTitle(tr("Door %1 · run %2").arg(door).arg(m_recorder.number()), armed);
    m_keys->setCurrentWidget(m_key);
    refresh();
    emit ready(door, release, kind, group);
    return {};
}

void StopwatchScreen::setScene(QWidget* scene) {
    m_drawing->hide();
    m_scene = scene;
    m_scene->setParent(page());
    m_placed = -1;
    place();
}

void StopwatchScreen::enter() {
    m_key->setFocus();
    refresh();
}

void StopwatchScreen::showEvent(QShowEvent* event) {
    Screen::showEvent(event);
    // Opened now and not by the first mark, which must not wait for it.
    if (session().ports().settings->setting(QStringLiteral("quiet")).isEmpty())
        (void)session().ports().sound->ready();
}

void StopwatchScreen::hideEvent(QHideEvent* event) {
    Screen::hideEvent(event);
    session().ports().sound->close();
}

bool StopwatchScreen::isRunning() const {
    return !m_recorder.isOver() && !m_recorder.taken().empty();
}

void StopwatchScreen::mark(MarkKind kind, const MarkPress& press) {
    // On disk before anything on screen says so, in the register or where it is kept until it is
    // saved; where neither can be, the key takes no more and the session's banner says what to do.
    const bool saved = m_recorder.mark(kind, press).has_value();
    if (saved || (session().isTryingAgain() && m_recorder.isOnDisk()))
        session()
            .ports()
            .sound->cueMark(); // afterwards: a cue must never delay the mark it answers
}

void StopwatchScreen::stop() {
    endWith(RunOutcome::Stopped, offered("stopped-no-reason-given"));
}

void StopwatchScreen::voidRun() {
    endWith(RunOutcome::Void, offered("void-no-reason-given"));
}

void StopwatchScreen::endWith(RunOutcome outcome, const Wording& reason) {
    // The screen stops at once, saved or not: stopping is about people, recording comes second.
    m_clock.stop();
    if (outcome == RunOutcome::Stopped)
        emit stopped();
    m_called_off = outcome;
    m_result->showEnded(outcome, radioWord(session().walkdown()->plan.stop_word));
    m_keys->setCurrentWidget(m_result);
    place();
    m_grid->activate();
    repaint(); // before the register is asked, which may hold it up
    (void)m_recorder.end(outcome, reason);
    if (const RunRecord* run = m_recorder.record())
        emit ended(run->id);
}

void StopwatchScreen::leave() {
    // The way back is shut while a leaf moves: a run is ended by its last mark, by stop, or as
    // void.
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
    if (over && run && run->end && run->end->outcome == RunOutcome::Complete) {
        if (m_keys->currentWidget() != m_result) {
            const GradedDoor& door = *session().door(m_recorder.door());
            m_result->show(
                door, *run,
                rowsOfRun(session().arrangement().particulars, door, *run, session().catalogue()));
            m_keys->setCurrentWidget(m_result);
            emit ended(run->id);
        }
    } else if (over && run && (run->reversed || run->unmarked) &&
               m_keys->currentWidget() != m_result) {
        m_result->showEnded(RunOutcome::Void, {});
        m_keys->setCurrentWidget(m_result);
        emit ended(run->id);
    } else if (!over) {
        m_keys->setCurrentWidget(m_key);
    }
    const std::optional<RunRecord> so_far = m_recorder.soFar();
    m_readings->setMarks(so_far ? marksLine(*so_far) : tr("no marks yet"));
    place();
    showKeys();
    showBand();
    tick();
}

void StopwatchScreen::showKeys() {
    const SequenceStep* step = m_recorder.next();
    const bool all_saved = session().waiting() == 0;
    const bool on_disk = m_recorder.isOnDisk();
    if (session().isSavingShortly() && m_recorder.isOver()) {
        m_key->setNameLine(tr("saving…"));
        m_key->setHintLine({});
    } else if (!on_disk || (!all_saved && m_recorder.isOver())) {
        m_key->setNameLine(tr("Not saved"));
        m_key->setHintLine(phraseWords(session().whyWaiting().what));
    } else if (step) {
        m_key->setNameLine(markWords(step->mark));
        m_key->setHintLine(markHint(step->mark));
        if (const auto run = m_recorder.soFar(); run && !run->marks.empty())
            m_key->setAccessibleDescription( // whoever listens is told what was taken
                tr("marked: %1. Next: %2").arg(marksLine(*run), markHint(step->mark)));
    }
    const bool was_enabled = m_key->isEnabled();
    m_key->setEnabled(on_disk && step);
    if (!was_enabled && m_key->isEnabled() && mayTakeKeyboard())
        m_key->setFocus(); // it went elsewhere with the key, and Space must mark
    m_side->halfWay().setEnabled(on_disk && m_recorder.mayMarkHalfWay());
    const std::optional<MarkKind> of_alarm = m_recorder.alarmMark();
    m_side->alarm().setEnabled(on_disk && of_alarm);
    if (of_alarm)
        m_side->alarm().setNameLine(alarmKeyWords(*of_alarm));
    const RunRecord* run = m_recorder.record();
    m_side->takeBack().setEnabled(all_saved && run && !run->marks.empty() && !m_called_off);
    m_side->voidRun().setEnabled(run && !m_called_off);
    m_side->stop().setEnabled(!m_recorder.isOver());
}

bool StopwatchScreen::mayTakeKeyboard() const {
    for (const QWidget* at = window()->focusWidget(); at; at = at->parentWidget())
        if (qobject_cast<const Sheet*>(at))
            return false;
    return isVisible();
}

void StopwatchScreen::showBand() {
    const GradedDoor* graded = session().door(m_recorder.door());
    if (!graded)
        return;
    const std::vector<MarkKind> taken = m_recorder.taken();
    const bool alarmed =
        !has(taken, MarkKind::LeafMoves) && m_recorder.next() &&
        (has(taken, MarkKind::AlarmOn) || m_recorder.next()->mark == MarkKind::AlarmOn);
    const DoorLocation location = locationOf(graded->boundary, graded->grade.asked_class);
    const AsFound found(*graded->door, graded->evidence);
    const auto band =
        liveBand(session().catalogue(), session().arrangement().particulars, found.door(), location,
                 alarmed ? MarkKind::AlarmOn : MarkKind::LeafMoves, session().thumb());
    m_readings->setBandShown(band && m_recorder.kind() == RunKind::Closing);
    if (!band)
        return;
    QString title = alarmed ? tr("Alarm before movement") : tr("Leaf moving");
    if (band->advice)
        title += tr(" (advice only)");
    BandGauge& gauge = m_readings->gauge();
    gauge.setTitle(title);
    gauge.setBand(band->low_s, band->high_s, tr("s"));
    gauge.setUncertainty(band->expanded_s);
    gauge.setScale(0, band->high_s.value_or(20) * 1.4);
    if (!alarmed && band->low_s && band->high_s)
        m_expected_s = (*band->low_s + *band->high_s) / 2;
}

std::optional<double> StopwatchScreen::secondsSince(MarkKind kind) const {
    const std::optional<RunRecord> run = m_recorder.soFar();
    if (!run)
        return std::nullopt;
    const auto found = std::ranges::find_if(
        run->marks, [kind](const auto& record) { return record.mark.kind == kind; });
    if (found == run->marks.end() || !found->mark.steady_ns)
        return std::nullopt;
    return double(session().clock().steadyNow_ns() - *found->mark.steady_ns) / 1e9;
}

void StopwatchScreen::tick() {
    const std::optional<RunRecord> run = m_recorder.soFar();
    const std::vector<MarkKind> taken = m_recorder.taken();
    const MarkKind home = isDouble() ? MarkKind::SecondLeafHome : MarkKind::Shut;
    // The running time counts from the event whose limit is running; once the leaf is home it
    // stands.
    const MarkKind from =
        taken.empty() || has(taken, MarkKind::LeafMoves) ? MarkKind::LeafMoves : taken.front();
    std::optional<double> shown;
    const bool contact = m_recorder.kind() == RunKind::Contact;
    const auto [first, last] = contact ? std::pair(MarkKind::Touched, MarkKind::Stopped)
                                       : std::pair(MarkKind::LeafMoves, home);
    if (run && has(taken, last))
        if (const auto whole = intervalBetween(*run, first, last))
            shown = whole->seconds;
    if (!shown && isRunning())
        shown = secondsSince(from);
    m_readings->setSeconds(shown);
    if (!m_scene)
        showDrawing(taken);
}

bool StopwatchScreen::isDouble() const {
    const GradedDoor* graded = session().door(m_recorder.door());
    return graded && graded->door->kind == DoorKind::DoubleLeaf;
}

/// How far the leaf has come nobody knows before its last mark: the drawing goes at the middle of
/// what is allowed and waits just short of the end.
void StopwatchScreen::showDrawing(const std::vector<MarkKind>& taken) {
    constexpr double before_contact = 0.45;
    constexpr double re_opened = 0.2;
    constexpr double short_of_home = 0.96;
    const MarkKind home = isDouble() ? MarkKind::SecondLeafHome : MarkKind::Shut;
    double progress = 0;
    if (m_recorder.kind() == RunKind::Contact)
        progress = has(taken, MarkKind::Stopped)   ? re_opened
                   : has(taken, MarkKind::Touched) ? DoorDrawing::block_at
                                                   : before_contact;
    else if (has(taken, home))
        progress = 1;
    else if (has(taken, MarkKind::LeafMoves))
        progress = std::clamp(secondsSince(MarkKind::LeafMoves).value_or(0) / m_expected_s, 0.0,
                              short_of_home);
    std::optional<double> second;
    if (isDouble() && m_recorder.kind() == RunKind::Closing)
        second = has(taken, home) ? 1.0 : progress * 0.8;
    m_drawing->setProgress(has(taken, MarkKind::FirstLeafHome) ? 1.0 : progress);
    m_drawing->setSecondProgress(second);
    m_drawing->setAlarm(isRunning() && has(taken, MarkKind::AlarmOn) &&
                        !has(taken, MarkKind::AlarmOff));
}

void StopwatchScreen::lookChanged() {
    Screen::lookChanged();
    m_placed = -1; // gaps may have changed
    place();
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

#include "moc_stopwatch_screen.cpp"
