#include "ui/screens/door/door_screen.h"

#include <algorithm>

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/requirement/applicability.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/row_pager.h"
#include "ui/keys/second_tap.h"
#include "ui/lists/verdict_list.h"
#include "ui/look/touch_style.h"
#include "ui/screens/door/bulkhead_panel.h"
#include "ui/screens/door/door_head.h"
#include "ui/screens/door/door_sheets.h"
#include "ui/screens/door/part_keys.h"
#include "ui/screens/door/step_rows.h"
#include "ui/screens/door/typed_run.h"
#include "ui/screens/door/walked_sheets.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

DoorScreen::DoorScreen(VesselSession& the_round, QWidget* parent)
    : Screen(the_round, parent)
    , m_bulkhead(new BulkheadPanel(the_round))
    , m_head(new DoorHead)
    , m_rows(new RowPager)
    , m_maker(new StepRows(the_round, this))
    , m_typed_run(new TypedRun(the_round, this))
    , m_walked(new WalkedSheets(the_round, this))
    , m_parts(new PartKeys)
    , m_verdict(new VerdictList)
    , m_sheets(new DoorSheets(the_round, this))
    , m_place(new QStackedWidget)
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight, page()))
    , m_middle(new QBoxLayout(QBoxLayout::TopToBottom)) {
    setObjectName(QStringLiteral("door-screen"));
    bar().setBack(true);
    m_work = makeWork();
    m_place->addWidget(m_work);
    m_place->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_columns->addWidget(m_bulkhead);
    m_columns->addLayout(m_middle);
    m_middle->addWidget(m_place, 1);
    m_middle->addWidget(makeFoot());
    m_columns->addWidget(makeVerdict());
    connectParts();
    lookChanged();
}

void DoorScreen::connectParts() {
    connect(m_bulkhead, &BulkheadPanel::doorChosen, this, &DoorScreen::setDoor);
    connect(m_bulkhead, &BulkheadPanel::allAsked, m_sheets, &DoorSheets::allDoors);
    connect(m_sheets, &DoorSheets::doorChosen, this, &DoorScreen::setDoor);
    connect(m_sheets, &DoorSheets::heelChanged, m_maker, &StepRows::refresh);
    connect(m_verdict, &VerdictList::whyAsked, m_sheets, &DoorSheets::why);
    connect(m_sheets, &DoorSheets::rulesAsked, this,
            [this](const QString& requirement) { emit rulesAsked(m_door, requirement); });
    connect(m_maker, &StepRows::plateAsked, m_sheets, &DoorSheets::readPlate);
    connect(m_maker, &StepRows::boundaryAsked, m_sheets, &DoorSheets::lookUpBoundary);
    connect(m_not_asked, &QPushButton::clicked, m_sheets, &DoorSheets::notAsked);
    connect(m_maker, &StepRows::measureAsked, m_sheets, &DoorSheets::measure);
    connect(m_maker, &StepRows::heelAsked, m_sheets, &DoorSheets::heel);
    connect(m_maker, &StepRows::helpAsked, m_sheets, &DoorSheets::help);
    connect(m_maker, &StepRows::clearAsked, m_sheets, &DoorSheets::clearAnswer);
    connect(m_maker, &StepRows::timeAsked, this,
            [this](Release release, RunKind kind) { emit timeAsked(m_door, release, kind); });
    connect(m_maker, &StepRows::typeAsked, this,
            [this](Release release, RunKind kind) { m_typed_run->ask(m_door, release, kind); });
    connect(m_maker, &StepRows::walkedAsked, m_walked, &WalkedSheets::ask);
    connect(m_walked, &WalkedSheets::given, this, &DoorScreen::typeIn);
    connect(m_parts, &PartKeys::placeChosen, this, &DoorScreen::turnTo);
    connect(&session(), &VesselSession::doorChanged, this, &DoorScreen::refresh);
}

QWidget* DoorScreen::makeWork() {
    auto* work = new QWidget;
    m_work_lines = new QVBoxLayout(work);
    m_work_lines->setContentsMargins(0, 0, 0, 0);
    m_work_lines->addWidget(m_head);
    m_work_lines->addWidget(makeSteps());
    m_work_lines->addWidget(m_rows, 1);
    return work;
}

