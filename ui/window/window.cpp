#include "ui/window/window.h"

#include <QLocale>
#include <QPainter>
#include <QStackedWidget>
#include <QTimeZone>
#include <QTimer>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/measure/interval.h"
#include "ui/look/look.h"
#include "ui/parts/date_words.h"
#include "ui/parts/sheet.h"
#include "ui/parts/top_bar.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/drill/drill_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/plan/plan_screen.h"
#include "ui/screens/practice/practice_frame.h"
#include "ui/screens/practice/practice_screen.h"
#include "ui/screens/review/review_screen.h"
#include "ui/screens/settings/decision_sheet.h"
#include "ui/screens/settings/settings_sheet.h"
#include "ui/screens/stopwatch/cut_short_sheet.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/sheets/paper_sheet.h"
#include "ui/sheets/told.h"
#include "ui/window/not_saved_banner.h"

namespace latchround::ui {

namespace {

constexpr int wall_clock_ms = 5000;

} // namespace

Window::Window(Round& round, Look& look, practice::Stage* stage)
    : m_round(round)
    , m_look(look)
    , m_stage(stage)
    , m_screens(new QStackedWidget)
    , m_banner(new NotSavedBanner(round))
    , m_home(new HomeScreen(round))
    , m_plan(new PlanScreen(round))
    , m_review(new ReviewScreen(round))
    , m_door(new DoorScreen(round))
    , m_caution(new CautionScreen(round))
    , m_drill(new DrillScreen(round))
    , m_stopwatch(new StopwatchScreen(round))
    , m_practice(new PracticeScreen(round))
    , m_cut_short(new CutShort(round, this))
    , m_wall(new QTimer(this)) {
    setObjectName(QStringLiteral("latchround-window"));
    setWindowTitle(QString::fromStdString(round.arrangement().particulars.name) +
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
    for (Screen* screen : std::initializer_list<Screen*>{
             m_home, m_plan, m_review, m_door, m_caution, m_drill, m_stopwatch, m_practice})
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
    if (const Done armed = m_stopwatch->begin(door, release, kind, group); armed)
        turnTo(m_stopwatch);
    else
        tell(tr("Not armed"), QString::fromStdString(inOneLine(armed.error())));
}

void Window::printReport(const QString& walkdown) {
    makePaper(m_round, Paper::Survey, walkdown.toStdString(), {}, this);
}

void Window::takeInFlagRules() {
    const Checked<std::optional<QString>> taken = m_round.outside().takeInFlagRules(this);
    if (!taken) // else the vessel is opened anew under its rules
        tellFaults(this, tr("Not taken in"), taken.error());
}

void Window::showSettings() {
    auto* sheet = new Sheet(this, tr("Settings"));
    Outside& outside = m_round.outside();
    auto* settings = new SettingsSheet(outside.flagRules(), thumbWords());
    connect(settings, &SettingsSheet::drillAsked, sheet, [this, sheet] {
        sheet->close();
        startDrill();
    });
    connect(settings, &SettingsSheet::decisionAsked, sheet, [this, sheet] {
        sheet->close();
        showDecision();
    });
    connect(settings, &SettingsSheet::flagRulesAsked, sheet, [this, sheet] {
        sheet->close();
        takeInFlagRules();
    });
    connect(settings, &SettingsSheet::flagRulesLeft, sheet, [this, sheet, &outside] {
        sheet->close();
        if (const Done left = outside.leaveFlagRules(); !left)
            tell(tr("Not done"), QString::fromStdString(inOneLine(left.error())));
    });
    connect(settings, &SettingsSheet::lightChosen, this, [this, &outside](Light light) {
        m_look.setLight(light);
        outside.keepSetting(QStringLiteral("light"), QString::number(int(light)));
    });
    connect(settings, &SettingsSheet::glovesChosen, this, [this, &outside](bool gloves) {
        m_look.setGloves(gloves);
        outside.keepSetting(QStringLiteral("gloves"), gloves ? QStringLiteral("1") : QString());
    });
    connect(settings, &SettingsSheet::calmChosen, this, [this, &outside](bool calm) {
        m_look.setCalmMotion(calm);
        outside.keepSetting(QStringLiteral("calm"), calm ? QStringLiteral("1") : QString());
    });
    sheet->setContent(settings);
    sheet->setWidthMm(220);
    sheet->open();
}

void Window::startDrill() {
    if (m_round.personName().isEmpty())
        tell(tr("Whose thumb?"), tr("Plan a walkdown first and say who records."));
    else
        turnTo(m_drill);
}

QString Window::thumbWords() const {
    const QString name = m_round.personName();
    if (name.isEmpty())
        return {};
    const auto when = m_round.drillTime();
    if (!when)
        return tr("%1 has done no thumb drill on this tablet: published figures stand.").arg(name);
    const CalendarDate day = shipsDay(*when);
    const CalendarDate again = drillDueAfter(day);
    const bool due = again < shipsDay(m_round.outside().now());
    return (due ? tr("%1 did the thumb drill on %2; worth repeating since %3.")
                : tr("%1 did the thumb drill on %2; worth repeating after %3."))
        .arg(name, dateWords(day), dateWords(again));
}

void Window::showDecision() {
    auto* sheet = new Sheet(this, tr("When a figure passes or fails"));
    const Ledger& ledger = m_round.ledger();
    const FactId walkdown = m_round.isUnderWay() ? m_round.walkdown()->id : FactId();
    const Reading run = timed(Interval{}, MarkKind::LeafMoves, MarkKind::Shut, m_round.thumb());
    auto* decision = new DecisionSheet(ledger.limitsFor(walkdown), run.u());
    connect(decision, &DecisionSheet::chosen, sheet, [this, sheet](const DecisionLimits& limits) {
        sheet->close();
        (void)m_round.record(limits);
    });
    sheet->setContent(decision);
    sheet->setWidthMm(180);
    sheet->open();
}

void Window::nextLight() {
    const auto next = Light((int(m_look.appearance().light) + 1) % 3);
    m_look.setLight(next);
    m_round.outside().keepSetting(QStringLiteral("light"), QString::number(int(next)));
}

void Window::tellTime() {
    const Moment now = m_round.outside().now();
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

void Window::tell(const QString& title, const QString& words) {
    ui::tell(this, title, words);
}

void Window::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), lookOf(this).colours.paper);
}

} // namespace latchround::ui
