#include "ui/screens/practice/scene_screen.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/door_words.h"
#include "ui/parts/key_grid.h"
#include "ui/parts/lettering.h"
#include "ui/parts/top_bar.h"
#include "ui/screens/practice/close_up.h"
#include "ui/screens/practice/papers_page.h"
#include "ui/screens/practice/scene_view.h"
#include "ui/screens/practice/voice_words.h"

namespace latchround::ui {
namespace {

constexpr int scene_frame_ms = 33;
constexpr double seen_shut = 0.004; ///< of the opening: nobody sees a gap

} // namespace

SceneScreen::SceneScreen(Round& the_round, practice::Stage& stage, QWidget* parent)
    : Screen(the_round, parent)
    , m_stage(stage)
    , m_view(new SceneView)
    , m_close_up(new CloseUp)
    , m_papers(new PapersPage)
    , m_pictures(new QStackedWidget)
    , m_side(keyOf(tr("Other side"), "scene-side"))
    , m_back(keyOf(tr("‹ Whole door"), "scene-whole"))
    , m_lift(keyOf(tr("Lift the cover"), "lift-port"))
    , m_voice(new Lettering({}, TextSize::Lead))
    , m_trials(new KeyGrid)
    , m_spots(new KeyGrid)
    , m_look_title(new Lettering(tr("Look closer"), TextSize::Heading, Ink::Plain, true))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight, page())) {
    setObjectName(QStringLiteral("scene-screen"));
    m_sides->setContentsMargins(0, 0, 0, 0);
    m_sides->addWidget(makePicture(), 5);
    auto* list = new QWidget;
    auto* lines = new QVBoxLayout(list);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_look_title);
    lines->addWidget(m_spots);
    lines->addStretch(1);
    makeSpotKeys();
    m_sides->addWidget(list, 3);
    m_clock.setInterval(scene_frame_ms);
    connect(&m_clock, &QTimer::timeout, this, &SceneScreen::refresh);
    bar().setBack(true);
    setFocusPolicy(Qt::StrongFocus);
    SceneScreen::lookChanged();
}

QWidget* SceneScreen::makePicture() {
    auto* picture = new QWidget;
    auto* lines = new QVBoxLayout(picture);
    lines->setContentsMargins(0, 0, 0, 0);
    m_pictures->addWidget(m_view);
    m_pictures->addWidget(m_close_up);
    m_pictures->addWidget(m_papers);
    m_pictures->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    lines->addWidget(m_pictures, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_side);
    foot->addWidget(m_back);
    foot->addWidget(m_lift);
    m_voice->setObjectName(QStringLiteral("voice"));
    m_voice->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    foot->addWidget(m_voice, 1);
    lines->addLayout(foot);
    lines->addWidget(makeTrials());
    connect(m_side, &QPushButton::clicked, this, &SceneScreen::otherSide);
    connect(m_back, &QPushButton::clicked, this, &SceneScreen::standBack);
    connect(m_view, &SceneView::spotTouched, this, &SceneScreen::lookAt);
    connect(m_close_up, &CloseUp::portTouched, this, &SceneScreen::liftPort);
    connect(m_lift, &QPushButton::clicked, this, &SceneScreen::liftPort);
    return picture;
}

QWidget* SceneScreen::makeTrials() {
    m_push = keyOf(tr("Push the leaf"), "try-push");
    auto* opening = keyOf(tr("Open it, let go"), "try-open");
    auto* clear = keyOf(tr("Clear the path"), "clear-path");
    auto* ask = keyOf(tr("Ask the station"), "ask-panel");
    ask->setAccessibleName(tr("Ask the control station what its panel shows"));
    for (QPushButton* key : {m_push, opening, clear, ask})
        m_trials->add(key);
    connect(m_push, &QPushButton::clicked, this, &SceneScreen::tryPush);
    connect(opening, &QPushButton::clicked, this, &SceneScreen::tryOpening);
    connect(clear, &QPushButton::clicked, this, &SceneScreen::clearPath);
    connect(ask, &QPushButton::clicked, this, &SceneScreen::askPanel);
    return m_trials;
}

void SceneScreen::makeSpotKeys() {
    for (int i = 0; i <= int(Spot::Papers); ++i) {
        const Spot spot = Spot(i);
        const QByteArray name = ("spot-" + spotName(spot)).toLatin1();
        QPushButton* key = keyOf(spotWords(spot), name.constData(), "choice");
        key->setCheckable(true);
        connect(key, &QPushButton::clicked, this, [this, spot](bool chosen) {
            if (chosen)
                lookAt(spot);
            else
                standBack();
        });
        m_spots->add(key);
        m_spot_keys[spot] = key;
    }
}

void SceneScreen::showKeysOf(const Door& door) {
    const std::vector<Spot> here = spotsOf(door);
    for (const auto& [spot, key] : m_spot_keys)
        key->setVisible(std::ranges::find(here, spot) != here.end());
    m_push->setVisible(door.latch);
    m_spots->arrange();
    m_trials->arrange();
}

