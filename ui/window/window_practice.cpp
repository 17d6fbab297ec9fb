// What is different in the window of an exercise: the frame round it, the doors that move by
// themselves, and the debrief at its end.
#include <QHBoxLayout>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/practice/debrief.h"
#include "ui/figures/figure_label.h"
#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/attempts.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/practice/debrief_screen.h"
#include "ui/screens/practice/live_scene.h"
#include "ui/screens/practice/practice_frame.h"
#include "ui/screens/practice/scene_screen.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/window/window.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

void Window::addPractice(QWidget* inside) {
    setWindowTitle(tr("PRACTICE · %1 · Latchround").arg(catalogueWords(m_stage->exercise().title)));
    m_home->setPractising();
    m_frame = new PracticeFrame(inside);
    m_scene = new SceneScreen(m_session, *m_stage);
    m_debrief = new DebriefScreen(m_session);
    addScreen(m_scene);
    addScreen(m_debrief);
    auto* live = new LiveScene(m_session, *m_stage);
    m_stopwatch->setScene(live);
    live->setElapsed(m_stopwatch->findChild<FigureLabel*>(QStringLiteral("elapsed")));
    connect(m_stopwatch, &StopwatchScreen::ready, live, &LiveScene::setReady);
    connect(m_stopwatch, &StopwatchScreen::stopped, live, &LiveScene::stop);
    connect(m_stopwatch, &StopwatchScreen::ended, live, &LiveScene::finish);
    connect(m_stopwatch, &StopwatchScreen::ended, this, &Window::runFinished);
    connect(m_frame, &PracticeFrame::sceneAsked, this, &Window::showScene);
    connect(m_frame, &PracticeFrame::endAsked, this, &Window::askToEnd);
    connect(&m_scene->bar(), &TopBar::back, this, [this] { turnTo(m_before_scene); });
    connect(m_debrief, &DebriefScreen::done, this, &Window::practiceLeft);
}

void Window::offerPracticeKeys() {
    const auto* shown = static_cast<Screen*>(m_screens->currentWidget());
    m_frame->setBar(shown->bar());
    m_frame->setSceneOffered(shown == m_door || shown == m_caution);
    m_frame->setEndOffered(shown != m_stopwatch && shown != m_debrief);
}

void Window::showScene() {
    m_before_scene = static_cast<Screen*>(m_screens->currentWidget());
    m_scene->setDoor(m_door->door());
    turnTo(m_scene);
}

void Window::askToEnd() {
    const Tally tally = tallyOf(m_session.doors());
    const int doors = int(m_stage->exercise().doors.size());
    auto* sheet = new Sheet(this, tr("End this exercise?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* words = new Label(tally.done == doors
                                ? tr("Every door is done.")
                                : tr("%1 of %2 done. What was not tested counts as not found.")
                                      .arg(tally.done)
                                      .arg(doorCountWords(doors)),
                            TextSize::Lead);
    words->setObjectName(QStringLiteral("practice-end-words"));
    lines->addWidget(words);
    auto* keys = new QHBoxLayout;
    auto* go_on = keyOf(tr("Continue"), "practice-continue", "primary");
    auto* end = keyOf(tr("End and debrief"), "practice-end-confirm");
    keys->addWidget(go_on, 1);
    keys->addWidget(end, 1);
    lines->addLayout(keys);
    connect(go_on, &QPushButton::clicked, sheet, &Sheet::close);
    connect(end, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        debrief();
    });
    sheet->setContent(content);
    sheet->open();
}

void Window::debrief() {
    std::vector<DoorEvidence> evidence;
    for (const GradedDoor& door : m_session.doors())
        evidence.push_back(door.evidence);
    const practice::Exercise& exercise = m_stage->exercise();
    const practice::Debrief result =
        practice::debriefOf(exercise, m_stage->vessel(), m_session.catalogue(), m_stage->truths(),
                            evidence, m_stage->runs(), m_stage->cautionsUntrue());
    m_debrief->show(exercise, result);
    turnTo(m_debrief);
    const Result<> kept = m_session.ports().attempts->keep(
        practice::attemptOf(result, exercise, m_stage->seed(), m_session.clock().now(),
                            m_session.personName().toStdString()));
    if (!kept)
        showMessage(tr("Not saved"), errorWords(kept.error()));
}

} // namespace latchround::ui
