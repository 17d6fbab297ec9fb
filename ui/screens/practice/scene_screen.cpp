#include "ui/screens/practice/scene_screen.h"

#include <algorithm>

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/frames/top_bar.h"
#include "ui/keys/key_grid.h"
#include "ui/keys/page_tabs.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/practice/close_up.h"
#include "ui/screens/practice/papers_page.h"
#include "ui/screens/practice/scene_view.h"
#include "ui/screens/practice/spot_keys.h"
#include "ui/words/door_words.h"
#include "ui/words/voice_words.h"

namespace latchround::ui {
namespace {

constexpr int scene_frame_ms = 33;
constexpr double seen_shut = 0.004;   ///< of the opening: nobody sees a gap
constexpr double keys_column_mm = 24; ///< of the keys beside the picture of a small screen

} // namespace

SceneScreen::SceneScreen(VesselSession& the_round, practice::Stage& stage, QWidget* parent)
    : Screen(the_round, parent)
    , m_stage(stage)
    , m_tabs(new PageTabs(QStringLiteral("scene-part"), {tr("Door"), tr("Look"), tr("Test")},
                          {tr("The whole door"), tr("Close-up"), tr("Test and ask")}))
    , m_view(new SceneView)
    , m_close_up(new CloseUp)
    , m_papers(new PapersPage)
    , m_pictures(new QStackedWidget)
    , m_foot(new QWidget)
    , m_foot_line(new QBoxLayout(QBoxLayout::LeftToRight, m_foot))
    , m_side(keyOf(tr("Other side"), "scene-side"))
    , m_back(keyOf(tr("‹ Whole door"), "scene-whole"))
    , m_lift(keyOf(tr("Lift the cover"), "lift-port"))
    , m_voice(new Label({}, TextSize::Lead))
    , m_trials(new KeyGrid)
    , m_list(new QWidget)
    , m_look_title(new Label(tr("Close-up"), TextSize::Heading, Ink::Plain, true))
    , m_spots(new SpotPages)
    , m_grid(new QGridLayout(page())) {
    setObjectName(QStringLiteral("scene-screen"));
    m_grid->setContentsMargins(0, 0, 0, 0);
    makePicture();
    makeFoot();
    makeTrials();
    auto* lines = new QVBoxLayout(m_list);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_look_title);
    lines->addWidget(m_spots, 1);
    makeSpotKeys();
    m_voice->setObjectName(QStringLiteral("voice"));
    m_voice->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(m_tabs, &PageTabs::turned, this, [this](int part) {
        m_shown = Shown(part);
        if (m_shown == Shown::Picture)
            standBack();
        showParts();
    });
    m_clock.setInterval(scene_frame_ms);
    connect(&m_clock, &QTimer::timeout, this, &SceneScreen::refresh);
    bar().setBack(true);
    setFocusPolicy(Qt::StrongFocus);
    place();
    SceneScreen::lookChanged();
}

void SceneScreen::makePicture() {
    m_pictures->addWidget(m_view);
    m_pictures->addWidget(m_close_up);
    m_pictures->addWidget(m_papers);
    m_pictures->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(m_view, &SceneView::spotTouched, this, &SceneScreen::lookAt);
    connect(m_close_up, &CloseUp::portTouched, this, &SceneScreen::liftPort);
}

void SceneScreen::makeFoot() {
    m_foot_line->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* key : {m_side, m_back, m_lift})
        m_foot_line->addWidget(key);
    connect(m_side, &QPushButton::clicked, this, &SceneScreen::otherSide);
    connect(m_back, &QPushButton::clicked, this, &SceneScreen::standBack);
    connect(m_lift, &QPushButton::clicked, this, &SceneScreen::liftPort);
}

void SceneScreen::makeTrials() {
    m_push = keyOf(tr("Push the leaf"), "try-push");
    auto* opening = keyOf(tr("Open it, let go"), "try-open");
    auto* clear = keyOf(tr("Clear the path"), "clear-path");
    auto* ask = keyOf(tr("Panel status"), "ask-panel");
    ask->setAccessibleName(tr("Ask the control station what its panel shows"));
    for (QPushButton* key : {m_push, opening, clear, ask})
        m_trials->add(key);
    connect(m_push, &QPushButton::clicked, this, &SceneScreen::tryPush);
    connect(opening, &QPushButton::clicked, this, &SceneScreen::tryOpening);
    connect(clear, &QPushButton::clicked, this, &SceneScreen::clearPath);
    connect(ask, &QPushButton::clicked, this, &SceneScreen::askPanel);
    // What comes of it is seen and told beside the whole door.
    for (QPushButton* key : {m_push, opening, clear, ask})
        connect(key, &QPushButton::clicked, this, [this] {
            if (isSmall())
                turnTo(Shown::Picture);
        });
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
    const GradedDoor* graded = session().door(door);
    if (!graded)
        return;
    m_door = door;
    const practice::DoorTruth& truth = m_stage.truth(door.toStdString());
    m_view->setDoor(*graded->door, truth);
    m_close_up->setDoor(*graded->door, truth);
    m_papers->setDoor(*graded);
    m_told.clear();
    showKeysOf(*graded->door);
    turnTo(Shown::Picture);
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
    if (isSmall())
        turnTo(Shown::Spots);
    for (const auto& [each, key] : m_spot_keys)
        key->setChecked(each == spot);
    m_close_up->setSpot(spot);
    m_pictures->setCurrentWidget(spot == Spot::Papers ? static_cast<QWidget*>(m_papers)
                                                      : m_close_up);
    m_shown = Shown::Picture;
    showParts();
}

