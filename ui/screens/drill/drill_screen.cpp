#include "ui/screens/drill/drill_screen.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/frames/reading_pane.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/mark_key.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/sound.h"
#include "ui/screens/drill/drill_result.h"
#include "ui/screens/drill/practice_offer.h"
#include "ui/ship/door_drawing.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

namespace {

constexpr int drill_frame_ms = 8;
constexpr int sample_sound_ms = 600;
constexpr int pause_ms = 500;

/// The stopwatch's mark that answers to such an event: the key says the same here as there.
MarkKind markOf(Cue cue) {
    switch (cue) {
    case Cue::AlarmHeard:
        return MarkKind::AlarmOn;
    case Cue::LeafStarts:
        return MarkKind::LeafMoves;
    case Cue::LeafStops:
        break;
    }
    return MarkKind::Shut;
}

} // namespace

DrillScreen::DrillScreen(VesselSession& the_round, double pace, QWidget* parent)
    : Screen(the_round, parent)
    , m_pace(pace)
    , m_pages(new QStackedWidget)
    , m_result(new DrillResult) {
    setObjectName(QStringLiteral("drill-screen"));
    bar().setBack(true);
    auto* lines = new QVBoxLayout(page());
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_pages);
    m_introduction = makeIntroduction();
    m_trial = makeTrial();
    for (QWidget* each : {m_introduction, m_trial, static_cast<QWidget*>(m_result)})
        m_pages->addWidget(each);
    m_frames.setTimerType(Qt::PreciseTimer);
    m_frames.setInterval(drill_frame_ms);
    connect(&m_frames, &QTimer::timeout, this, &DrillScreen::tick);
    m_pause.setSingleShot(true);
    m_pause.setInterval(int(pause_ms * m_pace));
    connect(&m_pause, &QTimer::timeout, this, &DrillScreen::beginTrial);
    connect(m_result, &DrillResult::keepAsked, this, &DrillScreen::keep);
    connect(m_result, &DrillResult::againAsked, this, [this] { begin(m_sound); });
}

QWidget* DrillScreen::makeIntroduction() {
    auto* introduction = new QWidget;
    auto* lines = new QVBoxLayout(introduction);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(sizes().gap);
    lines->addWidget(
        new Label(tr("How quick and steady are you?"), TextSize::Heading, Ink::Plain, true));
    auto* told = new ReadingPane(tr("How the drill works"));
    told->add(
        tr("Twenty times, a leaf starts without warning and then comes home. Touch the key the "
           "moment it starts, and again the moment it is home. With sound, an alarm comes first: "
           "touch the key when you hear it. It takes about two minutes. Hold the tablet as you "
           "would at a door."),
        TextSize::Body);
    told->add(
        tr("Your own delay and scatter then replace the published figures for every run that you "
           "time on this tablet. If you leave before the end, nothing is kept."),
        TextSize::Body, Ink::Muted);
    lines->addWidget(told, 1);
    m_sound_words = new Label({}, TextSize::Body);
    m_sound_words->setObjectName(QStringLiteral("drill-sound"));
    lines->addWidget(m_sound_words);
    m_offer = new PracticeOffer(session());
    lines->addWidget(m_offer);
    connect(m_offer, &PracticeOffer::used, this, &DrillScreen::done);
    auto* keys = new QHBoxLayout;
    m_try = keyOf(tr("Try the sound"), "drill-try");
    m_begin_silent = keyOf(tr("Begin without sound"), "drill-begin-silent");
    m_begin = keyOf(tr("Loud enough: begin ›"), "drill-begin", "primary");
    for (QPushButton* key : {m_try, m_begin_silent, m_begin}) {
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        keys->addWidget(key, 1);
    }
    lines->addLayout(keys);
    connect(m_try, &QPushButton::clicked, this, [this] {
        session().ports().sound->soundAlarm(true);
        QTimer::singleShot(sample_sound_ms, this,
                           [this] { session().ports().sound->soundAlarm(false); });
    });
    connect(m_begin, &QPushButton::clicked, this, [this] { begin(true); });
    connect(m_begin_silent, &QPushButton::clicked, this, [this] { begin(false); });
    return introduction;
}

QWidget* DrillScreen::makeTrial() {
    auto* trial = new QWidget;
    m_sides = new QBoxLayout(QBoxLayout::LeftToRight, trial);
    m_sides->setContentsMargins(0, 0, 0, 0);
    auto* side = new QWidget;
    auto* lines = new QVBoxLayout(side);
    lines->setContentsMargins(0, 0, 0, 0);
    m_count = new Label({}, TextSize::Lead, Ink::Plain, true);
    m_count->setObjectName(QStringLiteral("drill-count"));
    m_drawing = new DoorDrawing;
    m_drawing->setDoor(DoorKind::Sliding, 1.0);
    m_said = new Label({}, TextSize::Body, Ink::Muted);
    lines->addWidget(m_count);
    lines->addWidget(m_drawing, 1);
    lines->addWidget(m_said);
    side->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_key = new MarkKey;
    m_key->setObjectName(QStringLiteral("drill-mark"));
    m_key->setClock([&clock = session().clock()] { return clock.steadyNow_ns(); });
    m_key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_sides->addWidget(side, 3);
    m_sides->addWidget(m_key, 2);
    connect(m_key, &MarkKey::marked, this, &DrillScreen::mark);
    return trial;
}

