#include "ui/screens/practice/progress_card.h"

#include <algorithm>

#include <QGridLayout>
#include <QPushButton>
#include <QRegularExpression>

#include "core/evidence/same_name.h"
#include "ui/frames/reading_pane.h"
#include "ui/keys/choice_keys.h"
#include "ui/look/label.h"
#include "ui/screens/practice/progress_plot.h"
#include "ui/words/cue_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

constexpr int names_at_once = 3;
constexpr double plot_mm = 48;
constexpr double low_plot_mm = 38;

} // namespace

ProgressCard::ProgressCard(QWidget* parent)
    : Card(parent)
    , m_grid(new QGridLayout(this))
    , m_title(new Label(tr("Progress"), TextSize::Heading, Ink::Plain, true))
    , m_keys(new ChoiceKeys("practice-person", ChoiceKeys::Many::One, names_at_once))
    , m_nobody(new Label({}, TextSize::Body, Ink::Muted))
    , m_plot(new ProgressPlot)
    , m_sum(new Label)
    , m_thumb(new Label({}, TextSize::Small, Ink::Muted))
    , m_pane(new ReadingPane(tr("Progress"))) {
    m_nobody->setObjectName(QStringLiteral("practice-nobody"));
    m_nobody->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_sum->setObjectName(QStringLiteral("practice-sum"));
    m_thumb->setObjectName(QStringLiteral("practice-thumb"));
    m_grid->setContentsMargins(0, 0, 0, 0);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    connect(m_keys, &ChoiceKeys::touched, this, [this](int index, bool) {
        m_person = m_people[index];
        showPerson();
        emit personChosen();
    });
    place();
    lookChanged();
}

void ProgressCard::setSmall(bool small, bool upright) {
    m_small = small;
    m_upright = upright;
    place();
    lookChanged();
}

void ProgressCard::place() {
    const bool lying = m_small && !m_upright;
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_title, m_keys, m_nobody, m_plot, m_sum, m_thumb, m_pane})
        m_grid->removeWidget(part);
    for (int i = 0; i < 6; ++i)
        m_grid->setRowStretch(i, 0);
    m_grid->addWidget(m_title, 0, 0);
    m_grid->addWidget(m_keys, 1, 0);
    m_grid->addWidget(m_nobody, 2, 0);
    if (lying) // beside the keys and the words
        m_grid->addWidget(m_plot, 1, 1, 2, 1);
    else
        m_grid->addWidget(m_plot, 3, 0);
    for (Label* words : {m_sum, m_thumb}) {
        if (!m_small)
            m_grid->addWidget(words, words == m_sum ? 4 : 5, 0);
        else if (!m_pane->isAncestorOf(words))
            m_pane->add(words);
    }
    m_grid->addWidget(m_pane, lying ? 2 : 4, 0);
    const bool any = !m_people.isEmpty();
    m_grid->setRowStretch(any && !lying ? 3 : 2, m_small ? 3 : 1);
    if (any && m_small && m_upright)
        m_grid->setRowStretch(4, 2);
    m_grid->setColumnStretch(0, 3);
    m_grid->setColumnStretch(1, lying && any ? 5 : 0);
    m_keys->setAtOnce(lying ? 1 : names_at_once);
    m_title->setVisible(!m_small); // its tab says so
    m_keys->setVisible(any);
    m_nobody->setVisible(!any);
    m_pane->setVisible(any && m_small);
    for (QWidget* each : std::initializer_list<QWidget*>{m_plot, m_sum, m_thumb})
        each->setVisible(any);
}

void ProgressCard::setAttempts(const Result<std::vector<practice::Attempt>>& attempts,
                               const QString& person) {
    m_attempts = attempts ? *attempts : std::vector<practice::Attempt>{};
    m_people.clear();
    const auto stand = [this](const std::string& name) {
        return std::ranges::find_if(m_people, [&name](const QString& each) {
            return isSameName(each.toStdString(), name);
        });
    };
    std::for_each(m_attempts.rbegin(), m_attempts.rend(), [&](const practice::Attempt& attempt) {
        if (stand(attempt.person) == m_people.end())
            m_people << QString::fromStdString(attempt.person);
    });
    // The one who is asked for stands first, so as to be in sight among many.
    if (const auto at = stand(person.toStdString()); at != m_people.end())
        std::rotate(m_people.begin(), at, at + 1);
    m_person = m_people.isEmpty() ? QString() : m_people.front();
    QStringList names = m_people;
    names.replaceInStrings(QRegularExpression(QStringLiteral("^$")), tr("no name"));
    m_keys->setChoices(names); // an exercise may end before anybody was named
    m_keys->setChosen({0});
    m_nobody->setText(
        attempts ? tr("No one has practised on this tablet yet. Each finished exercise adds its "
                      "score and reaction times here.")
                 : errorWords(attempts.error()));
    place();
    if (!m_people.isEmpty())
        showPerson();
}

std::vector<practice::Attempt> ProgressCard::attemptsShown() const {
    std::vector<practice::Attempt> shown;
    const std::string name = m_person.toStdString();
    std::ranges::copy_if(m_attempts, std::back_inserter(shown),
                         [&name](const auto& attempt) { return isSameName(attempt.person, name); });
    return shown;
}

void ProgressCard::showPerson() {
    const std::vector<practice::Attempt> shown = attemptsShown();
    m_plot->setAttempts(shown);
    int found = 0;
    int there = 0;
    int absent = 0;
    int endangered = 0;
    for (const practice::Attempt& attempt : shown) {
        found += attempt.found;
        there += attempt.found + attempt.missed;
        absent += attempt.absent;
        endangered += attempt.endangered;
    }
    m_sum->setText(
        (shown.size() == 1 ? tr("One exercise. ") : tr("%1 exercises. ").arg(shown.size())) +
        tr("%1 of %2 faults found, %3 reported but absent. ").arg(found).arg(there).arg(absent) +
        tr("People endangered: %1.").arg(endangered));
    const ThumbDrill drill = practice::drillFrom(m_attempts, m_person.toStdString());
    QStringList thumb;
    for (const Word<Cue>& entry : cueWords)
        thumb << QStringLiteral("%1: %2").arg(cueTitle(entry.value), thumbLine(entry.value, drill));
    m_thumb->setText(thumb.join(QLatin1Char('\n')));
}

void ProgressCard::lookChanged() {
    Card::lookChanged();
    m_grid->setVerticalSpacing(sizes().gap);
    m_grid->setHorizontalSpacing(m_small ? sizes().main_gap : 0);
    m_plot->setMinimumHeight(int(mm(m_small ? low_plot_mm : plot_mm)));
}

} // namespace latchround::ui

#include "moc_progress_card.cpp"
