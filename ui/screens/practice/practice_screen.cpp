#include "ui/screens/practice/practice_screen.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/page_tabs.h"
#include "ui/keys/row_pager.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/attempts.h"
#include "ui/ports/exercises.h"
#include "ui/screens/practice/exercise_row.h"
#include "ui/screens/practice/password_form.h"
#include "ui/screens/practice/progress_card.h"
#include "ui/sheets/message.h"
#include "ui/words/phrase_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

PracticeScreen::PracticeScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_tabs(new PageTabs(QStringLiteral("practice-part"), {tr("Exercises"), tr("Progress")},
                          {tr("Exercises"), tr("Progress")}))
    , m_head(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_left(new QVBoxLayout)
    , m_none(new Label(tr("There is no exercise on this tablet. Import one."), TextSize::Body,
                       Ink::Muted))
    , m_list(new RowPager)
    , m_take_in(keyOf(tr("Import an exercise"), "take-in-exercise"))
    , m_progress(new ProgressCard) {
    setObjectName(QStringLiteral("practice"));
    bar().setBack(true);
    bar().setTitle(tr("Practice"), tr("simulated doors; nothing here is a record"));
    m_none->setObjectName(QStringLiteral("practice-none"));
    m_none->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_list->setObjectName(QStringLiteral("exercises"));
    m_progress->setObjectName(QStringLiteral("practice-progress"));
    auto* lines = new QVBoxLayout(page());
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addLayout(m_head);
    m_head->addWidget(m_tabs, 2);
    lines->addLayout(m_sides, 1);
    m_left->addWidget(m_none, 1);
    m_left->addWidget(m_list, 1);
    m_left->addWidget(m_take_in);
    m_sides->addLayout(m_left, 3);
    m_sides->addWidget(m_progress, 2);
    connect(m_tabs, &PageTabs::turned, this, [this] { arrange(isUpright()); });
    connect(m_take_in, &QPushButton::clicked, this, &PracticeScreen::takeIn);
    connect(m_progress, &ProgressCard::personChosen, this, &PracticeScreen::showBest);
    arrange(false);
    lookChanged();
}

void PracticeScreen::enter() {
    m_progress->setAttempts(session().ports().attempts->finished(), session().personName());
    showExercises();
    if (m_rows.empty())
        m_take_in->setFocus();
    else
        m_rows.front()->key()->setFocus();
    offerUnfinished();
}

/// One that was broken off: gone on with, put aside, or left for the next time.
void PracticeScreen::offerUnfinished() {
    const auto unfinished = session().ports().exercises->unfinished();
    if (!unfinished)
        return;
    auto* sheet = new Sheet(this, tr("Unfinished exercise"));
    sheet->setObjectName(QStringLiteral("unfinished-exercise"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(tr("%1, begun %2 at %3. What you recorded is kept; the doors are as "
                                  "they were at the start.")
                                   .arg(unfinished->exercise.title, dayWords(unfinished->begun),
                                        clockWords(unfinished->begun)),
                               TextSize::Lead));
    auto* aside = keyOf(tr("Put it aside"), "unfinished-aside");
    connect(aside, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        if (const Result<> done = session().ports().exercises->putAside(); !done)
            showMessage(this, tr("Not put aside"), errorWords(done.error()));
    });
    if (unfinished->exercise.is_locked) {
        auto* form = new PasswordForm;
        lines->addWidget(form);
        lines->addWidget(aside);
        connect(form, &PasswordForm::given, sheet, [this, sheet](const QString& password) {
            if (goOn(password))
                sheet->close();
        });
    } else {
        auto* keys = new QHBoxLayout;
        auto* go_on = keyOf(tr("Continue"), "unfinished-continue", "primary");
        keys->addWidget(go_on, 1);
        keys->addWidget(aside, 1);
        lines->addLayout(keys);
        connect(go_on, &QPushButton::clicked, sheet, [this, sheet] {
            sheet->close();
            goOn({});
        });
    }
    sheet->setContent(content);
    sheet->open();
}

bool PracticeScreen::goOn(const QString& password) {
    const Result<> gone_on = session().ports().exercises->goOn(password);
    if (!gone_on)
        showMessage(this, tr("Not opened"), errorWords(gone_on.error()));
    return gone_on.has_value();
}

void PracticeScreen::showExercises() {
    m_offered = session().ports().exercises->offered();
    std::ranges::stable_sort(m_offered, {}, &ExerciseOffered::level);
    m_rows.clear();
    std::vector<QWidget*> rows;
    for (const ExerciseOffered& exercise : m_offered) {
        auto* row = new ExerciseRow(exercise);
        connect(row, &ExerciseRow::asked, this, [this, exercise] { choose(exercise); });
        m_rows.push_back(row);
        rows.push_back(row);
    }
    showBest();
    m_list->setRows(std::move(rows));
    arrange(isUpright());
}

void PracticeScreen::showBest() {
    const std::vector<practice::Attempt> attempts = m_progress->attemptsShown();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        std::optional<int> best;
        for (const practice::Attempt& attempt : attempts)
            if (attempt.exercise == m_offered[i].id)
                best = std::max(best.value_or(0), attempt.percent);
        m_rows[i]->setBest(best);
    }
}