QWidget* DoorScreen::makeSteps() {
    auto* strip = new QWidget;
    m_step_line = new QHBoxLayout(strip);
    m_step_line->setContentsMargins(0, 0, 0, 0);
    for (const auto& [step, words] :
         {std::pair{Step::Look, tr("1 Look")}, std::pair{Step::Release, tr("2 Release")},
          std::pair{Step::Function, tr("3 Function")}}) {
        auto* key = new QPushButton(words);
        key->setObjectName(QStringLiteral("step-") + QString::number(int(step)));
        key->setCheckable(true);
        setRole(*key, "choice");
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        passOverSecondTap(*key);
        connect(key, &QPushButton::clicked, this, [this, which = step] { setStep(which); });
        m_step_line->addWidget(key, 3);
        m_steps.push_back(key);
    }
    m_paper = keyOf(tr("From paper"), "from-paper", "choice");
    m_paper->setCheckable(true);
    m_paper->setAccessibleName(tr("Type in the entries of a paper form"));
    m_paper->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(m_paper, &QPushButton::clicked, this, &DoorScreen::setFromPaper);
    m_step_line->addWidget(m_paper, 2);
    return strip;
}

QWidget* DoorScreen::makeFoot() {
    auto* foot = new QWidget;
    m_foot = new QBoxLayout(QBoxLayout::LeftToRight, foot);
    m_foot->setContentsMargins(0, 0, 0, 0);
    m_actions = new QWidget;
    m_action_grid = new QGridLayout(m_actions);
    m_action_grid->setContentsMargins(0, 0, 0, 0);
    m_photograph = keyOf(tr("Photograph"), "photograph");
    m_note = keyOf(tr("Note"), "note");
    m_could_not = keyOf(tr("Could not test"), "could-not");
    m_forward = keyOf({}, "forward", "primary");
    m_could_not->setAccessibleName(tr("This door could not be tested: say why"));
    for (QPushButton* key : {m_photograph, m_note, m_could_not, m_forward})
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_notes_page = new QWidget;
    m_notes_lines = new QVBoxLayout(m_notes_page);
    m_notes_lines->setContentsMargins(0, 0, 0, 0);
    m_foot->addWidget(m_parts);
    m_foot->addWidget(m_actions, 8);
    m_foot->addWidget(m_forward, 5);
    connect(m_photograph, &QPushButton::clicked, m_sheets, &DoorSheets::photograph);
    connect(m_note, &QPushButton::clicked, m_sheets, &DoorSheets::note);
    connect(m_could_not, &QPushButton::clicked, this, [this] { m_sheets->couldNotTest(); });
    passOverSecondTap(*m_forward);
    connect(m_forward, &QPushButton::clicked, this, &DoorScreen::forward);
    return foot;
}

QWidget* DoorScreen::makeVerdict() {
    m_verdict_side = new QWidget;
    auto* lines = new QVBoxLayout(m_verdict_side);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_verdict, 1);
    m_not_asked = keyOf({}, "not-asked");
    lines->addWidget(m_not_asked);
    return m_verdict_side;
}

void DoorScreen::setDoor(const QString& number) {
    if (!session().door(number))
        return;
    m_door = number;
    m_sheets->setDoor(number);
    m_bulkhead->setDoor(number);
    const std::optional<OnPaper> before = m_from_paper ? m_on_paper : std::nullopt;
    setStep(Step::Look);
    m_on_paper.reset();
    refresh(number);
    if (before)
        m_walked->askTime(before->walker, shipsDay(before->when));
}

void DoorScreen::setFromPaper() {
    m_paper->setChecked(m_from_paper);
    if (m_on_paper)
        typeIn(*m_on_paper);
    else
        m_walked->ask();
}

void DoorScreen::typeIn(const OnPaper& on_paper) {
    m_on_paper = on_paper;
    m_from_paper = true;
    session().typeFrom(m_on_paper);
    for (QPushButton* key : m_steps)
        key->setChecked(false);
    m_paper->setChecked(true);
    turnTo(PartKeys::Rows);
    fillRows();
    fillForward();
    setFocus();
}

void DoorScreen::setStep(Step step) {
    if (m_from_paper && m_on_paper)
        m_on_paper = session().onPaper(); // with its heel
    m_step = step;
    m_from_paper = false;
    session().typeFrom(std::nullopt);
    m_paper->setChecked(false);
    for (std::size_t i = 0; i < m_steps.size(); ++i)
        m_steps[i]->setChecked(int(i) == int(step));
    turnTo(PartKeys::Rows);
    fillRows();
    fillForward();
}

void DoorScreen::enter() {
    if (m_door.isEmpty())
        return;
    refresh(m_door);
    setFocus();
}