void DrillScreen::arrange(bool upright) {
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setSpacing(sizes().main_gap);
}

void DrillScreen::enter() {
    m_frames.stop();
    m_course.reset();
    bar().setTitle(tr("Timing drill"), session().personName());
    const bool loudspeaker = session().ports().sound->ready();
    m_try->setVisible(loudspeaker);
    m_begin->setVisible(loudspeaker);
    setRole(*m_begin_silent, loudspeaker ? "plain" : "primary");
    m_begin_silent->setText(loudspeaker ? tr("Begin without sound") : tr("Begin ›"));
    m_sound_words->setText(
        loudspeaker ? tr("Turn the sound up until you hear it clearly above the ship's noise.")
                    : tr("No working loudspeaker on this tablet: for what is heard, the published "
                         "figures apply."));
    m_offer->refresh();
    m_pages->setCurrentWidget(m_introduction);
    (loudspeaker ? m_begin : m_begin_silent)->setFocus();
}

void DrillScreen::begin(bool sound) {
    m_sound = sound && session().ports().sound->ready();
    m_course = std::make_unique<DrillCourse>(m_sound, session().chance(), m_pace);
    m_pages->setCurrentWidget(m_trial);
    m_key->setFocus();
    beginTrial();
}

void DrillScreen::beginTrial() {
    if (!m_course)
        return;
    m_drawing->setProgress(0);
    m_count->setText(tr("Trial %1 of %2").arg(m_course->done() + 1).arg(drill_trials));
    m_began_ns = session().clock().steadyNow_ns();
    showAwaited();
    m_frames.start();
}

double DrillScreen::secondsNow() const {
    return double(session().clock().steadyNow_ns() - m_began_ns) / 1e9;
}

void DrillScreen::showAwaited() {
    if (const auto cue = m_course ? m_course->awaited() : std::nullopt) {
        m_key->setNameLine(markWords(markOf(*cue)));
        m_key->setHintLine(markHint(markOf(*cue)));
    }
}

/// An event is timed when its picture has been painted, not when it was due.
void DrillScreen::tick() {
    if (!m_course)
        return;
    const double now = secondsNow();
    const auto alarm = m_course->due(Cue::AlarmHeard);
    if (alarm && now >= *alarm && !m_course->hasHappened(Cue::AlarmHeard)) {
        session().ports().sound->soundAlarm(true);
        m_course->happened(Cue::AlarmHeard, secondsNow());
    }
    const double starts = *m_course->due(Cue::LeafStarts);
    const double stops = *m_course->due(Cue::LeafStops);
    if (now >= starts && !m_course->hasHappened(Cue::LeafStops)) {
        m_drawing->setProgress(std::clamp((now - starts) / (stops - starts), 0.02, 1.0));
        m_drawing->repaint();
        if (!m_course->hasHappened(Cue::LeafStarts))
            m_course->happened(Cue::LeafStarts, secondsNow());
        if (now >= stops)
            m_course->happened(Cue::LeafStops, secondsNow());
    }
    const bool over = m_course->hasHappened(Cue::LeafStops) && !m_course->awaited();
    if (over || m_course->isMissed(now))
        finishTrial();
}

/// Answers by no cue, unlike the stopwatch: who listens for the alarm must hear nothing else.
void DrillScreen::mark(const MarkPress& press) {
    if (!m_course || !m_frames.isActive())
        return;
    m_course->mark(double(press.steady_ns - m_began_ns) / 1e9);
    showAwaited();
}

void DrillScreen::finishTrial() {
    m_frames.stop();
    session().ports().sound->soundAlarm(false);
    m_said->setText(m_course->awaited() ? tr("That one was missed: it will be repeated.")
                                        : QString());
    m_course->next();
    if (!m_course->isOver()) {
        m_pause.start();
        return;
    }
    session().ports().sound->close();
    m_result->show(m_course->drill());
    m_pages->setCurrentWidget(m_result);
    m_result->keepKey()->setFocus();
}

void DrillScreen::keep() {
    // Where it cannot be saved the session keeps it waiting and says so.
    (void)session().record(m_course->drill());
    m_course.reset();
    emit done();
}

void DrillScreen::hideEvent(QHideEvent* event) {
    m_frames.stop();
    m_course.reset();
    session().ports().sound->close();
    Screen::hideEvent(event);
}

void DrillScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit done();
    else if (m_pages->currentWidget() != m_trial || !m_key->press(event))
        Screen::keyPressEvent(event);
}

} // namespace latchround::ui

#include "moc_drill_screen.cpp"
