#include "ui/screens/practice/debrief_screen.h"

#include <algorithm>

#include <QButtonGroup>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

#include "core/practice/right_verdict.h"
#include "ui/frames/card.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/key_grid.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/practice/debrief_sections.h"
#include "ui/screens/practice/score_card.h"
#include "ui/words/catalogue_words.h"

namespace latchround::ui {

DebriefScreen::DebriefScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_score(new ScoreCard)
    , m_card(new Card)
    , m_sections(new KeyGrid)
    , m_group(new QButtonGroup(this))
    , m_pane(new ReadingPane(tr("Debrief")))
    , m_score_pane(new ReadingPane(tr("Score")))
    , m_notice(new Label(tr("Practice does not replace instruction by licensed people or the rules "
                            "of the flag Administration."),
                         TextSize::Body, Ink::Plain))
    , m_foot(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_back(keyOf(tr("‹ Score"), "debrief-score"))
    , m_done(keyOf(tr("Done"), "debrief-done", "primary")) {
    setObjectName(QStringLiteral("debrief"));
    m_notice->setObjectName(QStringLiteral("debrief-notice"));
    m_pane->setObjectName(QStringLiteral("debrief-pane"));
    auto* lines = new QVBoxLayout(page());
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addLayout(m_sides, 1);
    lines->addLayout(m_foot);
    m_sides->addWidget(m_score, 1);
    m_sides->addWidget(m_card, 2);
    auto* card = new QVBoxLayout(m_card);
    card->setContentsMargins(0, 0, 0, 0);
    card->addWidget(m_sections);
    card->addWidget(m_pane, 1);
    card->addWidget(m_score_pane, 1);
    m_card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    addSection(Section::Faults, "debrief-faults");
    addSection(Section::Rows, "debrief-verdicts");
    addSection(Section::People, "debrief-people");
    addSection(Section::Marks, "debrief-marks");
    m_foot->addWidget(m_notice, 1);
    m_foot->addWidget(m_back);
    m_foot->addWidget(m_done);
    connect(m_back, &QPushButton::clicked, this, [this] { turnTo(Section::Score); });
    connect(m_done, &QPushButton::clicked, this, &DebriefScreen::done);
    arrange(false);
    lookChanged();
}

void DebriefScreen::addSection(Section section, const char* name) {
    QPushButton* key = keyOf({}, name, "choice");
    key->setCheckable(true);
    m_group->addButton(key);
    m_sections->add(key);
    m_keys[section] = key;
    connect(key, &QPushButton::clicked, this, [this, section] { turnTo(section); });
}

void DebriefScreen::show(const practice::Exercise& exercise, const practice::Debrief& debrief) {
    m_debrief = debrief;
    bar().setTitle(tr("Debrief"), catalogueWords(exercise.title));
    m_score->show(exercise, debrief);
    const auto differ = std::ranges::count_if(debrief.verdicts, [](const auto& each) {
        return !practice::isRight(each.given, each.right);
    });
    const int people = debrief.endangered + debrief.cautions_untrue;
    for (const auto& [section, words] :
         {std::pair{Section::Faults, tr("Faults (%1)").arg(debrief.faults.size())},
          {Section::Rows, tr("Checks (%1)").arg(differ)},
          {Section::People, tr("People (%1)").arg(people)},
          {Section::Marks, tr("Marks (%1)").arg(debrief.marks.size())}}) {
        m_keys[section]->setText(words);
        m_keys[section]->setAccessibleName(words);
    }
    m_keys[Section::Rows]->setAccessibleName(tr("%1 checks that differ").arg(differ));
    m_sections->arrange();
    // People come first where there is something to say of them.
    const Section first = people > 0 ? Section::People : Section::Faults;
    turnTo(isSmall() ? Section::Score : first);
}

void DebriefScreen::turnTo(Section section) {
    m_section = section;
    place();
    if (isSmall()) // the key that was pressed is gone
        (section == Section::Score ? m_done : m_back)->setFocus();
    m_pane->clear();
    m_pane->verticalScrollBar()->setValue(0);
    switch (section) {
    case Section::Score:
        break;
    case Section::Faults:
        readFaults(*m_pane, m_debrief, session());
        break;
    case Section::Rows:
        readVerdicts(*m_pane, m_debrief);
        break;
    case Section::People:
        readPeople(*m_pane, m_debrief);
        break;
    case Section::Marks:
        readMarks(*m_pane, m_debrief);
        break;
    }
}

void DebriefScreen::enter() {
    m_done->setFocus();
}

/// A small screen has the score first, and then one section alone.
void DebriefScreen::place() {
    const bool small = isSmall();
    if (!small && m_section == Section::Score) {
        turnTo(Section::Faults);
        return;
    }
    const bool alone = small && m_section == Section::Score;
    if (small && m_score->parentWidget() == page())
        m_score_pane->add(m_score);
    else if (!small && m_score->parentWidget() != page())
        m_sides->insertWidget(0, m_score);
    m_group->setExclusive(!alone); // beside the score no section is chosen
    for (const auto& [section, key] : m_keys) {
        key->setChecked(section == m_section);
        // Four keys of two lines take less of a small page than two rows of keys.
        key->setText(small ? key->text().replace(QLatin1String(" ("), QLatin1String("\n("))
                           : key->text().replace(QLatin1String("\n("), QLatin1String(" (")));
    }
    m_sections->setVisible(!small || alone);
    m_sections->arrange();
    m_back->setVisible(small && !alone);
    m_score->setVisible(true);
    m_score_pane->setVisible(alone);
    m_pane->setVisible(!alone);
    m_notice->setVisible(!small || alone);
    // Beside a key in a narrow window the notice is too narrow to be read.
    m_foot->setDirection(alone && isUpright() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void DebriefScreen::arrange(bool upright) {
    place();
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setStretchFactor(m_score, upright ? 0 : 1);
    m_sides->setStretchFactor(m_card, upright ? 1 : 2);
    m_score->setUpright(upright || isSmall());
    m_score->setBare(isSmall());
}

void DebriefScreen::lookChanged() {
    Screen::lookChanged();
    page()->layout()->setSpacing(sizes().gap);
    m_sides->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
    m_card->layout()->setSpacing(sizes().gap);
    m_foot->setSpacing(sizes().main_gap);
    m_done->setMinimumWidth(2 * sizes().main_target);
}

} // namespace latchround::ui

#include "moc_debrief_screen.cpp"
