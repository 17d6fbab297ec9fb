#include "ui/screens/practice/progress_card.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/same_name.h"
#include "ui/parts/choice_keys.h"
#include "ui/parts/core_words.h"
#include "ui/parts/cue_words.h"
#include "ui/parts/lettering.h"
#include "ui/screens/practice/progress_plot.h"

namespace latchround::ui {

namespace {

constexpr int names_at_once = 3;

} // namespace

ProgressCard::ProgressCard(QWidget* parent)
    : Card(parent)
    , m_lines(new QVBoxLayout(this))
    , m_keys(new ChoiceKeys("practice-person", ChoiceKeys::Many::One, names_at_once))
    , m_nobody(new Lettering({}, TextSize::Body, Ink::Muted))
    , m_plot(new ProgressPlot)
    , m_sum(new Lettering)
    , m_thumb(new Lettering({}, TextSize::Small, Ink::Muted)) {
    m_nobody->setObjectName(QStringLiteral("practice-nobody"));
    m_nobody->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_sum->setObjectName(QStringLiteral("practice-sum"));
    m_thumb->setObjectName(QStringLiteral("practice-thumb"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addWidget(new Lettering(tr("Progress"), TextSize::Heading, Ink::Plain, true));
    m_lines->addWidget(m_keys);
    m_lines->addWidget(m_nobody, 1);
    m_lines->addWidget(m_plot, 1);
    m_lines->addWidget(m_sum);
    m_lines->addWidget(m_thumb);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    connect(m_keys, &ChoiceKeys::touched, this, [this](int index, bool) {
        m_person = m_people[index];
        showPerson();
        emit personChosen();
    });
    lookChanged();
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
    m_keys->setChoices(m_people);
    m_keys->setChosen({0});
    m_nobody->setText(
        attempts ? tr("Nobody has practised on this tablet yet. Each exercise that is finished "
                      "leaves its score here, and how late the thumb was.")
                 : complaintWords(attempts.error()));
    const bool any = !m_people.isEmpty();
    m_keys->setVisible(any);
    m_nobody->setVisible(!any);
    for (QWidget* each : std::initializer_list<QWidget*>{m_plot, m_sum, m_thumb})
        each->setVisible(any);
    if (any)
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
    int imagined = 0;
    int endangered = 0;
    for (const practice::Attempt& attempt : shown) {
        found += attempt.found;
        there += attempt.found + attempt.missed;
        imagined += attempt.imagined;
        endangered += attempt.endangered;
    }
    m_sum->setText(
        (shown.size() == 1 ? tr("One exercise. ") : tr("%1 exercises. ").arg(shown.size())) +
        tr("%1 of %2 faults found, %3 imagined. ").arg(found).arg(there).arg(imagined) +
        tr("People endangered: %1.").arg(endangered));
    const ThumbDrill drill = practice::drillFrom(m_attempts, m_person.toStdString());
    QStringList thumb;
    for (const Word<Cue>& entry : cueWords)
        thumb << QStringLiteral("%1: %2").arg(cueTitle(entry.value), thumbLine(entry.value, drill));
    m_thumb->setText(thumb.join(QLatin1Char('\n')));
}

void ProgressCard::lookChanged() {
    Card::lookChanged();
    m_lines->setSpacing(sizes().gap);
}

} // namespace latchround::ui
