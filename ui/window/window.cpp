#include "ui/window/window.h"

#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimeZone>
#include <QTimer>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/tab_stops.h"
#include "ui/look/look.h"
#include "ui/ports/settings.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/drill/drill_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/plan/plan_screen.h"
#include "ui/screens/practice/practice_frame.h"
#include "ui/screens/practice/practice_screen.h"
#include "ui/screens/review/review_screen.h"
#include "ui/screens/rules/rules_screen.h"
#include "ui/screens/stopwatch/cut_short_sheet.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/sheets/message.h"
#include "ui/sheets/paper_sheet.h"
#include "ui/window/not_saved_banner.h"
#include "ui/window/undo_sheet.h"
#include "ui/words/phrase_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

constexpr int wall_clock_ms = 5000;

} // namespace

Window::Window(VesselSession& session, Look& look, practice::Stage* stage)
    : m_session(session)
    , m_look(look)
    , m_stage(stage)
    , m_screens(new QStackedWidget)
    , m_banner(new NotSavedBanner(session, this))
    , m_home(new HomeScreen(session))
    , m_plan(new PlanScreen(session))
    , m_review(new ReviewScreen(session))
    , m_door(new DoorScreen(session))
    , m_caution(new CautionScreen(session))
    , m_drill(new DrillScreen(session))
    , m_stopwatch(new StopwatchScreen(session))
    , m_practice(new PracticeScreen(session))
    , m_rules(new RulesScreen(session))
    , m_cut_short(new CutShort(session, this))
    , m_wall(new QTimer(this))
    , m_undo_keys(new QShortcut(this)) {
    setObjectName(QStringLiteral("latchround-window"));
    setWindowTitle(QString::fromStdString(session.arrangement().particulars.name) +
                   QStringLiteral(" · Latchround"));
    setMinimumSize(640, 480);
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(0, 0, 0, 0);
    auto* inside = new QWidget;
    auto* lines = new QVBoxLayout(inside);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(0);
    lines->addWidget(m_banner);
    lines->addWidget(m_screens, 1);
    m_screens->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    for (Screen* screen :
         std::initializer_list<Screen*>{m_home, m_plan, m_review, m_door, m_caution, m_drill,
                                        m_stopwatch, m_practice, m_rules})
        addScreen(screen);
    if (m_stage)
        addPractice(inside);
    around->addWidget(m_frame ? static_cast<QWidget*>(m_frame) : inside);
    connect(m_home, &HomeScreen::doorChosen, this, &Window::showDoor);
    connect(m_home, &HomeScreen::beginAsked, this, [this] { turnTo(m_plan); });
    connect(m_home, &HomeScreen::reportAsked, this, &Window::printReport);
    connect(m_home, &HomeScreen::planAsked, this, &Window::plan);
    connect(m_home, &HomeScreen::reviewAsked, this, &Window::showReview);
    connect(m_review, &ReviewScreen::retestAsked, this,
            [this] { plan(Purpose::AfterRepair, ScopeKind::Retest); });
    connect(&m_review->bar(), &TopBar::back, this, &Window::showHome);
    connect(m_home, &HomeScreen::drillAsked, this, &Window::startDrill);
    connect(m_drill, &DrillScreen::done, this, &Window::showHome);
    connect(&m_drill->bar(), &TopBar::back, this, &Window::showHome);
    connect(m_home, &HomeScreen::practiceAsked, this, &Window::showPractice);
    connect(&m_practice->bar(), &TopBar::back, this, &Window::showHome);
    connect(m_home, &HomeScreen::rulesAsked, this, [this] { showRules(); });
    connect(m_door, &DoorScreen::rulesAsked, this, &Window::showRules);
    connect(&m_rules->bar(), &TopBar::back, this, &Window::leaveRules);
    connect(m_home, &HomeScreen::settingsAsked, this, &Window::showSettings);
    connect(m_home, &HomeScreen::unfinishedRunFound, m_cut_short, &CutShort::ask);
    connect(m_plan, &PlanScreen::begun, this, &Window::showDoor);
    connect(&m_plan->bar(), &TopBar::back, this, &Window::showHome);
    connect(m_door, &DoorScreen::timeAsked, this, &Window::time);
    connect(m_door, &DoorScreen::walkDone, this, &Window::showHome);
    connect(&m_door->bar(), &TopBar::back, this, &Window::showHome);
    connect(m_caution, &CautionScreen::armed, this,
            [this](const QString& door, const QString& group) {
                arm(door, Release::Remote, RunKind::Closing, group);
            });
    connect(&m_caution->bar(), &TopBar::back, this, [this] { turnTo(m_door); });
    connect(m_stopwatch, &StopwatchScreen::done, this, [this] { turnTo(m_door); });
    connect(m_stopwatch, &StopwatchScreen::againAsked, this, &Window::time);
    connect(m_wall, &QTimer::timeout, this, &Window::tellTime);
    m_wall->start(wall_clock_ms);
    for (Screen* screen :
         std::initializer_list<Screen*>{m_home, m_plan, m_review, m_door, m_caution}) {
        screen->bar().setUndo(true);
        connect(&screen->bar(), &TopBar::undoAsked, this, &Window::undo);
    }
    // One sheet takes back and puts back.
    m_undo_keys->setKeys(QKeySequence::keyBindings(QKeySequence::Undo) +
                         QKeySequence::keyBindings(QKeySequence::Redo));
    connect(m_undo_keys, &QShortcut::activated, this, &Window::undo);
    connect(&session, &VesselSession::recorded, this, [this] { tellTap(); });
    connect(&session, &VesselSession::waitingChanged, this, [this] { tellTap(); });
    connect(&session, &VesselSession::refused, this,
            [this](const Error& why) { showMessage(tr("Not recorded"), errorWords(why)); });
    connect(&session, &VesselSession::walkdownChanged, this, &Window::leaveEndedWalkdown);
    tellTap();
    tellTime();
    showHome();
}