void SceneScreen::setDoor(const QString& door) {
    const GradedDoor* graded = round().door(door);
    if (!graded)
        return;
    m_door = door;
    const practice::DoorTruth& truth = m_stage.truth(door.toStdString());
    m_view->setDoor(*graded->door, truth);
    m_close_up->setDoor(*graded->door, truth);
    m_papers->setDoor(*graded);
    m_told.clear();
    showKeysOf(*graded->door);
    standBack();
    refresh();
}

void SceneScreen::enter() {
    setFocus();
    refresh();
}

void SceneScreen::refresh() {
    if (m_door.isEmpty())
        return;
    const practice::DoorView view = m_stage.view(m_door.toStdString(), now());
    m_view->setView(view);
    m_close_up->setView(view, now());
    m_close_up->setReopened(reopened_m());
    const QString said = voiceWords(view.voice);
    const QString words = m_told.isEmpty() ? said : m_told;
    if (m_voice->text() != words)
        m_voice->setText(words);
}

std::optional<double> SceneScreen::reopened_m() const {
    for (const practice::TrueRun& run : m_stage.runs())
        if (run.door == m_door.toStdString() && run.kind == RunKind::Contact &&
            std::ranges::find(run.events, MarkKind::Stopped, &practice::TrueEvent::mark) !=
                run.events.end())
            return m_stage.truth(run.door).reopens_m;
    return std::nullopt;
}

void SceneScreen::lookAt(Spot spot) {
    for (const auto& [each, key] : m_spot_keys)
        key->setChecked(each == spot);
    m_close_up->setSpot(spot);
    m_pictures->setCurrentWidget(spot == Spot::Papers ? static_cast<QWidget*>(m_papers)
                                                      : m_close_up);
    m_back->show();
    m_lift->setVisible(spot == Spot::HosePort && round().door(m_door)->door->hose_port);
    m_side->hide();
}

void SceneScreen::standBack() {
    for (const auto& [each, key] : m_spot_keys)
        key->setChecked(false);
    m_pictures->setCurrentWidget(m_view);
    const bool had_focus = m_back->hasFocus() || m_lift->hasFocus();
    m_side->show();
    m_back->hide();
    m_lift->hide();
    if (had_focus)
        m_side->setFocus();
    const QString side = m_view->side() == Side::Two ? tr("side two") : tr("side one");
    bar().setTitle(tr("At door %1").arg(m_door), side);
}

void SceneScreen::otherSide() {
    m_view->setSide(m_view->side() == Side::Two ? Side::One : Side::Two);
    standBack();
}

void SceneScreen::liftPort() {
    m_close_up->liftPort(now());
}

bool SceneScreen::isShut() const {
    const practice::DoorView view = m_stage.view(m_door.toStdString(), now());
    const GradedDoor* graded = round().door(m_door);
    return view.open < seen_shut &&
           (!graded || graded->door->kind != DoorKind::DoubleLeaf || view.second_open < seen_shut);
}

void SceneScreen::tell(const QString& words) {
    m_told = words;
    refresh();
}

void SceneScreen::tryPush() {
    standBack();
    if (!isShut()) {
        tell(tr("It is not shut. Let it shut first, with the stopwatch."));
        return;
    }
    m_stage.push(m_door.toStdString(), now());
    tell(tr("You push it from the other side, hard."));
}

void SceneScreen::tryOpening() {
    standBack();
    if (!isShut()) {
        tell(tr("It is not shut. Let it shut first, with the stopwatch."));
        return;
    }
    m_stage.openAgain(m_door.toStdString(), now());
    tell(m_view->side() == Side::Two ? tr("You open it from side two and let go.")
                                     : tr("You open it from side one and let go."));
}

void SceneScreen::clearPath() {
    m_stage.clearPath(m_door.toStdString());
    tell(tr("Nobody and nothing is in the way now."));
}

void SceneScreen::askPanel() {
    m_stage.askPanel(m_door.toStdString(), now());
    tell({});
}

void SceneScreen::arrange(bool upright) {
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setStretch(0, upright ? 1 : 5);
    m_sides->setStretch(1, upright ? 0 : 3);
}

void SceneScreen::lookChanged() {
    Screen::lookChanged();
    m_sides->setSpacing(sizes().main_gap);
}

void SceneScreen::showEvent(QShowEvent* event) {
    Screen::showEvent(event);
    m_clock.start();
    refresh();
}

void SceneScreen::hideEvent(QHideEvent* event) {
    Screen::hideEvent(event);
    m_clock.stop();
}

void SceneScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || event->isAutoRepeat()) {
        Screen::keyPressEvent(event);
        return;
    }
    if (m_pictures->currentWidget() != m_view)
        standBack();
    else
        emit bar().back();
}

} // namespace latchround::ui
