#include "ui/screens/caution/caution_screen.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/safety/cautions.h"
#include "core/safety/shore_figures.h"
#include "ui/help/help_page.h"
#include "ui/look/plain_text.h"
#include "ui/look/touch_style.h"
#include "ui/parts/core_words.h"
#include "ui/parts/door_list.h"
#include "ui/parts/door_words.h"
#include "ui/parts/lettering.h"
#include "ui/parts/row_pager.h"
#include "ui/parts/top_bar.h"
#include "ui/parts/units.h"
#include "ui/parts/value_row.h"

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
            "Leaf masses are not in the register: take every leaf as able to crush.");
    const QLocale locale;
    QString words = CautionScreen::tr("Door %1: %2 carry up to %3 at the fastest rate allowed.")
                        .arg(QString::fromStdString(worst->door->number),
                             quantityWords(*worst->door->leaf_mass_kg, "kg", 0),
                             quantityWords(*worst->energy_J, "J", 1));
    const double times = *worst->energy_J / shore_low_energy_J;
    const QString shore = statedWords(shore_low_energy_J, "J", 2);
    if (times < 1)
        words += CautionScreen::tr(" Below the shore figure for doors that need no guard, %1: "
                                   "still enough for a hand.")
                     .arg(shore);
    else
        words += CautionScreen::tr(" That is %1 times the shore figure for doors that need no "
                                   "guard, %2: keep everybody clear.")
                     .arg(locale.toString(times, 'f', 1), shore);
    if (times >= 1 && worst->shore_least_s)
        words += CautionScreen::tr(" Ashore so heavy a leaf would have to take %1 s or more.")
                     .arg(locale.toString(*worst->shore_least_s, 'f', 1));
    return words + CautionScreen::tr(" A comparison, no rule for ships: %1.")
                       .arg(worst->door->kind == DoorKind::Sliding
                                ? QStringLiteral("EN 16005")
                                : QStringLiteral("ANSI/BHMA A156.19-1997"));
}

} // namespace

CautionScreen::CautionScreen(Round& the_round, QWidget* parent)
    : Screen(the_round, parent)
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight, page())) {
    setObjectName(QStringLiteral("caution-screen"));
    bar().setBack(true);
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_columns->setSpacing(sizes().main_gap);
    m_columns->addWidget(makeMoving(), 2);
    m_columns->addWidget(makeQuestions(), 3);
    connect(&the_round, &Round::doorChanged, this, [this](const QString& door) {
        if (door == m_door)
            refresh();
    });
}

QWidget* CautionScreen::makeMoving() {
    auto* side = new QWidget;
    auto* lines = new QVBoxLayout(side);
    lines->setContentsMargins(0, 0, 0, 0);
    m_moving_title = new Lettering({}, TextSize::Heading, Ink::Bad, true);
    m_moving = new DoorListView;
    m_energy = new Lettering({}, TextSize::Small, Ink::Muted);
    m_groups = new QHBoxLayout;
    lines->addWidget(m_moving_title);
    lines->addLayout(m_groups);
    lines->addWidget(m_moving, 1);
    lines->addWidget(m_energy);
    side->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    return side;
}

QWidget* CautionScreen::makeQuestions() {
    auto* side = new QWidget;
    auto* lines = new QVBoxLayout(side);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(sizes().gap);
    lines->addWidget(
        new Lettering(tr("Confirm each before the release"), TextSize::Heading, Ink::Plain, true));
    m_rows = new RowPager;
    std::vector<QWidget*> rows;
    for (const Caution& caution : cautionsBeforeRelease()) {
        auto* row = new ValueRow(coreWords(caution.question), tr("Confirm"));
        row->setObjectName(QStringLiteral("caution-") + plainText(caution.id));
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
    lines->addWidget(m_rows, 1);
    m_words = new Lettering({}, TextSize::Body);
    lines->addWidget(m_words);
    auto* keys = new QHBoxLayout;
    m_again = new QPushButton(tr("All of it still holds"));
    m_again->setObjectName(QStringLiteral("confirm-again"));
    setRole(*m_again, "plain", true);
    connect(m_again, &QPushButton::clicked, this, &CautionScreen::confirmAll);
    m_arm = new QPushButton(tr("Arm the stopwatch ›"));
    m_arm->setObjectName(QStringLiteral("arm"));
    setRole(*m_arm, "primary", true);
    connect(m_arm, &QPushButton::clicked, this, [this] { emit armed(m_door, m_group); });
    keys->addWidget(m_again, 2);
    keys->addWidget(m_arm, 3);
    lines->addLayout(keys);
    side->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    return side;
}

void CautionScreen::arrange(bool upright) {
    m_columns->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void CautionScreen::setDoor(const QString& number) {
    const GradedDoor* graded = round().door(number);
    if (!graded)
        return;
    m_door = number;
    m_group = QString::fromStdString(usualGroup(round().arrangement(), *graded->door));
    bar().setTitle(tr("Door %1").arg(number), tr("before it is released from the control station"));
    fillGroups();
    fillMoving();
    const WalkdownBegun& plan = round().walkdown()->plan;
    m_words->setText(
        tr("To %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.")
            .arg(QString::fromStdString(plan.control_station), QString::fromStdString(plan.channel),
                 QString::fromStdString(plan.start_word), QString::fromStdString(plan.stop_word),
                 QString::fromStdString(plan.may_stop)));
    refresh();
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
    const GradedDoor* graded = round().door(m_door);
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
    const GradedDoor* graded = round().door(m_door);
    const auto moving =
        doorsThatWillMove(round().arrangement(), *graded->door, m_group.toStdString());
    m_moving_title->setText(moving.size() == 1 ? tr("1 door will move")
                                               : tr("%1 doors will move").arg(moving.size()));
    std::vector<DoorListEntry> entries;
    for (const MovingDoor& each : moving) {
        const QString number = QString::fromStdString(each.door->number);
        const GradedDoor* known = round().door(number);
        entries.push_back(
            {number, movingWords(each), known ? known->grade.verdict : Verdict::Untested});
    }
    m_moving->setEntries(std::move(entries));
    m_energy->setText(energyWords(moving));
}

void CautionScreen::answer(std::string_view question, bool confirmed) {
    (void)round().record(CautionAnswered{round().walkdown()->id, m_door.toStdString(),
                                         std::string(question), confirmed});
}

void CautionScreen::confirmAll() {
    std::vector<Entry> entries;
    for (const Caution& caution : cautionsBeforeRelease())
        entries.push_back({CautionAnswered{round().walkdown()->id, m_door.toStdString(),
                                           std::string(caution.id), true}});
    (void)round().record(std::move(entries));
}

void CautionScreen::refresh() {
    const GradedDoor* graded = round().door(m_door);
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