void SceneScreen::standBack() {
    for (const auto& [each, key] : m_spot_keys)
        key->setChecked(false);
    m_pictures->setCurrentWidget(m_view);
    const bool had_focus = m_back->hasFocus() || m_lift->hasFocus();
    showParts();
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
    const GradedDoor* graded = session().door(m_door);
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
        tell(tr("It is not shut. Time its closing first."));
        return;
    }
    m_stage.push(m_door.toStdString(), now());
    tell(tr("You push it hard from the other side."));
}

void SceneScreen::tryOpening() {
    standBack();
    if (!isShut()) {
        tell(tr("It is not shut. Time its closing first."));
        return;
    }
    m_stage.openAgain(m_door.toStdString(), now());
    tell(m_view->side() == Side::Two ? tr("You open it from side two and let go.")
                                     : tr("You open it from side one and let go."));
}

void SceneScreen::clearPath() {
    m_stage.clearPath(m_door.toStdString());
    tell(tr("The way is clear now."));
}

void SceneScreen::askPanel() {
    m_stage.askPanel(m_door.toStdString(), now());
    tell({});
}

bool SceneScreen::isStandingBack() const {
    return m_pictures->currentWidget() == m_view;
}

/// As if its key had been pressed.
void SceneScreen::turnTo(Shown part) {
    auto* key = m_tabs->findChild<QPushButton*>(QStringLiteral("scene-part-%1").arg(int(part)));
    key->click();
    if (key->isVisible())
        key->setFocus();
}

void SceneScreen::showParts() {
    const bool small = isSmall();
    const auto shows = [&](Shown part) { return !small || m_shown == part; };
    const Spot spot = m_close_up->spot();
    const bool back = isStandingBack();
    const bool port = !back && m_pictures->currentWidget() == m_close_up &&
                      spot == Spot::HosePort && session().door(m_door)->door->hose_port;
    m_tabs->setVisible(small);
    m_pictures->setVisible(shows(Shown::Picture));
    m_voice->setVisible(shows(Shown::Picture));
    m_side->setVisible(back);
    m_back->setVisible(!back && !small); // a small screen has its first tab for it
    m_lift->setVisible(port);
    m_foot->setVisible(shows(Shown::Picture) && (back || port || !small));
    m_list->setVisible(shows(Shown::Spots));
    m_look_title->setVisible(!small);
    m_trials->setVisible(shows(Shown::Trials));
}

void SceneScreen::arrange(bool) {
    place();
    showParts();
}

void SceneScreen::place() {
    const bool upright = isUpright();
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_tabs, m_pictures, m_foot, m_voice, m_trials, m_list})
        m_grid->removeWidget(part);
    for (int i = 0; i < 4; ++i) {
        m_grid->setRowStretch(i, 0);
        m_grid->setColumnStretch(i, 0);
    }
    const bool column = isSmall() && !upright;
    m_foot_line->setDirection(column ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    for (QPushButton* key : {m_side, m_back, m_lift})
        key->setSizePolicy(column ? QSizePolicy::Ignored : QSizePolicy::Minimum,
                           QSizePolicy::Fixed);
    for (QWidget* part : std::initializer_list<QWidget*>{m_tabs, m_foot}) {
        part->setMinimumWidth(column ? int(mm(keys_column_mm)) : 0);
        part->setMaximumWidth(column ? int(mm(keys_column_mm)) : QWIDGETSIZE_MAX);
    }
    m_spots->setRoomy(upright && !isSmall());
    if (isSmall())
        return placeSmall();
    m_grid->addWidget(m_pictures, 0, 0, 1, 2);
    m_grid->addWidget(m_foot, 1, 0);
    m_grid->addWidget(m_voice, 1, 1);
    m_grid->addWidget(m_trials, 2, 0, 1, 2);
    if (upright)
        m_grid->addWidget(m_list, 3, 0, 1, 2);
    else
        m_grid->addWidget(m_list, 0, 2, 3, 1);
    m_grid->setRowStretch(0, 1);
    m_grid->setColumnStretch(1, 5);
    m_grid->setColumnStretch(2, upright ? 0 : 3);
}

/// Lying, the keys stand beside the picture, which needs the height; upright above and below it.
void SceneScreen::placeSmall() {
    const auto in = [this](int row, int rows, int columns) {
        m_grid->addWidget(m_pictures, row, 0, rows, columns);
        m_grid->addWidget(m_list, row, 0, rows, columns);
        m_grid->addWidget(m_trials, row, 0, rows, columns, Qt::AlignTop);
        m_grid->setRowStretch(1, 1);
    };
    if (isUpright()) {
        m_grid->addWidget(m_tabs, 0, 0, 1, 2);
        in(1, 1, 2);
        m_grid->addWidget(m_foot, 2, 0);
        m_grid->addWidget(m_voice, 2, 1);
        m_grid->setColumnStretch(1, 1);
    } else {
        in(0, 3, 1);
        m_grid->addWidget(m_voice, 3, 0);
        m_grid->addWidget(m_tabs, 0, 1);
        m_grid->addWidget(m_foot, 2, 1, 2, 1);
        m_grid->setColumnStretch(0, 1);
    }
}

void SceneScreen::lookChanged() {
    Screen::lookChanged();
    m_grid->setHorizontalSpacing(isSmall() ? sizes().gap : sizes().main_gap);
    m_grid->setVerticalSpacing(sizes().gap);
    m_foot_line->setSpacing(sizes().gap);
    m_list->layout()->setSpacing(sizes().gap);
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
    if (isSmall() && (m_shown != Shown::Picture || !isStandingBack()))
        turnTo(Shown::Picture);
    else if (!isStandingBack())
        standBack();
    else
        emit bar().back();
}

} // namespace latchround::ui

#include "moc_scene_screen.cpp"
