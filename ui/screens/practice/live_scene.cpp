#include "ui/screens/practice/live_scene.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/figures/figure_label.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/sound.h"
#include "ui/screens/practice/edge_view.h"
#include "ui/screens/practice/scene_view.h"
#include "ui/screens/screen.h"
#include "ui/words/voice_words.h"

namespace latchround::ui {
namespace {

constexpr int live_frame_ms = 33;
constexpr double column_mm = 46;
constexpr double narrow_column_mm = 40;

} // namespace

LiveScene::LiveScene(VesselSession& session, practice::Stage& stage, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_stage(stage)
    , m_view(new SceneView)
    , m_edge(new EdgeView)
    , m_elapsed(new FigureLabel(TextSize::Display, tr("s")))
    , m_lines(new QHBoxLayout(this))
    , m_column(new QWidget)
    , m_keys(new QVBoxLayout(m_column))
    , m_work(keyOf({}, "work-release", "primary"))
    , m_clear(keyOf(tr("Clear the path"), "clear-path"))
    , m_alarm(new Label(tr("ALARM"), TextSize::Title, Ink::Bad, true))
    , m_voice(new Label({}, TextSize::Lead)) {
    setObjectName(QStringLiteral("live-scene"));
    setRole(*m_work, "primary", true);
    m_work->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_clear->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_voice->setObjectName(QStringLiteral("voice"));
    m_voice->setAlignment(Qt::AlignCenter);
    m_voice->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_alarm->setObjectName(QStringLiteral("alarm-sounds"));
    m_alarm->setAlignment(Qt::AlignCenter);
    m_alarm->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_view->setTouchable(false);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addWidget(m_view, 4);
    m_lines->addWidget(m_edge, 9);
    m_lines->addWidget(m_elapsed);
    m_elapsed->setObjectName(QStringLiteral("scene-elapsed"));
    m_elapsed->setRoomFor(QStringLiteral("00.00"));
    m_elapsed->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_elapsed->hide();
    m_lines->addWidget(m_column);
    m_keys->setContentsMargins(0, 0, 0, 0);
    m_keys->addWidget(m_work, 1);
    m_keys->addWidget(m_alarm);
    m_keys->addWidget(m_voice, 1);
    m_keys->addWidget(m_clear);
    // At the press: the leaf is let go when the hand moves, not when it lifts.
    connect(m_work, &QPushButton::pressed, this, &LiveScene::work);
    connect(m_clear, &QPushButton::clicked, this, [this] {
        m_stage.clearWay();
        m_work->setFocus(); // what comes next
        refresh();
    });
    m_clock.setInterval(live_frame_ms);
    m_clock.setTimerType(Qt::PreciseTimer);
    connect(&m_clock, &QTimer::timeout, this, &LiveScene::refresh);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    LiveScene::lookChanged();
}

void LiveScene::setReady(const QString& door, Release release, RunKind kind, const QString& group) {
    m_door = door;
    m_release = release;
    m_kind = kind;
    m_is_ready = true;
    m_stopped = false;
    m_stage.setReady(door.toStdString(), release, kind, group.toStdString());
    if (const GradedDoor* graded = m_session.door(door)) {
        const practice::DoorTruth& truth = m_stage.truth(door.toStdString());
        m_view->setDoor(*graded->door, truth);
        m_edge->setDoor(*graded->door, truth);
    }
    // One stands where one works the release.
    const Side side = release == Release::LocalSideTwo ? Side::Two : Side::One;
    m_view->setSide(side);
    m_edge->setSide(side);
    m_edge->setBlock(kind == RunKind::Contact);
    refresh();
}

void LiveScene::stop() {
    m_is_ready = false;
    m_stopped = true;
    m_stage.stop(m_session.clock().steadyNow_ns());
    refresh();
}

void LiveScene::finish(const FactId& run) {
    m_is_ready = false;
    m_stage.finish(run, m_session.clock().steadyNow_ns());
    refresh();
}

void LiveScene::work() {
    if (!m_is_ready)
        return;
    m_is_ready = false;
    m_stage.release(m_session.clock().steadyNow_ns());
    // The key is about to go. What has the keyboard next must be the stopwatch: space is its mark.
    if (Screen* on = screen())
        on->setFocus();
    refresh();
}

void LiveScene::refresh() {
    if (m_door.isEmpty())
        return;
    const practice::DoorView view =
        m_stage.view(m_door.toStdString(), m_session.clock().steadyNow_ns());
    m_view->setView(view);
    m_edge->setView(view);
    showKeys(view);
    showElapsed();
    sound(view.alarm && isVisible());
}

void LiveScene::showKeys(const practice::DoorView& view) {
    const QString words = workWords(m_release, m_kind);
    if (m_work->text() != words)
        m_work->setText(words);
    m_work->setVisible(m_is_ready);
    m_clear->setVisible(m_is_ready); // whether there is anything to clear is for the eye to say
    m_alarm->setVisible(view.alarm);
    m_voice->setVisible(!m_is_ready);
    if (const QString said = voiceWords(m_stopped ? practice::Voice::Stopped : view.voice);
        m_voice->text() != said)
        m_voice->setText(said);
}

Screen* LiveScene::screen() const {
    for (QWidget* above = parentWidget(); above; above = above->parentWidget())
        if (auto* on = qobject_cast<Screen*>(above))
            return on;
    return nullptr;
}

/// Just where the stopwatch has no room for its readings beside a scene.
void LiveScene::showElapsed() {
    const Screen* on = screen();
    const bool shown = m_stopwatch && on && on->isSmall() && !on->isUpright();
    if (m_elapsed->isHidden() == shown)
        m_elapsed->setVisible(shown);
    if (shown)
        m_elapsed->setFigure(m_stopwatch->figure());
}

void LiveScene::sound(bool alarm) {
    if (alarm == m_sounds)
        return;
    m_sounds = alarm;
    m_session.ports().sound->soundAlarm(alarm);
}

QSize LiveScene::sizeHint() const {
    return {int(mm(248)), minimumSizeHint().height()};
}

QSize LiveScene::minimumSizeHint() const {
    // Room for both keys, one above the other, and more where the window has it to give: the keys
    // below want all they can get.
    const int keys = 2 * sizes().target + sizes().gap;
    return {int(mm(130)), std::max(keys, (window()->height() - int(mm(60))) / 5)};
}

void LiveScene::lookChanged() {
    m_lines->setSpacing(sizes().gap);
    m_keys->setSpacing(sizes().gap);
    m_work->setFont(font(TextSize::Lead, true));
    m_elapsed->setMinimumWidth(m_elapsed->sizeHint().width());
    Part::lookChanged();
}

void LiveScene::resizeEvent(QResizeEvent* event) {
    updateGeometry(); // with the window
    // Where there is room for one picture, the edge stays: it is what is timed.
    const bool narrow = width() < mm(130);
    m_view->setVisible(!narrow);
    m_lines->setStretchFactor(m_view, narrow ? 0 : 4); // what is hidden would keep its share
    m_edge->setMinimumWidth(narrow ? int(mm(24)) : 0);
    m_column->setFixedWidth(int(mm(narrow ? narrow_column_mm : column_mm)));
    Part::resizeEvent(event);
}

void LiveScene::showEvent(QShowEvent* event) {
    updateGeometry(); // the window is known
    Part::showEvent(event);
    (void)m_session.ports().sound->ready(); // without one the alarm is seen only
    m_clock.start();
    refresh();
}

void LiveScene::hideEvent(QHideEvent* event) {
    Part::hideEvent(event);
    m_clock.stop();
    sound(false);
    m_session.ports().sound->close();
}

} // namespace latchround::ui

#include "moc_live_scene.cpp"
