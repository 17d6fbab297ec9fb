#include "ui/screens/caution/caution_screen.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/safety/cautions.h"
#include "core/safety/shore_figures.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/top_bar.h"
#include "ui/help/help_page.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/door_list.h"
#include "ui/lists/value_row.h"
#include "ui/look/english_label.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/radio_words.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

QString movingWords(const MovingDoor& moving) {
    QString words = CautionScreen::tr("deck %1, %2")
                        .arg(QString::fromStdString(moving.door->deck), doorWords(*moving.door));
    if (moving.door->escape_route)
        words += CautionScreen::tr(", escape route");
    return words;
}

/// What the heaviest blow of these doors amounts to, beside the shore figure.
QString energyWords(const std::vector<MovingDoor>& moving) {
    const auto worst = std::ranges::max_element(
        moving, {}, [](const MovingDoor& each) { return each.energy_J.value_or(-1); });
    if (worst == moving.end() || !worst->energy_J)
        return CautionScreen::tr(
            "Leaf masses are not in the register: treat every leaf as a crush hazard.");
    const QLocale locale;
    QString words =
        CautionScreen::tr("Door %1, leaf of %2: up to %3 at the fastest permitted speed.")
            .arg(QString::fromStdString(worst->door->number),
                 quantityWords(*worst->door->leaf_mass_kg, "kg", 0),
                 quantityWords(*worst->energy_J, "J", 1));
    const double times = *worst->energy_J / shore_low_energy_J;
    const QString shore = statedWords(shore_low_energy_J, "J", 2);
    if (times < 1)
        words += CautionScreen::tr(" Below the shore figure for doors that need no guard (%1), but "
                                   "still enough to crush a hand.")
                     .arg(shore);
    else
        words += CautionScreen::tr(" That is %1 times the shore figure for doors that need no "
                                   "guard (%2): keep everyone clear.")
                     .arg(locale.toString(times, 'f', 1), shore);
    if (times >= 1 && worst->shore_least_s)
        words += CautionScreen::tr(" Ashore, a leaf this heavy must take at least %1 s.")
                     .arg(locale.toString(*worst->shore_least_s, 'f', 1));
    return words + CautionScreen::tr(" For comparison, not a rule for ships: %1.")
                       .arg(worst->door->kind == DoorKind::Sliding
                                ? QStringLiteral("EN 16005")
                                : QStringLiteral("ANSI/BHMA A156.19-1997"));
}

} // namespace

CautionScreen::CautionScreen(VesselSession& the_round, QWidget* parent)
    : Screen(the_round, parent)
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight, page()))
    , m_moving_side(new QWidget)
    , m_question_side(new QWidget) {
    setObjectName(QStringLiteral("caution-screen"));
    bar().setBack(true);
    m_columns->setContentsMargins(0, 0, 0, 0);
    makeMoving();
    makeQuestions();
    m_columns->addWidget(m_moving_side, 2);
    m_columns->addWidget(m_question_side, 3);
    // A wide list must not take the width of the questions.
    for (QWidget* side : {m_moving_side, m_question_side})
        side->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    connect(&the_round, &VesselSession::doorChanged, this, [this](const QString& door) {
        if (door == m_door)
            refresh();
    });
    CautionScreen::lookChanged();
}

void CautionScreen::makeMoving() {
    m_moving_lines = new QVBoxLayout(m_moving_side);
    m_moving_lines->setContentsMargins(0, 0, 0, 0);
    m_moving_title = new Label({}, TextSize::Heading, Ink::Bad, true);
    m_moving = new DoorListView;
    m_told = new ReadingPane(tr("Crush hazard of these doors"));
    m_told->setAsHighAsWords();
    m_groups = new QHBoxLayout;
    m_moving_parts = new QBoxLayout(QBoxLayout::TopToBottom);
    m_moving_parts->addWidget(m_moving, 3);
    m_moving_parts->addWidget(m_told);
    m_to_questions = keyOf(tr("Cautions to confirm ›"), "caution-next", "primary");
    m_moving_lines->addWidget(m_moving_title);
    m_moving_lines->addLayout(m_groups);
    m_moving_lines->addLayout(m_moving_parts, 1);
    m_moving_lines->addWidget(m_to_questions);
    connect(m_to_questions, &QPushButton::clicked, this, [this] { turnTo(true); });
}