void Window::addScreen(Screen* screen) {
    m_screens->addWidget(screen);
    connect(&screen->bar(), &TopBar::lightAsked, this, &Window::nextLight);
}

void Window::turnTo(Screen* screen) {
    m_screens->setCurrentWidget(screen);
    if (m_stage)
        offerPracticeKeys();
    tellTime();
    screen->enter();
}

void Window::showPractice() {
    turnTo(m_practice);
}

void Window::showHome() {
    turnTo(m_home);
}

void Window::showReview(const FactId& item) {
    turnTo(m_review);
    m_review->choose(item);
}

void Window::showRules(const QString& door, const QString& row) {
    m_rules->openAt(door, row);
    turnTo(m_rules);
}

void Window::leaveRules() {
    if (!m_rules->door().isEmpty() && m_session.door(m_rules->door()))
        turnTo(m_door);
    else
        showHome();
}

void Window::plan(Purpose purpose, ScopeKind scope) {
    m_plan->propose(purpose, scope);
    turnTo(m_plan);
}

void Window::showDoor(const QString& number) {
    m_door->setDoor(number);
    turnTo(m_door);
}

void Window::time(const QString& door, Release release, RunKind kind) {
    if (release == Release::Remote && kind == RunKind::Closing) {
        m_caution->setDoor(door);
        turnTo(m_caution);
    } else {
        arm(door, release, kind);
    }
}

void Window::arm(const QString& door, Release release, RunKind kind, const QString& group) {
    if (const Result<> armed = m_stopwatch->begin(door, release, kind, group); armed)
        turnTo(m_stopwatch);
    else
        showMessage(tr("Not armed"), errorWords(armed.error()));
}

void Window::printReport(const QString& walkdown) {
    makePaper(m_session, ReportKind::Survey, walkdown.toStdString(), {}, this);
}