void DoorScreen::fillRows() {
    m_rows->setRows(m_from_paper ? m_maker->makeFromPaper(m_door, *m_on_paper)
                                 : m_maker->make(m_door, m_step));
    const bool open = session().isUnderWay();
    for (QWidget* row : m_rows->rows())
        row->setEnabled(open || row->objectName() == QStringLiteral("boundary-row"));
}

void DoorScreen::refresh(const QString& changed) {
    m_bulkhead->refresh(changed);
    fillBar();
    if (changed != m_door)
        return;
    const GradedDoor* graded = session().door(m_door);
    if (!graded)
        return;
    m_head->setDoor(*graded);
    m_verdict->setGrade(graded->grade);
    m_parts->setVerdict(graded->grade.verdict);
    const auto not_asked = std::ranges::count_if(graded->grade.rows, [&](const RowGrade& row) {
        return !isAsked(row) && speaksTo(*row.requirement, session().arrangement().particulars);
    });
    m_not_asked->setText(not_asked == 1 ? tr("1 does not apply ›")
                                        : tr("%1 do not apply ›").arg(not_asked));
    m_maker->refresh();
    const auto counted = [](const QString& words, std::size_t count) {
        return count == 0 ? words : QStringLiteral("%1 (%2)").arg(words).arg(count);
    };
    m_photograph->setText(counted(tr("Photograph"), graded->evidence.photographs.size()));
    m_note->setText(counted(tr("Note"), graded->evidence.notes.size()));
    const bool open = session().isUnderWay();
    for (QPushButton* key : {m_photograph, m_note, m_could_not})
        key->setEnabled(open);
    fillForward();
}

void DoorScreen::fillBar() {
    const GradedDoor* graded = session().door(m_door);
    if (!graded || !session().walkdown())
        return;
    QString where = tr("Deck %1").arg(QString::fromStdString(graded->door->deck));
    if (graded->boundary)
        where += QStringLiteral(" · ") + boundaryWords(*graded->boundary);
    if (isOneAtATime()) // the door's own head is on another page
        bar().setTitle(tr("Door %1").arg(m_door), where);
    else
        bar().setTitle(where,
                       tr("%1 · %2 walkdown")
                           .arg(QString::fromStdString(session().arrangement().particulars.name),
                                purposeWords(session().walkdown()->plan.purpose)));
    const Tally tally = tallyOf(session().doors());
    bar().setProgress(tally.done, tally.doors);
}

void DoorScreen::fillForward() {
    const bool last = m_from_paper || m_step == Step::Function;
    if (!last && m_step == Step::Look)
        m_forward->setText(tr("Go to release ›"));
    else if (!last)
        m_forward->setText(tr("Go to function ›"));
    else {
        const QString next = session().nextOpenDoor(m_door);
        m_forward->setText(next.isEmpty() ? tr("Walkdown done ›") : tr("Next door %1 ›").arg(next));
    }
}

void DoorScreen::forward() {
    if (!m_from_paper && m_step == Step::Look)
        setStep(Step::Release);
    else if (!m_from_paper && m_step == Step::Release)
        setStep(Step::Function);
    else if (const QString next = session().nextOpenDoor(m_door); !next.isEmpty())
        setDoor(next);
    else
        emit walkDone();
}

/// Presses the key of the first open question and turns to the one after it. Nothing is answered
/// that is not in sight: then the letter only turns to it.
bool DoorScreen::answerNext(Answer answer) {
    const auto open = m_maker->nextOpen();
    if (!open.first)
        return false;
    if (open.first->isVisible())
        open.first->key(answer, open.second)->click();
    if (const auto next = m_maker->nextOpen(); next.first)
        m_rows->turnToRow(next.first);
    return true;
}

/// Whoever comes back to the door may have walked to it.
void DoorScreen::hideEvent(QHideEvent* event) {
    session().typeFrom(std::nullopt);
    m_on_paper.reset();
    Screen::hideEvent(event);
}

void DoorScreen::showEvent(QShowEvent* event) {
    Screen::showEvent(event);
    if (m_from_paper)
        setStep(Step::Look);
}

void DoorScreen::keyPressEvent(QKeyEvent* event) {
    const bool is_letter =
        (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    const bool handled = m_from_paper && is_letter && !event->isAutoRepeat() &&
                         ((event->key() == Qt::Key_Y && answerNext(Answer::Yes)) ||
                          (event->key() == Qt::Key_N && answerNext(Answer::No)) ||
                          (event->key() == Qt::Key_A && answerNext(Answer::NotApplicable)));
    if (!handled)
        Screen::keyPressEvent(event);
}

} // namespace latchround::ui

#include "moc_door_screen.cpp"