void CautionScreen::makeQuestions() {
    m_question_lines = new QVBoxLayout(m_question_side);
    m_question_lines->setContentsMargins(0, 0, 0, 0);
    m_question_title =
        new Label(tr("Confirm each before release"), TextSize::Heading, Ink::Plain, true);
    m_question_lines->addWidget(m_question_title);
    m_rows = new RowPager;
    std::vector<QWidget*> rows;
    for (const Caution& caution : cautionsBeforeRelease()) {
        auto* row = new ValueRow(phraseWords(caution.question()), tr("Confirm"));
        row->setObjectName(QStringLiteral("caution-") + plainText(caution.id));
        row->setEnglish(englishBeneath([&] { return phraseWords(caution.question()); }));
        row->key()->setCheckable(true);
        setRole(*row->key(), "choice");
        setTone(*row->key(), "good");
        connect(row, &ValueRow::asked, this,
                [this, row, id = caution.id] { answer(id, row->key()->isChecked()); });
        row->offerHelp();
        connect(row, &ValueRow::helpAsked, this,
                [this, caution] { showHelp(helpForCaution(caution), this); });
        m_questions[std::string(caution.id)] = row;
        rows.push_back(row);
    }
    m_rows->setRows(std::move(rows));
    m_question_lines->addWidget(m_rows, 1);
    m_words = new Label({}, TextSize::Body);
    m_words_english = new EnglishLabel;
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_words);
    words->addWidget(m_words_english);
    m_question_lines->addLayout(words);
    m_keys = new QHBoxLayout;
    m_to_moving = keyOf(tr("‹ Doors"), "caution-doors");
    m_to_moving->setAccessibleName(tr("Back to the doors that will move"));
    const auto again = [] { return tr("All still true"); };
    m_again = keyOf(again(), "confirm-again");
    setEnglish(*m_again, englishBeneath(again));
    m_arm = keyOf(tr("Arm the stopwatch ›"), "arm", "primary");
    for (QPushButton* key : {m_to_moving, m_again, m_arm})
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_keys->addWidget(m_to_moving, 2);
    m_keys->addWidget(m_again, 3);
    m_keys->addWidget(m_arm, 4);
    m_question_lines->addLayout(m_keys);
    connect(m_to_moving, &QPushButton::clicked, this, [this] { turnTo(false); });
    connect(m_again, &QPushButton::clicked, this, &CautionScreen::confirmAll);
    connect(m_arm, &QPushButton::clicked, this, [this] { emit armed(m_door, m_group); });
}

void CautionScreen::arrange(bool upright) {
    const bool small = isSmall();
    m_columns->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_moving_parts->setDirection(small && !upright ? QBoxLayout::LeftToRight
                                                   : QBoxLayout::TopToBottom);
    m_moving_parts->setStretch(1, small && !upright ? 3 : 0);
    m_question_title->setVisible(!small);
    m_to_questions->setVisible(small);
    m_to_moving->setVisible(small);
    for (QPushButton* key : {m_arm, m_again})
        setRole(*key, key == m_arm ? "primary" : "plain", !small);
    if (!m_door.isEmpty())
        fillTold();
    limitMoving();
    turnTo(false);
}

/// Upright the list of doors, which can be long, leaves the questions the larger part.
void CautionScreen::limitMoving() {
    constexpr double share = 0.42;
    m_moving_side->setMaximumHeight(
        isUpright() && !isSmall() ? int(share * page()->contentsRect().height()) : QWIDGETSIZE_MAX);
}

void CautionScreen::resizeEvent(QResizeEvent* event) {
    Screen::resizeEvent(event);
    limitMoving();
}

void CautionScreen::turnTo(bool questions) {
    m_moving_side->setVisible(!isSmall() || !questions);
    m_question_side->setVisible(!isSmall() || questions);
}

void CautionScreen::lookChanged() {
    Screen::lookChanged();
    m_columns->setSpacing(sizes().main_gap);
    for (QLayout* lines : std::initializer_list<QLayout*>{m_moving_lines, m_moving_parts, m_groups,
                                                          m_question_lines, m_keys})
        lines->setSpacing(sizes().gap);
}

void CautionScreen::setDoor(const QString& number) {
    const GradedDoor* graded = session().door(number);
    if (!graded)
        return;
    m_door = number;
    m_walkdown = session().walkdown()->id;
    m_group = QString::fromStdString(usualGroup(session().arrangement(), *graded->door));
    bar().setTitle(tr("Door %1").arg(number), tr("before release from the control station"));
    fillGroups();
    fillMoving();
    turnTo(false);
    refresh();
}