void Window::nextLight() {
    const auto next = Light((int(m_look.appearance().light) + 1) % 3);
    m_look.setLight(next);
    m_session.ports().settings->keepSetting(QStringLiteral("light"), QString::number(int(next)));
}

/// What a screen shows of a door is of the walkdown under way: it does not outlive it.
void Window::leaveEndedWalkdown() {
    const QWidget* shown = m_screens->currentWidget();
    const bool of_door = shown == m_door || shown == m_caution || shown == m_stopwatch;
    if (!of_door || (m_session.isUnderWay() && m_session.door(m_door->door())))
        return;
    for (Sheet* sheet : findChildren<Sheet*>(Qt::FindDirectChildrenOnly))
        sheet->close();
    showHome();
}

/// Where the screen in front has no undo of its own, as the stopwatch and the drill have, and
/// nothing lies over it.
void Window::keyPressEvent(QKeyEvent* event) {
    QWidget* front = m_screens->currentWidget();
    const QWidget* at = focusWidget();
    const bool was_asked = at == front || (at && front->isAncestorOf(at));
    if (was_asked || openSheet())
        QWidget::keyPressEvent(event);
    else
        static_cast<QObject*>(front)->event(event);
}

void Window::undo() {
    const QWidget* shown = m_screens->currentWidget();
    if (shown == m_stopwatch || shown == m_drill || openSheet() || !canUndo(m_session))
        return;
    const bool of_a_door = shown == m_door || shown == m_caution;
    openUndo(m_session, this, of_a_door ? m_door->door() : QString(),
             [this](const QString& done) { tellTap(done); });
}

const Sheet* Window::openSheet() const {
    for (const Sheet* sheet : findChildren<Sheet*>(Qt::FindDirectChildrenOnly))
        if (sheet->isVisible())
            return sheet;
    return nullptr;
}

void Window::tellTap(const QString& undone) {
    QString saved = undone;
    if (m_session.isSavingShortly())
        saved = tr("saving…");
    else if (m_session.waiting() > 0)
        saved = tr("NOT SAVED (%1)").arg(m_session.waiting());
    else if (saved.isEmpty() && m_session.savedAt())
        saved =
            tr("saved %1").arg(shipTime(*m_session.savedAt()).toString(QStringLiteral("HH:mm:ss")));
    const bool can_undo = canUndo(m_session);
    for (int i = 0; i < m_screens->count(); ++i)
        static_cast<Screen*>(m_screens->widget(i))->bar().setTap(can_undo, saved);
}

void Window::tellTime() {
    const Moment now = m_session.clock().now();
    const QDateTime ship =
        QDateTime::fromMSecsSinceEpoch(now.utc_ms, QTimeZone(now.ship_offset_minutes * 60));
    const int minutes = std::abs(now.ship_offset_minutes);
    QString offset =
        QStringLiteral("UTC%1%2")
            .arg(now.ship_offset_minutes < 0 ? QStringLiteral("−") : QStringLiteral("+"))
            .arg(minutes / 60);
    if (minutes % 60 != 0)
        offset += QStringLiteral(":%1").arg(minutes % 60, 2, 10, QLatin1Char('0'));
    const QString words = tr("%1 ship (%2)").arg(ship.toString(QStringLiteral("HH:mm")), offset);
    for (int i = 0; i < m_screens->count(); ++i)
        static_cast<Screen*>(m_screens->widget(i))->bar().setTime(words);
}

void Window::showMessage(const QString& title, const QString& words) {
    ui::showMessage(this, title, words);
}

bool Window::focusNextPrevChild(bool next) {
    if (const Sheet* sheet = openSheet()) // what lies below it waits
        return tabOn(tabStops(*sheet), next);
    return tabOn(tabStops(*this), next);
}

void Window::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), lookOf(this).colours.paper);
}

} // namespace latchround::ui

#include "moc_window.cpp"