void PracticeScreen::choose(const ExerciseOffered& exercise) {
    if (exercise.is_locked)
        askForPassword(exercise);
    else
        practise(exercise.place, {});
}

/// The sheet stays until the password is right.
void PracticeScreen::askForPassword(const ExerciseOffered& exercise) {
    auto* sheet = new Sheet(this, exercise.title);
    auto* form = new PasswordForm;
    connect(form, &PasswordForm::given, sheet,
            [this, sheet, place = exercise.place](const QString& password) {
                if (practise(place, password))
                    sheet->close();
            });
    sheet->setContent(form);
    sheet->open();
}

bool PracticeScreen::practise(const QString& place, const QString& password) {
    const Result<> begun = session().ports().exercises->begin(place, password);
    if (!begun)
        showMessage(this, tr("Not opened"), errorWords(begun.error()));
    return begun.has_value();
}

void PracticeScreen::takeIn() {
    const Checked<std::optional<QString>> taken = session().ports().exercises->takeIn(this);
    if (!taken) {
        showErrors(this,
                   taken.error().size() == 1
                       ? tr("Not imported: one error")
                       : tr("Not imported: %1 errors").arg(taken.error().size()),
                   taken.error());
        return;
    }
    if (!*taken)
        return;
    showExercises();
    showMessage(this, tr("Exercise imported"), **taken);
}

/// Where there is little room one part comes at a time, turned to by the keys above it.
void PracticeScreen::arrange(bool upright) {
    enum Page { Exercises, Progress };
    const auto shows = [&](Page page) { return !isSmall() || m_tabs->chosen() == page; };
    m_tabs->setVisible(isSmall());
    const bool low = isSmall() && !upright; // the list needs all the height there is
    if (low)
        m_head->addWidget(m_take_in, 1);
    else
        m_left->addWidget(m_take_in);
    m_none->setVisible(shows(Exercises) && m_rows.empty());
    m_list->setVisible(shows(Exercises) && !m_rows.empty());
    m_take_in->setVisible(shows(Exercises));
    m_progress->setVisible(shows(Progress));
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setStretch(0, !shows(Exercises) ? 0 : upright ? 1 : 3);
    m_sides->setStretch(1, !shows(Progress) ? 0 : upright ? 1 : 2);
    m_progress->setSmall(isSmall(), upright);
}

void PracticeScreen::lookChanged() {
    Screen::lookChanged();
    page()->layout()->setSpacing(sizes().gap);
    m_head->setSpacing(sizes().gap);
    m_left->setSpacing(sizes().gap);
    m_sides->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
}

} // namespace latchround::ui

#include "moc_practice_screen.cpp"