/// What the blow amounts to; and the words agreed, which elsewhere stand above the keys.
void CautionScreen::fillTold() {
    const GradedDoor* graded = session().door(m_door);
    m_told->clear();
    const WalkdownBegun& plan = session().walkdown()->plan;
    const RadioWord start = radioWord(plan.start_word);
    const RadioWord stop = radioWord(plan.stop_word);
    const auto agreed = [&] {
        return tr("Call %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.")
            .arg(wordingWords(plan.control_station), wordingWords(plan.channel), start.words(),
                 stop.words(), wordingWords(plan.may_stop));
    };
    const QString english = englishBeneath(agreed);
    const bool apart = isSmall() && (!isUpright() || !english.isEmpty());
    m_words->setText(agreed());
    m_words->setHidden(apart);
    m_words_english->setEnglish(apart ? QString() : english);
    if (apart) {
        m_told->add(agreed(), TextSize::Body);
        m_told->add(new EnglishLabel(english));
    }
    m_told->add(energyWords(doorsThatWillMove(session().arrangement(), *graded->door,
                                              m_group.toStdString())),
                TextSize::Small, Ink::Muted);
}

void CautionScreen::enter() {
    refresh();
    setFocus();
}

void CautionScreen::fillGroups() {
    while (QLayoutItem* item = m_groups->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const GradedDoor* graded = session().door(m_door);
    if (graded->door->release_groups.size() < 2)
        return;
    for (const std::string& group : graded->door->release_groups) {
        const QString name = QString::fromStdString(group);
        auto* key = new QPushButton(tr("Group %1").arg(name));
        key->setObjectName(QStringLiteral("group-") + name);
        key->setCheckable(true);
        key->setChecked(name == m_group);
        setRole(*key, "choice");
        connect(key, &QPushButton::clicked, this, [this, name] {
            m_group = name;
            fillMoving();
            // The keys of the other groups must not stay pressed in.
            for (int i = 0; i < m_groups->count(); ++i)
                if (auto* other = qobject_cast<QPushButton*>(m_groups->itemAt(i)->widget()))
                    other->setChecked(other->objectName() == QStringLiteral("group-") + name);
        });
        m_groups->addWidget(key);
    }
}

void CautionScreen::fillMoving() {
    const GradedDoor* graded = session().door(m_door);
    const auto moving =
        doorsThatWillMove(session().arrangement(), *graded->door, m_group.toStdString());
    m_moving_title->setText(moving.size() == 1 ? tr("1 door will move")
                                               : tr("%1 doors will move").arg(moving.size()));
    std::vector<DoorListEntry> entries;
    for (const MovingDoor& each : moving) {
        const QString number = QString::fromStdString(each.door->number);
        const GradedDoor* known = session().door(number);
        entries.push_back(
            {number, movingWords(each), known ? known->grade.verdict : Verdict::Untested});
    }
    m_moving->setEntries(std::move(entries));
    fillTold();
}

void CautionScreen::answer(std::string_view question, bool confirmed) {
    (void)session().record(
        CautionAnswered{m_walkdown, m_door.toStdString(), std::string(question), confirmed});
}

void CautionScreen::confirmAll() {
    std::vector<Entry> entries;
    for (const Caution& caution : cautionsBeforeRelease())
        entries.push_back(
            {CautionAnswered{m_walkdown, m_door.toStdString(), std::string(caution.id), true}});
    (void)session().record(std::move(entries));
}

void CautionScreen::refresh() {
    const GradedDoor* graded = session().door(m_door);
    if (!graded)
        return;
    for (const auto& [id, row] : m_questions) {
        const bool confirmed = isConfirmed(graded->evidence, id);
        row->key()->setChecked(confirmed);
        row->setKey(confirmed ? tr("Confirmed") : tr("Confirm"));
    }
    m_arm->setEnabled(mayArm(graded->evidence));
    // After a first release, one key may say that everything still holds; it answers each question
    // anew.
    const bool released_before =
        std::ranges::any_of(graded->evidence.runs, [](const RunRecord& run) {
            return run.release == Release::Remote && run.kind == RunKind::Closing;
        });
    m_again->setVisible(released_before && !mayArm(graded->evidence));
}

void CautionScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit bar().back();
    else
        Screen::keyPressEvent(event);
}

} // namespace latchround::ui

#include "moc_caution_screen.cpp"
